package org.copperbook.calc.runup;

import org.copperbook.calc.Require;

/**
 * Impedances per phase of a star from open- and short-circuit tests, ohm.
 * Source: IEC 60034-4-1; A. E. Fitzgerald, C. Kingsley, S. D. Umans, Electric Machinery, 6th ed., section 5.3.
 */
public final class SynchronousImpedance {

    private static final double ROOT_3 = Math.sqrt(3);

    private SynchronousImpedance() {
    }

    /** Base impedance U²/S, ohm per phase of a star; line volts and three-phase volt-amperes. */
    public static double base(double lineVolts, double voltAmperes) {
        Require.positive("rated voltage", lineVolts, "V");
        return lineVolts * lineVolts / Require.positive("rated power", voltAmperes, "VA");
    }

    /** Rated current S/(sqrt(3) U), A. */
    public static double ratedAmperes(double lineVolts, double voltAmperes) {
        return Require.positive("rated power", voltAmperes, "VA")
                / (ROOT_3 * Require.positive("rated voltage", lineVolts, "V"));
    }

    /** Zs from open-circuit line volts and short-circuit line current at one field current. Air-gap volts give the unsaturated. */
    public static double star(double openLineVolts, double shortAmperes) {
        return Require.positive("open-circuit voltage", openLineVolts, "V")
                / (ROOT_3 * Require.positive("short-circuit current", shortAmperes, "A"));
    }

    /** The same for a delta, ohm per phase of the delta. */
    public static double delta(double openLineVolts, double shortAmperes) {
        return 3 * star(openLineVolts, shortAmperes);
    }

    /** The same for a single-phase winding. */
    public static double singlePhase(double openVolts, double shortAmperes) {
        return Require.positive("open-circuit voltage", openVolts, "V")
                / Require.positive("short-circuit current", shortAmperes, "A");
    }

    /** Reactance from impedance and resistance. */
    public static double reactance(double impedance, double resistance) {
        Require.notNegative("resistance", resistance, "ohm");
        Require.that(impedance >= resistance, "impedance", impedance + " ohm", "values from " + resistance + " ohm",
                "an impedance is never below its resistance");
        return Math.sqrt(impedance * impedance - resistance * resistance);
    }

    /** Effective armature resistance from the short-circuit load loss, ohm per phase of a star. */
    public static double resistanceFromLoss(double loadLossWatts, double amperes) {
        double i = Require.positive("short-circuit current", amperes, "A");
        return Require.positive("short-circuit load loss", loadLossWatts, "W") / (3 * i * i);
    }
}
