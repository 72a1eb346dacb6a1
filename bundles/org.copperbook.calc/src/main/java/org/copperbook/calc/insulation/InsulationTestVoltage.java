package org.copperbook.calc.insulation;

import org.copperbook.calc.Require;

/**
 * Direct test voltage for an insulation resistance reading.
 * Source: IEEE 43-2000 and 2013, table 1.
 *
 * @param lowest least direct voltage, V
 * @param highest greatest direct voltage, V
 */
public record InsulationTestVoltage(double lowest, double highest) {

    /**
     * The range for a winding rating.
     *
     * @param ratedVolts line-to-line volts of a three-phase winding, line to earth of a single-phase one, rated direct
     *        volts of a field; above 0 to 50 000
     */
    public static InsulationTestVoltage forRating(double ratedVolts) {
        Require.positive("rated voltage", ratedVolts, "V");
        Require.between("rated voltage", ratedVolts, 0, 50_000, "V", "no machine winding is rated higher");
        if (ratedVolts < 1000) {
            return new InsulationTestVoltage(500, 500);
        }
        if (ratedVolts <= 2500) {
            return new InsulationTestVoltage(500, 1000);
        }
        if (ratedVolts <= 5000) {
            return new InsulationTestVoltage(1000, 2500);
        }
        if (ratedVolts <= 12_000) {
            return new InsulationTestVoltage(2500, 5000);
        }
        return new InsulationTestVoltage(5000, 10_000);
    }
}
