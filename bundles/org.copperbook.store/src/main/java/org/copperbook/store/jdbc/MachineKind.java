package org.copperbook.store.jdbc;

import java.util.List;
import org.copperbook.calc.winding.memory.MachineFigures;
import org.copperbook.calc.winding.memory.PastWindings;

/**
 * Machines of the same poles and slots, of which a list holds few kinds however long it is.
 *
 * @param poles not a number for those of unknown poles
 * @param slots not a number for those of unknown slots
 */
record MachineKind(double poles, double slots) {

    /** How far every machine of this kind is at least from the one asked for; 0 when neither figure is asked for. */
    double distance(MachineFigures asked) {
        if (Double.isNaN(asked.poles()) && Double.isNaN(asked.slots())) {
            return 0;
        }
        return PastWindings.of(List.of(of(poles, slots))).nearest(of(asked.poles(), asked.slots()), 1).get(0).distance();
    }

    private static MachineFigures of(double poles, double slots) {
        return new MachineFigures(Double.NaN, poles, slots, Double.NaN, Double.NaN, Double.NaN);
    }
}
