package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.impregnation.Impregnation;
import org.copperbook.jobs.impregnation.Impregnation.Treatment;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;

/**
 * Whether each treatment was cured as hot and as long as the data sheet of its resin asks. Only the sheet of the resin
 * used can say that: without it no limit is set, and none is made up.
 */
final class CureCheck implements Check {

    private static final PartKey PART = PartKey.of(PartKind.IMPREGNATION);

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        job.part(PartKind.IMPREGNATION, Impregnation.class).ifPresent(i -> {
            for (int k = 0; k < i.treatments().size(); k++) {
                Treatment t = i.treatments().get(k);
                if (t.method() != null && t.method() != Impregnation.Method.DRY_ONLY) {
                    out.add(judge(t, k));
                }
            }
        });
        return out;
    }

    private static Verdict judge(Treatment t, int k) {
        String resin = t.resin() == null || t.resin().isBlank() ? Phrases.say("cure.resin") : t.resin().strip();
        VerdictDraft d = VerdictDraft.of("cure.treatment-" + (k + 1), PART, Phrases.say("title.cure", k + 1, resin))
                .path("/treatments/" + k).takenAt(t.at());
        if (t.sheetCureCelsius() == null || t.sheetCureMinutes() == null) {
            return d.outcome(Outcome.NO_LIMIT_SET).limitText(Phrases.say("limit.none"))
                    .reason(Phrases.say("cure.no-sheet", resin)).settle(Phrases.say("settle.cure-sheet")).done();
        }
        d.point(HoldPoint.RELEASE).source(Phrases.say("cure.source", resin)).limitText(Phrases.say("cure.limit",
                Figures.show(t.sheetCureCelsius(), "degC"), Figures.show(t.sheetCureMinutes(), "min")));
        if (t.cureCelsius() == null || t.cureMinutes() == null) {
            return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("cure.not-recorded")).done();
        }
        d.value(t.cureMinutes(), null, "min").bounds(Bounds.atLeast(t.sheetCureMinutes()));
        String done = Phrases.say("cure.done", Figures.show(t.cureCelsius(), "degC"), Figures.show(t.cureMinutes(), "min"));
        if (t.cureCelsius() < t.sheetCureCelsius()) {
            return d.outcome(Outcome.FAILS).reason(done).addReason(Phrases.say("cure.too-cold"))
                    .settle(Phrases.say("settle.cure")).done();
        }
        if (t.cureMinutes() < t.sheetCureMinutes()) {
            return d.outcome(Outcome.FAILS).reason(done).addReason(Phrases.say("cure.too-short"))
                    .settle(Phrases.say("settle.cure")).done();
        }
        return d.outcome(Outcome.MEETS).reason(done).done();
    }
}
