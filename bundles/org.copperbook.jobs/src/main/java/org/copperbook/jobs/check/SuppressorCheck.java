package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.reading.Observed;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.rectifier.Suppressor;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;

/** The surge suppressor across the rectifier: it reads open both ways. */
final class SuppressorCheck implements Check {

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        job.rectifier().ifPresent(set -> {
            LimitBook limits = new LimitBook(job, shop);
            Suppressor s = set.suppressor();
            if (s == null) {
                out.add(draft("as-left", limits).outcome(Outcome.NOT_MEASURED).path("")
                        .reason(Phrases.say("suppressor.not-said")).point(HoldPoint.RECTIFIER_COMPLETE).done());
                return;
            }
            if (s.kind() == Suppressor.Kind.NONE) {
                return;
            }
            if (s.asFound() != null) {
                out.add(verdict("as-found", s.asFound(), "/suppressor/asFound", limits, shop).done());
            }
            boolean foundHolds = s.asLeft() == null && !Boolean.TRUE.equals(s.changed()) && s.asFound() != null;
            Reading left = foundHolds ? s.asFound() : s.asLeft();
            String beside = foundHolds ? "/suppressor/asFound" : "/suppressor/asLeft";
            out.add(left == null ? draft("as-left", limits).outcome(Outcome.NOT_MEASURED).path("/suppressor")
                    .reason(Phrases.say("suppressor.not-read")).point(HoldPoint.RECTIFIER_COMPLETE).done()
                    : verdict("as-left", left, beside, limits, shop).point(HoldPoint.RECTIFIER_COMPLETE).done());
        });
        return out;
    }

    private static VerdictDraft draft(String state, LimitBook limits) {
        return VerdictDraft.of("suppressor." + state, PartKey.of(PartKind.RECTIFIER),
                Phrases.say("title.suppressor", Phrases.say("state." + state)))
                .limit(limits.find("suppressor.resistance"));
    }

    private static VerdictDraft verdict(String state, Reading r, String path, LimitBook limits, Shop shop) {
        LimitBook.Applied limit = limits.find("suppressor.resistance");
        VerdictDraft d = draft(state, limits).path(path).takenAt(r.at());
        Observed o = r.observed();
        if (o == null || o.kind() == Observed.Kind.NOT_POSSIBLE || o.kind() == Observed.Kind.UNSTABLE) {
            return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("suppressor.not-read"));
        }
        boolean isolated = Boolean.TRUE.equals(r.isolated());
        if (o.kind() == Observed.Kind.ABOVE_RANGE) {
            return d.outcome(limit.isSet() ? Outcome.MEETS : Outcome.NO_LIMIT_SET)
                    .reason(Phrases.say("suppressor.open"));
        }
        double ohms = o.value() == null ? 0 : o.value();
        MeterUse m = MeterUse.of(ohms, "ohm", r.instrument(), r.at(), shop);
        Ruling ruling = Ruling.on(m.value(), limit.bounds(), List.of(m));
        Outcome outcome = ruling.outcome() == Outcome.FAILS && !isolated ? Outcome.DOUBTFUL : ruling.outcome();
        LimitBook.Applied other = limits.find("suppressor.resistance-other");
        return d.value(ohms, ruling.expandedU(), "ohm").outcome(outcome)
                .reason(Phrases.say("suppressor." + ResistanceCheck.word(outcome),
                        Figures.show(ohms, ruling.expandedU(), "ohm"), Figures.bounds(limit.bounds(), "ohm")))
                .addReason(other.isSet() && outcome != Outcome.MEETS ? Phrases.say("suppressor.other",
                        Figures.bounds(other.bounds(), "ohm"), other.source()) : "")
                .addReason(ruling.objection())
                .settle(outcome == Outcome.DOUBTFUL && !isolated ? Phrases.say("settle.lift")
                        : ruling.settle(Phrases.say("settle.lift")));
    }
}
