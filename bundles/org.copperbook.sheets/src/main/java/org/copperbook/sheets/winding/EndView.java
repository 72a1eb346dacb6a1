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
import org.copperbook.sheets.winding.SlotTable.Placed;

/**
 * The core seen on its end: slots numbered clockwise from the top, every coil side in its layer (dot: current towards
 * the viewer, cross: away) and every end turn from its go slot to its return slot.
 */
final class EndView {

    private static final double MARGIN = 30;
    private static final double SIDE = 5;
    private static final double DEEP = 14;
    private static final double BULGE = 110;

    private final WindingData data;
    private final SlotTable table;
    private final Phases phases;
    private final Sketch sketch = new Sketch();
    private final double bore;
    private final double cx;
    private final double cy;

    EndView(WindingData data, SlotTable table) {
        this.data = data;
        this.table = table;
        phases = Phases.of(table.groups());
        bore = Math.max(150, table.slots() * 26 / (2 * Math.PI));
        cx = bore + table.deepest() * DEEP + BULGE + MARGIN;
        cy = cx + Sketch.TITLE;
    }

    Scene drawn(String title) {
        sketch.ring("", ScenePalette.FAINT, 1, cx, cy, data.role().isRotor() ? bore + table.deepest() * DEEP + 4 : bore);
        table.coils().forEach(this::endTurn);
        table.coils().forEach(c -> {
            side(c.id() + "/go", c, c.go(), c.goLayer(), c.forward());
            side(c.id() + "/return", c, c.back(), c.backLayer(), !c.forward());
        });
        for (int slot = 1; slot <= table.slots(); slot++) {
            Point p = at(slot, bore - 13);
            sketch.text("slot/" + slot, ScenePalette.TEXT, p.x(), p.y(), Anchor.MIDDLE, 10, Integer.toString(slot));
        }
        table.groups().forEach(this::group);
        double below = sketch.legend(phases, 2 * cx + 2 * Sketch.TITLE);
        List<String> notes = new ArrayList<>(List.of(sketch.say("note.endView", sketch.say(data.role().isRotor() ? "ring.outer" : "ring.inner"))));
        if (data.coilType() == WindingData.CoilType.WAVE) {
            notes.add(sketch.say("note.waveEnd"));
        }
        notes.addAll(WindingNotes.table(sketch, table));
        return sketch.scene(title, 2 * cx, below, notes);
    }

    /** The place of a slot, which may be between two, at a radius. */
    private Point at(double slot, double radius) {
        double angle = 2 * Math.PI * (slot - 1) / table.slots() - Math.PI / 2;
        return new Point(cx + radius * Math.cos(angle), cy + radius * Math.sin(angle));
    }

    private double radius(int layer) {
        // The slots of a rotor open outwards.
        return bore + 10 + (data.role().isRotor() ? table.deepest() - layer : layer - 1) * DEEP;
    }

    private void endTurn(Placed c) {
        int span = table.span(c);
        double bulge = 24 + (BULGE - 34) * Math.abs(span) / Math.max(1, table.longestSpan());
        int steps = Math.max(8, 3 * Math.abs(span));
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double t = (double) i / steps;
            double r = radius(c.goLayer()) + (radius(c.backLayer()) - radius(c.goLayer())) * t + bulge * Math.sin(Math.PI * t);
            points.add(at(c.go() + span * t, r));
        }
        sketch.line(c.id() + "/end", phases.style(c.group()), 1.2, points);
    }

    private void side(String id, Placed c, int slot, int layer, boolean away) {
        Point p = at(slot, radius(layer));
        String style = phases.style(c.group());
        sketch.disc(p.x(), p.y(), SIDE);
        current(sketch, id, style, p, SIDE, away);
    }

    /** A conductor with its current: a cross flows away from the viewer, a dot towards. */
    static void current(Sketch sketch, String id, String style, Point p, double size, boolean away) {
        sketch.ring(id, ScenePalette.TEXT, 1.1, p.x(), p.y(), size);
        if (away) {
            // Half strokes, each from the middle: too short for the pattern of a phase to break them.
            double d = size * 0.68;
            for (int i = 0; i < 4; i++) {
                double sx = i < 2 ? 1 : -1;
                double sy = i % 2 == 0 ? 1 : -1;
                sketch.line(id + "/sense/away", style, 1.4, p.x(), p.y(), p.x() + sx * d, p.y() + sy * d);
            }
        } else {
            sketch.dot(id + "/sense/towards", style, p.x(), p.y(), size * 0.4, true);
        }
    }

    /** The name of a group inside the bore, over the go sides of its coils, further in where another stands already. */
    private void group(CoilGroup group) {
        List<Placed> coils = table.coils(group);
        int first = coils.get(0).go();
        double middle = first + coils.stream().mapToDouble(c -> {
            int ahead = Math.floorMod(c.go() - first, table.slots());
            return ahead > table.slots() / 2 ? ahead - table.slots() : ahead;
        }).average().orElse(0);
        String id = "group/" + group.number();
        String name = group.number() + " " + Phases.signed(group);
        double radius = bore - 36;
        Text text = new Text(id, phases.style(group), at(middle, radius), Anchor.MIDDLE, 11, true, name);
        while (!sketch.clear(text) && radius > 8) {
            radius -= 7;
            text = new Text(id, phases.style(group), at(middle, radius), Anchor.MIDDLE, 11, true, name);
        }
        if (sketch.clear(text)) {
            sketch.text(id, text.style(), text.at().x(), text.at().y(), Anchor.MIDDLE, 11, name);
        }
    }
}
