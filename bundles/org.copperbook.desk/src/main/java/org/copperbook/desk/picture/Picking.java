package org.copperbook.desk.picture;

import java.util.List;
import java.util.Optional;
import org.copperbook.sheets.picture.Mark;
import org.copperbook.sheets.picture.Point;
import org.copperbook.sheets.picture.Scene;

/** Finds what a scene shows at a point. */
final class Picking {

    private Picking() {
    }

    /**
     * The id of the mark nearest to a point.
     *
     * @param reach marks farther away than this are not meant, in units of the scene
     */
    static Optional<String> at(Scene scene, Point p, double reach) {
        String found = null;
        double nearest = reach;
        for (Mark mark : scene.marks()) {
            if (!mark.id().isEmpty()) {
                double distance = distance(mark, p);
                if (distance <= nearest) {
                    nearest = distance;
                    found = mark.id();
                }
            }
        }
        return Optional.ofNullable(found);
    }

    private static double distance(Mark mark, Point p) {
        if (mark instanceof Mark.Line line) {
            double least = Double.POSITIVE_INFINITY;
            List<Point> points = line.points();
            for (int i = 1; i < points.size(); i++) {
                least = Math.min(least, distance(p, points.get(i - 1), points.get(i)));
            }
            return least;
        } else if (mark instanceof Mark.Arc arc) {
            double off = Math.hypot(p.x() - arc.centre().x(), p.y() - arc.centre().y());
            return arc.filled() ? Math.max(0, off - arc.radius()) : Math.abs(off - arc.radius());
        } else if (mark instanceof Mark.Text text) {
            double dx = Math.max(0, Math.max(text.left() - p.x(), p.x() - text.left() - text.width()));
            double dy = Math.max(0, Math.abs(p.y() - text.at().y()) - text.size() / 2);
            return Math.hypot(dx, dy);
        }
        return Double.POSITIVE_INFINITY;
    }

    private static double distance(Point p, Point a, Point b) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double length = dx * dx + dy * dy;
        double t = length == 0 ? 0 : Math.max(0, Math.min(1, ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / length));
        return Math.hypot(p.x() - a.x() - t * dx, p.y() - a.y() - t * dy);
    }
}
