package org.copperbook.calc.winding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.copperbook.calc.wire.WireSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ResistanceNetworkTest {

    /** Oracle: node potentials with the LU decomposition of Commons Math on random meshed networks. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void agreesWithAnotherSolver(long seed) {
        Random random = new Random(seed);
        int n = 4 + random.nextInt(20);
        RealMatrix conductance = new Array2DRowRealMatrix(n, n);
        ResistanceNetwork network = new ResistanceNetwork();
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                if (j == i + 1 || random.nextInt(4) == 0) {
                    double ohms = 0.01 + random.nextDouble() * 10;
                    network.resistance("p" + i, "p" + j, ohms);
                    conductance.addToEntry(i, i, 1 / ohms);
                    conductance.addToEntry(j, j, 1 / ohms);
                    conductance.addToEntry(i, j, -1 / ohms);
                    conductance.addToEntry(j, i, -1 / ohms);
                }
            }
        }
        RealMatrix inverse = new LUDecomposition(conductance.getSubMatrix(1, n - 1, 1, n - 1)).getSolver().getInverse();
        for (int j = 1; j < n; j++) {
            assertEquals(inverse.getEntry(j - 1, j - 1), network.between("p0", "p" + j), 1e-9);
        }
        for (int i = 1; i < n; i++) {
            int j = 1 + random.nextInt(n - 1);
            double expected = inverse.getEntry(i - 1, i - 1)
                    + inverse.getEntry(j - 1, j - 1) - 2 * inverse.getEntry(i - 1, j - 1);
            assertEquals(expected, network.between("p" + i, "p" + j), 1e-9);
        }
    }

    /**
     * Wheatstone bridge out of balance, a textbook identity: 1, 2, 3, 4 and 5 ohm give 71/24 ... solved by star-delta
     * by hand.
     */
    @Test
    void bridgeOutOfBalanceIsSolved() {
        ResistanceNetwork network = new ResistanceNetwork().resistance("a", "b", 1).resistance("a", "c", 2)
                .resistance("b", "c", 5)
                .resistance("b", "d", 3).resistance("c", "d", 4);
        double rab = 1.0 * 2 / 8;
        double rb = 1.0 * 5 / 8;
        double rc = 2.0 * 5 / 8;
        assertEquals(rab + (rb + 3) * (rc + 4) / (rb + 3 + rc + 4), network.between("a", "d"), 1e-12);
    }

    @Test
    void openNetworksReadInfiniteAndJoinedPointsZero() {
        ResistanceNetwork network = new ResistanceNetwork().resistance("a", "b", 1).resistance("c", "d", 1)
                .join(List.of("b", "e"));
        assertEquals(Double.POSITIVE_INFINITY, network.between("a", "c"));
        assertEquals(0, network.between("b", "e"));
        assertEquals(1, network.between("a", "e"), 1e-15);
    }

    /** Circuit identity used by IEC 60034-2-1: star reads two phases, delta two thirds of one. */
    @Test
    void terminalPairsFollowStarAndDelta() {
        Winding winding = WindingGenerator.generate(WindingPlan.doubleLayerLap(36, 4, 3, 7, 8));
        ConductorBundle bundle = ConductorBundle.copper(3, WireSize.metric(1.0));
        for (int circuits : new int[] {1, 2, 4}) {
            PredictedResistance predicted = new PredictedResistance(winding, CircuitPlan.equal(winding, circuits),
                    bundle, 0.7, 25);
            double phase = new EqualCoils(12, 8, 0.7, bundle, circuits).phaseResistance(25);
            assertEquals(phase, predicted.phase(2), phase * 1e-12);
            assertEquals(2 * phase, predicted.terminals(PhaseJunction.STAR, 1, 2), phase * 1e-9);
            assertEquals(phase * 2 / 3, predicted.terminals(PhaseJunction.DELTA, 3, 1), phase * 1e-9);
        }
    }

    @Test
    void unequalGroupsInParallelAreNotAveraged() {
        Winding winding = WindingGenerator.generate(WindingPlan.doubleLayerLap(30, 4, 3, 7, 6));
        ConductorBundle bundle = ConductorBundle.copper(1, WireSize.metric(1.0));
        List<Integer> groups = winding.groupsOf(1);
        CircuitPlan uneven = new CircuitPlan(List.of(List.of(groups.subList(0, 1), groups.subList(1, 4)),
                List.of(winding.groupsOf(2)), List.of(winding.groupsOf(3))));
        PredictedResistance predicted = new PredictedResistance(winding, uneven, bundle,
                coil -> 0.5 + 0.01 * coil.goSlot(), 20);
        double one = predicted.group(groups.get(0));
        double three = predicted.circuit(groups.subList(1, 4));
        assertEquals(one * three / (one + three), predicted.phase(1), 1e-12);
        double sum = predicted.phase(1) + winding.groupsOf(2).stream().mapToDouble(predicted::group).sum();
        assertEquals(sum, predicted.terminals(PhaseJunction.STAR, 1, 2), 1e-9);
    }
}
