package org.copperbook.sheets.winding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.sheets.picture.Mark.Anchor;
import org.copperbook.sheets.picture.ScenePalette;
import org.copperbook.sheets.winding.Connections.End;
import org.copperbook.sheets.winding.Connections.Joint;
import org.copperbook.sheets.winding.Connections.Jumper;
import org.copperbook.sheets.winding.Connections.SeriesRun;

/**
 * Draws jumpers, joints and leads below a winding. Every upright wire has an x of its own and every level wire a stretch
 * of its own, so wires cross but never lie on one another; where they are joined stands a dot.
 */
final class Wiring {

    private static final double APART = 4;
    private static final double TRACK = 9;
    private static final double BUS = 12;
    private static final double TERMINALS_APART = 34;
    private static final double MARGIN = 16;

    private final Sketch sketch;
    private final Phases phases;
    private final double terminalY;
    private final Map<End, Double> ends = new LinkedHashMap<>();
    private final List<Double> taken = new ArrayList<>();

    /** @param terminalY where the ends of the groups lie */
    Wiring(Sketch sketch, Phases phases, double terminalY) {
        this.sketch = sketch;
        this.phases = phases;
        this.terminalY = terminalY;
    }

    /** Keeps an upright for an end of a group, at the place wished or as near to its right as is free. */
    double reserve(End end, double wished, double left, double right) {
        double x = wished;
        while (!free(x)) {
            x += 1;
            if (x > right) {
                x = left;
            }
        }
        taken.add(x);
        ends.put(end, x);
        return x;
    }

    private boolean free(double x) {
        return taken.stream().noneMatch(t -> Math.abs(t - x) < APART);
    }

    /** Draws all wires; returns the lowest y used. */
    double draw(Connections connections) {
        double y = jumpers(connections, terminalY + 16);
        List<Joint> joints = new ArrayList<>(connections.leads());
        List<Double> marksAt = new ArrayList<>();
        double bottom = y + BUS * (joints.size() + 1) + 26;
        for (Joint lead : joints) {
            y += BUS;
            lead(lead, y, bottom, marksAt);
        }
        if (!joints.isEmpty()) {
            y = bottom + 26;
        }
        if (!connections.star().isEmpty()) {
            y += 8;
            bus("joint/star", ScenePalette.TEXT, connections.star(), y);
            sketch.text("joint/star", ScenePalette.TEXT, ends.get(connections.star().get(0)) + 8, y + 12, Anchor.START, 11,
                    sketch.say("star.inside"));
            y += 26;
        }
        return y;
    }

    /** Lays every jumper on a track where nothing else runs; tracks of one phase stay together. */
    private double jumpers(Connections connections, double from) {
        double y = from;
        for (String phase : phases.names()) {
            List<List<double[]>> tracks = new ArrayList<>();
            for (SeriesRun run : connections.runs()) {
                if (run.phase().equals(phase)) {
                    for (Jumper j : run.jumpers()) {
                        double a = ends.get(j.from());
                        double b = ends.get(j.to());
                        double track = y + TRACK * track(tracks, Math.min(a, b), Math.max(a, b));
                        sketch.line(j.id(), phases.style(phase), 1.5, a, terminalY, a, track, b, track, b, terminalY);
                    }
                }
            }
            y += TRACK * tracks.size() + (tracks.isEmpty() ? 0 : 4);
        }
        return y;
    }

    private static int track(List<List<double[]>> tracks, double from, double to) {
        for (int i = 0; i < tracks.size(); i++) {
            if (tracks.get(i).stream().allMatch(t -> to < t[0] - APART || from > t[1] + APART)) {
                tracks.get(i).add(new double[] {from, to});
                return i;
            }
        }
        tracks.add(new ArrayList<>(List.of(new double[] {from, to})));
        return tracks.size() - 1;
    }

    private void lead(Joint lead, double y, double bottom, List<Double> marksAt) {
        String id = "lead/" + lead.mark();
        String style = lead.phase().isEmpty() && phases.names().size() > 1 ? ScenePalette.TEXT : phases.style(lead.phase());
        double first = ends.get(lead.ends().get(0));
        double x = first;
        boolean own = crowded(x, marksAt);
        for (double step = 2; own; step += 2) {
            if (free(first + step) && !crowded(first + step, marksAt)) {
                x = first + step;
                own = false;
            } else if (first - step > MARGIN && free(first - step) && !crowded(first - step, marksAt)) {
                x = first - step;
                own = false;
            }
        }
        marksAt.add(x);
        taken.add(x);
        bus(id, style, lead.ends(), y);
        if (x != first) {
            sketch.line(id, style, 1.7, first, y, x, y);
        }
        sketch.line(id, style, 1.7, x, y, x, bottom);
        sketch.dot(id, style, x, bottom, 4.5, false);
        sketch.text(id, ScenePalette.TEXT, x, bottom + 15, Anchor.MIDDLE, 13, lead.mark());
    }

    private static boolean crowded(double x, List<Double> marksAt) {
        return marksAt.stream().anyMatch(m -> Math.abs(m - x) < TERMINALS_APART);
    }

    /** Brings ends down to one level and joins them there. */
    private void bus(String id, String style, List<End> joined, double y) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (End end : joined) {
            double x = ends.get(end);
            least = Math.min(least, x);
            most = Math.max(most, x);
            String own = phases.style(end.group());
            sketch.line(id + "/" + end.group().number(), own, 1.7, x, terminalY, x, y);
            if (joined.size() > 1) {
                sketch.dot(id, style, x, y, 2.8, true);
            }
        }
        if (most > least) {
            sketch.line(id, style, 1.7, least, y, most, y);
        }
    }
}
