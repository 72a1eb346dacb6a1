package org.copperbook.sheets.tag;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.sheets.picture.Mark;
import org.copperbook.sheets.picture.Point;
import org.copperbook.sheets.picture.ScenePalette;

/** Writes downwards on a tag or card: lines of text between two edges, and frames. */
final class TagPen {

    private static final double LINE = 1.32;

    private final List<Mark> marks = new ArrayList<>();
    private double left;
    private double right;
    private double y;

    TagPen(double left, double right, double top) {
        between(left, right);
        y = top;
    }

    void between(double from, double to) {
        left = from;
        right = to;
    }

    double y() {
        return y;
    }

    void down(double by) {
        y += by;
    }

    void to(double place) {
        y = place;
    }

    /** One text on at most so many lines; nothing for an empty text. */
    void text(String text, double size, int most) {
        if (text.isBlank()) {
            return;
        }
        for (String line : new WrappedText(text, size, right - left, most).lines()) {
            y += size * LINE / 2;
            marks.add(new Mark.Text("", ScenePalette.TEXT, new Point(left, y), Mark.Anchor.START, size, false, line));
            y += size * LINE / 2;
        }
    }

    /** One line as large as it fits, between two sizes. */
    void fitted(String text, double largest, double least) {
        double size = largest;
        while (size > least && new WrappedText(text, size, right - left, 2).lines().size() > 1) {
            size--;
        }
        text(text, size, 1);
    }

    /** A name in a column of its own and what it says beside; nothing when it says nothing. */
    void pair(String name, String says, double column, double size, int most) {
        if (says.isBlank()) {
            return;
        }
        double from = left;
        double top = y;
        text(name, size, 2);
        double under = y;
        y = top;
        left = from + column;
        text(says, size, most);
        left = from;
        y = Math.max(y, under) + size * (LINE - 1);
    }

    void frame(double x, double top, double width, double height, double thick) {
        marks.add(new Mark.Line("", ScenePalette.TEXT, thick, false, List.of(new Point(x, top), new Point(x + width, top),
                new Point(x + width, top + height), new Point(x, top + height), new Point(x, top))));
    }

    void rule() {
        marks.add(new Mark.Line("", ScenePalette.FAINT, 1, false, List.of(new Point(left, y), new Point(right, y))));
    }

    void add(List<Mark> more) {
        marks.addAll(more);
    }

    List<Mark> marks() {
        return marks;
    }
}
