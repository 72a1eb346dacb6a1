package org.copperbook.sheets.winding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.copperbook.calc.winding.Coil;
import org.copperbook.calc.winding.StarOfSlots;
import org.copperbook.calc.winding.Winding;
import org.copperbook.sheets.picture.Mark.Anchor;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.picture.ScenePalette;

/** The star of slots: a ray for the phasor of every slot, and what the coils of each phase add up to. */
final class StarDrawing {

    private static final double RING = 24;

    private final Winding winding;
    private final Phases phases;
    private final Sketch sketch = new Sketch();

    /** @param phases marks of the phases, in the order of the winding's numbers */
    StarDrawing(Winding winding, Phases phases) {
        this.winding = winding;
        this.phases = phases;
    }

    Scene drawn(String title) {
        StarOfSlots star = new StarOfSlots(winding.slots(), winding.poles());
        Map<Double, List<Integer>> rays = new TreeMap<>();
        star.inSlotOrder().forEach(r -> rays.computeIfAbsent(r.degrees(), d -> new ArrayList<>()).add(r.slot()));
        Map<Integer, Coil> goSides = new HashMap<>();
        winding.coils().forEach(c -> goSides.putIfAbsent(c.goSlot(), c));
        double radius = Math.max(130, rays.size() * RING / (2 * Math.PI));
        double c = radius + 26 + RING * star.slotsPerRay();
        double cy = c + Sketch.TITLE + 14;
        rays.forEach((degrees, slots) -> ray(c, cy, radius, degrees, slots, goSides));
        sums(c, cy, radius);
        double below = sketch.legend(phases, cy + c + 6);
        return sketch.scene(title, 2 * c, below, List.of(sketch.say("note.star", 360.0 * winding.polePairs() / winding.slots())));
    }

    private void ray(double cx, double cy, double radius, double degrees, List<Integer> slots, Map<Integer, Coil> goSides) {
        double a = Math.toRadians(degrees);
        Coil coil = slots.stream().map(goSides::get).filter(x -> x != null).findFirst().orElse(null);
        String style = coil == null ? ScenePalette.FAINT : ScenePalette.series(coil.phase() - 1);
        sketch.line("slot/" + slots.get(0) + "/ray", style, 1.5, cx, cy, x(cx, radius, a), y(cy, radius, a));
        sketch.arrow("slot/" + slots.get(0) + "/ray", style, x(cx, radius - 5, a), y(cy, radius - 5, a), Math.cos(a), -Math.sin(a), 6);
        for (int i = 0; i < slots.size(); i++) {
            double r = radius + 14 + i * RING;
            sketch.text("slot/" + slots.get(i), ScenePalette.TEXT, x(cx, r, a), y(cy, r, a), Anchor.MIDDLE, 10,
                    Integer.toString(slots.get(i)));
        }
    }

    /** The sum of each phase: every coil side counts with its turns and its sense. */
    private void sums(double cx, double cy, double radius) {
        double[][] sums = new double[winding.phases()][2];
        double largest = 0;
        for (int p = 0; p < winding.phases(); p++) {
            for (Coil coil : winding.coilsOf(p + 1)) {
                for (int side = 0; side < 2; side++) {
                    int slot = side == 0 ? coil.goSlot() : coil.returnSlot();
                    double a = 2 * Math.PI * winding.polePairs() * (slot - 1) / winding.slots();
                    double weight = coil.turns() * coil.sense() * (side == 0 ? 1 : -1);
                    sums[p][0] += weight * Math.cos(a);
                    sums[p][1] += weight * Math.sin(a);
                }
            }
            largest = Math.max(largest, Math.hypot(sums[p][0], sums[p][1]));
        }
        for (int p = 0; p < sums.length && largest > 0; p++) {
            double length = Math.hypot(sums[p][0], sums[p][1]) / largest * radius * 0.62;
            double a = Math.atan2(sums[p][1], sums[p][0]);
            String style = ScenePalette.series(p);
            sketch.line("phase/" + (p + 1), style, 4, cx, cy, x(cx, length, a), y(cy, length, a));
            sketch.arrow("phase/" + (p + 1), style, x(cx, length, a), y(cy, length, a), Math.cos(a), -Math.sin(a), 10);
            String name = p < phases.names().size() ? phases.names().get(p) : Integer.toString(p + 1);
            sketch.text("phase/" + (p + 1), ScenePalette.TEXT, x(cx, length + 20, a), y(cy, length + 20, a), Anchor.MIDDLE,
                    14, name);
        }
    }

    private static double x(double cx, double radius, double a) {
        return cx + radius * Math.cos(a);
    }

    private static double y(double cy, double radius, double a) {
        return cy - radius * Math.sin(a);
    }
}
