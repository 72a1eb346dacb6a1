package org.copperbook.calc.excitation;

import java.util.Optional;

import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Decision;
import org.copperbook.calc.verdict.GuardedDecision;

/**
 * Fastening torque of a stud diode. Only the fitted part's data sheet sets a limit; without it nothing is decided. The hint
 * by thread is typical data-sheet practice from memory, clean dry threads, and is never a limit.
 */
public enum StudTorque {
    THREAD_10_32(1.4, 1.7), THREAD_1_4_28(2.3, 3.4), THREAD_3_8_24(10, 12), M6(2.5, 3.5), M8(4, 6), M12(10, 14);

    private final double low;
    private final double high;

    StudTorque(double low, double high) {
        this.low = low;
        this.high = high;
    }

    /** The hint for this thread, N·m. */
    public Bounds hint() {
        return Bounds.between(low, high);
    }

    /** Judges a torque in N·m against the data sheet's limits; no limit set when there are none. */
    public static Decision judge(Uncertain torque, Optional<Bounds> dataSheet) {
        return GuardedDecision.decide(torque, dataSheet.orElse(null));
    }
}
