package org.copperbook.calc.winding.memory;

/**
 * The figures by which machines are compared; each may be unknown (not a number).
 *
 * @param rating apparent power in VA, or for a motor the shaft power in W
 * @param poles poles
 * @param slots slots
 * @param bore bore in m
 * @param length core length in m
 * @param volts line voltage in V
 */
public record MachineFigures(double rating, double poles, double slots, double bore, double length, double volts) {

    double[] values() {
        return new double[] {rating, poles, slots, bore, length, volts};
    }
}
