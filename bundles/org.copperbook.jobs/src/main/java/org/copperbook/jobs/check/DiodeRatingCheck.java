package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.rectifier.FittedSet;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;

/**
 * Whether the diodes fitted carry what this machine asks of them. Without the machine's field data nothing is guessed:
 * the figure stays open and says what is missing.
 */
final class DiodeRatingCheck implements Check {

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        RectifierDemand.of(job, shop).ifPresent(demand -> {
            LimitBook limits = new LimitBook(job, shop);
            FittedSet fitted = job.rectifier().orElseThrow().fitted();
            out.add(verdict("peak", limits.find("diode.rating.peak", quantity("Up", demand.peakReverseV())),
                    demand.peakReverseV(), fitted == null ? null : fitted.repetitivePeakV(), "V", fitted, demand));
            out.add(verdict("mean", limits.find("diode.rating.mean", quantity("Im", demand.meanA())),
                    demand.meanA(), fitted == null ? null : fitted.averageA(), "A", fitted, demand));
        });
        return out;
    }

    private static Map<String, Double> quantity(String symbol, Optional<Double> value) {
        return value.map(v -> Map.of(symbol, v)).orElse(Map.of());
    }

    private static Verdict verdict(String what, LimitBook.Applied limit, Optional<Double> working, Double rated,
            String unit, FittedSet fitted, RectifierDemand demand) {
        VerdictDraft d = VerdictDraft.of("rectifier.rating." + what, PartKey.of(PartKind.RECTIFIER),
                Phrases.say("title.rating." + what)).limit(limit)
                .path(fitted == null ? "/duty" : what.equals("peak") ? "/fitted/repetitivePeakV" : "/fitted/averageA")
                .point(fitted == null ? null : HoldPoint.RECTIFIER_COMPLETE).takenAt(fitted == null ? null : fitted.at());
        if (rated != null) {
            d.value(rated, null, unit);
        }
        if (!limit.isSet()) {
            return d.outcome(Outcome.NO_LIMIT_SET).limitText(Phrases.say("limit.none"))
                    .reason(limit.limit() == null ? Phrases.say("limit.missing", limit.id())
                            : String.join(" ", demand.missing()))
                    .settle(Phrases.say("settle.rating")).done();
        }
        String need = Phrases.say("rating.need." + what, Figures.show(working.orElseThrow(), unit),
                Figures.bounds(limit.bounds(), unit));
        if (rated == null) {
            return d.outcome(Outcome.NOT_MEASURED).reason(need)
                    .addReason(Phrases.say(fitted == null ? "rating.none-fitted" : "rating.not-recorded")).done();
        }
        Ruling ruling = Ruling.on(Uncertain.exact(rated), limit.bounds(), List.of());
        return d.outcome(ruling.outcome()).reason(need)
                .addReason(Phrases.say("rating." + ruling.word(), Figures.show(rated, unit)))
                .settle(ruling.outcome() == Outcome.FAILS ? Phrases.say("settle.rating-fails") : "").done();
    }
}
