package org.copperbook.sheets.winding;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.jobs.winding.CapturedCoil;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.sheets.picture.Mark.Anchor;
import org.copperbook.sheets.picture.Point;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.picture.ScenePalette;
import org.copperbook.sheets.winding.Connections.End;

/** A wound field: its poles side by side or round the shaft, their coils, polarity, jumpers and leads. */
final class PoleDrawing {

    private static final double PITCH = 120;
    private static final double LEFT = 30;
    private static final double TOP = 80;
    private static final double HIGH = 130;
    private static final double HALF = 36;

    private final WindingData data;
    private final Phases phases;
    private final Sketch sketch = new Sketch();
    private final List<String> polarity;

    PoleDrawing(WindingData data) {
        this.data = data;
        phases = Phases.of(data.groups());
        List<String> said = data.polaritySequence() == null ? List.of()
                : List.of(data.polaritySequence().strip().split("[\\s,;-]+"));
        boolean plain = said.stream().allMatch(p -> p.toUpperCase(java.util.Locale.ROOT).matches("(N|S).*"));
        polarity = plain && said.size() == data.groups().size() ? said : List.of();
    }

    /** The poles laid flat, seen from the air gap. */
    Scene flat(String title) {
        int poles = data.groups().size();
        double ends = TOP + HIGH + 30;
        Wiring wiring = new Wiring(sketch, phases, ends + 14);
        for (int i = 0; i < poles; i++) {
            CoilGroup g = data.groups().get(i);
            double x = LEFT + (i + 0.5) * PITCH;
            pole(i, x);
            String style = phases.style(g);
            double start = startsRight(i) ? 10 : -10;
            end(wiring, new End(g, true), x + start, ends, style, poles);
            end(wiring, new End(g, false), x - start, ends, style, poles);
            sketch.text("group/" + g.number(), ScenePalette.TEXT, x, TOP - 34, Anchor.MIDDLE, 12,
                    sketch.say("pole.name", g.number()) + polarity(i));
            turns(g, x, TOP + HIGH / 2 + 16);
        }
        Connections connections = new Connections(data, data.groups());
        double below = wiring.draw(connections) + 22;
        List<String> notes = notes();
        notes.addAll(WindingNotes.of(sketch, data, connections));
        return sketch.scene(title, 2 * LEFT + poles * PITCH, below, notes);
    }

    private String polarity(int i) {
        return polarity.isEmpty() ? "" : "  " + polarity.get(i);
    }

    private void turns(CoilGroup g, double x, double y) {
        for (CapturedCoil c : g.coils()) {
            if (c.turns() != null) {
                sketch.text("group/" + g.number(), ScenePalette.MUTED, x, y, Anchor.MIDDLE, 10.5,
                        sketch.say("pole.turns", c.turns()));
                y += 14;
            }
        }
    }

    /**
     * Seen from the air gap, current against the clock makes a north pole. A coil entered at its start therefore runs up
     * on the right of a north pole; where the polarity is not captured the start is drawn on the left.
     */
    private boolean startsRight(int i) {
        return !polarity.isEmpty() && isNorth(i) != Boolean.TRUE.equals(data.groups().get(i).reversed());
    }

    private boolean isNorth(int i) {
        return polarity.get(i).toUpperCase(java.util.Locale.ROOT).startsWith("N");
    }

    /** The pole body with its coil round it; the arrows show the way of the current that its polarity needs. */
    private void pole(int i, double x) {
        CoilGroup g = data.groups().get(i);
        String id = "group/" + g.number() + "/coil/1";
        String left = id + (startsRight(i) ? "/return" : "/go");
        String right = id + (startsRight(i) ? "/go" : "/return");
        String style = phases.style(g);
        sketch.line("group/" + g.number(), ScenePalette.FAINT, 1.2, x - HALF + 12, TOP, x - HALF + 12, TOP + HIGH,
                x + HALF - 12, TOP + HIGH, x + HALF - 12, TOP, x - HALF + 12, TOP);
        sketch.line(left, style, 2.6, x - HALF, TOP - 6, x - HALF, TOP + HIGH + 6);
        sketch.line(right, style, 2.6, x + HALF, TOP - 6, x + HALF, TOP + HIGH + 6);
        sketch.line(id + "/end", style, 2.6, x - HALF, TOP - 6, x - HALF + 8, TOP - 14, x + HALF - 8, TOP - 14, x + HALF,
                TOP - 6);
        sketch.line(id + "/end", style, 2.6, x - HALF, TOP + HIGH + 6, x - 10, TOP + HIGH + 16, x - 10, TOP + HIGH + 30);
        sketch.line(id + "/end", style, 2.6, x + HALF, TOP + HIGH + 6, x + 10, TOP + HIGH + 16, x + 10, TOP + HIGH + 30);
        if (!polarity.isEmpty()) {
            sketch.arrow(left + "/sense", style, x - HALF, TOP + HIGH * 0.4, 0, isNorth(i) ? 1 : -1, 8);
            sketch.arrow(right + "/sense", style, x + HALF, TOP + HIGH * 0.4, 0, isNorth(i) ? -1 : 1, 8);
        }
    }

    private void end(Wiring wiring, End end, double x, double ends, String style, int poles) {
        double free = wiring.reserve(end, x, LEFT, LEFT + poles * PITCH);
        sketch.line(end.id(), style, 2, free, ends, free, ends + 14);
        sketch.dot(end.id(), style, free, ends + 14, 3.2, end.start());
    }

    /** The poles seen along the shaft: outwards on a rotor, inwards on a stator. */
    Scene round(String title) {
        int poles = data.groups().size();
        boolean out = data.role().isRotor();
        double shoe = Math.max(150, poles * 78 / (2 * Math.PI));
        double base = out ? shoe - 90 : shoe + 90;
        double label = out ? shoe + 30 : shoe - 32;
        double edge = Math.max(base, shoe) + 70;
        double cy = edge + Sketch.TITLE + 10;
        sketch.ring("", ScenePalette.FAINT, 1.2, edge, cy, base);
        for (int i = 0; i < poles; i++) {
            CoilGroup g = data.groups().get(i);
            double a = 2 * Math.PI * i / poles - Math.PI / 2;
            double half = 17;
            body(g, edge, cy, a, base, shoe, half);
            double middle = (base + shoe) / 2;
            String style = phases.style(g);
            for (int side = -1; side <= 1; side += 2) {
                Point p = turned(edge, cy, a, middle, side * (half + 12));
                String id = "group/" + g.number() + "/coil/1/" + (side < 0 ? "left" : "right");
                if (polarity.isEmpty()) {
                    sketch.ring(id, ScenePalette.TEXT, 1.1, p.x(), p.y(), 7);
                } else {
                    EndView.current(sketch, id, style, p, 7, (isNorth(i) != out) == side < 0);
                }
            }
            Point name = turned(edge, cy, a, label, 0);
            sketch.text("group/" + g.number(), ScenePalette.TEXT, name.x(), name.y(), Anchor.MIDDLE, 12,
                    g.number() + polarity(i));
        }
        return sketch.scene(title, 2 * edge, cy + edge + 8, notes());
    }

    private void body(CoilGroup g, double cx, double cy, double a, double base, double shoe, double half) {
        List<Point> outline = new ArrayList<>();
        double tip = shoe + (base < shoe ? -12 : 12);
        outline.add(turned(cx, cy, a, base, -half));
        outline.add(turned(cx, cy, a, tip, -half));
        outline.add(turned(cx, cy, a, tip, -half - 10));
        outline.add(turned(cx, cy, a, shoe, -half - 10));
        outline.add(turned(cx, cy, a, shoe, half + 10));
        outline.add(turned(cx, cy, a, tip, half + 10));
        outline.add(turned(cx, cy, a, tip, half));
        outline.add(turned(cx, cy, a, base, half));
        sketch.line("group/" + g.number(), ScenePalette.TEXT, 1.3, outline);
    }

    /** A point at a radius along the axis of a pole, and aside of it clockwise. */
    private static Point turned(double cx, double cy, double a, double radius, double aside) {
        return new Point(cx + radius * Math.cos(a) - aside * Math.sin(a), cy + radius * Math.sin(a) + aside * Math.cos(a));
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>(List.of(sketch.say("note.poles")));
        notes.add(sketch.say(polarity.isEmpty() ? "note.polarityMissing" : "note.polarityFrom"));
        return notes;
    }
}
