package org.copperbook.batch.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.copperbook.batch.demo.DemoFiles.Captured;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.winding.CapturedCoil;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingData.CoilType;
import org.copperbook.jobs.winding.WireInHand;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The captured windings of the demo jobs hang together. Everything is worked out here again from textbook relations
 * and nothing of the product's own arithmetic is used.
 */
class DemoWindingsTest {

    /** Resistivity of annealed copper at 20 C, ohm metre (IEC 60028). */
    private static final double RHO = 1.7241e-8;
    /** Density of copper, kg/m3 (IEC 60028). */
    private static final double DENSITY = 8890;
    /** Inferred zero of copper (IEC 60034-1). */
    private static final double K = 235;
    /** Coil groups that are the fault the job is about: they must read low, not right. */
    private static final Map<String, Set<Integer>> SHORTED = Map.of("2026-0001 winding/main-stator", Set.of(6),
            "2026-0007 winding/motor-stator", Set.of(3));

    /** Windings with coils; the others only say how a winding that stayed in is connected. */
    static Stream<Captured> all() {
        return DemoFiles.windings().stream().filter(c -> c.winding().turnsPerCoil() != null);
    }

    static Stream<Captured> alternating() {
        return all().filter(c -> c.winding().coilType() != CoilType.FIELD_POLE);
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyCoilGroupReadsWhatItsTurnsAndWireImply(Captured c) {
        WindingData w = c.winding();
        assertTrue(w.groups().size() >= 4);
        for (CoilGroup g : w.groups()) {
            double expected = groupAt20(w, g) * (K + g.resistance().windingCelsius()) / (K + 20);
            double read = g.resistance().observed().value();
            if (SHORTED.getOrDefault(c.toString(), Set.of()).contains(g.number())) {
                assertTrue(read < 0.9 * expected, "group " + g.number() + " should read low: " + read + ", " + expected);
            } else {
                assertEquals(expected, read, 0.01 * expected, "group " + g.number());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("alternating")
    void everyPhaseReadsWhatItsGroupsMakeInSeriesAndParallel(Captured c) {
        WindingData w = c.winding();
        Map<String, Map<Integer, Double>> byCircuit = new TreeMap<>();
        for (CoilGroup g : w.groups()) {
            Reading r = g.resistance();
            double at20 = r.observed().value() * (K + 20) / (K + r.windingCelsius());
            byCircuit.computeIfAbsent(g.phase(), p -> new HashMap<>())
                    .merge(g.circuit() == null ? 1 : g.circuit(), at20, Double::sum);
        }
        assertEquals(3, w.readings().size());
        for (Reading r : w.readings()) {
            Collection<Double> circuits = byCircuit.get(r.place().mark()).values();
            assertEquals(w.circuits(), circuits.size());
            double expected = 1 / circuits.stream().mapToDouble(x -> 1 / x).sum();
            double at20 = r.observed().value() * (K + 20) / (K + r.windingCelsius());
            assertEquals(expected, at20, 0.005 * expected, "phase " + r.place().mark());
        }
    }

    @ParameterizedTest
    @MethodSource("alternating")
    void coilSidesFillEverySlotLayerOnce(Captured c) {
        WindingData w = c.winding();
        int[] go = new int[w.slots() + 1];
        int[] back = new int[w.slots() + 1];
        for (CapturedCoil coil : coils(w)) {
            go[coil.goSlot()]++;
            back[coil.returnSlot()]++;
        }
        for (int slot = 1; slot <= w.slots(); slot++) {
            if (w.layers() == 2) {
                assertEquals(1, go[slot], "go sides in slot " + slot);
                assertEquals(1, back[slot], "return sides in slot " + slot);
            } else {
                assertEquals(1, go[slot] + back[slot], "sides in slot " + slot);
            }
        }
        assertEquals(w.coilCount(), coils(w).size());
        assertEquals(w.groupsPerPhase() * 3, w.groups().size());
    }

    @ParameterizedTest
    @MethodSource("alternating")
    void theThreePhasesAreEqualAndAThirdOfATurnApart(Captured c) {
        WindingData w = c.winding();
        Map<String, double[]> sum = new TreeMap<>();
        Map<String, Double> straight = new TreeMap<>();
        for (CoilGroup g : w.groups()) {
            double sense = Boolean.TRUE.equals(g.reversed()) ? -1 : 1;
            for (CapturedCoil coil : g.coils()) {
                double[] v = sum.computeIfAbsent(g.phase(), p -> new double[2]);
                double a = slotAngle(w, coil.goSlot());
                double b = slotAngle(w, coil.returnSlot());
                v[0] += sense * coil.turns() * (Math.cos(a) - Math.cos(b)) / 2;
                v[1] += sense * coil.turns() * (Math.sin(a) - Math.sin(b)) / 2;
                straight.merge(g.phase(), (double) coil.turns(), Double::sum);
            }
        }
        double u = Math.hypot(sum.get("U")[0], sum.get("U")[1]);
        double factor = u / straight.get("U");
        assertTrue(factor > 0.85 && factor < 0.97, "winding factor " + factor);
        for (String p : List.of("V", "W")) {
            assertEquals(u, Math.hypot(sum.get(p)[0], sum.get(p)[1]), 1e-9 * u);
        }
        assertEquals(120, degreesFromTo(sum.get("U"), sum.get("V")), 1e-6);
        assertEquals(120, degreesFromTo(sum.get("V"), sum.get("W")), 1e-6);
    }

    @ParameterizedTest
    @MethodSource("alternating")
    void theSpanInWordsIsTheSpanOfTheCoils(Captured c) {
        WindingData w = c.winding();
        List<String> spans = new ArrayList<>();
        int first = w.groups().get(0).coils().get(0).goSlot();
        for (CapturedCoil coil : w.groups().get(0).coils()) {
            spans.add((coil.goSlot() - first + 1) + "-" + (coil.returnSlot() - first + 1));
        }
        assertEquals(w.span(), w.coilType() == CoilType.LAP ? spans.get(0) : String.join(", ", spans));
    }

    @ParameterizedTest
    @MethodSource("all")
    void copperTakenOutWeighsWhatTheWindingHolds(Captured c) {
        WindingData w = c.winding();
        double turns = coils(w).stream().mapToInt(CapturedCoil::turns).sum();
        double kg = turns * w.meanTurnM() * area(w.wire()) * DENSITY;
        assertTrue(kg > 0.3 && kg < 80, "copper " + kg + " kg");
        if (w.copperRemovedKg() != null) {
            assertEquals(kg, w.copperRemovedKg(), 0.03 * kg);
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void countsAgreeWithTheCoils(Captured c) {
        WindingData w = c.winding();
        w.counts().forEach(count -> {
            assertEquals(w.groups().size(), count.groups().size());
            for (int i = 0; i < w.groups().size(); i++) {
                assertEquals(w.groups().get(i).coils().stream().map(CapturedCoil::turns).toList(),
                        count.groups().get(i).turns());
            }
            assertEquals(w.wire().stream().mapToInt(WireInHand::strands).sum(), count.strands());
        });
    }

    private static double groupAt20(WindingData w, CoilGroup g) {
        int turns = g.coils().stream().mapToInt(CapturedCoil::turns).sum();
        return RHO * turns * w.meanTurnM() / area(w.wire());
    }

    private static List<CapturedCoil> coils(WindingData w) {
        return w.groups().stream().flatMap(g -> g.coils().stream()).toList();
    }

    private static double slotAngle(WindingData w, int slot) {
        return Math.PI * w.poles() * (slot - 1) / w.slots();
    }

    private static double degreesFromTo(double[] a, double[] b) {
        double d = Math.toDegrees(Math.atan2(b[1], b[0]) - Math.atan2(a[1], a[0]));
        return (d + 720) % 360;
    }

    /** Copper area in hand, m2; a flat wire loses its rounded corners (radii of IEC 60317-0-2, memory). */
    private static double area(List<WireInHand> wires) {
        double mm2 = 0;
        for (WireInHand wire : wires) {
            String size = wire.size().replace("mm", "").trim();
            if (size.contains("x")) {
                double thick = Double.parseDouble(size.split("x")[0].trim());
                double wide = Double.parseDouble(size.split("x")[1].trim());
                double r = thick <= 1.6 ? 0.5 : thick <= 2.24 ? 0.65 : 0.8;
                mm2 += wire.strands() * (thick * wide - (4 - Math.PI) * r * r);
            } else {
                double d = Double.parseDouble(size);
                mm2 += wire.strands() * Math.PI * d * d / 4;
            }
        }
        return mm2 * 1e-6;
    }
}
