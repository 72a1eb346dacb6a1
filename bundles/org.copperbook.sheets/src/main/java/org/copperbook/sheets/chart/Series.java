package org.copperbook.sheets.chart;

import java.util.List;

/**
 * Points that belong together.
 *
 * @param title  name in the legend
 * @param shape  how they are drawn
 * @param points the points in the order in which they are joined
 */
public record Series(String title, Shape shape, List<ChartPoint> points) {

    /** How the points of a series are drawn. */
    public enum Shape {
        /** Readings joined by a line. */
        JOINED,
        /** Readings by themselves. */
        DOTS,
        /** A computed line without readings of its own. */
        LINE,
        /** A computed line that continues readings. */
        DASHED,
        /** Upright bars from zero. */
        BARS
    }

    public Series {
        points = List.copyOf(points);
    }

    /** Whether a line joins the points. */
    public boolean joined() {
        return shape == Shape.JOINED || shape == Shape.LINE || shape == Shape.DASHED;
    }

    /** Whether the points are readings, to be marked one by one. */
    public boolean marked() {
        return shape == Shape.JOINED || shape == Shape.DOTS;
    }
}
