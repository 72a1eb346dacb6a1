package org.copperbook.sheets.picture;

import java.util.List;

/**
 * One mark of a scene. The id says what the mark shows: names joined by {@code /}, for instance {@code group/3/coil/1};
 * empty when it shows nothing that could be picked. Style names are those of {@link ScenePalette}.
 */
public sealed interface Mark permits Mark.Line, Mark.Arc, Mark.Text {

    /** Where a text stands beside its point. */
    enum Anchor { START, MIDDLE, END }

    String id();

    String style();

    /**
     * A line through points, or the area that they enclose.
     *
     * @param width  width of the line; 0 draws none
     * @param filled whether the area is filled with the colour of the style
     */
    record Line(String id, String style, double width, boolean filled, List<Point> points) implements Mark {
        public Line {
            points = List.copyOf(points);
        }
    }

    /**
     * An arc of a circle, or the whole circle.
     *
     * @param startDegrees begins here, counter-clockwise from three o'clock
     * @param sweepDegrees goes on so far; 360 for a circle
     * @param width        width of the line; 0 draws none
     * @param filled       whether the circle is filled with the colour of the style
     */
    record Arc(String id, String style, double width, boolean filled, Point centre, double radius, double startDegrees,
            double sweepDegrees) implements Mark {

        /** A whole circle. */
        public static Arc circle(String id, String style, double width, boolean filled, Point centre, double radius) {
            return new Arc(id, style, width, filled, centre, radius, 0, 360);
        }

        /** The point of the circle at an angle. */
        public Point at(double degrees) {
            double a = Math.toRadians(degrees);
            return new Point(centre.x() + radius * Math.cos(a), centre.y() - radius * Math.sin(a));
        }
    }

    /**
     * One line of text, its middle at the height of the point.
     *
     * @param size   height of the font
     * @param backed whether paper is laid round the letters, to be read across lines
     */
    record Text(String id, String style, Point at, Anchor anchor, double size, boolean backed, String text)
            implements Mark {

        /** Width that the text takes at most in a usual sans-serif face; drawings keep it free. */
        public double width() {
            return text.codePoints().mapToDouble(Text::share).sum() * size;
        }

        /** Left edge of the room that the text takes. */
        public double left() {
            return switch (anchor) {
                case START -> at.x();
                case MIDDLE -> at.x() - width() / 2;
                case END -> at.x() - width();
            };
        }

        private static double share(int c) {
            if (c > 0x2E80) {
                return 1.05;
            }
            if ("il.,:;'|!()[] jtfI".indexOf(c) >= 0) {
                return 0.4;
            }
            if ("+\u2212=<>".indexOf(c) >= 0) {
                return 0.86;
            }
            return "mMwW%@\u03A9".indexOf(c) >= 0 ? 0.98 : Character.isUpperCase(c) ? 0.75 : 0.64;
        }
    }
}
