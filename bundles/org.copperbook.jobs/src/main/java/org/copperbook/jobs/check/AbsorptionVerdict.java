package org.copperbook.jobs.check;

import java.util.List;
import java.util.Optional;
import org.copperbook.calc.insulation.AbsorptionIndex;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.winding.WindingRole;

/** Polarisation index or absorption ratio of two readings of one run, and whether it may decide. */
record AbsorptionVerdict(LimitBook.Applied limit, LimitBook limits, boolean formWound, InsulationAt40 hot) {

    Verdict judge(VerdictDraft d, LoggedReading late, LoggedReading early, WindingRole role, HoldPoint point,
            Shop shop) {
        MeterUse a = MeterUse.of(late.reading().observed().value(), "ohm", late.reading().instrument(),
                late.reading().at(), shop);
        MeterUse b = MeterUse.of(early.reading().observed().value(), "ohm", early.reading().instrument(),
                early.reading().at(), shop);
        List<MeterUse> meters = List.of(a, b);
        Uncertain ratio = AbsorptionIndex.ratio(a.value(), b.value(), MeterUse.commonGain(meters));
        Ruling ruling = Ruling.on(ratio, limit.bounds(), meters);
        String shown = Figures.show(ratio.value(), ruling.expandedU(), "");
        d.value(ratio.value(), ruling.expandedU(), "").limit(limit);
        Optional<String> notJudged = notJudged(role);
        if (notJudged.isPresent()) {
            return d.outcome(Outcome.NO_LIMIT_SET).limitText(Phrases.say("index.not-judged"))
                    .reason(Phrases.say("index.for-record", shown) + " " + notJudged.get())
                    .addReason(InsulationRun.moved(late, early)).done();
        }
        boolean decides = limit.decides();
        return d.outcome(ruling.outcome()).point(decides ? point : null)
                .reason(Phrases.say("index." + ruling.word(), shown,
                        Figures.bounds(limit.bounds(), "")))
                .addReason(brittle(ratio.value())).addReason(InsulationRun.moved(late, early)).addReason(ruling.objection())
                .settle(ruling.outcome() == Outcome.FAILS ? Phrases.say("settle.dry")
                        : ruling.settle(Phrases.say("settle.insulation")))
                .done();
    }

    /** Why the index does not decide: IEEE 43 exempts fields, small random windings and very high resistances. */
    private Optional<String> notJudged(WindingRole role) {
        if (role.isField()) {
            return Optional.of(Phrases.say("index.field"));
        }
        if (!formWound) {
            return Optional.of(Phrases.say("index.random"));
        }
        Optional<Double> top = limits.find("insulation.pi.not-judged-above").upper();
        boolean high = !hot.isEmpty() && top.isPresent() && hot.lowest() > top.get();
        return high ? Optional.of(Phrases.say("index.high", Figures.show(top.get(), "ohm"))) : Optional.empty();
    }

    private String brittle(double index) {
        Optional<Double> top = limits.find("insulation.pi.brittle-above").upper();
        return top.isPresent() && index > top.get() ? Phrases.say("index.brittle") : "";
    }
}
