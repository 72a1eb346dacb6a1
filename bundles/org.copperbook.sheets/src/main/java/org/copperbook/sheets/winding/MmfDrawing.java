package org.copperbook.sheets.winding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.copperbook.calc.winding.MmfHarmonics;
import org.copperbook.calc.winding.Winding;
import org.copperbook.sheets.picture.Mark.Anchor;
import org.copperbook.sheets.picture.Point;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.picture.ScenePalette;

/** The staircase of the magnetomotive force along the bore with its working wave, and its strongest other waves. */
final class MmfDrawing {

    private static final double LEFT = 56;
    private static final double HIGH = 240;
    private static final double TOP = 46;

    private final Winding winding;
    private final Sketch sketch = new Sketch();

    MmfDrawing(Winding winding) {
        this.winding = winding;
    }

    Scene drawn(String title) {
        MmfStaircase stairs = new MmfStaircase(winding);
        int slots = winding.slots();
        double pitch = Math.max(16, 760.0 / slots);
        double right = LEFT + slots * pitch;
        double middle = TOP + HIGH / 2;
        double unit = HIGH / 2 / stairs.peak() * 0.96;
        for (double level = -1; level <= 1; level += 0.5) {
            double y = middle - level * unit;
            sketch.line("", ScenePalette.FAINT, level == 0 ? 1.4 : 0.6, LEFT, y, right, y);
            sketch.text("", ScenePalette.TEXT, LEFT - 8, y, Anchor.END, 10.5, String.format(Locale.ROOT, "%.1f", level));
        }
        List<Point> steps = new ArrayList<>(List.of(new Point(LEFT, middle - stairs.level(slots - 1) * unit)));
        for (int s = 0; s < slots; s++) {
            double x = LEFT + (s + 0.5) * pitch;
            steps.add(new Point(x, middle - stairs.level(Math.floorMod(s - 1, slots)) * unit));
            steps.add(new Point(x, middle - stairs.level(s) * unit));
            if (slots <= 48 || s % 2 == 0) {
                sketch.text("slot/" + (s + 1), ScenePalette.TEXT, x, TOP + HIGH + 14, Anchor.MIDDLE, slots <= 48 ? 9 : 8.5,
                        Integer.toString(s + 1));
            }
        }
        steps.add(new Point(right, middle - stairs.level(slots - 1) * unit));
        sketch.line("mmf", ScenePalette.series(0), 2, steps);
        List<Point> wave = new ArrayList<>();
        int points = 40 * winding.polePairs();
        for (int i = 0; i <= points; i++) {
            double x = LEFT + (right - LEFT) * i / points;
            double share = ((x - LEFT) / pitch - 0.5) / slots;
            wave.add(new Point(x, middle - stairs.working(share) * unit));
        }
        sketch.line("working", ScenePalette.series(1), 1.6, wave);
        double y = TOP + HIGH + 40;
        sketch.line("", ScenePalette.series(0), 2, 16, y, 62, y);
        sketch.text("", ScenePalette.TEXT, 68, y, Anchor.START, 12, sketch.say("mmf.stairs"));
        sketch.line("", ScenePalette.series(1), 1.6, 16, y + 20, 62, y + 20);
        sketch.text("", ScenePalette.TEXT, 68, y + 20, Anchor.START, 12, sketch.say("mmf.working", winding.polePairs()));
        return sketch.scene(title, right + 30, y + 44, List.of(sketch.say("note.mmf"), harmonics()));
    }

    private String harmonics() {
        List<MmfHarmonics.Wave> waves = MmfHarmonics.of(winding, Math.max(winding.polePairs() * 25, winding.slots())).stream()
                .filter(w -> w.polePairs() != winding.polePairs() && strength(w) > 0.005)
                .sorted(Comparator.comparingDouble(MmfDrawing::strength).reversed()).limit(6).toList();
        return waves.isEmpty() ? sketch.say("mmf.pure") : sketch.say("mmf.harmonics", waves.stream()
                .map(w -> sketch.say(w.forward() >= w.backward() ? "mmf.forward" : "mmf.backward", w.polePairs(),
                        String.format(Locale.ROOT, "%.3f", strength(w)))).collect(Collectors.joining("; ")));
    }

    private static double strength(MmfHarmonics.Wave w) {
        return Math.max(w.forward(), w.backward());
    }
}
