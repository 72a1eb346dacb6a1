package org.copperbook.sheets.winding;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.WindingData;
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

    private static final double APART = 5;
    private static final double LENGTH = 150;
    private static final double RISE = 58;
    /** How much of the way down the ends of coils come together. */
    private static final double DEEP = 0.92;
    private static final double HALF_END = 3.5;
    private static final double LABEL_ROW = 15;
    private static final double LABEL_SIZE = 11;

    private final WindingData data;
    private final SlotTable table;
    private final Phases phases;
    private final Sketch sketch = new Sketch();
    private final FlatBore flat;
    private final WaveOrder wave;
    private final double top;
    private final double bottom;
    private final double ends;
    private final List<Text> labels = new ArrayList<>();
    private final Wiring wiring;

    DevelopedDrawing(WindingData data, SlotTable table) {
        this.data = data;
        this.table = table;
        phases = Phases.of(table.groups());
        flat = new FlatBore(sketch, table.slots());
        wave = new WaveOrder(data, table);
        double rows = labels();
        top = Sketch.TITLE + 24 + rows * LABEL_ROW + RISE;
        bottom = top + LENGTH;
        ends = bottom + RISE;
        wiring = new Wiring(sketch, phases, ends + 14);
    }

    Scene drawn(String title) {
        for (int slot = 1; slot <= table.slots(); slot++) {
            double half = FlatBore.PITCH * 0.36;
            double x = flat.middle(slot);
            sketch.line("slot/" + slot, ScenePalette.FAINT, 1, x - half, top, x - half, bottom, x + half, bottom, x + half,
                    top, x - half, top);
        }
        table.groups().forEach(this::group);
        for (int slot = 1; slot <= table.slots(); slot++) {
            sketch.text("slot/" + slot, ScenePalette.TEXT, flat.middle(slot), (top + bottom) / 2, Anchor.MIDDLE, 10.5,
                    Integer.toString(slot));
        }
        for (Text l : labels) {
            sketch.text(l.id(), l.style(), l.at().x(), top - RISE + l.at().y(), Anchor.MIDDLE, LABEL_SIZE, l.text());
        }
        double below = ends + 22;
        List<String> notes = new ArrayList<>();
        if (wave.isWave() && !wave.isDrawn()) {
            notes.addAll(WindingNotes.of(sketch, table, wave));
        } else {
            Connections connections = new Connections(data, table.groups());
            below = wiring.draw(connections) + 22;
            notes.addAll(WindingNotes.of(sketch, table, wave));
            notes.addAll(WindingNotes.of(sketch, data, connections));
        }
        below = sketch.legend(phases, below);
        return sketch.scene(title, FlatBore.LEFT + flat.right(), below, notes);
    }

    /** From the middle of the slot to the side in this layer; sides beyond the second stand further out. */
    private double shift(int layer) {
        if (table.layers() == 1) {
            return (layer - 1) * APART;
        }
        return layer == 1 ? -APART : APART + (layer - 2) * 3.5;
    }

    private double from(Placed c) {
        return flat.middle(c.go()) + shift(c.goLayer());
    }

    private double to(Placed c) {
        return flat.middle(c.go() + table.span(c)) + shift(c.backLayer());
    }

    private double apex(Placed c) {
        return (from(c) + to(c)) / 2;
    }

    private double mean(List<Placed> coils) {
        double first = apex(coils.get(0));
        // Coils of a group that crosses the edge of the sheet are brought to the side of its first coil.
        return coils.stream().mapToDouble(c -> flat.near(apex(c), first)).average().orElse(first);
    }

    /** Places the names of the groups above their end turns, in as many rows as keeps them apart; returns the rows. */
    private int labels() {
        int rows = 0;
        for (CoilGroup g : table.groups()) {
            String name = g.number() + " " + Phases.signed(g);
            double x = flat.onSheet(mean(table.coils(g)));
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
        String style = phases.style(group);
        coils.forEach(c -> inItsSlots(c, style));
        if (!wave.isWave()) {
            overlapping(group, coils, style);
        } else if (wave.isDrawn()) {
            onAndOn(group, coils, style);
        }
    }

    /** Both sides of a coil and its end turn away from the connections. */
    private void inItsSlots(Placed c, String style) {
        side(c, c.go(), c.goLayer(), c.id() + "/go", c.forward(), style);
        side(c, c.back(), c.backLayer(), c.id() + "/return", !c.forward(), style);
        double rise = RISE * Math.abs(table.span(c)) / table.longestSpan();
        flat.line(c.id() + "/end", style, 1.3, List.of(new Point(from(c), top), new Point(apex(c), top - rise),
                new Point(to(c), top)));
    }

    /** Coils whose ends come back to their middle, each joined there to the next. */
    private void overlapping(CoilGroup group, List<Placed> coils, String style) {
        boolean spread = coils.size() > 1 && Math.abs(apex(coils.get(0)) - flat.near(apex(coils.get(1)), apex(coils.get(0)))) < 8;
        double first = apex(coils.get(0));
        double mean = mean(coils);
        List<double[]> coilEnds = new ArrayList<>();
        for (int i = 0; i < coils.size(); i++) {
            double at = spread ? mean + (i - (coils.size() - 1) / 2.0) * 0.8 * FlatBore.PITCH
                    : flat.near(apex(coils.get(i)), first);
            coilEnds.add(new double[] {at - HALF_END, at + HALF_END});
        }
        outside(new End(group, true), coilEnds.get(0)[0], style);
        outside(new End(group, false), coilEnds.get(coils.size() - 1)[1], style);
        for (int i = 0; i < coils.size(); i++) {
            Placed c = coils.get(i);
            double[] to = coilEnds.get(i);
            double turned = flat.near(from(c), to[0]) - from(c);
            toItsEnd(c, from(c) + turned, c.reversed() ? to[1] : to[0], style);
            toItsEnd(c, to(c) + turned, c.reversed() ? to[0] : to[1], style);
            if (i > 0) {
                flat.line(link(coils, i), style, 1.5, List.of(new Point(coilEnds.get(i - 1)[1], ends),
                        new Point(coilEnds.get(i - 1)[1], ends + 5), new Point(to[0], ends + 5), new Point(to[0], ends)));
            }
        }
    }

    private void toItsEnd(Placed c, double side, double end, String style) {
        flat.line(c.id() + "/end", style, 1.3, List.of(new Point(side, bottom), new Point(end, DEEP * RISE + bottom),
                new Point(end, ends)));
    }

    private static String link(List<Placed> coils, int i) {
        return "group/" + coils.get(i).group().number() + "/link/" + coils.get(i - 1).number() + "-" + coils.get(i).number();
    }

    /** Coils of a wave: from the last side of each straight on to the first side of the next. */
    private void onAndOn(CoilGroup group, List<Placed> coils, String style) {
        for (int i = 1; i < coils.size(); i++) {
            Placed before = coils.get(i - 1);
            double exit = exit(before);
            double entry = flat.middle(wave.exitSlot(before) + wave.way(before) * wave.step(before, coils.get(i)))
                    + shift(wave.entryLayer(coils.get(i)));
            flat.line(link(coils, i), style, 1.3, List.of(new Point(exit, bottom),
                    new Point((exit + entry) / 2, bottom + DEEP * RISE), new Point(entry, bottom)));
        }
        Placed first = coils.get(0);
        Placed last = coils.get(coils.size() - 1);
        double start = flat.middle(wave.entrySlot(first)) + shift(wave.entryLayer(first));
        toOutside(new End(group, true), first, start, start - wave.lean(first) * FlatBore.PITCH, style);
        toOutside(new End(group, false), last, exit(last), exit(last) + wave.lean(last) * FlatBore.PITCH, style);
    }

    private double exit(Placed c) {
        return flat.middle(wave.exitSlot(c)) + shift(wave.exitLayer(c));
    }

    private void toOutside(End end, Placed c, double side, double leaning, String style) {
        toItsEnd(c, side, leaning, style);
        outside(end, leaning, style);
    }

    /** Brings an end of a group out below, on an upright of its own. */
    private void outside(End end, double x, String style) {
        double at = flat.onSheet(x);
        double free = wiring.reserve(end, at, FlatBore.LEFT, flat.right());
        sketch.line(end.id(), style, 1.5, at, ends, at, ends + 8, free, ends + 8, free, ends + 14);
        sketch.dot(end.id(), style, free, ends + 14, 2.8, end.start());
    }

    private void side(Placed c, int slot, int layer, String id, boolean up, String style) {
        double x = flat.middle(slot) + shift(layer);
        sketch.line(id, style, table.layers() == 1 || layer == 1 ? 2.6 : 1.3, x, top, x, bottom);
        sketch.arrow(id + "/sense", style, x, layer % 2 == 1 ? top + 32 : bottom - 32, 0, up ? -1 : 1, 7);
    }
}
