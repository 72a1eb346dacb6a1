package org.copperbook.sheets.picture;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A picture as plain data.
 *
 * @param title  what is shown, also for those who cannot see it
 * @param width  width, in units of one pixel at 100 %
 * @param height height, in the same units
 * @param marks  what is drawn, in order
 */
public record Scene(String title, double width, double height, List<Mark> marks) {

    /** Nothing to draw. */
    public static final Scene EMPTY = new Scene("", 0, 0, List.of());

    public Scene {
        marks = List.copyOf(marks);
    }

    public boolean isEmpty() {
        return marks.isEmpty();
    }

    /** The marks that show something, or a part of it. */
    public Stream<Mark> showing(String id) {
        return marks.stream().filter(m -> shows(m.id(), id));
    }

    /**
     * Cut upright into strips of equal width, none wider than asked, for paper that is too narrow for the whole. Each
     * strip holds all marks; what lies outside its width is not seen.
     *
     * @param most largest width of a strip, above 0
     */
    public List<Scene> strips(double most) {
        int count = (int) Math.max(1, Math.ceil(width / most));
        return IntStream.range(0, count).mapToObj(i -> count == 1 ? this
                : new Scene(title, width / count, height, marks.stream().map(m -> moved(m, -i * width / count)).toList()))
                .toList();
    }

    private static Mark moved(Mark mark, double by) {
        if (mark instanceof Mark.Line l) {
            return new Mark.Line(l.id(), l.style(), l.width(), l.filled(),
                    l.points().stream().map(p -> new Point(p.x() + by, p.y())).toList());
        } else if (mark instanceof Mark.Arc a) {
            return new Mark.Arc(a.id(), a.style(), a.width(), a.filled(), new Point(a.centre().x() + by, a.centre().y()),
                    a.radius(), a.startDegrees(), a.sweepDegrees());
        } else if (mark instanceof Mark.Text t) {
            return new Mark.Text(t.id(), t.style(), new Point(t.at().x() + by, t.at().y()), t.anchor(), t.size(),
                    t.backed(), t.text());
        }
        throw new IllegalArgumentException(mark.toString());
    }

    /** Whether a mark's id is the one asked for or lies below it. */
    public static boolean shows(String markId, String id) {
        return !id.isEmpty() && (markId.equals(id) || markId.startsWith(id + "/"));
    }
}
