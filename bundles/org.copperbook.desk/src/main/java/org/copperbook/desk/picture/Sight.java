package org.copperbook.desk.picture;

import org.copperbook.sheets.picture.Point;

/**
 * Which part of a scene is seen: pixels per unit, and where its upper left corner lies in the control.
 *
 * @param scale pixels per unit, within {@link #LEAST} and {@link #MOST}
 */
record Sight(double scale, double x, double y) {

    static final double LEAST = 0.05;
    static final double MOST = 20;

    /** The whole scene in the middle of an area. */
    static Sight fit(double sceneWidth, double sceneHeight, int width, int height) {
        double scale = bounded(Math.min(width / Math.max(1, sceneWidth), height / Math.max(1, sceneHeight)));
        return new Sight(scale, (width - sceneWidth * scale) / 2, (height - sceneHeight * scale) / 2);
    }

    /** Enlarged so that the point under the hand stays where it is. */
    Sight enlarged(double by, double atX, double atY) {
        double next = bounded(scale * by);
        double real = next / scale;
        return new Sight(next, atX - (atX - x) * real, atY - (atY - y) * real);
    }

    /** Moved, but never so far that nothing of the scene is left in the area. */
    Sight moved(double dx, double dy, double sceneWidth, double sceneHeight, int width, int height) {
        return new Sight(scale, kept(x + dx, sceneWidth * scale, width), kept(y + dy, sceneHeight * scale, height));
    }

    Point onScene(double px, double py) {
        return new Point((px - x) / scale, (py - y) / scale);
    }

    private static double kept(double at, double extent, int room) {
        double margin = Math.min(40, extent / 2);
        return Math.max(margin - extent, Math.min(room - margin, at));
    }

    private static double bounded(double scale) {
        return Math.max(LEAST, Math.min(MOST, scale));
    }
}
