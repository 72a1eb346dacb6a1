package org.copperbook.jobs.check;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.excitation.DiodeCheck;
import org.copperbook.calc.excitation.DiodeFinding;
import org.copperbook.calc.excitation.DiodeLimits;
import org.copperbook.calc.excitation.DiodeReading;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.reading.Observed;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.jobs.rectifier.DiodePosition;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;

/**
 * Each diode by its forward and reverse reading, as found and as left. Shorted and good are said of isolated readings
 * only; a reading whose leads are not recorded as lifted counts as in circuit.
 */
final class DiodeReadingCheck implements Check {

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        job.rectifier().ifPresent(set -> {
            LimitBook book = new LimitBook(job, shop);
            Optional<String> unset = unset(book);
            if (unset.isPresent()) {
                out.add(VerdictDraft.of("diode.limits", PartKey.of(PartKind.RECTIFIER), Phrases.say("title.diode-limits"))
                        .outcome(Outcome.NO_LIMIT_SET).limitText(Phrases.say("limit.none"))
                        .reason(Phrases.say("limit.missing", unset.get())).settle(Phrases.say("settle.judgement"))
                        .point(HoldPoint.RECTIFIER_COMPLETE).done());
                return;
            }
            DiodeLimits limits = limits(book);
            for (int i = 0; i < set.positions().size(); i++) {
                DiodePosition p = set.positions().get(i);
                if (p.asFoundForward() != null || p.asFoundReverse() != null) {
                    out.add(verdict(p, i, true, limits, shop, null));
                }
                if (p.asLeftForward() != null || p.asLeftReverse() != null || mustBeReadAsLeft(set, p, limits)) {
                    out.add(verdict(p, i, false, limits, shop, HoldPoint.RECTIFIER_COMPLETE));
                }
            }
        });
        return out;
    }

    /** A fitted set is read again; an old one that stays only where it was not already found good in isolation. */
    private static boolean mustBeReadAsLeft(RectifierSet set, DiodePosition p, DiodeLimits limits) {
        return set.fitted() != null || finding(p, true, limits).state() != DiodeFinding.State.GOOD;
    }

    /** The first limit without which no diode can be classed. */
    static Optional<String> unset(LimitBook book) {
        return book.firstUnset("diode.conducts", "diode.blocks", "diode.forward-volts", "diode.short-volts");
    }

    /** The limits by which readings are classed, from the profile; a bound that the entry lacks is calc's own. */
    static DiodeLimits limits(LimitBook book) {
        DiodeLimits d = DiodeLimits.DEFAULT;
        return new DiodeLimits(book.find("diode.conducts").upper().orElse(d.conductsBelowOhms()),
                book.find("diode.blocks").lower().orElse(d.blocksAboveOhms()),
                book.find("diode.forward-volts").lower().orElse(d.forwardLowVolts()),
                book.find("diode.forward-volts").upper().orElse(d.forwardHighVolts()),
                book.find("diode.short-volts").upper().orElse(d.shortBelowVolts()));
    }

    static DiodeFinding finding(DiodePosition p, boolean asFound, DiodeLimits limits) {
        Reading f = asFound ? p.asFoundForward() : p.asLeftForward();
        Reading r = asFound ? p.asFoundReverse() : p.asLeftReverse();
        boolean isolated = Stream.of(f, r).filter(Objects::nonNull).allMatch(x -> Boolean.TRUE.equals(x.isolated()));
        return DiodeCheck.classify(new DiodeReading(
                isolated ? DiodeReading.Placement.ISOLATED : DiodeReading.Placement.IN_CIRCUIT,
                mode(f), side(f), mode(r), side(r)), limits);
    }

    private static DiodeReading.Mode mode(Reading r) {
        return r != null && (r.quantity() == ReadingQuantity.DIODE_VOLTS || r.quantity() == ReadingQuantity.VOLTAGE)
                ? DiodeReading.Mode.VOLTS : DiodeReading.Mode.OHMS;
    }

    private static DiodeReading.Side side(Reading r) {
        if (r == null || r.observed() == null) {
            return DiodeReading.notTaken();
        }
        return switch (r.observed().kind()) {
            case VALUE -> DiodeReading.value(r.observed().value());
            case ABOVE_RANGE -> DiodeReading.aboveRange();
            case BELOW_RESOLUTION -> new DiodeReading.Side.BelowResolution();
            case UNSTABLE, NOT_POSSIBLE -> DiodeReading.notTaken();
        };
    }

    private static Verdict verdict(DiodePosition p, int index, boolean asFound, DiodeLimits limits, Shop shop,
            HoldPoint point) {
        String name = p.position() == null ? Integer.toString(index + 1) : p.position();
        String state = asFound ? "as-found" : "as-left";
        VerdictDraft d = VerdictDraft.of("diode." + name.toLowerCase(Locale.ROOT).replace(' ', '-') + "." + state,
                PartKey.of(PartKind.RECTIFIER), Phrases.say("title.diode", name, Phrases.say("state." + state)))
                .path("/positions/" + index + (asFound ? "/asFoundForward" : "/asLeftForward"))
                .limitText(Phrases.say("diode.limit", Figures.show(limits.conductsBelowOhms(), "ohm"),
                        Figures.show(limits.blocksAboveOhms(), "ohm")))
                .source(Phrases.say("diode.source")).takenAt(takenAt(p, asFound)).point(point);
        DiodeFinding f;
        try {
            f = finding(p, asFound, limits);
        } catch (OutOfRange e) {
            return d.outcome(Outcome.DOUBTFUL).reason(e.getMessage()).settle(Phrases.say("settle.repeat")).done();
        }
        Outcome outcome = f.outcome();
        MeterUse overdue = meter(p, asFound, shop);
        if (outcome == Outcome.MEETS && overdue != null && overdue.lapse() != null) {
            outcome = Outcome.DOUBTFUL;
        }
        if (f.state() == DiodeFinding.State.SHORTED || f.state() == DiodeFinding.State.OPEN) {
            d.notConcedable();
        }
        String readings = Phrases.say("diode.readings", shown(asFound ? p.asFoundForward() : p.asLeftForward()),
                shown(asFound ? p.asFoundReverse() : p.asLeftReverse()));
        d.outcome(outcome).reason(readings + " " + Phrases.word("diode", f.reason()));
        if (overdue != null && overdue.lapse() != null) {
            d.addReason(overdue.objection());
        }
        if (f.state() == DiodeFinding.State.DOUBTFUL && f.suspected() != DiodeFinding.State.DOUBTFUL) {
            d.addReason(Phrases.say("diode.suspected", Phrases.word("diode-state", f.suspected())));
        }
        if (outcome == Outcome.MEETS) {
            return d.done();
        }
        boolean onlyOverdue = f.state() == DiodeFinding.State.GOOD;
        return d.settle(onlyOverdue ? overdue.remedy() : Phrases.word("settle.diode", f.reason())).done();
    }

    private static MeterUse meter(DiodePosition p, boolean asFound, Shop shop) {
        Reading r = asFound ? p.asFoundForward() : p.asLeftForward();
        return r == null || r.instrument() == null ? null : MeterUse.of(0, "ohm", r.instrument(), r.at(), shop);
    }

    private static Instant takenAt(DiodePosition p, boolean asFound) {
        return (asFound ? Stream.of(p.asFoundForward(), p.asFoundReverse())
                : Stream.of(p.asLeftForward(), p.asLeftReverse()))
                .filter(Objects::nonNull).map(Reading::at).filter(Objects::nonNull)
                .max(Comparator.naturalOrder()).orElse(null);
    }

    /** A reading as it is told: "12 Ω", "above range", "0.52 V". */
    static String shown(Reading r) {
        if (r == null || r.observed() == null) {
            return Phrases.say("observed.none");
        }
        Observed o = r.observed();
        if (!o.isValue()) {
            return Phrases.word("observed", o.kind());
        }
        boolean volts = r.quantity() == ReadingQuantity.DIODE_VOLTS || r.quantity() == ReadingQuantity.VOLTAGE;
        return Figures.show(o.value(), volts ? "V" : "ohm");
    }
}
