package org.copperbook.sheets.bar;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.copperbook.calc.verdict.Bounds;

/**
 * Where the parts of an interval bar stand, as fractions of its width from the left. The scale is linear, or
 * logarithmic when value and limit lie more than a factor of twenty apart. What lies beyond the scale stands at its
 * end.
 *
 * @param lower lower limit, or NaN when there is none
 * @param upper upper limit, or NaN when there is none
 * @param value the value, or NaN when nothing was measured
 * @param low   low end of the whisker, or NaN when the uncertainty is unknown
 * @param high  high end of the whisker
 */
public record BarScale(double lower, double upper, double value, double low, double high) {

    private static final double FAR = 20;
    private static final double MARGIN = 0.2;
    private static final double EDGE = 0.04;

    /** A scale without anything on it. */
    public static final BarScale EMPTY = new BarScale(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);

    /**
     * The scale for a value; any part may be null.
     *
     * @param expandedU expanded uncertainty of the value
     */
    public static BarScale of(Double value, Double expandedU, Bounds bounds) {
        double v = finite(value);
        double u = finite(expandedU);
        double lower = bounds == null ? Double.NaN : finite(bounds.lower());
        double upper = bounds == null ? Double.NaN : finite(bounds.upper());
        boolean log = far(v, lower) || far(v, upper);
        List<Double> shown = new ArrayList<>(List.of(v, lower, upper));
        if (!log) {
            shown.addAll(List.of(v - u, v + u));
        }
        List<Double> ends = shown.stream().filter(x -> !Double.isNaN(x)).map(x -> log ? Math.log(x) : x)
                .filter(Double::isFinite).toList();
        if (ends.isEmpty()) {
            return EMPTY;
        }
        double from = ends.stream().min(Comparator.naturalOrder()).orElseThrow();
        double span = ends.stream().max(Comparator.naturalOrder()).orElseThrow() - from;
        if (span == 0) {
            span = from == 0 ? 1 : Math.abs(from);
        }
        Axis axis = new Axis(from - span * MARGIN, span * (1 + 2 * MARGIN), log);
        return new BarScale(axis.place(lower), axis.place(upper), axis.place(v), axis.place(v - u), axis.place(v + u));
    }

    /** Whether there is nothing to draw. */
    public boolean isEmpty() {
        return Double.isNaN(value) && Double.isNaN(lower) && Double.isNaN(upper);
    }

    private static double finite(Double x) {
        return x == null || !Double.isFinite(x) ? Double.NaN : x;
    }

    private static boolean far(double a, double b) {
        return a > 0 && b > 0 && (a / b > FAR || b / a > FAR);
    }

    private record Axis(double start, double width, boolean log) {

        double place(double x) {
            if (Double.isNaN(x)) {
                return Double.NaN;
            }
            if (log && x <= 0) {
                return EDGE;
            }
            return Math.max(EDGE, Math.min(1 - EDGE, ((log ? Math.log(x) : x) - start) / width));
        }
    }
}
