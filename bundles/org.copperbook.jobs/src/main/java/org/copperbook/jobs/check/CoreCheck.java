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
import org.copperbook.jobs.core.LoopTestPlan;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;

/** The core loop test before and after burn-out: rise of the specific loss, hot spots, temperature of the burn-out. */
final class CoreCheck implements Check {

    private static final PartKey PART = PartKey.of(PartKind.CORE);
    private static final double SAME_DENSITY = 0.02;

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        job.part(PartKind.CORE, CoreTest.class).ifPresent(core -> {
            LimitBook limits = new LimitBook(job, shop);
            LoopTestPlan plan = LoopTestPlan.of(job);
            out.add(lossRise(core, plan, limits, shop));
            int lastOfAll = core.runs().size() - 1;
            for (int i = 0; i < core.runs().size(); i++) {
                loss(core.runs().get(i), i, plan, limits, shop).ifPresent(out::add);
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

    private static Verdict lossRise(CoreTest core, LoopTestPlan plan, LimitBook limits, Shop shop) {
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
        Optional<Double> first = plan.specificLoss(a);
        Optional<Double> second = plan.specificLoss(b);
        if (first.isEmpty() || second.isEmpty()) {
            return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("core.no-watts")).done();
        }
        double was = first.get();
        double is = second.get();
        List<MeterUse> meters = List.of(MeterUse.of(a.watts(), "W", a.instrument(), a.at(), shop),
                MeterUse.of(b.watts(), "W", b.instrument(), b.at(), shop));
        double gain = MeterUse.commonGain(meters);
        double relative = Math.hypot(own(meters.get(0), gain), own(meters.get(1), gain));
        double rise = is / was - 1;
        Ruling ruling = Ruling.on(new Uncertain(rise, is / was * relative), limit.bounds(), meters);
        boolean sameDensity = plan.fluxDensity(a).flatMap(x -> plan.fluxDensity(b)
                .map(y -> Math.abs(x - y) <= SAME_DENSITY * x)).orElse(false);
        Outcome outcome = sameDensity || ruling.outcome() == Outcome.NO_LIMIT_SET ? ruling.outcome() : Outcome.DOUBTFUL;
        return d.value(rise, ruling.expandedU(), "1").outcome(outcome)
                .reason(Phrases.say("core.loss." + ruling.word(),
                        Figures.show(rise, ruling.expandedU(), "1"), Figures.show(was, "W/kg"),
                        Figures.show(is, "W/kg"), Figures.bounds(limit.bounds(), "1")))
                .addReason(sameDensity ? "" : Phrases.say("core.other-density")).addReason(ruling.objection())
                .settle(sameDensity ? ruling.settle(Phrases.say("settle.repeat")) : Phrases.say("settle.same-density"))
                .done();
    }

    /** The loss of one run by itself: shown beside what shops look at, and deciding nothing. */
    private static Optional<Verdict> loss(LoopRun run, int index, LoopTestPlan plan, LimitBook limits, Shop shop) {
        return plan.specificLoss(run).map(loss -> {
            LimitBook.Applied limit = limits.find("core.specific-loss");
            MeterUse meter = MeterUse.of(run.watts(), "W", run.instrument(), run.at(), shop);
            Ruling ruling = Ruling.on(new Uncertain(loss, loss * meter.value().relative()), limit.bounds(),
                    List.of(meter));
            String stage = run.stage() == null ? "" : Phrases.word("core-stage", run.stage());
            return VerdictDraft.of("core.specific-loss." + (index + 1), PART,
                    Phrases.say("title.specific-loss", index + 1, stage)).limit(limit).path("/runs/" + index + "/watts")
                    .takenAt(run.at()).value(loss, ruling.expandedU(), "W/kg").outcome(ruling.outcome())
                    .reason(Phrases.say("core.specific." + ruling.word(),
                            Figures.show(loss, ruling.expandedU(), "W/kg"), Figures.bounds(limit.bounds(), "W/kg")))
                    .addReason(plan.fluxDensity(run).map(b -> Phrases.say("core.at-density", Figures.show(b, "T")))
                            .orElse(Phrases.say("core.density-unknown")))
                    .addReason(ruling.objection()).settle(ruling.settle("")).done();
        });
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
                .addReason(core.burnOutHours() == null ? Phrases.say("core.burn-time-unknown")
                        : Phrases.say("core.burn-time", Figures.show(core.burnOutHours(), "h")))
                .addReason(unknown ? Phrases.say("core.plate-unknown") : "").done();
    }
}
