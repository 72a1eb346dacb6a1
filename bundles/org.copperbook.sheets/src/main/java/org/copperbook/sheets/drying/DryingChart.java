package org.copperbook.sheets.drying;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.copperbook.jobs.check.DryingState;
import org.copperbook.sheets.chart.Axis;
import org.copperbook.sheets.chart.Chart;
import org.copperbook.sheets.chart.ChartPoint;
import org.copperbook.sheets.chart.Series;

/** The drying curve: insulation resistance against time, as read and brought to 40 degrees Celsius. */
public final class DryingChart {

    private static final double MEGOHM = 1e6;

    private DryingChart() {
    }

    /**
     * The words of the chart.
     *
     * @param title      heading
     * @param time       name of the lower axis, in hours
     * @param resistance name of the upright axis, in megohms
     * @param at40       name of the curve at 40 degrees Celsius
     * @param asRead     name of the curve as read
     * @param note       where the curve stands
     */
    public record Labels(String title, String time, String resistance, String at40, String asRead, String note) {
    }

    /** The chart of a curve; empty while it has no three whole points. */
    public static Chart of(DryingState state, Labels labels) {
        return new Chart(labels.title(), Axis.fromZero(labels.time(), "h"), Axis.fromZero(labels.resistance(), "MΩ"),
                List.of(new Series(labels.at40(), Series.Shape.JOINED, points(state, DryingState.Point::at40)),
                        new Series(labels.asRead(), Series.Shape.JOINED, points(state, DryingState.Point::ohms))),
                List.of(), labels.note());
    }

    private static List<ChartPoint> points(DryingState state, ToDoubleFunction<DryingState.Point> ohms) {
        List<ChartPoint> points = new ArrayList<>();
        for (DryingState.Point p : state.points()) {
            points.add(ChartPoint.of(p.hours(), ohms.applyAsDouble(p) / MEGOHM));
        }
        return points;
    }
}
