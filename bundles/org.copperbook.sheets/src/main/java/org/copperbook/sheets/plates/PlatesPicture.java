package org.copperbook.sheets.plates;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.sheets.picture.Mark;
import org.copperbook.sheets.picture.Point;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.picture.ScenePalette;
import org.copperbook.sheets.plates.PlatesView.Box;
import org.copperbook.sheets.plates.PlatesView.Side;
import org.copperbook.sheets.plates.PlatesView.Stud;

/**
 * Draws the plates seen along the shaft: the positive one above, the negative one below, the diodes on them in their
 * order, the suppressor across the gap. A diode found good is filled, a doubtful one hollow, a failed one crossed, as in
 * every interval bar; the arrow in it points the way it conducts, towards the plate or away from it.
 */
public final class PlatesPicture {

    private static final double WIDTH = 760;
    private static final double HEIGHT = 560;
    private static final Point CENTRE = new Point(WIDTH / 2, 280);
    private static final double INNER = 62;
    private static final double OUTER = 146;
    private static final double ON_PLATE = 112;
    private static final double GAP = 9;
    private static final double RADIUS = 19;
    private static final double TEXT = 13;
    private static final double LINE = 17;
    private static final double LABEL = 158;

    private final List<Mark> marks = new ArrayList<>();

    private PlatesPicture() {
    }

    /** The picture of a view. */
    public static Scene of(PlatesView view) {
        return new PlatesPicture().draw(view);
    }

    private Scene draw(PlatesView view) {
        plate("plate/positive", GAP, 180 - GAP, view.positive());
        if (!view.negative().isEmpty()) {
            plate("plate/negative", 180 + GAP, 360 - GAP, view.negative());
        }
        marks.add(Mark.Arc.circle("", ScenePalette.FAINT, 1.5, false, CENTRE, INNER - 14));
        studs(view.studs(), Side.POSITIVE, 152, 28);
        studs(view.studs(), Side.NEGATIVE, 208, 332);
        homeless(view.studs());
        if (view.suppressor() != null) {
            suppressor(view.suppressor());
        }
        return new Scene(view.title(), WIDTH, HEIGHT, marks);
    }

    private void plate(String id, double from, double to, String name) {
        List<Point> ring = new ArrayList<>();
        for (double a = from; a <= to + 1e-9; a += (to - from) / 40) {
            ring.add(on(OUTER, a));
        }
        for (double a = to; a >= from - 1e-9; a -= (to - from) / 40) {
            ring.add(on(INNER, a));
        }
        ring.add(ring.get(0));
        marks.add(new Mark.Line(id, ScenePalette.BAND, 0, true, ring));
        marks.add(new Mark.Line(id, ScenePalette.FAINT, 1.5, false, ring));
        marks.add(text(id, ScenePalette.MUTED, on(INNER + 12, (from + to) / 2), Mark.Anchor.MIDDLE, name));
    }

    private void studs(List<Stud> all, Side side, double first, double last) {
        List<Stud> here = all.stream().filter(s -> s.side() == side).toList();
        for (int i = 0; i < here.size(); i++) {
            double angle = here.size() == 1 ? (first + last) / 2 : first + (last - first) * i / (here.size() - 1);
            Point at = on(ON_PLATE, angle);
            diode(here.get(i), at);
            label(here.get(i), angle, at);
        }
    }

    /** Diodes of which nobody said on which plate they sit stand below, on no plate. */
    private void homeless(List<Stud> all) {
        List<Stud> here = all.stream().filter(s -> s.side() == Side.NOT_STATED).toList();
        for (int i = 0; i < here.size(); i++) {
            Point at = new Point(60 + 110.0 * i, HEIGHT - 30);
            diode(here.get(i), at);
            marks.add(text(here.get(i).id(), ScenePalette.TEXT, new Point(at.x() + RADIUS + 5, at.y()),
                    Mark.Anchor.START, here.get(i).name()));
        }
    }

    private void diode(Stud s, Point at) {
        boolean filled = s.outcome() == Outcome.MEETS;
        if (!filled) {
            marks.add(Mark.Arc.circle(s.id(), ScenePalette.PAPER, 0, true, at, RADIUS));
        }
        marks.add(Mark.Arc.circle(s.id(), style(s.outcome()), 2.5, filled, at, RADIUS));
        if (s.cathodeBase() != null) {
            arrow(s, at, filled ? ScenePalette.PAPER : ScenePalette.TEXT);
        }
        if (s.outcome() == Outcome.FAILS) {
            cross(s.id(), at, RADIUS + 3);
        }
        if (s.wrongBase()) {
            double r = RADIUS + 6;
            marks.add(new Mark.Line(s.id(), ScenePalette.BAD, 2.5, false, List.of(new Point(at.x() - r, at.y() - r),
                    new Point(at.x() + r, at.y() - r), new Point(at.x() + r, at.y() + r),
                    new Point(at.x() - r, at.y() + r), new Point(at.x() - r, at.y() - r))));
        }
    }

    /** The diode's sign: with the cathode on the base the arrow points down to the plate, else up from it. */
    private void arrow(Stud s, Point at, String style) {
        double tip = s.cathodeBase() ? 6 : -6;
        marks.add(new Mark.Line(s.id(), style, 0, true, List.of(new Point(at.x() - 7, at.y() - tip),
                new Point(at.x() + 7, at.y() - tip), new Point(at.x(), at.y() + tip))));
        marks.add(new Mark.Line(s.id(), style, 2, false, List.of(new Point(at.x() - 7, at.y() + tip),
                new Point(at.x() + 7, at.y() + tip))));
        marks.add(new Mark.Line(s.id(), style, 1.5, false, List.of(new Point(at.x(), at.y() - 12),
                new Point(at.x(), at.y() + 12))));
    }

    private void label(Stud s, double angle, Point at) {
        double cos = Math.cos(Math.toRadians(angle));
        boolean middle = Math.abs(cos) < 0.3;
        boolean above = at.y() < CENTRE.y();
        Mark.Anchor anchor = middle ? Mark.Anchor.MIDDLE : cos < 0 ? Mark.Anchor.END : Mark.Anchor.START;
        double x = middle ? CENTRE.x() : CENTRE.x() + (cos < 0 ? -LABEL : LABEL);
        int count = s.lines().size() + 1;
        double top = middle ? above ? CENTRE.y() - OUTER - 8 - LINE * count : CENTRE.y() + OUTER + 8
                : above ? CENTRE.y() - 40 - LINE * count : CENTRE.y() + 40;
        write(s.id(), s.name(), s.lines(), s.wrongBase() || s.outcome() == Outcome.FAILS, x, top, anchor);
    }

    private void suppressor(Box box) {
        Point at = new Point(CENTRE.x() + (INNER + OUTER) / 2, CENTRE.y());
        double half = 24;
        double high = 10;
        marks.add(new Mark.Line(box.id(), ScenePalette.TEXT, 1.5, false, List.of(new Point(at.x(), at.y() - 22),
                new Point(at.x(), at.y() + 22))));
        List<Point> frame = List.of(new Point(at.x() - half, at.y() - high), new Point(at.x() + half, at.y() - high),
                new Point(at.x() + half, at.y() + high), new Point(at.x() - half, at.y() + high),
                new Point(at.x() - half, at.y() - high));
        boolean filled = box.outcome() == Outcome.MEETS;
        marks.add(new Mark.Line(box.id(), filled ? style(box.outcome()) : ScenePalette.PAPER, 0, true, frame));
        marks.add(new Mark.Line(box.id(), style(box.outcome()), 2.5, false, frame));
        if (box.outcome() == Outcome.FAILS) {
            cross(box.id(), at, high + 4);
        }
        double top = CENTRE.y() - LINE * (box.lines().size() + 1) / 2.0;
        write(box.id(), box.name(), box.lines(), box.outcome() == Outcome.FAILS, CENTRE.x() + LABEL, top,
                Mark.Anchor.START);
    }

    private void write(String id, String name, List<String> lines, boolean bad, double x, double top,
            Mark.Anchor anchor) {
        marks.add(text(id, bad ? ScenePalette.BAD : ScenePalette.TEXT, new Point(x, top + LINE / 2), anchor, name));
        for (int i = 0; i < lines.size(); i++) {
            marks.add(text(id, ScenePalette.MUTED, new Point(x, top + LINE * (i + 1.5)), anchor, lines.get(i)));
        }
    }

    private void cross(String id, Point at, double r) {
        marks.add(new Mark.Line(id, ScenePalette.BAD, 2.5, false, List.of(new Point(at.x() - r, at.y() - r),
                new Point(at.x() + r, at.y() + r))));
        marks.add(new Mark.Line(id, ScenePalette.BAD, 2.5, false, List.of(new Point(at.x() - r, at.y() + r),
                new Point(at.x() + r, at.y() - r))));
    }

    private static Mark.Text text(String id, String style, Point at, Mark.Anchor anchor, String words) {
        return new Mark.Text(id, style, at, anchor, TEXT, false, words);
    }

    private static String style(Outcome outcome) {
        if (outcome == null) {
            return ScenePalette.MUTED;
        }
        return switch (outcome) {
            case MEETS -> ScenePalette.GOOD;
            case DOUBTFUL -> ScenePalette.DOUBTFUL;
            case FAILS -> ScenePalette.BAD;
            case NOT_MEASURED, NO_LIMIT_SET -> ScenePalette.MUTED;
        };
    }

    private static Point on(double radius, double degrees) {
        double a = Math.toRadians(degrees);
        return new Point(CENTRE.x() + radius * Math.cos(a), CENTRE.y() - radius * Math.sin(a));
    }
}
