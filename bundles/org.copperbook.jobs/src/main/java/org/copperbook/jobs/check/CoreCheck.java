package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.core.CoreTest;
import org.copperbook.jobs.core.CoreTest.LoopRun;
import org.copperbook.jobs.core.CoreTest.Stage;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;

/** The core loop test before and after burn-out: rise of the specific loss, hot spots, temperature of the burn-out. */
final class CoreCheck implements Check {

    private static final PartKey PART = PartKey.of(PartKind.CORE);

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        job.part(PartKind.CORE, CoreTest.class).ifPresent(core -> {
            LimitBook limits = new LimitBook(job, shop);
            out.add(lossRise(core, limits, shop));
            int lastOfAll = core.runs().size() - 1;
            for (int i = 0; i < core.runs().size(); i++) {
                out.add(hotSpot(core.runs().get(i), i, i == lastOfAll, limits, new Machine(job, shop)));
            }
            if (core.burnOutHours() != null || core.burnOutMaxCelsius() != null) {
                out.add(burnOut(core, limits));
            }
        });
        return out;
    }

    private static VerdictDraft draft(String id, String title) {
        return VerdictDraft.of(id, PART, title).point(HoldPoint.CORE_PROVED);
    }

    private static int last(CoreTest core, Stage stage) {
        int found = -1;
        for (int i = 0; i < core.runs().size(); i++) {
            found = core.runs().get(i).stage() == stage ? i : found;
        }
        return found;
    }

    private static Verdict lossRise(CoreTest core, LimitBook limits, Shop shop) {
        LimitBook.Applied limit = limits.find("core.loss-rise");
        VerdictDraft d = draft("core.loss-rise", Phrases.say("title.loss-rise")).limit(limit);
        int before = last(core, Stage.BEFORE_BURN_OUT);
        int after = last(core, Stage.AFTER_BURN_OUT);
        if (before < 0 || after < 0) {
            return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say(before < 0 && after < 0 ? "core.no-run"
                    : before < 0 ? "core.no-before" : "core.no-after")).done();
        }
        LoopRun a = core.runs().get(before);
        LoopRun b = core.runs().get(after);
        d.path("/runs/" + after).takenAt(b.at());
        if (!positive(a.watts()) || !positive(a.yokeMassKg()) || !positive(b.watts()) || !positive(b.yokeMassKg())) {
            return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("core.no-watts")).done();
        }
        double was = a.watts() / a.yokeMassKg();
        double is = b.watts() / b.yokeMassKg();
        MeterUse first = MeterUse.of(a.watts(), "W", a.instrument(), a.at(), shop);
        MeterUse second = MeterUse.of(b.watts(), "W", b.instrument(), b.at(), shop);
        List<MeterUse> meters = List.of(first, second);
        double gain = MeterUse.commonGain(meters);
        double relative = Math.hypot(own(first, gain), own(second, gain));
        double rise = is / was - 1;
        Ruling ruling = Ruling.on(new Uncertain(rise, is / was * relative), limit.bounds(), meters);
        boolean sameDensity = a.fluxDensityT() != null && b.fluxDensityT() != null
                && Math.abs(a.fluxDensityT() - b.fluxDensityT()) <= 0.02 * a.fluxDensityT();
        Outcome outcome = sameDensity || ruling.outcome() == Outcome.NO_LIMIT_SET ? ruling.outcome() : Outcome.DOUBTFUL;
        return d.value(rise, ruling.expandedU(), "1").outcome(outcome)
                .reason(Phrases.say("core.loss." + ruling.word(),
                        Figures.show(rise, ruling.expandedU(), "1"), Figures.show(was, "W/kg"),
                        Figures.show(is, "W/kg"), Figures.bounds(limit.bounds(), "1")))
                .addReason(sameDensity ? "" : Phrases.say("core.other-density")).addReason(ruling.objection())
                .settle(sameDensity ? ruling.settle(Phrases.say("settle.repeat")) : Phrases.say("settle.same-density"))
                .done();
    }

    private static double own(MeterUse m, double gain) {
        double r = m.value().relative();
        return Math.sqrt(Math.max(0, r * r - gain * gain));
    }

    private static Verdict hotSpot(LoopRun run, int index, boolean last, LimitBook limits, Machine machine) {
        LimitBook.Applied limit = limits.find("core.hot-spot");
        String stage = run.stage() == null ? "" : Phrases.word("core-stage", run.stage());
        VerdictDraft d = draft("core.hot-spot." + (index + 1), Phrases.say("title.hot-spot", index + 1, stage))
                .limit(limit).path("/runs/" + index).takenAt(run.at()).current(last);
        if (run.meanCelsius() == null || run.hottestCelsius() == null) {
            return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("core.no-temperatures")).done();
        }
        double over = run.hottestCelsius() - run.meanCelsius();
        double u = machine.kelvinU(null) * Math.sqrt(2);
        Ruling ruling = Ruling.on(new Uncertain(over, u), limit.bounds(), List.of());
        return d.value(over, ruling.expandedU(), "K").outcome(ruling.outcome())
                .reason(Phrases.say("core.hot." + ruling.word(),
                        Figures.show(over, ruling.expandedU(), "K"), Figures.bounds(limit.bounds(), "K")))
                .settle(ruling.outcome() == Outcome.FAILS ? Phrases.say("settle.hot-spot")
                        : ruling.settle(Phrases.say("settle.camera"))).done();
    }

    private static Verdict burnOut(CoreTest core, LimitBook limits) {
        boolean inorganic = core.corePlate() == CoreTest.CorePlate.INORGANIC;
        LimitBook.Applied limit = limits.find("core.burn-out." + (inorganic ? "inorganic" : "organic"));
        VerdictDraft d = draft("core.burn-out", Phrases.say("title.burn-out")).limit(limit).path("/burnOutMaxCelsius");
        if (core.burnOutMaxCelsius() == null) {
            return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("core.no-burn-out")).done();
        }
        double t = core.burnOutMaxCelsius();
        Ruling ruling = Ruling.on(Uncertain.exact(t), limit.bounds(), List.of());
        Optional<CoreTest.CorePlate> plate = Optional.ofNullable(core.corePlate());
        boolean unknown = plate.isEmpty() || plate.get() == CoreTest.CorePlate.UNKNOWN;
        return d.value(t, null, "degC").outcome(ruling.outcome())
                .reason(Phrases.say("core.burn." + ruling.word(), Figures.show(t, "degC"),
                        Figures.bounds(limit.bounds(), "degC")))
                .addReason(unknown ? Phrases.say("core.plate-unknown") : "").done();
    }

    private static boolean positive(Double d) {
        return d != null && d > 0;
    }
}
