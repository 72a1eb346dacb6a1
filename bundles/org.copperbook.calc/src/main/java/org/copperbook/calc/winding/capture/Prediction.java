package org.copperbook.calc.winding.capture;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.calc.winding.CircuitPlan;
import org.copperbook.calc.winding.Coil;
import org.copperbook.calc.winding.ConductorBundle;
import org.copperbook.calc.winding.Winding;

/**
 * What a capture implies for its readings, kept as length of turns of each group so that a slip is a small change of
 * few numbers.
 */
final class Prediction {
    private final CapturedWinding captured;
    private final Map<Integer, Double> metresOfGroup = new HashMap<>();
    private final Map<Integer, Double> turnsOfGroup = new HashMap<>();
    private final double totalMetres;
    private final double sidesPerSlot;

    Prediction(CapturedWinding captured) {
        this.captured = captured;
        Winding winding = captured.winding();
        double turns = 0;
        double metres = 0;
        for (Coil coil : winding.coils()) {
            double length = coil.turns() * captured.meanTurnOf(coil);
            turnsOfGroup.merge(coil.group(), coil.turns(), Double::sum);
            metresOfGroup.merge(coil.group(), length, Double::sum);
            turns += coil.turns();
            metres += length;
        }
        totalMetres = metres;
        sidesPerSlot = 2 * turns / winding.slots();
    }

    /**
     * Value a reading should have, with one group changed by some turns (0 for none), another bundle, circuits and
     * temperature.
     */
    double of(CaptureReading reading, int changedGroup, double addedTurns, ConductorBundle bundle, CircuitPlan plan,
            double celsius) {
        double ohmsPerMetre = bundle.ohmsPerMetre() * bundle.material().factorFrom20(celsius);
        if (reading instanceof CaptureReading.OfGroup group) {
            return ohmsPerMetre * metres(group.group(), changedGroup, addedTurns);
        }
        if (reading instanceof CaptureReading.OfPhase phase) {
            return ohmsPerMetre * phaseMetres(plan.of(phase.phase()), changedGroup, addedTurns);
        }
        if (reading instanceof CaptureReading.OfFill fill) {
            return sidesPerSlot * bundle.squareSum(fill.grade()) / fill.slotArea();
        }
        double added = changedGroup == 0 ? 0 : addedTurns * meanTurn(changedGroup);
        return (totalMetres + added) * bundle.kilogramsPerMetre();
    }

    double asCaptured(CaptureReading reading) {
        return of(reading, 0, 0, captured.bundle(), captured.plan(), captured.celsius());
    }

    /** Share of a group in the phase's resistance: relative change of the phase for a relative change of the group. */
    double shareInPhase(int phase, int group) {
        List<List<Integer>> circuits = captured.plan().of(phase);
        double whole = phaseMetres(circuits, 0, 0);
        for (List<Integer> circuit : circuits) {
            if (circuit.contains(group)) {
                double series = circuit.stream().mapToDouble(metresOfGroup::get).sum();
                return metresOfGroup.get(group) * whole / (series * series);
            }
        }
        return 0;
    }

    private double metres(int group, int changedGroup, double addedTurns) {
        return metresOfGroup.get(group) + (group == changedGroup ? addedTurns * meanTurn(group) : 0);
    }

    private double meanTurn(int group) {
        return metresOfGroup.get(group) / turnsOfGroup.get(group);
    }

    /** Length in series that would have the resistance of the circuits in parallel. */
    private double phaseMetres(List<List<Integer>> circuits, int changedGroup, double addedTurns) {
        double inverse = 0;
        for (List<Integer> circuit : circuits) {
            double series = 0;
            for (int group : circuit) {
                series += metres(group, changedGroup, addedTurns);
            }
            inverse += 1 / series;
        }
        return 1 / inverse;
    }
}
