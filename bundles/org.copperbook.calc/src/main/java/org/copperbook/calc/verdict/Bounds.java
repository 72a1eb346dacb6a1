package org.copperbook.calc.verdict;

import org.copperbook.calc.Require;

/**
 * A tolerance interval in the unit of the quantity judged; an absent end is open.
 *
 * @param lower least conforming value, or null
 * @param upper greatest conforming value, or null
 */
public record Bounds(Double lower, Double upper) {

    /** No limit at either end. */
    public static final Bounds NONE = new Bounds(null, null);

    public Bounds {
        if (lower != null) {
            Require.finite("lower limit", lower, "");
        }
        if (upper != null) {
            Require.finite("upper limit", upper, "");
        }
        if (lower != null && upper != null) {
            Require.that(lower <= upper, "lower limit", lower.toString(), "values up to " + upper,
                    "the lower limit cannot lie above the upper");
        }
    }

    /** A lower limit only. */
    public static Bounds atLeast(double lower) {
        return new Bounds(lower, null);
    }

    /** An upper limit only. */
    public static Bounds atMost(double upper) {
        return new Bounds(null, upper);
    }

    /** Both limits, the lower no higher than the upper. */
    public static Bounds between(double lower, double upper) {
        return new Bounds(lower, upper);
    }

    /** Whether both ends are open. */
    public boolean isEmpty() {
        return lower == null && upper == null;
    }
}
