package org.copperbook.sheets.chart;

/**
 * Where a chart's plot lies in a picture, and how values and places belong together. Drawing and crosshair use the same.
 *
 * @param left   left edge of the plot
 * @param top    upper edge
 * @param width  width
 * @param height height
 * @param x      scale along the lower edge
 * @param y      scale along the left edge
 */
public record PlotArea(double left, double top, double width, double height, Scale x, Scale y) {

    /** Place of a value along the lower axis. */
    public double placeOfX(double value) {
        return left + width * x.share(value);
    }

    /** Place of a value along the upright axis; pictures count downwards. */
    public double placeOfY(double value) {
        return top + height * (1 - y.share(value));
    }

    /** The value of the lower axis at a place. */
    public double xAt(double place) {
        return x.value((place - left) / width);
    }

    /** The value of the upright axis at a place. */
    public double yAt(double place) {
        return y.value(1 - (place - top) / height);
    }

    /** Whether a place lies in the plot. */
    public boolean holds(double px, double py) {
        return px >= left && px <= left + width && py >= top && py <= top + height;
    }
}
