package org.copperbook.calc.runup;

import org.copperbook.calc.Require;

/**
 * No-load voltage brought to nominal speed. With constant main-field current it follows speed; with a fixed exciter field it
 * follows speed to a power between 1 (saturated) and 2 (not). Common practice for the second; induced-voltage law for the
 * first.
 *
 * @param linear first power, V
 * @param square second power, V
 */
public record VoltageAtSpeed(double linear, double square) {

    /** Speeds in one unit, positive. */
    public static VoltageAtSpeed of(double volts, double speed, double nominal) {
        Require.notNegative("voltage", volts, "V");
        double ratio = Require.positive("nominal speed", nominal, "") / Require.positive("speed", speed, "");
        return new VoltageAtSpeed(volts * ratio, volts * ratio * ratio);
    }
}
