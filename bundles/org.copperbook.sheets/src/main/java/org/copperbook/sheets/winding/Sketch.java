package org.copperbook.sheets.winding;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.copperbook.sheets.page.Words;
import org.copperbook.sheets.picture.Mark;
import org.copperbook.sheets.picture.Mark.Anchor;
import org.copperbook.sheets.picture.Mark.Arc;
import org.copperbook.sheets.picture.Mark.Line;
import org.copperbook.sheets.picture.Mark.Text;
import org.copperbook.sheets.picture.Point;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.picture.ScenePalette;

/** The marks of a drawing while it is made, with its title above and its notes below. */
final class Sketch {

    static final double TITLE = 18;
    private static final double NOTE_LINE = 17;
    private static final double NOTE_SIZE = 11.5;
    private static final double EDGE = 16;

    private final Words words = new Words(Sketch.class, "drawing", Locale.ENGLISH);
    private final List<Mark> marks = new ArrayList<>();

    String say(String key, Object... filled) {
        return words.get(key, filled);
    }

    String say(Enum<?> member) {
        return words.of(member);
    }

    void line(String id, String style, double width, List<Point> points) {
        marks.add(new Line(id, style, width, false, points));
    }

    void line(String id, String style, double width, double... xy) {
        line(id, style, width, points(xy));
    }

    void area(String id, String style, double... xy) {
        marks.add(new Line(id, style, 1, true, points(xy)));
    }

    private static List<Point> points(double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i + 1 < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        return points;
    }

    /** A dot that joins, or with {@code filled} false the open end of something. */
    void dot(String id, String style, double x, double y, double radius, boolean filled) {
        Point at = new Point(x, y);
        if (!filled) {
            marks.add(Arc.circle("", ScenePalette.PAPER, 0, true, at, radius));
        }
        // Rings are drawn in words' style: a broken ring of three dashes would not look like one.
        marks.add(Arc.circle(id, filled ? style : ScenePalette.TEXT, 1.2, filled, at, radius));
    }

    void ring(String id, String style, double width, double x, double y, double radius) {
        marks.add(Arc.circle(id, style, width, false, new Point(x, y), radius));
    }

    void disc(double x, double y, double radius) {
        marks.add(Arc.circle("", ScenePalette.PAPER, 0, true, new Point(x, y), radius));
    }

    /** The direction of a current: a filled arrow head. */
    void arrow(String id, String style, double x, double y, double towardsX, double towardsY, double size) {
        double length = Math.hypot(towardsX, towardsY);
        double ux = towardsX / length * size;
        double uy = towardsY / length * size;
        area(id, style, x + ux, y + uy, x - ux * 0.6 - uy * 0.6, y - uy * 0.6 + ux * 0.6, x - ux * 0.6 + uy * 0.6,
                y - uy * 0.6 - ux * 0.6, x + ux, y + uy);
    }

    void text(String id, String style, double x, double y, Anchor anchor, double size, String text) {
        marks.add(new Text(id, style, new Point(x, y), anchor, size, true, text));
    }

    /** Whether a text would stand clear of all texts so far. */
    boolean clear(Text text) {
        return marks.stream().noneMatch(m -> m instanceof Text t && overlap(t, text));
    }

    static boolean overlap(Text a, Text b) {
        return Math.abs(a.at().y() - b.at().y()) < (a.size() + b.size()) / 2
                && a.left() < b.left() + b.width() && b.left() < a.left() + a.width();
    }

    /** The legend: each phase with its line. Returns where the next line begins. */
    double legend(Phases phases, double y) {
        double x = EDGE;
        for (String phase : phases.names()) {
            if (!phase.isEmpty()) {
                line("", phases.style(phase), 2.4, x, y, x + 46, y);
                text("", ScenePalette.TEXT, x + 52, y, Anchor.START, 12, say("legend.phase", phase));
                x += 140;
            }
        }
        return x == EDGE ? y : y + 20;
    }

    /** Finishes with the notes under the drawing. */
    Scene scene(String title, double width, double below, List<String> notes) {
        text("", ScenePalette.TEXT, EDGE, TITLE, Anchor.START, 13, title);
        double wide = Math.max(width, new Text("", "", new Point(0, 0), Anchor.START, 13, false, title).width() + 2 * EDGE);
        wide = Math.max(Math.max(wide, 520), rightmost() + EDGE);
        double y = below;
        for (String note : notes) {
            for (String row : broken(note, wide - 2 * EDGE)) {
                text("note", ScenePalette.MUTED, EDGE, y, Anchor.START, NOTE_SIZE, row);
                y += NOTE_LINE;
            }
        }
        return new Scene(title, wide, y + 4, marks);
    }

    private double rightmost() {
        return marks.stream().mapToDouble(m -> m instanceof Text t ? t.left() + t.width()
                : m instanceof Line l ? l.points().stream().mapToDouble(Point::x).max().orElse(0) : 0).max().orElse(0);
    }

    private static List<String> broken(String note, double room) {
        List<String> rows = new ArrayList<>();
        StringBuilder row = new StringBuilder();
        for (String word : note.split(" ")) {
            String longer = row.isEmpty() ? word : row + " " + word;
            if (!row.isEmpty()
                    && new Text("", "", new Point(0, 0), Anchor.START, NOTE_SIZE, false, longer).width() > room) {
                rows.add(row.toString());
                longer = word;
            }
            row.setLength(0);
            row.append(longer);
        }
        rows.add(row.toString());
        return rows;
    }
}
