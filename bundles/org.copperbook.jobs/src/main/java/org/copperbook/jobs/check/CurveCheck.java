package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.calc.runup.OpenCircuitCurve;
import org.copperbook.calc.runup.ShortCircuitLine;
import org.copperbook.calc.runup.ShortCircuitRatio;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;

/** What the open- and short-circuit curves say: air-gap line, saturation, reactance, and how they lie to a stored curve. */
final class CurveCheck implements Check {

    private static final PartKey PART = PartKey.of(PartKind.RUN_UP);
    private static final double ROOT_3 = Math.sqrt(3);

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        RunUpCurves curves = RunUpCurves.of(job, shop);
        if (!curves.problem().isEmpty()) {
            out.add(draft("run-up.curve", "title.curve").outcome(Outcome.DOUBTFUL).reason(curves.problem())
                    .settle(Phrases.say("settle.repeat")).point(HoldPoint.RELEASE).done());
            return out;
        }
        LimitBook limits = new LimitBook(job, shop);
        Machine machine = new Machine(job, shop);
        curves.openCircuit().ifPresent(open -> {
            airGap(open, curves, machine, out);
            hysteresis(open, curves, out);
            stored(open, curves, limits, out);
        });
        reactances(curves, machine, job.nameplate().orElse(null), out);
        return out;
    }

    private static VerdictDraft draft(String id, String title) {
        return VerdictDraft.of(id, PART, Phrases.say(title)).path("/points");
    }

    /** Figures of the machine that no profile limits: they inform. */
    private static VerdictDraft figure(String id, String title, double value, String unit) {
        return draft(id, title).value(value, null, unit).outcome(Outcome.NO_LIMIT_SET).limitText(Phrases.say("limit.none"))
                .source("IEC 60034-4-1; IEEE 115");
    }

    private static void airGap(OpenCircuitCurve open, RunUpCurves curves, Machine machine, List<Verdict> out) {
        if (curves.airGapSlope().isEmpty()) {
            return;
        }
        double slope = curves.airGapSlope().getAsDouble();
        out.add(figure("run-up.curve.air-gap", "title.air-gap", slope, "V/A").reason(Phrases.say("curve.air-gap",
                Figures.show(slope, "V/A"), Figures.show(RunUpCurves.LOWER_PART, "1"), field(curves))).done());
        machine.ratedLineVolts().flatMap(u -> RunUpCurves.attempt(() -> open.saturationFactor(u, slope))).ifPresent(s ->
                out.add(figure("run-up.curve.saturation", "title.saturation", s, "").reason(Phrases.say("curve.saturation",
                        Figures.show(s, ""), Figures.show(open.fieldFor(machine.ratedLineVolts().get()), "A"))).done()));
    }

    private static String field(RunUpCurves curves) {
        return Phrases.say(curves.mainField() ? "curve.main-field" : "curve.exciter-field");
    }

    /** The falling branch lies above the rising one by the iron's hysteresis; the other way round the field was not held. */
    private static void hysteresis(OpenCircuitCurve open, RunUpCurves curves, List<Verdict> out) {
        double worst = 0;
        int compared = 0;
        for (RunUpCurves.Node n : curves.falling()) {
            Optional<Double> rising = RunUpCurves.attempt(() -> open.linear(n.field()));
            if (rising.isPresent() && rising.get() > 0) {
                double d = (n.value() - rising.get()) / open.highestVolts();
                worst = Math.abs(d) > Math.abs(worst) ? d : worst;
                compared++;
            }
        }
        if (compared > 0) {
            out.add(figure("run-up.curve.falling", "title.falling", worst, "1").reason(Phrases.say(
                    worst < -0.005 ? "curve.falling-below" : "curve.falling", Figures.show(worst, "1"))).done());
        }
    }

    private static void stored(OpenCircuitCurve open, RunUpCurves curves, LimitBook limits, List<Verdict> out) {
        Optional<Double> off = curves.storedCurve().flatMap(s -> RunUpCurves.attempt(() -> open.greatestDeviationFrom(s)));
        if (off.isEmpty()) {
            return;
        }
        LimitBook.Applied limit = limits.find("run-up.curve-deviation");
        Bounds band = limit.upper().map(u -> Bounds.between(-u, u)).orElse(null);
        Ruling ruling = Ruling.on(Uncertain.exact(off.get()), band, List.of());
        out.add(draft("run-up.curve.stored", "title.curve-stored").value(off.get(), null, "1").limit(limit, band)
                .outcome(ruling.outcome()).point(HoldPoint.RELEASE).reason(Phrases.say("curve.stored",
                        Figures.show(off.get(), "1"), Figures.bounds(band, "1")))
                .settle(ruling.outcome() == Outcome.FAILS ? Phrases.say("settle.curve") : "").done());
    }

    private static void reactances(RunUpCurves curves, Machine machine, Nameplate plate, List<Verdict> out) {
        Optional<ShortCircuitLine> line = curves.shortCircuit();
        Optional<Double> u = machine.ratedLineVolts();
        Optional<Double> amps = ratedAmps(plate);
        if (line.isEmpty() || curves.shorted().isEmpty() || u.isEmpty() || amps.isEmpty()) {
            return;
        }
        Optional<Double> forAmps = RunUpCurves.attempt(() -> line.get().fieldFor(amps.get()));
        if (forAmps.isEmpty()) {
            return;
        }
        curves.airGapSlope().ifPresent(slope -> {
            double xd = slope * forAmps.get() / u.get();
            out.add(figure("run-up.short-circuit.xd", "title.xd", xd, "").reason(Phrases.say("curve.xd",
                    Figures.show(xd, ""), Figures.show(xd * u.get() / (ROOT_3 * amps.get()), "ohm"), field(curves))).done());
        });
        curves.openCircuit().flatMap(o -> RunUpCurves.attempt(() -> o.fieldFor(u.get()))).ifPresent(forVolts -> {
            double scr = ShortCircuitRatio.byFieldCurrents(forVolts, forAmps.get());
            double saturated = u.get() / (ROOT_3 * line.get().amperes(forVolts));
            out.add(figure("run-up.short-circuit.ratio", "title.scr", scr, "").reason(Phrases.say("curve.scr",
                    Figures.show(scr, ""), Figures.show(forVolts, "A"), Figures.show(forAmps.get(), "A"),
                    Figures.show(saturated, "ohm"))).done());
        });
    }

    private static Optional<Double> ratedAmps(Nameplate plate) {
        if (plate == null) {
            return Optional.empty();
        }
        if (plate.currentA() != null && plate.currentA() > 0) {
            return Optional.of(plate.currentA());
        }
        boolean known = plate.apparentPowerVA() != null && plate.voltageV() != null && plate.voltageV() > 0;
        return known ? Optional.of(plate.apparentPowerVA() / (ROOT_3 * plate.voltageV())) : Optional.empty();
    }
}
