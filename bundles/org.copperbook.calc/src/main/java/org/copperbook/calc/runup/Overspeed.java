package org.copperbook.calc.runup;

import org.copperbook.calc.Require;

/** Overspeed test: 1.2 times the highest rated speed for two minutes. Source: IEC 60034-1, 9.7 and its table (from memory). */
public final class Overspeed {

    /** Factor on the highest rated speed. */
    public static final double FACTOR = 1.2;
    /** Duration, s. */
    public static final double SECONDS = 120;

    private Overspeed() {
    }

    /** Test speed in the unit of the rated speed. */
    public static double speed(double highestRated) {
        return FACTOR * Require.positive("highest rated speed", highestRated, "1/s");
    }
}
