package org.copperbook.calc.runup;

import org.copperbook.calc.Require;

/** Short-circuit ratio. Two definitions are in use and differ by a few tenths of a per cent to several per cent. */
public enum ShortCircuitRatio {
    /**
     * Field current for rated voltage on the open-circuit curve over field current for rated current on the short-circuit
     * line (IEC 60034-4-1).
     */
    BY_FIELD_CURRENTS,
    /** Reciprocal of the saturated synchronous reactance in per unit (Fitzgerald, Kingsley, Umans, section 5.3). */
    BY_SATURATED_REACTANCE;

    /** From the two field currents, A. */
    public static double byFieldCurrents(double forRatedVolts, double forRatedAmperes) {
        return Require.positive("field current for rated voltage", forRatedVolts, "A")
                / Require.positive("field current for rated current", forRatedAmperes, "A");
    }

    /** From the saturated reactance in per unit. */
    public static double bySaturatedReactance(double perUnit) {
        return 1 / Require.positive("saturated reactance", perUnit, "pu");
    }
}
