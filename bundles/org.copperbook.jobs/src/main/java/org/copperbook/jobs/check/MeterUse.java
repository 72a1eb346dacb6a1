package org.copperbook.jobs.check;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.copperbook.calc.uncertainty.InstrumentAccuracy;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.jobs.shop.Instrument;
import org.copperbook.jobs.shop.Shop;

/**
 * One reading seen through the instrument that took it: its standard uncertainty by the instrument's accuracy on the
 * range used, and what is to be said against it.
 *
 * @param value       the reading with the instrument's standard uncertainty, unit of the reading
 * @param trust       whether the uncertainty is known, and why not
 * @param lapse       why no calibration was in force when it was taken; null when one was
 * @param name        instrument as people call it; empty when none is named
 * @param key         names instrument and range, so that readings with the same one share its gain; empty when unknown
 * @param sharedGain  relative standard uncertainty that readings of this instrument and range share
 * @param resolution  one count of the range; 0 when unknown
 */
record MeterUse(Uncertain value, Trust trust, Instrument.Lapse lapse, String name, String key, double sharedGain,
        double resolution) {

    /** What is known of the instrument behind a reading. */
    enum Trust {
        KNOWN, NOT_NAMED, NOT_REGISTERED, NO_ACCURACY
    }

    /**
     * Looks a reading up.
     *
     * @param reading    value, in the unit named
     * @param quantity   unit under which the register keeps its ranges ("ohm", "V", "mm/s" ...)
     * @param instrument id, or null when none is named
     * @param at         when, or null
     */
    static MeterUse of(double reading, String quantity, String instrument, Instant at, Shop shop) {
        if (instrument == null || instrument.isBlank()) {
            return unknown(reading, Trust.NOT_NAMED, "", null);
        }
        Instrument found = shop.instruments().find(instrument).orElse(null);
        if (found == null) {
            return unknown(reading, Trust.NOT_REGISTERED, instrument, null);
        }
        Instrument.Lapse lapse = lapse(found, at);
        String name = found.name() == null ? found.id() : found.name() + " (" + found.id() + ")";
        Instrument.Range range = range(found, quantity, Math.abs(reading));
        if (range == null || (range.percentOfReading() == null && range.digits() == null)) {
            return unknown(reading, Trust.NO_ACCURACY, name, lapse);
        }
        InstrumentAccuracy accuracy = new InstrumentAccuracy(orZero(range.percentOfReading()), orZero(range.digits()),
                orZero(range.resolution()));
        return new MeterUse(accuracy.of(reading), Trust.KNOWN, lapse, name,
                found.id() + "|" + range.quantity() + "|" + range.upTo(), accuracy.sharedRelative(),
                orZero(range.resolution()));
    }

    /** A tester whose accuracy does not enter the verdict, only whether it is registered and in calibration. */
    static MeterUse ofTester(String instrument, Instant at, Shop shop) {
        return of(0, "", instrument, at, shop);
    }

    /** The lowest range that holds the value, or the highest one when none does. */
    private static Instrument.Range range(Instrument instrument, String quantity, double size) {
        Instrument.Range best = null;
        for (Instrument.Range r : instrument.ranges()) {
            if (!quantity.equals(r.quantity())) {
                continue;
            }
            double top = r.upTo() == null ? Double.POSITIVE_INFINITY : r.upTo();
            double bestTop = best == null ? Double.NaN : best.upTo() == null ? Double.POSITIVE_INFINITY : best.upTo();
            boolean better = best == null || (size <= top ? size > bestTop || top < bestTop
                    : size > bestTop && top > bestTop);
            if (better) {
                best = r;
            }
        }
        return best;
    }

    private static Instrument.Lapse lapse(Instrument instrument, Instant at) {
        return at == null ? null : instrument.lapsedOn(LocalDate.ofInstant(at, ZoneId.systemDefault())).orElse(null);
    }

    private static MeterUse unknown(double reading, Trust trust, String name, Instrument.Lapse lapse) {
        return new MeterUse(Uncertain.exact(reading), trust, lapse, name, "", 0, 0);
    }

    private static double orZero(Double d) {
        return d == null ? 0 : d;
    }

    boolean known() {
        return trust == Trust.KNOWN;
    }

    /** The same with more standard uncertainty in quadrature and the value shifted. */
    MeterUse shifted(double by, double moreU) {
        return new MeterUse(new Uncertain(value.value() + by, Math.hypot(value.u(), moreU)), trust, lapse, name, key,
                sharedGain, resolution);
    }

    /** The same with its uncertainty not known after all. */
    MeterUse doubted() {
        return new MeterUse(value, Trust.NO_ACCURACY, lapse, name, "", 0, resolution);
    }

    /** Why this use cannot support "meets", in words; empty when it can. */
    String objection() {
        if (trust != Trust.KNOWN) {
            return Phrases.say("meter." + trust.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'), name);
        }
        return lapsed();
    }

    /** What the register says against it, apart from its accuracy; empty when nothing or when none is named. */
    String registerObjection() {
        boolean unknown = trust == Trust.NOT_REGISTERED;
        return unknown ? Phrases.say("meter.not-in-register", name) : lapsed();
    }

    private String lapsed() {
        if (lapse == null) {
            return "";
        }
        return lapse.ranOut() == null ? Phrases.say("meter.not-yet", name, lapse.firstOne().toString())
                : Phrases.say("meter.overdue", name, lapse.ranOut().toString());
    }

    /** What to do about the objection. */
    String remedy() {
        if (trust != Trust.KNOWN) {
            return Phrases.say("meter.remedy.accuracy");
        }
        return lapse == null ? "" : Phrases.say("meter.remedy.calibration");
    }

    /** The first objection among several uses, or nothing. */
    static java.util.Optional<MeterUse> firstObjection(List<MeterUse> uses) {
        return uses.stream().filter(u -> !u.objection().isEmpty()).findFirst();
    }

    /** Whether every use has a known uncertainty. */
    static boolean allKnown(List<MeterUse> uses) {
        return uses.stream().allMatch(MeterUse::known);
    }

    /** The gain that all uses share: one instrument on one range; 0 otherwise. */
    static double commonGain(List<MeterUse> uses) {
        if (uses.isEmpty() || uses.get(0).key().isEmpty()) {
            return 0;
        }
        String key = uses.get(0).key();
        return uses.stream().allMatch(u -> u.key().equals(key)) ? uses.get(0).sharedGain() : 0;
    }
}
