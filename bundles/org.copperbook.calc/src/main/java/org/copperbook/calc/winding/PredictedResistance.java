package org.copperbook.calc.winding;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.copperbook.calc.Require;

/**
 * Resistances that a captured winding implies: per coil, group, circuit, phase and pair of terminals, with unequal
 * coils, uneven groups and uneven circuits allowed.
 */
public final class PredictedResistance {
    private final Winding winding;
    private final CircuitPlan plan;
    private final Map<Integer, Double> groups = new LinkedHashMap<>();
    private final Map<Coil, Double> coils = new LinkedHashMap<>();

    /**
     * Coils of one mean length of turn.
     *
     * @param winding winding
     * @param plan connection as captured
     * @param bundle strands in hand of one circuit
     * @param meanTurn mean length of turn in m, above 0
     * @param celsius winding temperature in C
     */
    public PredictedResistance(Winding winding, CircuitPlan plan, ConductorBundle bundle, double meanTurn,
            double celsius) {
        this(winding, plan, bundle, coil -> meanTurn, celsius);
        Require.between("mean length of turn", Require.positive("mean length of turn", meanTurn, "m"), 0, 20, "m",
                "no machine of this trade has a longer turn");
    }

    /**
     * Coils of differing lengths, as concentric ones are.
     *
     * @param winding winding
     * @param plan connection as captured
     * @param bundle strands in hand of one circuit
     * @param meanTurn mean length of turn of a coil in m
     * @param celsius winding temperature in C
     */
    public PredictedResistance(Winding winding, CircuitPlan plan, ConductorBundle bundle,
            ToDoubleFunction<Coil> meanTurn,
            double celsius) {
        this.winding = winding;
        this.plan = plan;
        double ohmsPerMetre = bundle.ohmsPerMetre() * bundle.material().factorFrom20(celsius);
        for (Coil coil : winding.coils()) {
            double ohms = coil.turns() * meanTurn.applyAsDouble(coil) * ohmsPerMetre;
            coils.put(coil, ohms);
            groups.merge(coil.group(), ohms, Double::sum);
        }
    }

    /**
     * @param coil coil of the winding
     * @return ohm
     */
    public double coil(Coil coil) {
        return coils.get(coil);
    }

    /**
     * @param group group from 1
     * @return ohm
     */
    public double group(int group) {
        Require.that(groups.containsKey(group), "coil group", Integer.toString(group), "the groups of the winding",
                "it has no coil");
        return groups.get(group);
    }

    /**
     * @param circuit numbers of the groups in series
     * @return ohm
     */
    public double circuit(List<Integer> circuit) {
        return circuit.stream().mapToDouble(this::group).sum();
    }

    /**
     * @param phase phase from 1
     * @return ohm of its circuits in parallel
     */
    public double phase(int phase) {
        return 1 / plan.of(phase).stream().mapToDouble(circuit -> 1 / circuit(circuit)).sum();
    }

    /**
     * Resistance between two line terminals, from the network of all groups.
     *
     * @param junction star or delta
     * @param first phase of one terminal, from 1
     * @param second phase of the other terminal, from 1
     * @return ohm
     */
    public double terminals(PhaseJunction junction, int first, int second) {
        return network(junction).between("start " + first, "start " + second);
    }

    /**
     * The network of all groups, with the points "start 1", "finish 1" and so on at the ends of the phases.
     *
     * @param junction star or delta
     * @return network
     */
    public ResistanceNetwork network(PhaseJunction junction) {
        ResistanceNetwork network = new ResistanceNetwork();
        for (int phase = 1; phase <= winding.phases(); phase++) {
            int branch = 0;
            for (List<Integer> circuit : plan.of(phase)) {
                branch++;
                String from = "start " + phase;
                for (int i = 0; i < circuit.size(); i++) {
                    String to = i == circuit.size() - 1 ? "finish " + phase : "phase " + phase + " circuit " + branch
                            + " joint " + i;
                    network.resistance(from, to, group(circuit.get(i)));
                    from = to;
                }
            }
        }
        for (int phase = 1; phase <= winding.phases(); phase++) {
            String meets = junction == PhaseJunction.STAR ? "neutral" : "start " + (phase % winding.phases() + 1);
            network.join(List.of("finish " + phase, meets));
        }
        return network;
    }
}
