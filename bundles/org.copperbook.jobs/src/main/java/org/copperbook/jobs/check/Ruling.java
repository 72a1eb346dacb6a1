package org.copperbook.jobs.check;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.GuardedDecision;
import org.copperbook.calc.verdict.Outcome;

/**
 * An outcome with the objections of the instruments behind it. The guard leans to the safe side: a value whose
 * uncertainty is not known never meets a limit, but it can fail one; neither can a reading of an instrument whose
 * calibration had run out meet it.
 *
 * @param outcome   the outcome
 * @param plain     the outcome without the objections, for the sentence about the figures
 * @param expandedU expanded uncertainty (k = 2); null when unknown
 * @param objection what stands against the reading; empty when nothing does
 * @param remedy    what would lift the objection; empty when nothing is needed
 */
record Ruling(Outcome outcome, Outcome plain, Double expandedU, String objection, String remedy) {

    /** Rules on a value. */
    static Ruling on(Uncertain x, Bounds bounds, List<MeterUse> by) {
        boolean known = MeterUse.allKnown(by);
        Outcome plain = GuardedDecision.decide(known || x == null ? x : Uncertain.exact(x.value()), bounds).outcome();
        Optional<MeterUse> objected = MeterUse.firstObjection(by);
        Outcome guarded = plain == Outcome.MEETS && objected.isPresent() ? Outcome.DOUBTFUL : plain;
        Double u = known && x != null ? x.expanded(GuardedDecision.USUAL_COVERAGE) : null;
        return new Ruling(guarded, plain, u, objected.map(MeterUse::objection).orElse(""),
                objected.map(MeterUse::remedy).orElse(""));
    }

    /** The remedy, or what settles a plain doubt. */
    String settle(String doubt) {
        if (!remedy.isEmpty()) {
            return remedy;
        }
        return outcome == Outcome.DOUBTFUL ? doubt : "";
    }

    /** The plain outcome as it stands in the keys of sentences. */
    String word() {
        return plain.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
