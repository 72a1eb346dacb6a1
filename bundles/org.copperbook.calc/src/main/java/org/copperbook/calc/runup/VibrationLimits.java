package org.copperbook.calc.runup;

import java.util.Optional;

import org.copperbook.calc.Require;

/**
 * Greatest vibration of a new machine run alone, rms. Source: IEC 60034-14:2003, table 1 (the 2018 edition revises it).
 *
 * @param displacement m rms
 * @param velocity m/s rms
 * @param acceleration m/s² rms
 */
public record VibrationLimits(double displacement, double velocity, double acceleration) {

    /** Vibration grade. */
    public enum Grade {
        A, B
    }

    /** How the machine stands. */
    public enum Mounting {
        FREE, RIGID
    }

    private static final double[][][] TABLE = {
        {{25, 1.6, 2.5}, {35, 2.2, 3.5}, {45, 2.8, 4.4}},
        {{21, 1.3, 2.0}, {29, 1.8, 2.8}, {37, 2.3, 3.6}},
        {{11, 0.7, 1.1}, {18, 1.1, 1.7}, {29, 1.8, 2.8}},
        {null, {14, 0.9, 1.4}, {24, 1.5, 2.4}},
    };

    /** The limits for a shaft height in m, from 0.056; empty where the table sets none. */
    public static Optional<VibrationLimits> of(Grade grade, Mounting mounting, double shaftHeight) {
        Require.between("shaft height", shaftHeight, 0.056, 5, "m", "the table begins at 56 mm");
        int column = shaftHeight <= 0.132 ? 0 : shaftHeight <= 0.280 ? 1 : 2;
        double[] v = TABLE[2 * grade.ordinal() + mounting.ordinal()][column];
        return v == null ? Optional.empty() : Optional.of(new VibrationLimits(v[0] * 1e-6, v[1] * 1e-3, v[2]));
    }
}
