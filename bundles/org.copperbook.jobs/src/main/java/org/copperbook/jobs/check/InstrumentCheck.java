package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.reading.Observed;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
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
                Phrases.say("title.meter")).path(l.path()).takenAt(r.at()).outcome(Outcome.DOUBTFUL);
        if (!use.objection().isEmpty()) {
            return Optional.of(d.reason(use.objection()).settle(use.remedy()).done());
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
                .settle(Phrases.say("settle.bridge")).done());
    }

    private static String unit(ReadingQuantity q) {
        return switch (q) {
            case RESISTANCE, INSULATION_RESISTANCE, DIODE_OHMS -> "ohm";
            case VOLTAGE, DIODE_VOLTS -> "V";
        };
    }
}
