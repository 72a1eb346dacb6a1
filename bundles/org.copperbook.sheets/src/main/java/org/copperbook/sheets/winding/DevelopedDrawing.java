package org.copperbook.sheets.winding;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingData.CoilType;
import org.copperbook.sheets.picture.Mark.Anchor;
import org.copperbook.sheets.picture.Mark.Text;
import org.copperbook.sheets.picture.Point;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.picture.ScenePalette;
import org.copperbook.sheets.winding.Connections.End;
import org.copperbook.sheets.winding.SlotTable.Placed;

/**
 * The bore cut open and laid flat: slots side by side, every coil with both sides and both end turns, its two ends
 * joined to the next coil of its group, jumpers between the groups in series, and the leads with their terminal marks.
 * What leaves the sheet on one side comes in on the other.
 */
final class DevelopedDrawing {

    private static final double PITCH = 28;
    private static final double LEFT = 30;
    private static final double APART = 5;
    private static final double LENGTH = 150;
    private static final double RISE = 58;
    private static final double HALF_END = 3.5;
    private static final double LABEL_ROW = 15;
    private static final double LABEL_SIZE = 11;

    private final WindingData data;
    private final SlotTable table;
    private final Phases phases;
    private final Sketch sketch = new Sketch();
    private final double sheet;
    private final double top;
    private final double bottom;
    private final double ends;
    private final List<Text> labels = new ArrayList<>();
    private final Wiring wiring;

    DevelopedDrawing(WindingData data, SlotTable table) {
        this.data = data;
        this.table = table;
        phases = Phases.of(table.groups());
        sheet = table.slots() * PITCH;
        double rows = labels();
        top = Sketch.TITLE + 24 + rows * LABEL_ROW + RISE;
        bottom = top + LENGTH;
        ends = bottom + RISE;
        wiring = new Wiring(sketch, phases, ends + 14);
    }

    Scene drawn(String title) {
        for (int slot = 1; slot <= table.slots(); slot++) {
            double half = PITCH * 0.36;
            double x = middle(slot);
            sketch.line("slot/" + slot, ScenePalette.FAINT, 1, x - half, top, x - half, bottom, x + half, bottom, x + half,
                    top, x - half, top);
        }
        table.groups().forEach(this::group);
        for (int slot = 1; slot <= table.slots(); slot++) {
            sketch.text("slot/" + slot, ScenePalette.TEXT, middle(slot), (top + bottom) / 2, Anchor.MIDDLE, 10.5,
                    Integer.toString(slot));
        }
        for (Text l : labels) {
            sketch.text(l.id(), l.style(), l.at().x(), top - RISE + l.at().y(), Anchor.MIDDLE, LABEL_SIZE, l.text());
        }
        Connections connections = new Connections(data, table.groups());
        double below = wiring.draw(connections) + 22;
        below = sketch.legend(phases, below);
        return sketch.scene(title, 2 * LEFT + sheet, below, WindingNotes.of(sketch, data, table, connections, wave()));
    }

    private boolean wave() {
        return data.coilType() == CoilType.WAVE && data.poles() != null && data.poles() > 0;
    }

    private static double middle(double slot) {
        return LEFT + (slot - 0.5) * PITCH;
    }

    /** From the middle of the slot to the side in this layer; sides beyond the second stand further out. */
    private double shift(int layer) {
        if (table.layers() == 1) {
            return (layer - 1) * APART;
        }
        return layer == 1 ? -APART : APART + (layer - 2) * 3.5;
    }

    private double from(Placed c) {
        return middle(c.go()) + shift(c.goLayer());
    }

    private double to(Placed c) {
        return middle(c.go() + table.span(c)) + shift(c.backLayer());
    }

    private double apex(Placed c) {
        return (from(c) + to(c)) / 2;
    }

    private double mean(List<Placed> coils) {
        double first = apex(coils.get(0));
        // Coils of a group that crosses the edge of the sheet are brought to the side of its first coil.
        return coils.stream().mapToDouble(c -> near(apex(c), first)).average().orElse(first);
    }

    private double near(double x, double first) {
        return x + sheet * Math.rint((first - x) / sheet);
    }

    /** Places the names of the groups above their end turns, in as many rows as keeps them apart; returns the rows. */
    private int labels() {
        int rows = 0;
        for (CoilGroup g : table.groups()) {
            String name = g.number() + " " + Phases.signed(g);
            double x = onSheet(mean(table.coils(g)));
            int row = 0;
            Text label = label(g, x, row, name);
            while (collides(label)) {
                label = label(g, x, ++row, name);
            }
            labels.add(label);
            rows = Math.max(rows, row + 1);
        }
        return rows;
    }

    private Text label(CoilGroup g, double x, int row, String name) {
        double half = new Text("", "", new Point(0, 0), Anchor.START, LABEL_SIZE, false, name).width() / 2;
        return new Text("group/" + g.number(), phases.style(g),
                new Point(Math.max(half + 2, x), -12 - row * LABEL_ROW), Anchor.MIDDLE, LABEL_SIZE, true, name);
    }

    private boolean collides(Text label) {
        return labels.stream().anyMatch(other -> Sketch.overlap(other, label));
    }

    private void group(CoilGroup group) {
        List<Placed> coils = table.coils(group);
        boolean spread = coils.size() > 1 && Math.abs(apex(coils.get(0)) - near(apex(coils.get(1)), apex(coils.get(0)))) < 8;
        double first = apex(coils.get(0));
        double mean = mean(coils);
        List<double[]> coilEnds = new ArrayList<>();
        for (int i = 0; i < coils.size(); i++) {
            double at = spread ? mean + (i - (coils.size() - 1) / 2.0) * 0.8 * PITCH : near(apex(coils.get(i)), first);
            coilEnds.add(new double[] {at - HALF_END, at + HALF_END});
        }
        String style = phases.style(group);
        outside(group, coilEnds, style);
        for (int i = 0; i < coils.size(); i++) {
            coil(coils.get(i), coilEnds.get(i), style);
            if (i > 0) {
                wrapped("group/" + group.number() + "/link/" + coils.get(i - 1).number() + "-" + coils.get(i).number(),
                        style, 1.5, List.of(new Point(coilEnds.get(i - 1)[1], ends),
                                new Point(coilEnds.get(i - 1)[1], ends + 5), new Point(coilEnds.get(i)[0], ends + 5),
                                new Point(coilEnds.get(i)[0], ends)));
            }
        }
    }

    /** Brings start and finish of a group out below, each on an upright of its own. */
    private void outside(CoilGroup group, List<double[]> coilEnds, String style) {
        int last = coilEnds.size() - 1;
        outside(new End(group, true), coilEnds.get(0)[0], style);
        outside(new End(group, false), coilEnds.get(last)[1], style);
    }

    private void outside(End end, double x, String style) {
        double at = onSheet(x);
        double free = wiring.reserve(end, at, LEFT, LEFT + sheet);
        sketch.line(end.id(), style, 1.5, at, ends, at, ends + 8, free, ends + 8, free, ends + 14);
        sketch.dot(end.id(), style, free, ends + 14, 2.8, end.start());
    }

    private void coil(Placed c, double[] coilEnds, String style) {
        side(c, c.go(), c.goLayer(), c.id() + "/go", c.forward(), style);
        side(c, c.back(), c.backLayer(), c.id() + "/return", !c.forward(), style);
        double rise = RISE * Math.abs(table.span(c)) / table.longestSpan();
        double base = near(from(c), coilEnds[0]);
        double shift = base - from(c);
        double go = from(c) + shift;
        double back = to(c) + shift;
        wrapped(c.id() + "/end", style, 1.3, List.of(new Point(go, top), new Point((go + back) / 2, top - rise),
                new Point(back, top)));
        double entry = c.reversed() ? coilEnds[1] : coilEnds[0];
        double exit = c.reversed() ? coilEnds[0] : coilEnds[1];
        double deep = bottom + (ends - bottom) * 0.92;
        if (wave()) {
            double lean = wave(c) * PITCH;
            wrapped(c.id() + "/end", style, 1.3, List.of(new Point(go, bottom), new Point(go - lean, bottom + RISE * 0.6),
                    new Point(entry, deep), new Point(entry, ends)));
            wrapped(c.id() + "/end", style, 1.3, List.of(new Point(back, bottom),
                    new Point(back + lean, bottom + RISE * 0.6), new Point(exit, deep), new Point(exit, ends)));
        } else {
            wrapped(c.id() + "/end", style, 1.3, List.of(new Point(go, bottom), new Point(entry, deep), new Point(entry, ends)));
            wrapped(c.id() + "/end", style, 1.3, List.of(new Point(back, bottom), new Point(exit, deep), new Point(exit, ends)));
        }
    }

    /** How far the ends of a wave coil lean outwards: half of what is left of a pole pair, slots. */
    private double wave(Placed c) {
        return Math.max(0.5, (2.0 * table.slots() / data.poles() - Math.abs(table.span(c))) / 2) * Math.signum(table.span(c));
    }

    private void side(Placed c, int slot, int layer, String id, boolean up, String style) {
        double x = middle(slot) + shift(layer);
        sketch.line(id, style, table.layers() == 1 || layer == 1 ? 2.6 : 1.3, x, top, x, bottom);
        sketch.arrow(id + "/sense", style, x, layer % 2 == 1 ? top + 32 : bottom - 32, 0, up ? -1 : 1, 7);
    }

    private double onSheet(double x) {
        return LEFT + ((x - LEFT) % sheet + sheet) % sheet;
    }

    /** Draws a line that may run beyond the sheet, with what runs beyond drawn at the other side. */
    private void wrapped(String id, String style, double width, List<Point> points) {
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
        double right = LEFT + sheet;
        if (Math.max(a.x(), b.x()) < LEFT || Math.min(a.x(), b.x()) > right) {
            return false;
        }
        Point from = cut(a, b, right);
        if (run.isEmpty()) {
            run.add(from);
        }
        run.add(cut(b, a, right));
        return b.x() >= LEFT && b.x() <= right;
    }

    /** The point itself, or where the line to the other point enters the sheet. */
    private static Point cut(Point p, Point other, double right) {
        double edge = p.x() < LEFT ? LEFT : Math.min(p.x(), right);
        if (edge == p.x()) {
            return p;
        }
        return new Point(edge, p.y() + (other.y() - p.y()) * (edge - p.x()) / (other.x() - p.x()));
    }
}
