package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.reading.Observed;
import org.copperbook.jobs.reading.Place;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.jobs.shop.Instrument;
import org.copperbook.jobs.shop.Shop;

/**
 * Says at once, beside the reading, when its instrument was out of calibration on the day, is not in the register, or
 * cannot resolve what it reads. It decides nothing by itself: the verdicts that use the reading carry the doubt.
 */
final class InstrumentCheck implements Check {

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        Machine machine = new Machine(job, shop);
        LimitBook limits = new LimitBook(job, shop);
        List<Verdict> out = new ArrayList<>();
        for (LoggedReading l : new ReadingLog(job).all()) {
            Reading r = l.reading();
            if (r.observed() != null && r.quantity() != null && r.observed().kind() != Observed.Kind.NOT_POSSIBLE) {
                judge(l, machine, limits, shop).ifPresent(out::add);
            }
        }
        return out;
    }

    private static Optional<Verdict> judge(LoggedReading l, Machine machine, LimitBook limits, Shop shop) {
        Reading r = l.reading();
        double seen = r.observed().value() == null ? 0 : r.observed().value();
        MeterUse use = MeterUse.of(seen, unit(r.quantity()), r.instrument(), r.at(), shop);
        VerdictDraft d = VerdictDraft.of("meter." + l.part().toString().replace('/', '.') + "." + l.id(), l.part(),
                Phrases.say("title.meter", where(l))).path(l.path()).takenAt(r.at()).outcome(Outcome.DOUBTFUL);
        if (!use.objection().isEmpty()) {
            return Optional.of(d.reason(use.objection()).settle((use.remedy() + " " + (r.instrument() == null ? ""
                    : instead(r, seen, limits, shop))).strip()).done());
        }
        if (r.quantity() != ReadingQuantity.RESISTANCE || r.place() == null || r.place().winding() == null) {
            return Optional.empty();
        }
        OhmReading ohms = OhmReading.of(l, machine, limits, shop);
        LimitBook.Applied limit = limits.find("instrument.resolve");
        if (ohms.meter() == null || limit.upper().isEmpty()) {
            return Optional.empty();
        }
        double share = 2 * ohms.meter().value().relative();
        if (share <= limit.upper().get()) {
            return Optional.empty();
        }
        return Optional.of(d.limit(limit).value(Double.isFinite(share) ? share : null, null, "1")
                .reason(Phrases.say("meter.cannot-resolve", use.name(),
                        Figures.show(ohms.meter().value().value(), 2 * ohms.meter().value().u(), "ohm")))
                .settle((Phrases.say("settle.bridge") + " " + instead(r, ohms.meter().value().value(), limits, shop)).strip())
                .done());
    }

    /** The instrument of the register that reads this best and was in calibration, in words; empty when there is none. */
    private static String instead(Reading r, double seen, LimitBook limits, Shop shop) {
        double share = limits.find("instrument.resolve").upper().orElse(Double.POSITIVE_INFINITY);
        return shop.instruments().instruments().stream()
                .filter(i -> i.inUse() && i.id() != null && !i.id().isBlank() && !i.id().equals(r.instrument()))
                .filter(i -> kinds(r.quantity()).contains(i.kind()))
                .filter(i -> i.ranges().stream().anyMatch(x -> unit(r.quantity()).equals(x.quantity())
                        && (x.upTo() == null || x.upTo() >= Math.abs(seen))))
                .filter(i -> Boolean.TRUE.equals(i.fourWire()) || r.quantity() != ReadingQuantity.RESISTANCE
                        || i.leadOhm() != null && i.leadOhm() <= share * seen)
                .map(i -> MeterUse.of(seen, unit(r.quantity()), i.id(), r.at(), shop))
                .filter(m -> m.objection().isEmpty()
                        && (r.quantity() != ReadingQuantity.RESISTANCE || 2 * m.value().relative() <= share))
                .min(Comparator.comparingDouble(m -> m.value().relative()))
                .map(m -> Phrases.say("meter.instead", m.name())).orElse("");
    }

    private static Set<Instrument.Kind> kinds(ReadingQuantity q) {
        return switch (q) {
            case RESISTANCE -> Set.of(Instrument.Kind.RESISTANCE_BRIDGE, Instrument.Kind.MULTIMETER);
            case INSULATION_RESISTANCE -> Set.of(Instrument.Kind.INSULATION_TESTER);
            case VOLTAGE -> Set.of(Instrument.Kind.MULTIMETER, Instrument.Kind.POWER_ANALYSER);
            case DIODE_OHMS, DIODE_VOLTS -> Set.of(Instrument.Kind.MULTIMETER);
        };
    }

    /** Which reading it is, in words: winding, marks, and when in the job's life; its place in the list at the least. */
    private static String where(LoggedReading l) {
        Place place = l.reading().place();
        List<String> words = new ArrayList<>();
        if (place != null && place.winding() != null) {
            words.add(Phrases.word("role", place.winding()));
        }
        if (place != null && !place.mark().isBlank()) {
            words.add(place.kind() == Place.Kind.COIL_GROUP ? Phrases.say("place.group", place.mark()) : place.mark());
        } else if (place != null && place.kind() == Place.Kind.TO_EARTH) {
            words.add(Phrases.say("place.to-earth"));
        }
        if (words.isEmpty()) {
            words.add(Phrases.say("meter.reading", l.id()));
        }
        if (l.state() != null) {
            words.add(Phrases.word("state", l.state()));
        }
        return String.join(", ", words);
    }

    private static String unit(ReadingQuantity q) {
        return switch (q) {
            case RESISTANCE, INSULATION_RESISTANCE, DIODE_OHMS -> "ohm";
            case VOLTAGE, DIODE_VOLTS -> "V";
        };
    }
}
