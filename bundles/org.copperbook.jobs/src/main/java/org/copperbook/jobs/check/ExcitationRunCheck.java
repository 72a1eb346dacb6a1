package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.excitation.ExpectedOutput;
import org.copperbook.calc.excitation.RunLimits;
import org.copperbook.calc.excitation.SeparateExcitationRun;
import org.copperbook.calc.excitation.SeparateExcitationRun.Doubt;
import org.copperbook.calc.excitation.SeparateExcitationRun.Interpretation;
import org.copperbook.calc.excitation.SeparateExcitationRun.Row;
import org.copperbook.calc.resistance.Unbalance;
import org.copperbook.calc.uncertainty.SharedTerms;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.inspection.ExcitationRun;
import org.copperbook.jobs.reading.Observed;
import org.copperbook.jobs.shop.Shop;

/**
 * Every separate-excitation run: output against expected, balance between phases, speed, and what the three say together.
 * Common practice, no source.
 */
final class ExcitationRunCheck implements Check {

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        job.inspection().ifPresent(i -> {
            List<ExcitationRun> runs = i.excitationRuns();
            for (int n = 0; n < runs.size(); n++) {
                new OneRun(runs.get(n), n, n == runs.size() - 1, new Machine(job, shop), new LimitBook(job, shop),
                        shop).judge(out);
            }
        });
        return out;
    }

    private record OneRun(ExcitationRun run, int index, boolean last, Machine machine, LimitBook limits, Shop shop) {

        void judge(List<Verdict> out) {
            List<Observed> seen = new ArrayList<>();
            if (run.lineVolts() != null) {
                seen.add(run.lineVolts().a());
                seen.add(run.lineVolts().b());
                seen.add(run.lineVolts().c());
            }
            Optional<String> unread = unread(seen);
            if (unread.isPresent()) {
                out.add(draft("", "title.run").outcome(Outcome.NOT_MEASURED).reason(unread.get())
                        .settle(Phrases.say("settle.three-volts")).done());
                return;
            }
            List<MeterUse> meters = seen.stream().map(this::meter).toList();
            try {
                judge(meters, out);
            } catch (OutOfRange e) {
                out.add(draft("", "title.run").outcome(Outcome.NOT_MEASURED).reason(e.getMessage())
                        .settle(Phrases.say("settle.repeat")).done());
            }
        }

        private VerdictDraft draft(String what, String title) {
            String number = Integer.toString(index + 1);
            return VerdictDraft.of("excitation-run." + number + (what.isEmpty() ? "" : "." + what),
                    PartKey.of(PartKind.INSPECTION), Phrases.say(title, number)).path("/excitationRuns/" + index)
                    .takenAt(run.at()).current(last);
        }

        private MeterUse meter(Observed o) {
            if (o.kind() == Observed.Kind.BELOW_RESOLUTION) {
                MeterUse zero = MeterUse.of(0, "V", run.instrument(), run.at(), shop);
                double count = o.value() != null ? Math.abs(o.value()) : zero.resolution();
                return zero.shifted(count / 2, count / 2 / Math.sqrt(3));
            }
            return MeterUse.of(o.value(), "V", run.instrument(), run.at(), shop);
        }

        private Optional<String> unread(List<Observed> seen) {
            if (seen.size() < 3 || seen.contains(null)) {
                return Optional.of(Phrases.say("run.volts-missing"));
            }
            for (Observed o : seen) {
                switch (o.kind()) {
                    case ABOVE_RANGE -> {
                        return Optional.of(Phrases.say("run.volts-above-range"));
                    }
                    case UNSTABLE -> {
                        return Optional.of(Phrases.say("run.volts-unstable"));
                    }
                    case NOT_POSSIBLE -> {
                        return Optional.of(Phrases.say("run.volts-not-possible"));
                    }
                    default -> {
                        // a value, or below the resolution, which is a reading of nothing
                    }
                }
            }
            return Optional.empty();
        }

        private void judge(List<MeterUse> meters, List<Verdict> out) {
            Optional<String> unset = limits.firstUnset("excitation.output-band", "excitation.balance",
                    "excitation.residual", "excitation.speed-band", "speed.accuracy");
            if (unset.isPresent()) {
                balanceAlone(meters, out);
                out.add(draft("", "title.run").outcome(Outcome.NO_LIMIT_SET).limitText(Phrases.say("limit.none"))
                        .reason(Phrases.say("limit.missing", unset.get())).settle(Phrases.say("settle.judgement"))
                        .done());
                return;
            }
            Optional<Double> nominal = machine.nominalSpeed();
            speed(nominal, out);
            if (run.speedRpm() == null || run.speedRpm() <= 0 || nominal.isEmpty()) {
                balanceAlone(meters, out);
                out.add(draft("", "title.run").outcome(Outcome.NOT_MEASURED)
                        .reason(Phrases.say(nominal.isEmpty() ? "run.nominal-speed-missing" : "run.speed-missing"))
                        .settle(Phrases.say("settle.speed")).done());
                return;
            }
            ExpectedOutput expected = expected();
            Interpretation said = SeparateExcitationRun.interpret(new SeparateExcitationRun.Measured(
                    meters.get(0).value(), meters.get(1).value(), meters.get(2).value(), speedU(), nominal.get(),
                    new SharedTerms(MeterUse.commonGain(meters), 0, 0, 0)), expected, runLimits());
            out.add(output(said, meters, expected));
            if (said.row() != Row.NONE) {
                out.add(balance(said.unbalance(), meters));
            }
            out.add(together(said, meters));
        }

        private RunLimits runLimits() {
            return new RunLimits(upper("excitation.output-band"), upper("excitation.balance"),
                    upper("excitation.residual"), upper("excitation.speed-band"));
        }

        private double upper(String id) {
            return limits.find(id).upper().orElseThrow(() -> new OutOfRange("limit " + id, "without upper bound",
                    "limits with an upper bound", "the run is judged by it"));
        }

        private Uncertain speedU() {
            double relative = run.speedPercentU() != null ? Math.abs(run.speedPercentU()) / 100
                    : upper("speed.accuracy") / Math.sqrt(3);
            return new Uncertain(run.speedRpm(), relative * run.speedRpm());
        }

        private ExpectedOutput expected() {
            Double rated = machine.ratedLineVolts().orElse(null);
            if (run.expectedFrom() == null) {
                return new ExpectedOutput.Unknown(rated);
            }
            return switch (run.expectedFrom()) {
                case NOMINAL_BY_PRACTICE -> run.expectedV() != null ? new ExpectedOutput.Nominal(run.expectedV())
                        : rated != null ? new ExpectedOutput.Nominal(rated) : new ExpectedOutput.Unknown(null);
                case MAKERS_POINT, STORED_CURVE -> run.expectedV() != null
                        ? new ExpectedOutput.StoredPoint(Uncertain.exact(run.expectedV()))
                        : new ExpectedOutput.Unknown(rated);
            };
        }

        private void speed(Optional<Double> nominal, List<Verdict> out) {
            LimitBook.Applied limit = limits.find("excitation.speed-band");
            VerdictDraft d = draft("speed", "title.run-speed").limit(limit,
                    limit.upper().map(u -> Bounds.between(-u, u)).orElse(null));
            if (run.speedRpm() == null || run.speedRpm() <= 0 || nominal.isEmpty()) {
                return;
            }
            Uncertain off = speedU().times(1 / nominal.get()).plus(-1);
            Bounds band = limit.upper().map(u -> Bounds.between(-u, u)).orElse(null);
            Ruling ruling = Ruling.on(off, band, List.of());
            out.add(d.value(off.value(), ruling.expandedU(), "1").outcome(ruling.outcome())
                    .reason(Phrases.say("run.speed", Figures.show(run.speedRpm(), "r/min"),
                            Figures.show(off.value(), ruling.expandedU(), "1"),
                            Figures.show(nominal.get(), "r/min"), Figures.bounds(band, "1")))
                    .settle(ruling.outcome() == Outcome.MEETS ? "" : Phrases.say("settle.run-speed")).done());
        }

        private void balanceAlone(List<MeterUse> meters, List<Verdict> out) {
            Uncertain u = Unbalance.ofReadings(meters.stream().map(MeterUse::value).toList(),
                    new SharedTerms(MeterUse.commonGain(meters), 0, 0, 0));
            out.add(balance(u, meters));
        }

        private Verdict balance(Uncertain unbalance, List<MeterUse> meters) {
            LimitBook.Applied limit = limits.find("excitation.balance");
            Ruling ruling = Ruling.on(unbalance, limit.bounds(), meters);
            String neutral = neutral();
            return draft("balance", "title.run-balance").value(unbalance.value(), ruling.expandedU(), "1").limit(limit)
                    .outcome(ruling.outcome()).reason(Phrases.say("run.balance." + ruling.word(),
                            Figures.show(unbalance.value(), ruling.expandedU(), "1"),
                            Figures.bounds(limit.bounds(), "1")))
                    .addReason(neutral).addReason(ruling.objection())
                    .settle(ruling.settle(Phrases.say("settle.voltmeter"))).done();
        }

        /** The line-to-neutral unbalance beside it, where all three were read. */
        private String neutral() {
            List<Double> n = run.neutralVolts() == null ? List.of() : run.neutralVolts().values();
            boolean usable = n.size() == 3 && n.stream().allMatch(v -> v > 0);
            return usable ? Phrases.say("run.neutral", Figures.show(
                    Unbalance.ofMean(n.get(0), n.get(1), n.get(2)), "1")) : "";
        }

        private Verdict output(Interpretation said, List<MeterUse> meters, ExpectedOutput expected) {
            LimitBook.Applied limit = limits.find("excitation.output-band");
            Bounds band = limit.upper().map(u -> Bounds.between(1 - u, 1 + u)).orElse(null);
            VerdictDraft d = draft("output", "title.run-output");
            if (said.outputLinear() == null) {
                return d.limit(limit, band).outcome(Outcome.DOUBTFUL).reason(Phrases.say("run.expected-unknown"))
                        .settle(Phrases.say("settle.expected")).done();
            }
            boolean objected = MeterUse.firstObjection(meters).isPresent();
            Outcome o = said.output().outcome();
            Outcome guarded = o == Outcome.MEETS && (objected || !Boolean.TRUE.equals(run.regulatorIsolated()))
                    ? Outcome.DOUBTFUL : o;
            double middle = (said.outputLinear().value() + said.outputSquare().value()) / 2;
            double low = Math.min(said.outputLinear().low(2), said.outputSquare().low(2));
            double high = Math.max(said.outputLinear().high(2), said.outputSquare().high(2));
            String origin = expected instanceof ExpectedOutput.Nominal ? "run.expected.nominal" : "run.expected.stored";
            return d.value(middle, Math.max(high - middle, middle - low), "1").limit(limit, band).outcome(guarded)
                    .reason(Phrases.say("run.output", Figures.show(said.outputLinear().value(), "1"),
                            Figures.show(said.outputSquare().value(), "1"), Phrases.say(origin),
                            Figures.bounds(band, "1")))
                    .addReason(MeterUse.firstObjection(meters).map(MeterUse::objection).orElse(""))
                    .settle(guarded == Outcome.DOUBTFUL ? Phrases.say("settle.run-output") : "").done();
        }

        private Verdict together(Interpretation said, List<MeterUse> meters) {
            List<String> doubts = new ArrayList<>();
            for (Doubt doubt : said.doubts()) {
                doubts.add(Phrases.word("run.doubt", doubt));
            }
            if (!Boolean.TRUE.equals(run.regulatorIsolated())) {
                doubts.add(Phrases.say("run.doubt.regulator"));
            }
            MeterUse.firstObjection(meters).ifPresent(m -> doubts.add(m.objection()));
            String suspects = said.suspects().stream().map(s -> Phrases.word("suspect", s))
                    .collect(Collectors.joining(", "));
            String others = said.rows().stream().skip(1).map(r -> Phrases.word("run.row-short", r))
                    .collect(Collectors.joining("; "));
            VerdictDraft d = draft("", "title.run").limitText(Phrases.say("run.table"))
                    .source(limits.find("excitation.output-band").source())
                    .outcome(outcome(said.row(), !doubts.isEmpty()))
                    .reason(Phrases.word("run.row", said.row()));
            if (!others.isEmpty()) {
                d.addReason(Phrases.say("run.also", others));
            }
            doubts.forEach(d::addReason);
            return d.settle(Phrases.say("run.look-at", suspects)).done();
        }

        private static Outcome outcome(Row row, boolean doubtful) {
            if (doubtful || row == Row.HIGH) {
                return Outcome.DOUBTFUL;
            }
            return row == Row.ALL_SOUND ? Outcome.MEETS : Outcome.FAILS;
        }
    }
}
