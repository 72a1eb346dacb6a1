package org.copperbook.calc.winding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.copperbook.calc.OutOfRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FeasibilityTest {

    /** Srivastava, Ex. 5.2: 32 slots in 4 poles split 8/12/12 and are not balanced. */
    @Test
    void thirtyTwoSlotsInFourPolesAreRefused() {
        Feasibility found = Feasibility.of(32, 4, 3, 2);
        assertFalse(found.balanced());
        assertEquals(10.6666667, found.coilsPerPhase(), 1e-6);
    }

    /** Srivastava, Ex. 5.2: grouping 2-2-2-3 and 2-3, begun at any member. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"54|8|3 2 2 2", "30|4|3 2", "36|4|3"})
    void groupingFollowsTheExample(int slots, int poles, String pattern) {
        Feasibility found = Feasibility.of(slots, poles, 3, 2);
        assertTrue(found.balanced());
        assertEquals(pattern, String.join(" ", found.groupPattern().stream().map(String::valueOf).toList()));
    }

    /**
     * Oracle: the condition of Pyrhonen et al. ch. 2, slots over phases times the greatest common divisor with the pole
     * pairs.
     */
    @Test
    void balanceAgreesWithTheOtherFormOfTheCondition() {
        for (int slots = 6; slots <= 120; slots++) {
            for (int pairs = 1; pairs <= 12; pairs++) {
                int common = java.math.BigInteger.valueOf(slots).gcd(java.math.BigInteger.valueOf(pairs)).intValue();
                boolean expected = slots % (3 * common) == 0;
                assertEquals(expected, Feasibility.of(slots, 2 * pairs, 3, 2).balanced(), slots + " slots " + pairs
                        + " pairs");
            }
        }
    }

    /** The vector sum decides: what is called balanced must be so when generated, and have the circuits promised. */
    @Test
    void promisesHoldForTheGeneratedWinding() {
        for (int slots = 6; slots <= 72; slots += 3) {
            for (int poles = 2; poles <= 10; poles += 2) {
                Feasibility found = Feasibility.of(slots, poles, 3, 2);
                if (found.balanced()) {
                    int span = Math.max(1, slots / poles);
                    Winding winding = WindingGenerator.generate(WindingPlan.doubleLayerLap(slots, poles, 3, span, 5));
                    assertTrue(PhaseSymmetry.of(winding).balanced(), slots + " " + poles);
                    if (slots >= 3 * poles) {
                        assertEquals(found.circuits(), CircuitPlan.possible(winding, 1), slots + " slots " + poles
                                + " poles");
                    }
                }
            }
        }
    }

    @Test
    void unequalCircuitsShowTheirDifference() {
        Winding winding = WindingGenerator.generate(WindingPlan.doubleLayerLap(30, 4, 3, 7, 5));
        List<Integer> groups = winding.groupsOf(1);
        assertEquals(List.of(1, 2), CircuitPlan.possible(winding, 1));
        double difference = CircuitPlan.largestDifference(winding, groups.stream().map(List::of).toList());
        assertTrue(difference > 0.3);
        assertThrows(OutOfRange.class, () -> CircuitPlan.equal(winding, 3));
    }

    /**
     * One layer: a group per pole pair gives at most a circuit per pole pair, halved belts one per pole (textbook
     * rule).
     */
    @ParameterizedTest
    @CsvSource({"24,4,GROUP_PER_POLE,5", "48,4,GROUP_PER_POLE,10", "36,4,GROUP_PER_POLE_PAIR,9",
            "36,6,GROUP_PER_POLE_PAIR,6"})
    void singleLayerPromisesHold(int slots, int poles, Grouping grouping, int span) {
        Winding winding = WindingGenerator.generate(WindingPlan.singleLayer(slots, poles, 3, CoilLayout.LAP, grouping,
                List.of(span), 7));
        assertTrue(PhaseSymmetry.of(winding).balanced());
        List<Integer> possible = CircuitPlan.possible(winding, 1);
        int most = grouping == Grouping.GROUP_PER_POLE ? poles : poles / 2;
        assertEquals(most, possible.get(possible.size() - 1));
        assertTrue(Feasibility.of(slots, poles, 3, 1).balanced());
    }

    /** Srivastava, Ex. 5.2: the grouping of 54 slots in 8 poles may begin at any member and stays balanced. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"2 2 2 3", "2 2 3 2", "2 3 2 2", "3 2 2 2"})
    void unevenGroupingMayBeginAnywhere(String pattern) {
        List<Integer> sizes = java.util.Arrays.stream(pattern.split(" ")).map(Integer::valueOf).toList();
        Winding winding = WindingGenerator.generate(new WindingPlan(54, 8, 3, 2, CoilLayout.LAP,
                Grouping.GROUP_PER_POLE,
                List.of(6), sizes, List.of(5.0), 1));
        assertTrue(PhaseSymmetry.of(winding).balanced());
        assertEquals(0.940952839, new WindingFactors(winding).factor(1, 1), 1e-9);
    }

    /** Two, four, five and six phases: what is called balanced is so by the vector sum, phase by phase. */
    @ParameterizedTest
    @CsvSource({"2", "4", "5", "6"})
    void otherNumbersOfPhasesKeepTheirPromiseToo(int phases) {
        int balanced = 0;
        for (int slots = 2 * phases; slots <= 96; slots++) {
            for (int poles = 2; poles <= 8; poles += 2) {
                if (Feasibility.of(slots, poles, phases, 2).balanced() && slots >= poles * phases) {
                    Winding winding = WindingGenerator.generate(WindingPlan.doubleLayerLap(slots, poles, phases,
                            Math.max(1, slots / poles), 3));
                    assertTrue(PhaseSymmetry.of(winding).balanced(), slots + " slots " + poles + " poles");
                    balanced++;
                }
            }
        }
        assertTrue(balanced > 10);
    }

    /** Basket windings in one layer, whole and fractional: a promise of balance holds, and a refusal has its reason. */
    @Test
    void singleLayerBasketsKeepTheirPromiseToo() {
        int kept = 0;
        for (int slots = 6; slots <= 96; slots += 2) {
            for (int poles = 2; poles <= 10; poles += 2) {
                int span = Math.max(1, slots / poles - (slots / poles + 1) % 2);
                boolean balanced = basketIsBalanced(slots, poles, span);
                Feasibility found = Feasibility.of(slots, poles, 3, 1);
                assertEquals(found.balanced(), balanced, slots + " slots " + poles + " poles");
                kept += balanced ? 1 : 0;
            }
        }
        assertTrue(kept > 20);
    }

    private static boolean basketIsBalanced(int slots, int poles, int span) {
        try {
            Winding winding = WindingGenerator.generate(WindingPlan.singleLayer(slots, poles, 3, CoilLayout.LAP,
                    Grouping.GROUP_PER_POLE, List.of(span), 3));
            return winding.coilsOf(1).size() * 6 == slots && PhaseSymmetry.of(winding).balanced();
        } catch (OutOfRange refused) {
            return false;
        }
    }
}
