package org.copperbook.sheets.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;

/**
 * What a chart says at one place of its lower axis: the crosshair shows it.
 *
 * @param x      value along the lower axis
 * @param values the series that say something there, in their order
 */
public record ChartReading(double x, List<Value> values) {

    /**
     * What one series says.
     *
     * @param title    name of the series
     * @param y        value
     * @param read     true for a reading, false for a value between two readings on a straight line
     */
    public record Value(String title, double y, boolean read) {
    }

    public ChartReading {
        values = List.copyOf(values);
    }

    /** Reads a chart at a value of the lower axis: readings there, and joined series by straight lines between points. */
    public static ChartReading at(Chart chart, double x) {
        List<Value> values = new ArrayList<>();
        for (Series s : chart.series()) {
            boolean found = false;
            for (ChartPoint p : s.points()) {
                if (p.x() == x) {
                    values.add(new Value(s.title(), p.y(), s.marked() || s.shape() == Series.Shape.BARS));
                    found = true;
                }
            }
            OptionalDouble between = found || !s.joined() ? OptionalDouble.empty() : between(s.points(), x);
            between.ifPresent(y -> values.add(new Value(s.title(), y, false)));
        }
        return new ChartReading(x, values);
    }

    private static OptionalDouble between(List<ChartPoint> points, double x) {
        for (int i = 1; i < points.size(); i++) {
            ChartPoint a = points.get(i - 1);
            ChartPoint b = points.get(i);
            if (Math.min(a.x(), b.x()) < x && x < Math.max(a.x(), b.x())) {
                return OptionalDouble.of(a.y() + (b.y() - a.y()) * (x - a.x()) / (b.x() - a.x()));
            }
        }
        return OptionalDouble.empty();
    }

    /** The places of the lower axis at which something was read, in rising order, for steps by key. */
    public static List<Double> stops(Chart chart) {
        TreeSet<Double> stops = new TreeSet<>();
        chart.series().forEach(s -> s.points().forEach(p -> stops.add(p.x())));
        return List.copyOf(stops);
    }
}
