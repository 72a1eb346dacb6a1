package org.copperbook.calc.wire;

import org.copperbook.calc.Require;

/**
 * Preferred numbers of the R 20 series (ISO 3), after which metric wire is sized.
 *
 * @param step step from 1.00, 0 to 20
 * @param exact {@code 10^(step/20)}
 * @param rounded the preferred number
 */
public record PreferredDiameter(int step, double exact, double rounded) {
    private static final double[] R20 = {1.00, 1.12, 1.25, 1.40, 1.60, 1.80, 2.00, 2.24, 2.50, 2.80, 3.15, 3.55, 4.00,
            4.50, 5.00,
        5.60, 6.30, 7.10, 8.00, 9.00, 10.00};

    /**
     * @param step step from 1.00, 0 to 20
     * @return exact and preferred number
     */
    public static PreferredDiameter of(int step) {
        Require.between("step of the series", step, 0, 20, "the series repeats every twenty steps");
        return new PreferredDiameter(step, Math.pow(10, step / 20.0), R20[step]);
    }
}
