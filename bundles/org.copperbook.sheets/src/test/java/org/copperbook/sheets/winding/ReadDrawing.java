package org.copperbook.sheets.winding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.copperbook.sheets.picture.Mark;
import org.copperbook.sheets.picture.Point;
import org.copperbook.sheets.picture.Scene;

/** Reads a developed drawing as a winder would: which side lies in which slot, which way it points, what touches what. */
final class ReadDrawing {

    private static final Pattern SIDE = Pattern.compile("group/(\\d+)/coil/(\\d+)/(go|return)");
    private static final double TOUCH = 0.01;

    record Side(int group, int coil, boolean go, int slot, boolean up, String style) {
    }

    /** An upright or level piece of wire. */
    private record Wire(Point a, Point b) {

        boolean holds(Point p) {
            return p.x() >= Math.min(a.x(), b.x()) - TOUCH && p.x() <= Math.max(a.x(), b.x()) + TOUCH
                    && p.y() >= Math.min(a.y(), b.y()) - TOUCH && p.y() <= Math.max(a.y(), b.y()) + TOUCH;
        }

        /** Whether an end of one lies on the other; crossing wires do not touch. */
        boolean touches(Wire o) {
            return holds(o.a) || holds(o.b) || o.holds(a) || o.holds(b);
        }
    }

    private final Scene scene;

    ReadDrawing(Scene scene) {
        this.scene = scene;
    }

    /** Every drawn coil side, with the slot whose frame it lies in and the way its arrow points. */
    List<Side> sides() {
        List<Side> sides = new ArrayList<>();
        for (Mark m : scene.marks()) {
            Matcher id = SIDE.matcher(m.id());
            if (m instanceof Mark.Line line && id.matches()) {
                sides.add(new Side(Integer.parseInt(id.group(1)), Integer.parseInt(id.group(2)), id.group(3).equals("go"),
                        slotAt(line.points().get(0).x()), up(m.id()), m.style()));
            }
        }
        return sides;
    }

    /** Where a coil side stands. */
    double x(int group, int coil, boolean go) {
        String id = "group/" + group + "/coil/" + coil + (go ? "/go" : "/return");
        return ((Mark.Line) scene.marks().stream().filter(m -> m.id().equals(id)).findFirst().orElseThrow()).points().get(0).x();
    }

    private int slotAt(double x) {
        List<Integer> slots = new ArrayList<>();
        for (Mark m : scene.marks()) {
            if (m instanceof Mark.Line frame && m.id().matches("slot/\\d+")) {
                double left = frame.points().stream().mapToDouble(Point::x).min().orElseThrow();
                double right = frame.points().stream().mapToDouble(Point::x).max().orElseThrow();
                if (x > left && x < right) {
                    slots.add(Integer.parseInt(m.id().substring(5)));
                }
            }
        }
        if (slots.size() != 1) {
            throw new AssertionError("a coil side at " + x + " lies in the slots " + slots);
        }
        return slots.get(0);
    }

    private boolean up(String side) {
        Mark.Line arrow = (Mark.Line) scene.marks().stream().filter(m -> m.id().equals(side + "/sense")).findFirst()
                .orElseThrow();
        double tip = arrow.points().get(0).y();
        return arrow.points().stream().allMatch(p -> p.y() >= tip);
    }

    /** Go and return slots by group and coil. */
    Map<Integer, List<String>> pairs() {
        Map<String, int[]> coils = new LinkedHashMap<>();
        for (Side s : sides()) {
            int[] pair = coils.computeIfAbsent(s.group() + "/" + s.coil(), k -> new int[] {s.group(), 0, 0});
            if (pair[s.go() ? 1 : 2] != 0) {
                throw new AssertionError("side drawn twice: " + s);
            }
            pair[s.go() ? 1 : 2] = s.slot();
        }
        Map<Integer, List<String>> groups = new TreeMap<>();
        coils.values().forEach(p -> groups.computeIfAbsent(p[0], g -> new ArrayList<>()).add(p[1] + "-" + p[2]));
        return groups;
    }

    /**
     * Which ends of groups and terminals hang together by touching wires: for each name, such as "3/start" or "U1", the
     * number of its net.
     */
    Map<String, Integer> nets() {
        List<Wire> wires = new ArrayList<>();
        Map<String, Point> names = new LinkedHashMap<>();
        for (Mark m : scene.marks()) {
            boolean wiring = m.id().startsWith("jumper/") || m.id().startsWith("lead/") || m.id().startsWith("joint/");
            if (m instanceof Mark.Line line && wiring) {
                for (int i = 1; i < line.points().size(); i++) {
                    wires.add(new Wire(line.points().get(i - 1), line.points().get(i)));
                }
            } else if (m instanceof Mark.Arc arc && m.id().matches("group/\\d+/(start|finish)")) {
                names.put(m.id().substring(6), arc.centre());
            } else if (m instanceof Mark.Arc arc && m.id().matches("lead/\\w+") && arc.radius() > 4) {
                names.put(m.id().substring(5), arc.centre());
            }
        }
        int[] net = new int[wires.size()];
        for (int i = 0; i < net.length; i++) {
            net[i] = i;
        }
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int i = 0; i < net.length; i++) {
                for (int j = i + 1; j < net.length; j++) {
                    if (net[i] != net[j] && wires.get(i).touches(wires.get(j))) {
                        int from = Math.max(net[i], net[j]);
                        int to = Math.min(net[i], net[j]);
                        for (int k = 0; k < net.length; k++) {
                            net[k] = net[k] == from ? to : net[k];
                        }
                        changed = true;
                    }
                }
            }
        }
        Map<String, Integer> nets = new HashMap<>();
        int alone = -1;
        for (Map.Entry<String, Point> name : names.entrySet()) {
            int found = alone--;
            for (int i = 0; i < net.length; i++) {
                if (wires.get(i).holds(name.getValue())) {
                    found = net[i];
                    break;
                }
            }
            nets.put(name.getKey(), found);
        }
        return nets;
    }
}
