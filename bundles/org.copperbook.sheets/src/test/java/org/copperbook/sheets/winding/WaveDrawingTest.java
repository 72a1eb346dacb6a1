package org.copperbook.sheets.winding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.copperbook.calc.winding.WaveGrouping;
import org.copperbook.calc.winding.Winding;
import org.copperbook.calc.winding.WindingGenerator;
import org.copperbook.calc.winding.WindingPlan;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.sheets.picture.Mark;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.picture.SvgPicture;
import org.junit.jupiter.api.Test;

class WaveDrawingTest {

    /**
     * Connection tables of a four-pole simplex wave winding in 15 slots (vidnyankendra.org, "Armature winding: wave",
     * 2014); conductor 2n - 1 lies at the opening of slot n, 2n at its bottom.
     */
    private static final String RETROGRESSIVE = "1^8_15^22_29^6_13^20_27^4_11^18_25^2_9^16_23^30_7^14_21^28_5^12_19^26_3^10_17^24";
    private static final String PROGRESSIVE = "1^10_17^26_3^12_19^28_5^14_21^30_7^16_23^2_9^18_25^4_11^20_27^6_13^22_29^8_15^24";

    private static int[] conductors(String table) {
        return Arrays.stream(table.split("[_^]")).mapToInt(Integer::parseInt).toArray();
    }

    private static SampleWinding armature(String table) {
        SampleWinding sample = new SampleWinding(WindingRole.EXCITER_ROTOR).put("slots", 15).put("layers", 2)
                .put("phases", 1).put("circuits", 1).put("leads", 2).put("connection", "SINGLE_PHASE").put("coilType", "WAVE");
        ArrayNode coils = sample.group(1, "U", null, false);
        int[] c = conductors(table);
        for (int i = 0; i < c.length; i += 2) {
            coils.addObject().put("goSlot", (c[i] + 1) / 2).put("returnSlot", c[i + 1] / 2).put("turns", 1);
        }
        return sample;
    }

    /** The conductors in the order in which a finger meets them on the drawing, end turn after end turn. */
    private static int[] traced(Scene scene) {
        ReadDrawing read = new ReadDrawing(scene);
        int coils = read.pairs().get(1).size();
        return IntStream.rangeClosed(1, coils).flatMap(i -> {
            ReadDrawing.Side go = side(read, i, true);
            ReadDrawing.Side back = side(read, i, false);
            if (i < coils) {
                List<Mark.Line> link = lines(scene, "group/1/link/" + i + "-" + (i + 1));
                assertEquals(read.x(1, i, false), link.get(0).points().get(0).x(), 0.01, "the link leaves coil " + i);
                Mark.Line last = link.get(link.size() - 1);
                assertTrue(link.stream().anyMatch(l -> Math.abs(l.points().get(l.points().size() - 1).x()
                        - read.x(1, i + 1, true)) < 0.01), "and comes to the next: " + last);
            }
            return IntStream.of(2 * go.slot() - 1, 2 * back.slot());
        }).toArray();
    }

    private static ReadDrawing.Side side(ReadDrawing read, int coil, boolean go) {
        return read.sides().stream().filter(s -> s.coil() == coil && s.go() == go).findFirst().orElseThrow();
    }

    private static List<Mark.Line> lines(Scene scene, String id) {
        return scene.marks().stream().filter(m -> m.id().equals(id)).map(m -> (Mark.Line) m)
                .sorted((a, b) -> Double.compare(b.points().get(0).x(), a.points().get(0).x())).toList();
    }

    private static String words(Scene scene) {
        return scene.marks().stream().filter(m -> m instanceof Mark.Text).map(m -> ((Mark.Text) m).text())
                .collect(Collectors.joining(" "));
    }

    @Test
    void aPublishedArmatureIsDrawnFromConductorToConductor() {
        for (String table : List.of(RETROGRESSIVE, PROGRESSIVE)) {
            Scene scene = WindingView.DEVELOPED.of(armature(table).put("poles", 4).data());
            org.junit.jupiter.api.Assertions.assertArrayEquals(conductors(table), traced(scene));
            assertTrue(words(scene).contains((table.equals(PROGRESSIVE) ? "Progressive" : "Retrogressive")
                    + ": after once round the path comes in 1 slot"), words(scene));
            assertEquals(Set.of("U1", "U2"), scene.marks().stream().filter(m -> m instanceof Mark.Text
                    && m.id().startsWith("lead/")).map(m -> ((Mark.Text) m).text()).collect(Collectors.toSet()));
        }
    }

    @Test
    void aThreePhaseWaveJoinsItsTwoGroupsAndBringsItsLeadsOut() {
        Winding wave = WaveGrouping.progressive(WindingGenerator.generate(WindingPlan.doubleLayerLap(36, 4, 3, 9, 2)));
        Scene scene = WindingView.DEVELOPED.of(new SampleWinding(WindingRole.MOTOR_ROTOR).put("leads", 6)
                .put("connection", "STAR").coils(wave, 1).put("coilType", "WAVE").data());
        ReadDrawing read = new ReadDrawing(scene);
        assertEquals(List.of("1-10", "19-28", "2-11", "20-29", "3-12", "21-30"), read.pairs().get(1));
        assertEquals(3, scene.marks().stream().filter(m -> m.id().startsWith("jumper/")).count());
        assertEquals(read.nets().get("U1"), read.nets().get("1/start"));
        assertEquals(read.nets().get("U2"), read.nets().get("4/start"), "the second group is connected against the first");
        for (Mark m : scene.marks()) {
            if (m instanceof Mark.Line line) {
                line.points().forEach(p -> assertTrue(p.x() >= 0 && p.x() <= scene.width(), m.toString()));
            }
        }
    }

    @Test
    void aListOutOfTheOrderOfThePathIsRefusedInWords() {
        Winding lap = WindingGenerator.generate(WindingPlan.doubleLayerLap(36, 4, 3, 9, 2));
        Scene scene = WindingView.DEVELOPED.of(new SampleWinding(WindingRole.MOTOR_ROTOR).put("leads", 6)
                .put("connection", "STAR").coils(lap, 1).put("coilType", "WAVE").data());
        refused(scene, "are not listed in the order of the path");
        assertEquals(36 * 2, new ReadDrawing(scene).sides().size(), "what lies in the slots is drawn");
    }

    @Test
    void withoutPolesTheEndConnectionsAreRefusedInWords() {
        refused(WindingView.DEVELOPED.of(armature(RETROGRESSIVE).data()), "The poles are not captured");
    }

    private static void refused(Scene scene, String why) {
        assertTrue(words(scene).contains("Not drawn: end connections, jumpers and leads"), words(scene));
        assertTrue(words(scene).contains(why), words(scene));
        assertTrue(SvgPicture.of(scene).contains("Not drawn: end connections"), "the SVG says so as well");
        assertFalse(scene.marks().stream().anyMatch(m -> m.id().contains("/link/") || m.id().startsWith("jumper/")
                || m.id().startsWith("lead/") || m.id().matches("group/\\d+/(start|finish)")));
    }
}
