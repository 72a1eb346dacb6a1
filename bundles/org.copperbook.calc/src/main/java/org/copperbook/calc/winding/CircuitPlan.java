package org.copperbook.calc.winding;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.copperbook.calc.Require;

/**
 * Which groups lie in series in which parallel circuit of which phase, as captured.
 *
 * @param phases by phase (index 0 is phase 1): its circuits, each the numbers of the groups in series
 */
public record CircuitPlan(List<List<List<Integer>>> phases) {
    public CircuitPlan {
        phases = phases.stream().map(circuits -> circuits.stream().map(List::copyOf).toList()).toList();
        Set<Integer> seen = new HashSet<>();
        for (List<List<Integer>> circuits : phases) {
            Require.that(!circuits.isEmpty() && circuits.stream().noneMatch(List::isEmpty), "circuits of a phase",
                    circuits.toString(), "at least one, none empty", "current needs a path");
            circuits.forEach(circuit -> circuit.forEach(group -> Require.that(seen.add(group), "coil group",
                    group.toString(),
                    "groups named once", "a group lies in one circuit")));
        }
    }

    /**
     * Shares the groups of every phase between equal circuits: first the ways that balance the electromotive force
     * (every n-th group, or blocks of neighbours), else every n-th group.
     *
     * @param winding winding
     * @param circuits circuits per phase; must divide the groups of every phase
     * @return the plan
     */
    public static CircuitPlan equal(Winding winding, int circuits) {
        List<List<List<Integer>>> phases = new ArrayList<>();
        for (int phase = 1; phase <= winding.phases(); phase++) {
            List<Integer> groups = winding.groupsOf(phase);
            Require.that(circuits >= 1 && !groups.isEmpty() && groups.size() % circuits == 0, "parallel circuits",
                    Integer.toString(circuits), "the divisors of " + groups.size() + " groups",
                    "each circuit of a phase has as many groups as the others");
            phases.add(balanced(winding, groups, circuits).orElseGet(() -> everyNth(groups, circuits)));
        }
        return new CircuitPlan(phases);
    }

    /**
     * Numbers of parallel circuits whose electromotive forces can be made equal with the groups as they are.
     *
     * @param winding winding, generated or captured
     * @param phase phase from 1
     * @return numbers, rising; 1 is always among them
     */
    public static List<Integer> possible(Winding winding, int phase) {
        List<Integer> groups = winding.groupsOf(phase);
        List<Integer> numbers = new ArrayList<>();
        for (int n = 1; n <= groups.size(); n++) {
            if (groups.size() % n == 0 && balanced(winding, groups, n).isPresent()) {
                numbers.add(n);
            }
        }
        return numbers;
    }

    private static Optional<List<List<Integer>>> balanced(Winding winding, List<Integer> groups, int circuits) {
        List<List<Integer>> spread = everyNth(groups, circuits);
        if (largestDifference(winding, spread) < 1e-9) {
            return Optional.of(spread);
        }
        List<List<Integer>> blocks = blocks(groups, circuits);
        return largestDifference(winding, blocks) < 1e-9 ? Optional.of(blocks) : Optional.empty();
    }

    private static List<List<Integer>> everyNth(List<Integer> groups, int circuits) {
        List<List<Integer>> result = new ArrayList<>();
        for (int c = 0; c < circuits; c++) {
            List<Integer> circuit = new ArrayList<>();
            for (int i = c; i < groups.size(); i += circuits) {
                circuit.add(groups.get(i));
            }
            result.add(circuit);
        }
        return result;
    }

    private static List<List<Integer>> blocks(List<Integer> groups, int circuits) {
        int size = groups.size() / circuits;
        List<List<Integer>> result = new ArrayList<>();
        for (int c = 0; c < circuits; c++) {
            result.add(groups.subList(c * size, (c + 1) * size));
        }
        return result;
    }

    /**
     * How unequal the electromotive forces of parallel circuits are: what drives a current around them even at no load.
     *
     * @param winding winding
     * @param circuits circuits of one phase, each the numbers of its groups
     * @return largest difference between two circuits over the largest electromotive force of a circuit
     */
    public static double largestDifference(Winding winding, List<List<Integer>> circuits) {
        WindingFactors factors = new WindingFactors(winding);
        List<Phasor> sums = circuits.stream().map(circuit -> factors.sumOf(
                winding.coils().stream().filter(coil -> circuit.contains(coil.group())).toList())).toList();
        double largest = sums.stream().mapToDouble(Phasor::magnitude).max().orElse(0);
        double difference = 0;
        for (Phasor one : sums) {
            for (Phasor other : sums) {
                difference = Math.max(difference, one.minus(other).magnitude());
            }
        }
        return largest == 0 ? 0 : difference / largest;
    }

    /**
     * @param phase phase from 1
     * @return circuits of that phase
     */
    public List<List<Integer>> of(int phase) {
        return phases.get(phase - 1);
    }
}
