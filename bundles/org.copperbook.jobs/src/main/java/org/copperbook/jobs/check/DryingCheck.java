package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.impregnation.Impregnation;
import org.copperbook.jobs.impregnation.Impregnation.DryingPoint;
import org.copperbook.jobs.shop.Shop;

/**
 * The drying curve: whether the insulation resistance has turned and levelled, and how hot the winding got. It says
 * when to stop drying; whether the insulation is good enough is judged by its own readings.
 */
final class DryingCheck implements Check {

    private static final PartKey PART = PartKey.of(PartKind.IMPREGNATION);

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        job.part(PartKind.IMPREGNATION, Impregnation.class).filter(i -> !i.drying().isEmpty()).ifPresent(i -> {
            LimitBook limits = new LimitBook(job, shop);
            out.add(levelled(DryingState.of(job, shop).orElseThrow(), limits, i));
            hottest(i, limits).ifPresent(out::add);
        });
        return out;
    }

    private static Verdict levelled(DryingState s, LimitBook limits, Impregnation i) {
        LimitBook.Applied limit = limits.find("drying.change");
        VerdictDraft d = VerdictDraft.of("drying.levelled", PART, Phrases.say("title.drying"))
                .value(s.changePerHour().orElse(null), null, "1").limit(limit)
                .path("/drying/" + (i.drying().size() - 1));
        if (!s.refused().isEmpty()) {
            return d.outcome(Outcome.NOT_MEASURED).reason(s.refused()).settle(Phrases.say("settle.repeat")).done();
        }
        if (limits.firstUnset("drying.change", "drying.window", "drying.rise").isPresent()) {
            return d.outcome(Outcome.NO_LIMIT_SET).limitText(Phrases.say("limit.none"))
                    .reason(Phrases.say("limit.missing", limits.firstUnset("drying.change", "drying.window",
                            "drying.rise").get())).done();
        }
        String window = Figures.show(s.windowHours(), "h");
        return switch (s.stage()) {
            case TOO_FEW -> d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("drying.too-few")).done();
            case FALLING -> d.outcome(Outcome.DOUBTFUL).reason(Phrases.say("drying.falling"))
                    .settle(Phrases.say("settle.dry-on")).done();
            case RISING -> d.outcome(Outcome.DOUBTFUL).reason(s.changePerHour().map(c -> Phrases.say("drying.rising",
                    Figures.show(c, "1/h"), window)).orElse(Phrases.say("drying.rising-window", window)))
                    .settle(Phrases.say("settle.dry-on")).done();
            case DEPENDS -> d.outcome(Outcome.DOUBTFUL).reason(Phrases.say("drying.depends"))
                    .settle(Phrases.say("settle.thermal-class")).done();
            case LEVELLED -> d.outcome(Outcome.MEETS).reason(Phrases.say("drying.levelled",
                    Figures.show(s.lowest().orElseThrow(), "ohm"), Figures.show(s.last().orElseThrow(), "ohm"),
                    Figures.show(s.changePerHour().orElseThrow(), "1/h"), window)).done();
        };
    }

    private static Optional<Verdict> hottest(Impregnation i, LimitBook limits) {
        return i.drying().stream().map(DryingPoint::windingCelsius).filter(t -> t != null).max(Double::compare)
                .map(t -> {
                    LimitBook.Applied limit = limits.find("drying.temperature");
                    Ruling ruling = Ruling.on(Uncertain.exact(t), limit.bounds(), List.of());
                    return VerdictDraft.of("drying.temperature", PART, Phrases.say("title.drying-temperature"))
                            .limit(limit).path("/drying").value(t, null, "degC").outcome(ruling.outcome())
                            .reason(Phrases.say("drying.hottest", Figures.show(t, "degC"),
                                    Figures.bounds(limit.bounds(), "degC"))).done();
                });
    }
}
