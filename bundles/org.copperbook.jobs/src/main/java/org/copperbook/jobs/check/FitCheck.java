package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.fit.ShaftRunout;
import org.copperbook.calc.fit.ToleranceZone;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.inspection.BearingFit;
import org.copperbook.jobs.inspection.Runout;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.shop.Shop;

/**
 * Bearing seats against their tolerance zone and runout against its table; limits of the maker's or the workshop's own go
 * before both. What no table in print says has no limit set.
 */
final class FitCheck implements Check {

    private static final PartKey PART = PartKey.of(PartKind.INSPECTION);
    private static final double MICRO_OF_MM = 1000;
    private static final double MM = 1e-3;
    private static final String MICROMETRE = "µm";

    /** Bounds with where they come from, or why there are none. */
    private record Limits(Bounds micrometres, String source, String trouble) {

        static Limits none(String why) {
            return new Limits(null, "", why);
        }
    }

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        job.inspection().ifPresent(i -> {
            for (int n = 0; n < i.fits().size(); n++) {
                out.add(fit(i.fits().get(n), n, shop));
            }
            for (int n = 0; n < i.runouts().size(); n++) {
                out.add(runout(i.runouts().get(n), n, shop));
            }
        });
        return out;
    }

    private static String end(RunUp.End end) {
        return end == null ? "" : Phrases.word("end", end);
    }

    private static String id(Enum<?> word) {
        return word == null ? "" : "." + word.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Verdict fit(BearingFit f, int index, Shop shop) {
        String title = Phrases.say("title.fit", f.seat() == null ? "" : Phrases.word("seat", f.seat()), end(f.end())).strip();
        VerdictDraft d = VerdictDraft.of("fit" + id(f.end()) + id(f.seat()), PART, title).path("/fits/" + index)
                .takenAt(f.at());
        List<Double> read = Stream.of(f.measuredMm(), f.acrossMm()).filter(Objects::nonNull).toList();
        Limits limits = limits(f);
        show(d, limits);
        if (read.isEmpty() || f.nominalMm() == null) {
            return d.outcome(limits.micrometres() == null ? Outcome.NO_LIMIT_SET : Outcome.NOT_MEASURED)
                    .reason(Phrases.say("fit.not-read")).addReason(limits.trouble()).done();
        }
        Ruling worst = null;
        double at = 0;
        for (double mm : read) {
            MeterUse meter = MeterUse.of(mm, "mm", f.instrument(), f.at(), shop);
            double off = (mm - f.nominalMm()) * MICRO_OF_MM;
            Ruling ruling = Ruling.on(new Uncertain(off, meter.value().u() * MICRO_OF_MM), limits.micrometres(), List.of(meter));
            if (worst == null || weight(ruling.outcome()) > weight(worst.outcome())) {
                worst = ruling;
                at = off;
            }
        }
        String shown = Phrases.say("fit.off", Figures.show(at, worst.expandedU(), MICROMETRE), Figures.number(f.nominalMm(), 6));
        return d.value(at, worst.expandedU(), MICROMETRE).outcome(worst.outcome())
                .reason(Phrases.say("fit." + worst.word(), shown, Figures.bounds(limits.micrometres(), MICROMETRE)))
                .addReason(limits.trouble()).addReason(read.size() == 2 ? Phrases.say("fit.round",
                        Figures.show(Math.abs(read.get(0) - read.get(1)) * MICRO_OF_MM, MICROMETRE)) : "")
                .addReason(worst.objection()).settle(worst.outcome() == Outcome.FAILS ? Phrases.say("settle.fit")
                        : worst.settle(Phrases.say("settle.finer"))).done();
    }

    private static int weight(Outcome o) {
        return switch (o) {
            case FAILS -> 3;
            case DOUBTFUL -> 2;
            default -> 1;
        };
    }

    private static void show(VerdictDraft d, Limits limits) {
        d.bounds(limits.micrometres()).limitText(Figures.bounds(limits.micrometres(), MICROMETRE)).source(limits.source());
    }

    private static Limits limits(BearingFit f) {
        if (f.nominalMm() == null) {
            return Limits.none(Phrases.say("fit.no-nominal"));
        }
        if (f.lowerMm() != null || f.upperMm() != null) {
            if (f.lowerMm() != null && f.upperMm() != null && f.lowerMm() > f.upperMm()) {
                return Limits.none(Phrases.say("fit.crossed"));
            }
            return new Limits(new Bounds(off(f.lowerMm(), f.nominalMm()), off(f.upperMm(), f.nominalMm())),
                    Phrases.say("fit.own", f.note() == null ? "" : f.note()).strip(), "");
        }
        Optional<ToleranceZone> zone = ToleranceZone.of(f.zone());
        if (zone.isEmpty()) {
            return Limits.none(f.zone() == null || f.zone().isBlank() ? Phrases.say("fit.no-zone")
                    : Phrases.say("fit.unknown-zone", f.zone()));
        }
        if (f.seat() != null && zone.get().ofShaft() != (f.seat() == BearingFit.Seat.SHAFT)) {
            return Limits.none(Phrases.say(zone.get().ofShaft() ? "fit.zone-of-shaft" : "fit.zone-of-housing", f.zone()));
        }
        try {
            return zone.get().at(f.nominalMm() * MM)
                    .map(z -> new Limits(Bounds.between(round(z.lower()), round(z.upper())),
                            Phrases.say("fit.source", zone.get().sign()), ""))
                    .orElseGet(() -> Limits.none(Phrases.say("fit.not-in-print", zone.get().sign())));
        } catch (OutOfRange e) {
            return Limits.none(e.getMessage());
        }
    }

    /** Metres as micrometres without the last digits of binary fractions. */
    private static double round(double metres) {
        return Math.rint(metres * 1e7) / 10;
    }

    private static Double off(Double mm, double nominal) {
        return mm == null ? null : Double.valueOf(Math.rint((mm - nominal) * 1e5) / 100);
    }

    private static Verdict runout(Runout r, int index, Shop shop) {
        String title = Phrases.say("title.runout", r.place() == null ? "" : Phrases.word("runout-place", r.place()),
                end(r.end())).strip();
        VerdictDraft d = VerdictDraft.of("runout" + id(r.end()) + id(r.place()), PART, title).path("/runouts/" + index)
                .takenAt(r.at());
        Limits limits = limits(r);
        show(d, limits);
        if (r.runoutMm() == null) {
            return d.outcome(limits.micrometres() == null ? Outcome.NO_LIMIT_SET : Outcome.NOT_MEASURED)
                    .reason(Phrases.say("fit.not-read")).addReason(limits.trouble()).done();
        }
        MeterUse meter = MeterUse.of(r.runoutMm(), "mm", r.instrument(), r.at(), shop);
        double off = r.runoutMm() * MICRO_OF_MM;
        Ruling ruling = Ruling.on(new Uncertain(off, meter.value().u() * MICRO_OF_MM), limits.micrometres(), List.of(meter));
        return d.value(off, ruling.expandedU(), MICROMETRE).outcome(ruling.outcome())
                .reason(Phrases.say("fit." + ruling.word(), Figures.show(off, ruling.expandedU(), MICROMETRE),
                        Figures.bounds(limits.micrometres(), MICROMETRE)))
                .addReason(limits.trouble()).addReason(ruling.objection())
                .settle(ruling.outcome() == Outcome.FAILS ? Phrases.say("settle.runout")
                        : ruling.settle(Phrases.say("settle.finer"))).done();
    }

    private static Limits limits(Runout r) {
        if (r.limitMm() != null) {
            return new Limits(Bounds.atMost(round(r.limitMm() * MM)), Phrases.say("fit.own", r.note() == null ? "" : r.note())
                    .strip(), "");
        }
        if (r.place() != Runout.Place.SHAFT_EXTENSION) {
            return Limits.none(Phrases.say("runout.no-table"));
        }
        if (r.diameterMm() == null || !(r.diameterMm() > 0)) {
            return Limits.none(Phrases.say("runout.no-diameter"));
        }
        return ShaftRunout.extension(r.diameterMm() * MM)
                .map(m -> new Limits(Bounds.atMost(round(m)), Phrases.say("runout.source"), ""))
                .orElseGet(() -> Limits.none(Phrases.say("runout.outside")));
    }
}
