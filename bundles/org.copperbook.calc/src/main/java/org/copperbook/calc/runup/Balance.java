package org.copperbook.calc.runup;

import org.copperbook.calc.Require;

/** Permissible residual unbalance of a rigid rotor. Source: ISO 21940-11, 6.2 (formula from memory); grades: ANSI/EASA AR100. */
public final class Balance {

    private Balance() {
    }

    /** Permissible specific unbalance (centre of mass displacement), m; grade in mm/s, speed in r/s. */
    public static double displacement(double grade, double perSecond) {
        Require.between("balance grade", grade, 0.4, 4000, "mm/s", "the grades of the standard end there");
        return grade * 1e-3 / (2 * Math.PI * Require.positive("speed", perSecond, "1/s"));
    }

    /** Permissible residual unbalance of the whole rotor, kg·m. */
    public static double residual(double grade, double perSecond, double kilograms) {
        return displacement(grade, perSecond) * Require.positive("rotor mass", kilograms, "kg");
    }

    /** The shop's grade: G2.5 up to 2500 r/min, G1 above. */
    public static double shopGrade(double perSecond) {
        return Require.positive("speed", perSecond, "1/s") * 60 <= 2500 ? 2.5 : 1;
    }
}
