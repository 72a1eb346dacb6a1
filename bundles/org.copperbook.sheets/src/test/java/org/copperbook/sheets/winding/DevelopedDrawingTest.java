package org.copperbook.sheets.winding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.calc.winding.CoilLayout;
import org.copperbook.calc.winding.Grouping;
import org.copperbook.calc.winding.Winding;
import org.copperbook.calc.winding.WindingGenerator;
import org.copperbook.calc.winding.WindingPlan;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.sheets.picture.Mark;
import org.copperbook.sheets.picture.Scene;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class DevelopedDrawingTest {

    /**
     * T. Singh, Electrical Machines-2, Ex. 1.1: 24 slots, 4 poles, three phases, one layer, coils 1-6, 3-8 ... 23-4;
     * the phases start in slots 1, 5 and 9 and hold the coils 1 4 7 10, 3 6 9 12 and 5 8 11 2.
     */
    @Test
    void aPublishedWindingOfTwentyFourSlotsIsDrawnCoilByCoil() {
        SampleWinding sample = new SampleWinding(WindingRole.MOTOR_STATOR).put("slots", 24).put("poles", 4)
                .put("phases", 3).put("layers", 1).put("circuits", 1).put("leads", 6).put("connection", "STAR");
        Winding generated = WindingGenerator.generate(WindingPlan.singleLayer(24, 4, 3, CoilLayout.LAP,
                Grouping.GROUP_PER_POLE, List.of(5), 10));
        ReadDrawing read = new ReadDrawing(WindingView.DEVELOPED.of(
                new SampleWinding(WindingRole.MOTOR_STATOR).put("leads", 6).put("connection", "STAR")
                        .coils(generated, 1).data()));
        Set<String> published = Set.of("1-6", "3-8", "5-10", "7-12", "9-14", "11-16", "13-18", "15-20", "17-22", "19-24",
                "21-2", "23-4");
        Set<String> drawn = read.pairs().values().stream().flatMap(List::stream).collect(Collectors.toSet());
        assertEquals(published, drawn);
        Map<String, Set<String>> byStyle = new TreeMap<>();
        read.sides().stream().filter(ReadDrawing.Side::go).forEach(s -> byStyle
                .computeIfAbsent(s.style(), k -> new TreeSet<>()).add(String.valueOf((s.slot() + 1) / 2)));
        // Coil n of the book begins in slot 2n - 1.
        assertEquals(Set.of("1", "4", "7", "10"), byStyle.get("series-1"));
        assertEquals(Set.of("3", "6", "9", "12"), byStyle.get("series-2"));
        assertEquals(Set.of("5", "8", "11", "2"), byStyle.get("series-3"));
        assertTrue(WindingView.DEVELOPED.of(sample.data()).isEmpty(), "no coil list, no drawing");
    }

    /**
     * Sixty-degree belts A C' B A' C B' of a two-layer winding of 36 slots and 4 poles, coil span 7 (Chapman, Electric
     * Machinery Fundamentals, app. B; memory): the slots of the upper layer in threes.
     */
    @Test
    void theBeltsOfAThirtySixSlotWindingStandInTheOrderOfTheBook() {
        Winding generated = WindingGenerator.generate(WindingPlan.doubleLayerLap(36, 4, 3, 7, 5));
        ReadDrawing read = new ReadDrawing(WindingView.DEVELOPED.of(new SampleWinding(WindingRole.MAIN_STATOR)
                .put("leads", 6).put("connection", "STAR").coils(generated, 1).data()));
        String belts = read.sides().stream().filter(ReadDrawing.Side::go)
                .sorted(java.util.Comparator.comparingInt(ReadDrawing.Side::slot))
                .map(s -> "ABC".charAt(s.style().charAt(7) - '1') + (s.up() ? "" : "'")).collect(Collectors.joining(" "));
        String pair = "A A A C' C' C' B B B A' A' A' C C C B' B' B'";
        assertEquals(pair + " " + pair, belts);
        assertEquals(List.of("1-8", "2-9", "3-10"), read.pairs().get(1));
        assertEquals(List.of("34-5", "35-6", "36-7"), read.pairs().get(12));
    }

    static Stream<Arguments> windings() {
        List<Arguments> all = new ArrayList<>();
        int[][] double_ = {{12, 2, 5}, {24, 4, 5}, {24, 2, 10}, {36, 4, 7}, {36, 4, 9}, {48, 4, 10}, {54, 6, 8}, {72, 8, 8},
            {27, 6, 4}, {45, 4, 10}, {96, 8, 11}, {144, 16, 8}};
        for (int[] d : double_) {
            Winding w = WindingGenerator.generate(WindingPlan.doubleLayerLap(d[0], d[1], 3, d[2], 4));
            for (int circuits : new int[] {1, 2, 4}) {
                for (int leads : new int[] {3, 4, 6, 12}) {
                    for (String connection : new String[] {"STAR", "DELTA"}) {
                        if (w.groupsOf(1).size() % circuits == 0 && w.groupsOf(2).size() % circuits == 0
                                && w.groupsOf(3).size() % circuits == 0 && (leads == 3 || connection.equals("STAR"))
                                && (d[0] < 90 || circuits == 4 && leads != 4)) {
                            all.add(Arguments.of(d[0] + "/" + d[1] + " lap, " + circuits + " circuits, " + leads + " leads, "
                                    + connection, w, circuits, leads, connection));
                        }
                    }
                }
            }
        }
        int[][] concentric = {{24, 4}, {36, 4}, {48, 4}, {48, 8}};
        for (int[] c : concentric) {
            int q = c[0] / c[1] / 3;
            List<Integer> spans = new ArrayList<>();
            for (int i = 0; i < q; i++) {
                spans.add(c[0] / c[1] + q - 1 - 2 * i);
            }
            Winding w = WindingGenerator.generate(WindingPlan.singleLayer(c[0], c[1], 3, CoilLayout.CONCENTRIC,
                    Grouping.GROUP_PER_POLE_PAIR, spans, 20));
            for (int leads : new int[] {3, 6, 12}) {
                all.add(Arguments.of(c[0] + "/" + c[1] + " concentric, " + leads + " leads", w, 1, leads, "STAR"));
            }
        }
        return all.stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("windings")
    void everyCoilIsDrawnOnceInItsSlotsWithItsSense(String name, Winding w, int circuits, int leads, String connection) {
        ReadDrawing read = new ReadDrawing(drawn(w, circuits, leads, connection));
        Map<Integer, List<String>> expected = new TreeMap<>();
        w.coils().forEach(c -> expected.computeIfAbsent(c.group(), g -> new ArrayList<>())
                .add(c.goSlot() + "-" + c.returnSlot()));
        assertEquals(expected, read.pairs());
        for (ReadDrawing.Side s : read.sides()) {
            boolean forward = w.coilsOfGroup(s.group()).get(s.coil() - 1).sense() > 0;
            assertEquals(forward == s.go(), s.up(), "sense of " + s);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("windings")
    void theWiresJoinWhatBelongsTogetherAndTouchNothingElse(String name, Winding w, int circuits, int leads,
            String connection) {
        WindingData data = data(w, circuits, leads, connection);
        Map<String, Integer> nets = new ReadDrawing(WindingView.DEVELOPED.of(data)).nets();
        List<List<CoilGroup>> paths = new ArrayList<>();
        for (String phase : List.of("U", "V", "W")) {
            for (int c = 1; c <= circuits; c++) {
                int circuit = c;
                List<CoilGroup> path = data.groups().stream().filter(g -> g.phase().equals(phase)
                        && (circuits == 1 || g.circuit() == circuit)).toList();
                // Twelve leads on fewer than two circuits bring two halves of the phase out.
                int pieces = leads == 12 && circuits == 1 && path.size() % 2 == 0 ? 2 : 1;
                for (int i = 0; i < pieces; i++) {
                    paths.add(path.subList(i * path.size() / pieces, (i + 1) * path.size() / pieces));
                }
            }
        }
        Set<CoilGroup> visited = new HashSet<>();
        Map<Integer, Set<String>> atNet = new TreeMap<>();
        nets.forEach((end, net) -> atNet.computeIfAbsent(net, n -> new TreeSet<>()).add(end));
        for (List<CoilGroup> path : paths) {
            for (int i = 0; i < path.size(); i++) {
                assertTrue(visited.add(path.get(i)), "group twice on a path");
                if (i > 0) {
                    String from = path.get(i - 1).number() + (entersAtStart(path.get(i - 1)) ? "/finish" : "/start");
                    String to = path.get(i).number() + (entersAtStart(path.get(i)) ? "/start" : "/finish");
                    assertEquals(Set.of(from, to), atNet.get(nets.get(from)), "a jumper joins two ends and no more");
                }
            }
        }
        assertEquals(data.groups().size(), visited.size());
        boundaries(data, paths, nets, atNet);
    }

    /** The ends of the paths: joined as the connection and the leads say. */
    private static void boundaries(WindingData data, List<List<CoilGroup>> paths, Map<String, Integer> nets,
            Map<Integer, Set<String>> atNet) {
        Set<String> expected = new TreeSet<>();
        boolean fits = data.leads() != 12 || paths.size() % 6 == 0;
        Map<String, Set<String>> joints = new TreeMap<>();
        Map<String, Integer> part = new TreeMap<>();
        for (List<CoilGroup> path : paths) {
            CoilGroup first = path.get(0);
            CoilGroup last = path.get(path.size() - 1);
            String entry = first.number() + (entersAtStart(first) ? "/start" : "/finish");
            String exit = last.number() + (entersAtStart(last) ? "/finish" : "/start");
            String phase = first.phase();
            int perPhase = paths.size() / 3;
            int index = part.merge(phase, 1, Integer::sum) - 1;
            int of = data.leads() == 12 && fits ? 4 * (index * 2 / perPhase) : 0;
            switch (data.leads()) {
                case 6, 12 -> {
                    joints.computeIfAbsent(phase + (of + 1), k -> new TreeSet<>()).add(entry);
                    joints.computeIfAbsent(phase + (of + 2), k -> new TreeSet<>()).add(exit);
                }
                default -> {
                    String far = data.connection() == WindingData.Connection.DELTA
                            ? Map.of("U", "V", "V", "W", "W", "U").get(phase) : data.leads() == 4 ? "N" : "star";
                    joints.computeIfAbsent(phase, k -> new TreeSet<>()).add(entry);
                    joints.computeIfAbsent(far, k -> new TreeSet<>()).add(exit);
                }
            }
        }
        if (!fits) {
            assertFalse(nets.keySet().stream().anyMatch(n -> n.startsWith("U")), "leads that do not fit are not drawn");
            return;
        }
        joints.forEach((mark, ends) -> {
            Set<String> all = new TreeSet<>(ends);
            if (!mark.equals("star")) {
                all.add(mark);
            }
            assertEquals(all, atNet.get(nets.get(ends.iterator().next())), mark);
            expected.add(mark);
        });
        Set<String> marks = nets.keySet().stream().filter(n -> !n.contains("/")).collect(Collectors.toCollection(TreeSet::new));
        expected.remove("star");
        assertEquals(expected, marks);
    }

    private static boolean entersAtStart(CoilGroup g) {
        return !Boolean.TRUE.equals(g.reversed());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("windings")
    void noTwoTextsOverlapInAnyView(String name, Winding w, int circuits, int leads, String connection) {
        for (WindingView view : WindingView.values()) {
            List<Mark.Text> texts = drawn(view, w, circuits, leads, connection).marks().stream()
                    .filter(m -> m instanceof Mark.Text).map(m -> (Mark.Text) m).toList();
            assertFalse(texts.isEmpty());
            for (int i = 0; i < texts.size(); i++) {
                for (int j = i + 1; j < texts.size(); j++) {
                    Mark.Text a = texts.get(i);
                    Mark.Text b = texts.get(j);
                    boolean near = Math.abs(a.at().y() - b.at().y()) < (a.size() + b.size()) / 2;
                    assertFalse(near && Sketch.overlap(a, b), view + ": " + a + " on " + b);
                }
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("windings")
    void everythingLiesOnThePicture(String name, Winding w, int circuits, int leads, String connection) {
        for (WindingView view : WindingView.values()) {
            Scene scene = drawn(view, w, circuits, leads, connection);
            for (Mark m : scene.marks()) {
                if (m instanceof Mark.Line line) {
                    line.points().forEach(p -> assertTrue(p.x() >= 0 && p.x() <= scene.width() && p.y() >= 0
                            && p.y() <= scene.height(), view + ": " + m));
                } else if (m instanceof Mark.Text t) {
                    assertTrue(t.left() >= 0 && t.left() + t.width() <= scene.width() && t.at().y() - t.size() / 2 >= 0
                            && t.at().y() + t.size() / 2 <= scene.height(), view + ": " + m);
                }
            }
        }
    }

    private static Scene drawn(Winding w, int circuits, int leads, String connection) {
        return drawn(WindingView.DEVELOPED, w, circuits, leads, connection);
    }

    private static Scene drawn(WindingView view, Winding w, int circuits, int leads, String connection) {
        return view.of(data(w, circuits, leads, connection));
    }

    private static WindingData data(Winding w, int circuits, int leads, String connection) {
        return new SampleWinding(WindingRole.MAIN_STATOR).put("leads", leads).put("connection", connection)
                .coils(w, circuits).data();
    }
}
