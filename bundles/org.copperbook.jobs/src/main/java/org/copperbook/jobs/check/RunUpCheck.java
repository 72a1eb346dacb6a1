package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.resistance.Unbalance;
import org.copperbook.calc.uncertainty.SharedTerms;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.runup.RunPoint;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;

/** The run-up points: speed, voltage unbalance, voltages at nominal speed; phase sequence and regulation. */
final class RunUpCheck implements Check {

    private static final PartKey PART = PartKey.of(PartKind.RUN_UP);

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        job.runUp().ifPresent(run -> {
            Machine machine = new Machine(job, shop);
            LimitBook limits = new LimitBook(job, shop);
            Map<RunPoint.Kind, Integer> last = new EnumMap<>(RunPoint.Kind.class);
            for (int i = 0; i < run.points().size(); i++) {
                if (run.points().get(i).kind() != null) {
                    last.put(run.points().get(i).kind(), i);
                }
            }
            for (int i = 0; i < run.points().size(); i++) {
                RunPoint p = run.points().get(i);
                boolean latest = p.kind() == null || last.get(p.kind()) == i;
                new OnePoint(p, i, latest, machine, limits, shop).judge(out);
            }
            if (!run.points().isEmpty() || run.sequenceRight() != null || run.phaseSequence() != null) {
                out.add(sequence(run, limits));
            }
            if (run.regulation() != null) {
                out.add(regulation(run.regulation(), limits));
            }
        });
        return out;
    }

    private static Verdict sequence(RunUp run, LimitBook limits) {
        LimitBook.Applied rule = limits.find("run-up.phase-sequence");
        VerdictDraft d = VerdictDraft.of("run-up.phase-sequence", PART, Phrases.say("title.sequence"))
                .limit(rule, null).path("/sequenceRight").point(HoldPoint.RELEASE);
        String seen = run.phaseSequence() == null ? "" : run.phaseSequence();
        if (run.sequenceRight() == null) {
            return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("sequence.not-said", seen)).done();
        }
        boolean right = run.sequenceRight();
        return d.outcome(rule.byRule(right ? Outcome.MEETS : Outcome.FAILS))
                .reason(Phrases.say(right ? "sequence.right" : "sequence.wrong", seen))
                .settle(right ? "" : Phrases.say("settle.sequence")).done();
    }

    private static Verdict regulation(RunUp.Regulation r, LimitBook limits) {
        LimitBook.Applied limit = limits.find("run-up.regulation");
        for (String grade : List.of("g1", "g2", "g3")) {
            LimitBook.Applied l = limits.find("run-up.regulation." + grade);
            if (!limit.isSet() && l.decides()) {
                limit = l;
            }
        }
        VerdictDraft d = VerdictDraft.of("run-up.regulation", PART, Phrases.say("title.regulation")).limit(limit)
                .path("/regulation").point(HoldPoint.RELEASE);
        if (r.setPointV() == null || !(r.setPointV() > 0) || r.lowestV() == null || r.highestV() == null) {
            return d.outcome(limit.isSet() ? Outcome.NOT_MEASURED : Outcome.NO_LIMIT_SET)
                    .reason(Phrases.say("regulation.incomplete")).done();
        }
        double off = Math.max(Math.abs(r.lowestV() / r.setPointV() - 1), Math.abs(r.highestV() / r.setPointV() - 1));
        Ruling ruling = Ruling.on(Uncertain.exact(off), limit.bounds(), List.of());
        return d.value(off, null, "1").outcome(ruling.outcome())
                .reason(Phrases.say("regulation." + ruling.word(), Figures.show(off, "1"),
                        Figures.show(r.setPointV(), "V"), Figures.bounds(limit.bounds(), "1"))).done();
    }

    private record OnePoint(RunPoint point, int index, boolean last, Machine machine, LimitBook limits, Shop shop) {

        void judge(List<Verdict> out) {
            if (point.speedRpm() != null && point.kind() != RunPoint.Kind.SHORT_CIRCUIT) {
                speed(out);
            }
            boolean three = point.lineVolts() != null && point.lineVolts().values().size() == 3;
            if (three && balanced()) {
                try {
                    unbalance(point.lineVolts().values(), out);
                } catch (OutOfRange e) {
                    out.add(draft("unbalance", "title.run-up-unbalance").outcome(Outcome.DOUBTFUL)
                            .reason(e.getMessage()).settle(Phrases.say("settle.repeat")).done());
                }
            } else if (point.lineVolts() != null && balanced()) {
                out.add(draft("unbalance", "title.run-up-unbalance").limit(limits.find("run-up.voltage-unbalance"))
                        .outcome(Outcome.NOT_MEASURED).reason(Phrases.say("run-up.volts-missing")).done());
            }
        }

        private boolean curve() {
            return point.kind() == RunPoint.Kind.OPEN_CIRCUIT_UP || point.kind() == RunPoint.Kind.OPEN_CIRCUIT_DOWN;
        }

        /** Whether line voltages of this point should be balanced: not on short circuit. */
        private boolean balanced() {
            return point.kind() != RunPoint.Kind.SHORT_CIRCUIT;
        }

        private VerdictDraft draft(String what, String title) {
            String kind = point.kind() == null ? "" : Phrases.word("point-kind", point.kind());
            return VerdictDraft.of("run-up.point-" + (index + 1) + "." + what, PART,
                    Phrases.say(title, index + 1, kind)).path("/points/" + index).takenAt(point.at()).current(last)
                    // points of a curve start near residual voltage and are brought to nominal speed: they inform
                    .point(curve() ? null : HoldPoint.RELEASE);
        }

        private void speed(List<Verdict> out) {
            boolean motorOnLoad = machine.mainWinding() == org.copperbook.jobs.winding.WindingRole.MOTOR_STATOR;
            if (motorOnLoad || machine.nominalSpeed().isEmpty()) {
                return;
            }
            double nominal = machine.nominalSpeed().get();
            LimitBook.Applied limit = limits.find("speed.accuracy");
            Bounds band = limit.upper().map(u -> Bounds.between(-u, u)).orElse(null);
            double off = point.speedRpm() / nominal - 1;
            Ruling ruling = Ruling.on(Uncertain.exact(off), band, List.of());
            out.add(draft("speed", "title.run-up-speed").value(off, null, "1").limit(limit, band)
                    .outcome(ruling.outcome())
                    .reason(Phrases.say("run-up.speed", Figures.show(point.speedRpm(), "r/min"),
                            Figures.show(off, "1"), Figures.show(nominal, "r/min"), Figures.bounds(band, "1")))
                    .done());
        }

        private void unbalance(List<Double> v, List<Verdict> out) {
            LimitBook.Applied limit = limits.find("run-up.voltage-unbalance");
            List<MeterUse> meters = v.stream().map(x -> MeterUse.of(x, "V", point.instrument(), point.at(), shop))
                    .toList();
            Uncertain u = Unbalance.ofReadings(meters.stream().map(MeterUse::value).toList(),
                    new SharedTerms(MeterUse.commonGain(meters), 0, 0, 0));
            Ruling ruling = Ruling.on(u, limit.bounds(), meters);
            out.add(draft("unbalance", "title.run-up-unbalance").value(u.value(), ruling.expandedU(), "1").limit(limit)
                    .outcome(ruling.outcome())
                    .reason(Phrases.say("run-up.unbalance." + ruling.word(),
                            Figures.show(u.value(), ruling.expandedU(), "1"), Figures.bounds(limit.bounds(), "1")))
                    .addReason(atNominal(v)).addReason(army(v)).addReason(ruling.objection())
                    .settle(ruling.settle(Phrases.say("settle.voltmeter"))).done());
        }

        /** Voltages at nominal speed: with a fixed exciter field between the first power of speed and the square. */
        private String atNominal(List<Double> v) {
            boolean fixedField = point.source() == RunPoint.Source.BATTERY || point.source() == RunPoint.Source.SEPARATE_DC;
            if (!fixedField || point.speedRpm() == null || !(point.speedRpm() > 0) || machine.nominalSpeed().isEmpty()) {
                return "";
            }
            double f = machine.nominalSpeed().get() / point.speedRpm();
            double mean = (v.get(0) + v.get(1) + v.get(2)) / 3;
            return Phrases.say("run-up.at-nominal", Figures.show(mean * f, "V"), Figures.show(mean * f * f, "V"));
        }

        private String army(List<Double> v) {
            LimitBook.Applied army = limits.find("run-up.voltage-unbalance-army");
            if (!army.isSet() || machine.ratedLineVolts().isEmpty()) {
                return "";
            }
            double spread = Unbalance.spreadOfRated(machine.ratedLineVolts().get(), v.get(0), v.get(1), v.get(2));
            return Phrases.say("run-up.spread", Figures.show(spread, "1"), Figures.bounds(army.bounds(), "1"),
                    army.source());
        }
    }

}
