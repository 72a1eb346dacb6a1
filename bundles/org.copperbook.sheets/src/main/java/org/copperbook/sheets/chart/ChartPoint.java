package org.copperbook.sheets.chart;

/**
 * One point of a series.
 *
 * @param x         value along the lower axis
 * @param y         value along the upright axis
 * @param expandedU expanded uncertainty of y, or null when it is not known
 * @param id        what the point shows (a JSON pointer in the part), or null
 */
public record ChartPoint(double x, double y, Double expandedU, String id) {

    public ChartPoint {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("a point of a chart needs finite numbers");
        }
    }

    public static ChartPoint of(double x, double y) {
        return new ChartPoint(x, y, null, null);
    }

    public static ChartPoint of(double x, double y, String id) {
        return new ChartPoint(x, y, null, id);
    }
}
