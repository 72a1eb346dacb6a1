package org.copperbook.sheets.winding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.copperbook.calc.winding.Winding;
import org.copperbook.calc.winding.WindingGenerator;
import org.copperbook.calc.winding.WindingPlan;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.sheets.picture.Mark;
import org.copperbook.sheets.picture.Scene;
import org.junit.jupiter.api.Test;

class WindingViewTest {

    private static Winding lap() {
        return WindingGenerator.generate(WindingPlan.doubleLayerLap(36, 4, 3, 7, 5));
    }

    private static Set<String> ids(Scene scene, String prefix) {
        return scene.marks().stream().map(Mark::id).filter(id -> id.startsWith(prefix)).collect(Collectors.toSet());
    }

    private static String words(Scene scene) {
        return scene.marks().stream().filter(m -> m instanceof Mark.Text).map(m -> ((Mark.Text) m).text())
                .collect(Collectors.joining(" "));
    }

    @Test
    void leadsThatAreNotCapturedAreNotDrawnAndSaidSo() {
        Scene scene = WindingView.DEVELOPED.of(new SampleWinding(WindingRole.MAIN_STATOR).coils(lap(), 1).data());
        assertTrue(ids(scene, "lead/").isEmpty());
        assertTrue(words(scene).contains("Not drawn: leads"));
        assertEquals(9, ids(scene, "jumper/").size());
    }

    @Test
    void circuitsWithoutTheirGroupsLeaveTheJumpersOut() {
        Scene scene = WindingView.DEVELOPED.of(new SampleWinding(WindingRole.MAIN_STATOR).coils(lap(), 1)
                .put("circuits", 2).put("leads", 6).data());
        assertTrue(ids(scene, "jumper/").isEmpty());
        assertTrue(ids(scene, "lead/").isEmpty());
        assertTrue(words(scene).contains("do not say which groups share a circuit"));
    }

    @Test
    void aStatorOfTwelveLeadsCarriesTheMarksOfBothHalves() {
        Scene scene = WindingView.DEVELOPED.of(new SampleWinding(WindingRole.MAIN_STATOR).coils(lap(), 1)
                .put("leads", 12).put("connection", "SERIES_STAR").data());
        // IEC 60034-8: the ends of a phase are 1 and 2, those of its second part 5 and 6.
        Set<String> marks = scene.marks().stream().filter(m -> m instanceof Mark.Text && m.id().startsWith("lead/"))
                .map(m -> ((Mark.Text) m).text()).collect(Collectors.toSet());
        assertEquals(Set.of("U1", "U2", "U5", "U6", "V1", "V2", "V5", "V6", "W1", "W2", "W5", "W6"), marks);
    }

    @Test
    void jumpersThatSkipOneJoinTheGroupsOfOneSenseFirst() {
        Scene scene = WindingView.DEVELOPED.of(new SampleWinding(WindingRole.MAIN_STATOR).coils(lap(), 1)
                .put("leads", 6).put("jumper", "skip one").data());
        assertTrue(ids(scene, "jumper/").containsAll(List.of("jumper/1-7", "jumper/7-4", "jumper/4-10")));
    }

    @Test
    void anIrregularListIsDrawnAsFound() {
        SampleWinding sample = new SampleWinding(WindingRole.MAIN_STATOR).put("slots", 12).put("layers", 1);
        ArrayNode first = sample.group(1, "U", null, false);
        first.addObject().put("goSlot", 1).put("returnSlot", 4).put("turns", 8);
        first.addObject().put("goSlot", 4).put("returnSlot", 11).put("turns", 9).put("reversed", true);
        sample.group(2, null, null, false).addObject().put("goSlot", 6).put("returnSlot", 13).put("turns", 9);
        Scene scene = WindingView.DEVELOPED.of(sample.data());
        assertEquals(List.of("1-4", "4-11"), new ReadDrawing(scene).pairs().get(1));
        assertEquals(Set.of(1), new ReadDrawing(scene).pairs().keySet());
        assertTrue(words(scene).contains("Not drawn: 1 coil without"), words(scene));
        assertTrue(words(scene).contains("More coil sides than one layer"), words(scene));
        List<ReadDrawing.Side> second = new ReadDrawing(scene).sides().stream().filter(s -> s.coil() == 2).toList();
        assertTrue(second.stream().allMatch(s -> s.up() != s.go()), "a reversed coil carries its current the other way");
    }

    @Test
    void polesOfAFieldShowTheirPolarityAndTheWayOfTheCurrentThatMakesIt() {
        SampleWinding sample = new SampleWinding(WindingRole.MAIN_ROTOR).put("poles", 4).put("leads", 2)
                .put("circuits", 1).put("coilType", "FIELD_POLE").put("connection", "SERIES_POLES")
                .put("polaritySequence", "N S N S");
        for (int i = 1; i <= 4; i++) {
            sample.group(i, null, null, i % 2 == 0).addObject().put("turns", 170);
        }
        Scene flat = WindingView.DEVELOPED.of(sample.data());
        assertEquals(Set.of("lead/F1", "lead/F2"), ids(flat, "lead/F").stream().filter(i -> i.length() == 7).collect(Collectors.toSet()));
        assertEquals(Set.of("jumper/1-2", "jumper/2-3", "jumper/3-4"), ids(flat, "jumper/"));
        // Right-hand rule: seen from the air gap, current against the clock makes a north pole.
        assertTrue(risesOnTheRight(flat, 1));
        assertFalse(risesOnTheRight(flat, 2));
        // Seen along the shaft, a pole standing up is north when the current comes towards the viewer on its left.
        assertFalse(ids(WindingView.END.of(sample.data()), "group/1/coil/1/left/sense/towards").isEmpty());
        sample.put("polaritySequence", "N S");
        Scene unsaid = WindingView.DEVELOPED.of(sample.data());
        assertTrue(unsaid.marks().stream().noneMatch(m -> m.id().endsWith("/sense")));
        assertTrue(words(unsaid).contains("Not drawn: polarity"));
    }

    private static boolean risesOnTheRight(Scene scene, int group) {
        String go = "group/" + group + "/coil/1/go/sense";
        String back = "group/" + group + "/coil/1/return/sense";
        Mark.Line a = (Mark.Line) scene.marks().stream().filter(m -> m.id().equals(go)).findFirst().orElseThrow();
        Mark.Line b = (Mark.Line) scene.marks().stream().filter(m -> m.id().equals(back)).findFirst().orElseThrow();
        Mark.Line right = a.points().get(0).x() > b.points().get(0).x() ? a : b;
        double tip = right.points().get(0).y();
        return right.points().stream().allMatch(p -> p.y() >= tip);
    }

    /**
     * One slot per pole and phase, full pitch, currents 1, -1/2, -1/2: the staircase peaks at N I / 2 (1 + 1/2 + 1/2) and its
     * working wave has 3/2 times 4/pi N I / 2 (for instance Fitzgerald, Kingsley, Umans, Electric Machinery, ch. 4), so
     * the peak is pi/3 of it.
     */
    @Test
    void theStaircaseOfOneSlotPerPoleAndPhasePeaksAtAThirdOfPi() {
        MmfStaircase stairs = new MmfStaircase(WindingGenerator.generate(WindingPlan.doubleLayerLap(6, 2, 3, 3, 1)));
        assertEquals(Math.PI / 3, stairs.peak(), 1e-9);
        double peak = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < 360; i++) {
            peak = Math.max(peak, stairs.working(i / 360.0));
        }
        assertEquals(1, peak, 1e-3);
    }

    @Test
    void everyRoleLayAndConnectionHasItsWord() {
        Sketch words = new Sketch();
        List<Enum<?>> members = new ArrayList<>(List.of(WindingRole.values()));
        members.addAll(List.of(WindingData.CoilType.values()));
        members.addAll(List.of(WindingData.Connection.values()));
        members.forEach(member -> assertFalse(words.say(member).isBlank(), member.toString()));
    }

    @Test
    void everyGroupOfALargeWindingIsDrawn() {
        WindingData data = new SampleWinding(WindingRole.MAIN_STATOR).put("leads", 6).put("connection", "STAR")
                .coils(WindingGenerator.generate(WindingPlan.doubleLayerLap(144, 16, 3, 8, 4)), 4).data();
        Scene scene = WindingView.DEVELOPED.of(data);
        for (int group = 1; group <= 48; group++) {
            assertTrue(scene.showing("group/" + group).count() >= 3, "group " + group);
        }
    }
}
