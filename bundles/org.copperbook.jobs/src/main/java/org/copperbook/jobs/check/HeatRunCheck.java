package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.runup.HeatRun;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.winding.WindingRole;

/** The rise of a winding in its heat run against the limit of its thermal class (IEC 60034-1, by resistance). */
final class HeatRunCheck implements Check {

    private static final PartKey PART = PartKey.of(PartKind.RUN_UP);

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        List<HeatRun> runs = job.runUp().map(RunUp::heatRuns).orElse(List.of());
        for (int i = 0; i < runs.size(); i++) {
            HeatRun run = runs.get(i);
            int index = i;
            boolean last = runs.stream().skip(index + 1L).noneMatch(r -> r.winding() == run.winding());
            out.add(judge(run, index, last, job, shop));
        }
        return out;
    }

    private static Verdict judge(HeatRun run, int index, boolean last, Job job, Shop shop) {
        String winding = run.winding() == null ? "?" : Phrases.word("role", run.winding());
        VerdictDraft d = VerdictDraft.of("heat-run." + (index + 1), PART, Phrases.say("title.heat-run", winding))
                .path("/heatRuns/" + index).current(last).point(HoldPoint.RELEASE);
        Machine machine = new Machine(job, shop);
        WindingRole role = run.winding() == null ? machine.mainWinding() : run.winding();
        LimitBook.Applied limit = machine.thermalClass(role, true).flatMap(HeatRunCheck::word)
                .map(w -> new LimitBook(job, shop).find("heat-run.rise." + w))
                .orElse(new LimitBook.Applied("heat-run.rise", null, null, ""));
        Optional<HeatRunCurve> found;
        try {
            found = HeatRunCurve.of(run, job, shop);
        } catch (OutOfRange e) {
            return d.limit(limit).outcome(Outcome.DOUBTFUL).reason(e.getMessage()).settle(Phrases.say("settle.repeat")).done();
        }
        if (found.isEmpty()) {
            return d.limit(limit).outcome(Outcome.NOT_MEASURED).reason(Phrases.say("heat-run.incomplete"))
                    .settle(Phrases.say("settle.heat-run")).done();
        }
        HeatRunCurve h = found.get();
        Ruling ruling = Ruling.on(new Uncertain(h.rise(), h.uRise()), limit.bounds(), List.of());
        Outcome outcome = h.used() == HeatRunCurve.Used.BY_AGREEMENT && ruling.outcome() == Outcome.MEETS
                ? Outcome.DOUBTFUL : ruling.outcome();
        String key = h.used().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        d.value(h.rise(), ruling.expandedU(), "K").limit(limit).outcome(outcome).reason(Phrases.say("heat-run." + key,
                Figures.show(h.rise(), "K"), Figures.show(h.firstRead(), "degC"), Figures.show(h.firstSeconds(), "s")));
        if (h.atShutdown() != null) {
            d.addReason(Phrases.say("heat-run.both", Figures.show(h.atShutdown(), "degC"), h.atLimit() == null ? "\u2014"
                    : Figures.show(h.atLimit(), "degC"), Figures.show(h.timeConstant(), "s")));
        }
        boolean late = h.used() == HeatRunCurve.Used.BY_AGREEMENT;
        return d.settle(late ? Phrases.say("settle.heat-run-late") : ruling.settle(Phrases.say("settle.heat-run"))).done();
    }

    /** The thermal class as the profile names it: letters and temperatures both occur on plates. */
    private static Optional<String> word(String thermalClass) {
        String c = thermalClass.strip();
        if (c.startsWith("B") || c.startsWith("130")) {
            return Optional.of("130");
        }
        if (c.startsWith("F") || c.startsWith("155")) {
            return Optional.of("155");
        }
        return c.startsWith("H") || c.startsWith("180") ? Optional.of("180") : Optional.empty();
    }
}
