package org.copperbook.desk.verdict;

import org.copperbook.calc.verdict.Bounds;

/**
 * Where the parts of an interval bar stand, as fractions of its width: limits as ticks, the value, and its uncertainty
 * as a whisker. The scale is linear, or logarithmic when value and limit lie more than a factor of twenty apart. A
 * value beyond the scale stands at its end. Without a limit there is nothing to stand against, and no scale.
 *
 * @param lower     lower limit, or NaN
 * @param upper     upper limit, or NaN
 * @param value     the value, or NaN when there is none
 * @param low       low end of the whisker, or NaN
 * @param high      high end of the whisker, or NaN
 * @param logarithmic whether the scale is logarithmic
 */
public record IntervalScale(double lower, double upper, double value, double low, double high, boolean logarithmic) {

    private static final IntervalScale NOTHING =
            new IntervalScale(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, false);
    private static final double FAR = 20;
    private static final double MARGIN = 0.2;
    private static final double EDGE = 0.04;

    /**
     * The scale for a value.
     *
     * @param value     the value, or null
     * @param expandedU its expanded uncertainty, or null
     * @param bounds    the limits, or null
     */
    public static IntervalScale of(Double value, Double expandedU, Bounds bounds) {
        double v = value == null ? Double.NaN : value;
        double u = value == null || expandedU == null || expandedU.isNaN() ? Double.NaN : Math.abs(expandedU);
        double lo = bounds == null || bounds.lower() == null ? Double.NaN : bounds.lower();
        double up = bounds == null || bounds.upper() == null ? Double.NaN : bounds.upper();
        if (Double.isNaN(lo) && Double.isNaN(up)) {
            return NOTHING;
        }
        boolean log = far(v, lo) || far(v, up);
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        for (double x : new double[] {v, lo, up, log ? Double.NaN : v - u, log ? Double.NaN : v + u}) {
            if (!Double.isNaN(x)) {
                double y = log ? Math.log(x) : x;
                from = Math.min(from, y);
                to = Math.max(to, y);
            }
        }
        double span = to - from;
        if (span == 0) {
            span = from == 0 ? 1 : Math.abs(from);
        }
        double start = from - span * MARGIN;
        double width = span * (1 + 2 * MARGIN);
        return new IntervalScale(place(lo, log, start, width), place(up, log, start, width),
                place(v, log, start, width), place(v - u, log, start, width), place(v + u, log, start, width), log);
    }

    /** Whether there is anything to draw. */
    public boolean isEmpty() {
        return Double.isNaN(value) && Double.isNaN(lower) && Double.isNaN(upper);
    }

    private static boolean far(double a, double b) {
        return a > 0 && b > 0 && (a / b > FAR || b / a > FAR);
    }

    private static double place(double x, boolean log, double start, double width) {
        if (Double.isNaN(x)) {
            return Double.NaN;
        }
        if (log && x <= 0) {
            return EDGE;
        }
        double at = ((log ? Math.log(x) : x) - start) / width;
        return Math.max(EDGE, Math.min(1 - EDGE, at));
    }
}
