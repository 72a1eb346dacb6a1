package org.copperbook.calc.excitation;

import java.util.List;

import org.copperbook.calc.excitation.DiodeFinding.State;
import org.copperbook.calc.verdict.Outcome;

/**
 * The rule of the complete set: when one diode has failed, all are changed, because the others have carried its share
 * (common practice, no source).
 *
 * @param outcome fails with one shorted or open diode; otherwise doubtful, not measured, or meets
 * @param changeCompleteSet whether every position must be replaced
 * @param failed number of shorted or open diodes
 */
public record DiodeSet(Outcome outcome, boolean changeCompleteSet, int failed) {

    /** Judges a set; an empty list is not measured. */
    public static DiodeSet judge(List<DiodeFinding> findings) {
        int failed = 0;
        boolean missing = findings.isEmpty();
        boolean doubtful = false;
        for (DiodeFinding f : findings) {
            if (f.state() == State.SHORTED || f.state() == State.OPEN) {
                failed++;
            }
            missing |= f.state() == State.NOT_MEASURED;
            doubtful |= f.state() == State.DOUBTFUL;
        }
        if (failed > 0) {
            return new DiodeSet(Outcome.FAILS, true, failed);
        }
        if (doubtful) {
            return new DiodeSet(Outcome.DOUBTFUL, false, 0);
        }
        return new DiodeSet(missing ? Outcome.NOT_MEASURED : Outcome.MEETS, false, 0);
    }
}
