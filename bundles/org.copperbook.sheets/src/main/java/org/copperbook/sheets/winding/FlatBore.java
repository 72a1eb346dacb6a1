package org.copperbook.sheets.winding;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.sheets.picture.Point;

/** The bore cut open between its last and its first slot: where slots lie, and lines that run on at the other edge. */
final class FlatBore {

    static final double PITCH = 28;
    static final double LEFT = 30;

    private final Sketch sketch;
    private final double sheet;

    FlatBore(Sketch sketch, int slots) {
        this.sketch = sketch;
        sheet = slots * PITCH;
    }

    double right() {
        return LEFT + sheet;
    }

    /** The middle of a slot; slots beyond the last lie beyond the sheet. */
    double middle(double slot) {
        return LEFT + (slot - 0.5) * PITCH;
    }

    /** The same place of the bore, as near to another as it comes by going round. */
    double near(double x, double other) {
        return x + sheet * Math.rint((other - x) / sheet);
    }

    /** The same place of the bore on the sheet. */
    double onSheet(double x) {
        return LEFT + ((x - LEFT) % sheet + sheet) % sheet;
    }

    /** Draws a line that may run beyond the sheet, with what runs beyond drawn at the other side. */
    void line(String id, String style, double width, List<Point> points) {
        for (int turn = -2; turn <= 2; turn++) {
            double by = turn * sheet;
            List<Point> run = new ArrayList<>();
            for (int i = 1; i < points.size(); i++) {
                Point a = new Point(points.get(i - 1).x() + by, points.get(i - 1).y());
                Point b = new Point(points.get(i).x() + by, points.get(i).y());
                if (!inside(a, b, run) && run.size() > 1) {
                    sketch.line(id, style, width, run);
                    run = new ArrayList<>();
                }
            }
            if (run.size() > 1) {
                sketch.line(id, style, width, run);
            }
        }
    }

    private boolean inside(Point a, Point b, List<Point> run) {
        if (Math.max(a.x(), b.x()) < LEFT || Math.min(a.x(), b.x()) > right()) {
            return false;
        }
        Point from = cut(a, b);
        if (run.isEmpty()) {
            run.add(from);
        }
        run.add(cut(b, a));
        return b.x() >= LEFT && b.x() <= right();
    }

    /** The point itself, or where the line to the other point enters the sheet. */
    private Point cut(Point p, Point other) {
        double edge = p.x() < LEFT ? LEFT : Math.min(p.x(), right());
        if (edge == p.x()) {
            return p;
        }
        return new Point(edge, p.y() + (other.y() - p.y()) * (edge - p.x()) / (other.x() - p.x()));
    }
}
