package org.copperbook.sheets.chart;

import java.util.List;
import java.util.stream.Stream;

/**
 * A chart as plain data: one object that the screen, SVG and PNG pictures, CSV files and workbooks all show.
 *
 * @param title  heading
 * @param x      lower axis
 * @param y      upright axis
 * @param series what is drawn
 * @param limits limits across it
 * @param note   what must be read beside it (how points were thinned, at which speed); may be empty
 */
public record Chart(String title, Axis x, Axis y, List<Series> series, List<ChartLimit> limits, String note) {

    public Chart {
        series = List.copyOf(series);
        limits = List.copyOf(limits);
    }

    /** Whether there is nothing to draw. */
    public boolean isEmpty() {
        return series.stream().allMatch(s -> s.points().isEmpty());
    }

    /** The scale along the lower axis. */
    public Scale xScale() {
        return Scale.over(x, points().mapToDouble(ChartPoint::x).toArray(), false);
    }

    /** The scale along the upright axis; it holds limits and uncertainties too. */
    public Scale yScale() {
        double[] values = Stream.concat(points().flatMap(p -> p.expandedU() == null ? Stream.of(p.y())
                : Stream.of(p.y() - p.expandedU(), p.y() + p.expandedU())), limits.stream().flatMap(l ->
                l instanceof ChartLimit.Band b ? Stream.of(b.from(), b.to()) : Stream.of(((ChartLimit.Line) l).value())))
                .mapToDouble(Double::doubleValue).toArray();
        boolean bars = series.stream().anyMatch(s -> s.shape() == Series.Shape.BARS);
        return Scale.over(y, values, bars);
    }

    private Stream<ChartPoint> points() {
        return series.stream().flatMap(s -> s.points().stream());
    }
}
