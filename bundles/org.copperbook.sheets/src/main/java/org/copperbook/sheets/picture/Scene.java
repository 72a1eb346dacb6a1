package org.copperbook.sheets.picture;

import java.util.List;
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

    /** Whether a mark's id is the one asked for or lies below it. */
    public static boolean shows(String markId, String id) {
        return !id.isEmpty() && (markId.equals(id) || markId.startsWith(id + "/"));
    }
}
