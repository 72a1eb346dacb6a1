package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.runup.RunUp.BearingTemperature;
import org.copperbook.jobs.runup.RunUp.Mounting;
import org.copperbook.jobs.runup.RunUp.Vibration;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;

/** Vibration by shaft height and mounting, overspeed, and bearings that have come to a steady temperature. */
final class MechanicalCheck implements Check {

    private static final PartKey PART = PartKey.of(PartKind.RUN_UP);
    private static final double NO_RATE = 1e-9;
    private static final double HALF_HOUR = 30;

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        job.runUp().ifPresent(run -> {
            Machine machine = new Machine(job, shop);
            LimitBook limits = new LimitBook(job, shop);
            for (int i = 0; i < run.vibration().size(); i++) {
                out.add(vibration(run, i, machine, limits, shop));
            }
            if (run.overspeed() != null) {
                out.add(overspeed(run.overspeed(), machine, limits));
            }
            if (!run.bearingTemperatures().isEmpty()) {
                out.add(steady(run.bearingTemperatures(), limits));
                out.add(hottest(run.bearingTemperatures(), limits));
            }
        });
        return out;
    }

    private static VerdictDraft draft(String id, String title) {
        return VerdictDraft.of(id, PART, title).point(HoldPoint.RELEASE);
    }

    private static Verdict vibration(RunUp run, int index, Machine machine, LimitBook limits, Shop shop) {
        Vibration v = run.vibration().get(index);
        String end = v.end() == null ? "" : Phrases.word("end", v.end());
        String direction = v.direction() == null ? "" : Phrases.word("direction", v.direction());
        String key = (v.end() == null ? "end" : v.end().name()) + "."
                + (v.direction() == null ? Integer.toString(index + 1) : v.direction().name());
        boolean latest = latest(run.vibration(), index);
        String id = "vibration." + key.toLowerCase(Locale.ROOT).replace('_', '-') + (latest ? "" : "." + (index + 1));
        VerdictDraft d = draft(id, Phrases.say("title.vibration", end, direction)).path("/vibration/" + index)
                .current(latest);
        Optional<String> band = machine.shaftHeightMm().flatMap(MechanicalCheck::band);
        if (band.isEmpty()) {
            return d.value(v.mmPerSecond(), null, "mm/s").outcome(Outcome.NO_LIMIT_SET)
                    .limitText(Phrases.say("limit.none")).reason(Phrases.say("vibration.no-shaft-height"))
                    .settle(Phrases.say("settle.shaft-height")).done();
        }
        String mounting = run.mounting() == Mounting.FREE ? "free" : "rigid";
        LimitBook.Applied limit = grade(limits, mounting, band.get());
        d.limit(limit);
        if (v.mmPerSecond() == null) {
            return d.outcome(limit.isSet() ? Outcome.NOT_MEASURED : Outcome.NO_LIMIT_SET)
                    .reason(Phrases.say("vibration.not-read")).done();
        }
        MeterUse meter = MeterUse.of(v.mmPerSecond(), "mm/s", v.instrument(), null, shop);
        Ruling ruling = Ruling.on(meter.value(), limit.bounds(), List.of(meter));
        Outcome outcome = ruling.outcome();
        String settle = ruling.settle(Phrases.say("settle.repeat"));
        if (run.mounting() == null && outcome == Outcome.FAILS) {
            Ruling free = Ruling.on(meter.value(), grade(limits, "free", band.get()).bounds(), List.of(meter));
            if (free.outcome() != Outcome.FAILS) {
                outcome = Outcome.DOUBTFUL;
                settle = Phrases.say("settle.mounting");
            }
        }
        return d.value(v.mmPerSecond(), ruling.expandedU(), "mm/s").outcome(outcome)
                .reason(Phrases.say("vibration." + ResistanceCheck.word(outcome),
                        Figures.show(v.mmPerSecond(), ruling.expandedU(), "mm/s"),
                        Figures.bounds(limit.bounds(), "mm/s")))
                .addReason(run.mounting() == null ? Phrases.say("vibration.mounting-not-said") : "")
                .addReason(ruling.objection()).settle(settle).done();
    }

    /** A later reading at the same bearing in the same direction replaces an earlier one. */
    private static boolean latest(List<Vibration> all, int index) {
        Vibration v = all.get(index);
        for (int i = index + 1; i < all.size(); i++) {
            if (v.end() != null && v.direction() != null && all.get(i).end() == v.end()
                    && all.get(i).direction() == v.direction()) {
                return false;
            }
        }
        return true;
    }

    private static LimitBook.Applied grade(LimitBook limits, String mounting, String band) {
        LimitBook.Applied a = limits.find("vibration.a." + mounting + "." + band);
        LimitBook.Applied b = limits.find("vibration.b." + mounting + "." + band);
        return !a.decides() && b.decides() ? b : a;
    }

    private static Optional<String> band(double mm) {
        if (mm < 56) {
            return Optional.empty();
        }
        return Optional.of(mm <= 132 ? "56-132" : mm <= 280 ? "132-280" : "above-280");
    }

    private static Verdict overspeed(RunUp.Overspeed o, Machine machine, LimitBook limits) {
        LimitBook.Applied factor = limits.find("overspeed.speed");
        Optional<Double> seconds = limits.find("overspeed.seconds").lower();
        Optional<Double> wanted = machine.nominalSpeed().flatMap(n -> factor.lower().map(f -> f * n));
        VerdictDraft d = draft("run-up.overspeed", Phrases.say("title.overspeed")).path("/overspeed")
                .value(o.speedRpm(), null, "r/min").limit(factor, wanted.map(Bounds::atLeast).orElse(null));
        wanted.ifPresent(w -> d.limitText(Phrases.say("overspeed.limit", Figures.show(w, "r/min"),
                Figures.show(seconds.orElse(0.0), "s"))));
        if (Boolean.FALSE.equals(o.sound())) {
            return d.outcome(Outcome.FAILS).reason(Phrases.say("overspeed.damage")).done();
        }
        if (seconds.isEmpty() || !factor.isSet()) {
            return d.outcome(Outcome.NO_LIMIT_SET).settle(Phrases.say("settle.judgement"))
                    .reason(Phrases.say("limit.missing", factor.isSet() ? "overspeed.seconds" : factor.id())).done();
        }
        if (wanted.isEmpty()) {
            return d.outcome(Outcome.NO_LIMIT_SET).reason(Phrases.say("run.nominal-speed-missing"))
                    .settle(Phrases.say("settle.speed")).done();
        }
        if (o.sound() == null || o.speedRpm() == null || o.seconds() == null) {
            return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("overspeed.incomplete")).done();
        }
        boolean reached = o.speedRpm() >= wanted.get() && o.seconds() >= seconds.orElse(0.0);
        return d.outcome(reached ? Outcome.MEETS : Outcome.DOUBTFUL)
                .reason(Phrases.say(reached ? "overspeed.held" : "overspeed.less", Figures.show(o.speedRpm(), "r/min"),
                        Figures.show(o.seconds(), "s")))
                .settle(reached ? "" : Phrases.say("settle.overspeed")).done();
    }

    /**
     * Change over the air per hour over the last half hour or more (IEC 60034-1, thermal equilibrium), the faster of the two
     * bearings; readings that span less are no proof.
     */
    private static Verdict steady(List<BearingTemperature> all, LimitBook limits) {
        LimitBook.Applied limit = limits.find("bearing.steady");
        VerdictDraft d = draft("bearing.steady", Phrases.say("title.bearing-steady")).limit(limit)
                .path("/bearingTemperatures/" + (all.size() - 1));
        BearingTemperature b = all.get(all.size() - 1);
        BearingTemperature a = halfAnHourBefore(all);
        if (a == null || a.minutes() == null || b.minutes() == null || b.minutes() <= a.minutes()) {
            return d.outcome(limit.isSet() ? Outcome.NOT_MEASURED : Outcome.NO_LIMIT_SET)
                    .reason(Phrases.say("bearing.too-few")).done();
        }
        Double drive = rate(a, b, a.driveEndCelsius(), b.driveEndCelsius());
        Double other = rate(a, b, a.nonDriveEndCelsius(), b.nonDriveEndCelsius());
        if (drive == null && other == null) {
            return d.outcome(limit.isSet() ? Outcome.NOT_MEASURED : Outcome.NO_LIMIT_SET)
                    .reason(Phrases.say("bearing.too-few")).done();
        }
        double rate = drive == null ? other : other == null || Math.abs(drive) >= Math.abs(other) ? drive : other;
        Ruling ruling = Ruling.on(Uncertain.exact(Math.abs(rate)), limit.bounds(), List.of());
        return d.value(rate, null, "K/h").outcome(ruling.outcome())
                .reason(Phrases.say("bearing." + ruling.word(), Figures.show(rate, "K/h"),
                        Figures.bounds(limit.bounds(), "K/h")))
                .settle(ruling.outcome() == Outcome.FAILS ? Phrases.say("settle.run-longer") : "").done();
    }

    private static BearingTemperature halfAnHourBefore(List<BearingTemperature> all) {
        Double last = all.get(all.size() - 1).minutes();
        for (int i = all.size() - 2; last != null && i >= 0; i--) {
            Double then = all.get(i).minutes();
            if (then != null && last - then >= HALF_HOUR - 1e-6) {
                return all.get(i);
            }
        }
        return null;
    }

    private static Double rate(BearingTemperature a, BearingTemperature b, Double from, Double to) {
        if (from == null || to == null) {
            return null;
        }
        double air = a.ambientCelsius() == null || b.ambientCelsius() == null ? 0
                : b.ambientCelsius() - a.ambientCelsius();
        double perHour = (to - from - air) / ((b.minutes() - a.minutes()) / 60);
        // what is left over of decimal fractions in binary is no rate
        return Math.abs(perHour) < NO_RATE ? 0.0 : perHour;
    }

    private static Verdict hottest(List<BearingTemperature> all, LimitBook limits) {
        LimitBook.Applied limit = limits.find("bearing.temperature");
        VerdictDraft d = draft("bearing.temperature", Phrases.say("title.bearing-temperature")).limit(limit)
                .path("/bearingTemperatures");
        double hottest = Double.NEGATIVE_INFINITY;
        for (BearingTemperature t : all) {
            hottest = Math.max(hottest, t.driveEndCelsius() == null ? hottest : t.driveEndCelsius());
            hottest = Math.max(hottest, t.nonDriveEndCelsius() == null ? hottest : t.nonDriveEndCelsius());
        }
        if (Double.isInfinite(hottest)) {
            return d.outcome(limit.isSet() ? Outcome.NOT_MEASURED : Outcome.NO_LIMIT_SET)
                    .reason(Phrases.say("bearing.too-few")).done();
        }
        Ruling ruling = Ruling.on(Uncertain.exact(hottest), limit.bounds(), List.of());
        return d.value(hottest, null, "degC").outcome(ruling.outcome())
                .reason(Phrases.say("bearing.hottest", Figures.show(hottest, "degC"),
                        Figures.bounds(limit.bounds(), "degC"))).done();
    }
}
