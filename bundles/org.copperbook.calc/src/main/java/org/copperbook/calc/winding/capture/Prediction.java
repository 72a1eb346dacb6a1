package org.copperbook.calc.winding.capture;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.calc.winding.CircuitPlan;
import org.copperbook.calc.winding.Coil;
import org.copperbook.calc.winding.ConductorBundle;
import org.copperbook.calc.winding.Winding;

/**
 * What a capture implies for its readings, kept as turns of each group so that a slip is a small change of few numbers.
 */
final class Prediction {
    private final CapturedWinding captured;
    private final Map<Integer, Double> turnsOfGroup = new HashMap<>();
    private final double totalTurns;
    private final double sidesPerSlot;

    Prediction(CapturedWinding captured) {
        this.captured = captured;
        Winding winding = captured.winding();
        double total = 0;
        for (Coil coil : winding.coils()) {
            turnsOfGroup.merge(coil.group(), coil.turns(), Double::sum);
            total += coil.turns();
        }
        totalTurns = total;
        sidesPerSlot = 2 * total / winding.slots();
    }

    /**
     * Value a reading should have, with one group changed by some turns (0 for none), another bundle, circuits and
     * temperature.
     */
    double of(CaptureReading reading, int changedGroup, double addedTurns, ConductorBundle bundle, CircuitPlan plan,
            double celsius) {
        double ohmsPerTurn = captured.meanTurn() * bundle.ohmsPerMetre() * bundle.material().factorFrom20(celsius);
        if (reading instanceof CaptureReading.OfGroup group) {
            return ohmsPerTurn * turns(group.group(), changedGroup, addedTurns);
        }
        if (reading instanceof CaptureReading.OfPhase phase) {
            return ohmsPerTurn * phaseTurns(plan.of(phase.phase()), changedGroup, addedTurns);
        }
        if (reading instanceof CaptureReading.OfFill fill) {
            return sidesPerSlot * bundle.squareSum(fill.grade()) / fill.slotArea();
        }
        return captured.meanTurn() * (totalTurns + addedTurns) * bundle.kilogramsPerMetre();
    }

    double asCaptured(CaptureReading reading) {
        return of(reading, 0, 0, captured.bundle(), captured.plan(), captured.celsius());
    }

    /** Share of a group in the phase's resistance: relative change of the phase for a relative change of the group. */
    double shareInPhase(int phase, int group) {
        List<List<Integer>> circuits = captured.plan().of(phase);
        double whole = phaseTurns(circuits, 0, 0);
        for (List<Integer> circuit : circuits) {
            if (circuit.contains(group)) {
                double series = circuit.stream().mapToDouble(turnsOfGroup::get).sum();
                return turnsOfGroup.get(group) * whole / (series * series);
            }
        }
        return 0;
    }

    private double turns(int group, int changedGroup, double addedTurns) {
        return turnsOfGroup.get(group) + (group == changedGroup ? addedTurns : 0);
    }

    /** Turns in series that would have the resistance of the circuits in parallel. */
    private double phaseTurns(List<List<Integer>> circuits, int changedGroup, double addedTurns) {
        double inverse = 0;
        for (List<Integer> circuit : circuits) {
            double series = 0;
            for (int group : circuit) {
                series += turns(group, changedGroup, addedTurns);
            }
            inverse += 1 / series;
        }
        return 1 / inverse;
    }
}
