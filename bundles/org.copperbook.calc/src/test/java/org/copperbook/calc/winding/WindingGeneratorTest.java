package org.copperbook.calc.winding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.copperbook.calc.OutOfRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WindingGeneratorTest {

    /** Go > return slots of a phase, brackets round reversed coils. */
    private static String table(Winding winding, int phase) {
        return winding.coilsOf(phase).stream()
                .map(c -> c.sense() > 0 ? c.goSlot() + ">" + c.returnSlot() : "(" + c.goSlot() + ">" + c.returnSlot()
                + ")")
                .collect(Collectors.joining(" "));
    }

    /** Tarlok Singh, Electrical Machines-2, Ex. 1.1: 24 slots, 4 poles, single layer, coils 1-6, 3-8 ... */
    @Test
    void singleLayerOfTwentyFourSlotsMatchesTarlokSingh() {
        Winding winding = WindingGenerator.generate(WindingPlan.singleLayer(24, 4, 3, CoilLayout.LAP,
                Grouping.GROUP_PER_POLE,
                List.of(5), 10));
        assertEquals("1>6 (7>12) 13>18 (19>24)", table(winding, 1));
        assertEquals("5>10 (11>16) 17>22 (23>4)", table(winding, 2));
        assertEquals("(3>8) 9>14 (15>20) 21>2", table(winding, 3));
        assertEquals(0.9659, new WindingFactors(winding).factor(1, 1), 5e-5);
        assertTrue(PhaseSymmetry.of(winding).balanced());
    }

    /** 60-degree belts in the order U, -W, V, -U, W, -V (Chapman, Electric Machinery Fundamentals, app. B; memory). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "24|5|1>6 2>7 (7>12) (8>13) 13>18 14>19 (19>24) (20>1)|5>10 6>11 (11>16) (12>17) 17>22 18>23 (23>4) (24>5)"
                    + "|(3>8) (4>9) 9>14 10>15 (15>20) (16>21) 21>2 22>3",
            "24|6|1>7 2>8 (7>13) (8>14) 13>19 14>20 (19>1) (20>2)|5>11 6>12 (11>17) (12>18) 17>23 18>24 (23>5) (24>6)"
                    + "|(3>9) (4>10) 9>15 10>16 (15>21) (16>22) 21>3 22>4",
            "36|7|1>8 2>9 3>10 (10>17) (11>18) (12>19) 19>26 20>27 21>28 (28>35) (29>36) (30>1)"
                    + "|7>14 8>15 9>16 (16>23) (17>24) (18>25) 25>32 26>33 27>34 (34>5) (35>6) (36>7)"
                    + "|(4>11) (5>12) (6>13) 13>20 14>21 15>22 (22>29) (23>30) (24>31) 31>2 32>3 33>4"})
    void doubleLayerFollowsTheTextbookBelts(int slots, int span, String u, String v, String w) {
        Winding winding = WindingGenerator.generate(WindingPlan.doubleLayerLap(slots, 4, 3, span, 5));
        assertEquals(u, table(winding, 1));
        assertEquals(v, table(winding, 2));
        assertEquals(w, table(winding, 3));
    }

    /** Srivastava, Ex. 5.2: 54 slots and 8 poles are grouped 2-2-2-3, 30 slots and 4 poles 2-3, each begun anywhere. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"54|8|6|3 2 2 2", "30|4|7|3 2", "27|4|6|3 2 2 2", "60|8|7|3 2", "36|4|9|3"})
    void starOfSlotsGivesThePublishedGrouping(int slots, int poles, int span, String pattern) {
        Winding winding = WindingGenerator.generate(WindingPlan.doubleLayerLap(slots, poles, 3, span, 4));
        List<Integer> wanted = java.util.Arrays.stream(pattern.split(" ")).map(Integer::valueOf).toList();
        List<Integer> sizes = winding.groups().stream().map(g -> winding.coilsOfGroup(g).size()).toList();
        for (int i = 0; i < sizes.size(); i++) {
            assertEquals(wanted.get(i % wanted.size()), sizes.get(i), "group " + (i + 1));
        }
        assertTrue(PhaseSymmetry.of(winding).balanced());
    }

    @Test
    void groupSizesGivenInOrderAreKept() {
        WindingPlan plan = new WindingPlan(30, 4, 3, 2, CoilLayout.LAP, Grouping.GROUP_PER_POLE, List.of(7),
                List.of(2, 3), List.of(6.0), 1);
        Winding winding = WindingGenerator.generate(plan);
        assertEquals(2, winding.coilsOfGroup(1).size());
        assertEquals(3, winding.coilsOfGroup(2).size());
        assertTrue(PhaseSymmetry.of(winding).balanced());
    }

    @Test
    void concentricCoilsShareTheirMiddleWhetherInOneLayerOrTwo() {
        Winding halved = WindingGenerator.generate(WindingPlan.singleLayer(48, 4, 3, CoilLayout.CONCENTRIC,
                Grouping.GROUP_PER_POLE, List.of(11, 9), 8));
        assertEquals("1>12 2>11 (13>24) (14>23) 25>36 26>35 (37>48) (38>47)", table(halved, 1));
        Winding whole = WindingGenerator.generate(WindingPlan.singleLayer(36, 4, 3, CoilLayout.CONCENTRIC,
                Grouping.GROUP_PER_POLE_PAIR, List.of(11, 9, 7), 8));
        assertEquals("1>12 2>11 3>10 19>30 20>29 21>28", table(whole, 1));
        Winding two = WindingGenerator.generate(new WindingPlan(36, 4, 3, 2, CoilLayout.CONCENTRIC,
                Grouping.GROUP_PER_POLE,
                List.of(10, 8, 6), List.of(), List.of(7.0, 8.0, 9.0), 1));
        assertEquals("1>11 2>10 3>9", table(two, 1).substring(0, 13));
        assertEquals(8.0, two.coilsOf(1).get(1).turns());
    }

    /**
     * Concentric and lap coils of one mean pitch fill the same slots, so their factors agree (Say, Alternating Current
     * Machines).
     */
    @Test
    void concentricAndLapHaveOneFactor() {
        Winding lap = WindingGenerator.generate(WindingPlan.singleLayer(36, 4, 3, CoilLayout.LAP,
                Grouping.GROUP_PER_POLE_PAIR, List.of(9), 8));
        Winding concentric = WindingGenerator.generate(WindingPlan.singleLayer(36, 4, 3, CoilLayout.CONCENTRIC,
                Grouping.GROUP_PER_POLE_PAIR, List.of(9), 8));
        for (int order = 1; order <= 13; order += 2) {
            assertEquals(new WindingFactors(lap).factor(2, order), new WindingFactors(concentric).factor(2, order),
                    1e-12);
        }
    }

    @Test
    void refusesPlansThatDoNotFillTheSlots() {
        assertThrows(OutOfRange.class, () -> WindingGenerator.generate(WindingPlan.singleLayer(24, 4, 3, CoilLayout.LAP,
                Grouping.GROUP_PER_POLE, List.of(4), 8)));
        assertThrows(OutOfRange.class,
                () -> WindingGenerator.generate(WindingPlan.singleLayer(36, 4, 3, CoilLayout.CONCENTRIC,
                Grouping.GROUP_PER_POLE, List.of(8), 8)));
        assertThrows(OutOfRange.class, () -> WindingGenerator.generate(new WindingPlan(32, 4, 3, 2, CoilLayout.LAP,
                Grouping.GROUP_PER_POLE, List.of(7), List.of(2, 3), List.of(6.0), 1)));
        assertThrows(OutOfRange.class, () -> WindingPlan.doubleLayerLap(24, 4, 3, 24, 6));
    }

    @Test
    void capturedWindingsTellWhatDoesNotFit() {
        Winding winding = new Winding(6, 2, 3, 2, List.of(new Coil(1, 1, 1, 4, 5, 1), new Coil(1, 2, 1, 4, 5, 1),
                new Coil(2, 3, 1, 5, 5, 1)));
        assertTrue(winding.findings().contains("slot 1 holds 3 coil sides in a winding of 2 layer(s)"));
        assertTrue(winding.findings().contains("phase 3 has no coil"));
    }
}
