package org.copperbook.jobs.check;

import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.resistance.LineReading;
import org.copperbook.calc.resistance.TemperatureCorrection;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.jobs.reading.Observed;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.shop.Instrument;
import org.copperbook.jobs.shop.Shop;

/**
 * A resistance reading made ready for computing: the instrument's uncertainty, the leads of a two-wire reading taken off
 * or taken into account, the winding temperature, or the reason why one of them is missing.
 *
 * @param logged   the reading
 * @param meter    value as read with its uncertainty; null when the instrument showed no value
 * @param leadU    standard uncertainty of the leads that readings with this instrument share, ohm
 * @param celsius  winding temperature; null when it was not taken or cannot be
 * @param trouble  why it cannot be used as it is, in words; empty when it can
 * @param remark   what is to be said beside the value (leads not taken off), in words; empty when nothing
 */
record OhmReading(LoggedReading logged, MeterUse meter, double leadU, Uncertain celsius, String trouble,
        String remark) {

    static OhmReading of(LoggedReading logged, Machine machine, LimitBook limits, Shop shop) {
        Reading r = logged.reading();
        Observed seen = r.observed();
        Uncertain celsius = null;
        String trouble = "";
        if (r.windingCelsius() == null) {
            trouble = Phrases.say("ohm.no-temperature");
        } else {
            try {
                celsius = new Uncertain(r.windingCelsius(), machine.kelvinU(r.temperatureU()));
                TemperatureCorrection.factor(machine.conductor(), r.windingCelsius(), machine.reference());
            } catch (OutOfRange e) {
                celsius = null;
                trouble = e.getMessage();
            }
        }
        if (seen.kind() == Observed.Kind.BELOW_RESOLUTION) {
            return belowResolution(logged, celsius, trouble, shop);
        }
        if (!seen.isValue()) {
            return new OhmReading(logged, null, 0, celsius, trouble, "");
        }
        MeterUse meter = MeterUse.of(seen.value(), "ohm", r.instrument(), r.at(), shop);
        return twoWire(logged, meter, celsius, trouble, limits, shop);
    }

    /** Half a count, give or take half a count: all that "below the resolution" says. */
    private static OhmReading belowResolution(LoggedReading logged, Uncertain celsius, String trouble, Shop shop) {
        Reading r = logged.reading();
        MeterUse probe = MeterUse.of(0, "ohm", r.instrument(), r.at(), shop);
        double count = r.observed().value() != null ? Math.abs(r.observed().value()) : probe.resolution();
        MeterUse meter = count > 0 ? probe.shifted(count / 2, count / 2 / Math.sqrt(3)) : null;
        return new OhmReading(logged, meter, 0, celsius, trouble, Phrases.say("ohm.below-resolution"));
    }

    private static OhmReading twoWire(LoggedReading logged, MeterUse meter, Uncertain celsius, String trouble,
            LimitBook limits, Shop shop) {
        Reading r = logged.reading();
        Instrument instrument = shop.instruments().find(r.instrument() == null ? "" : r.instrument()).orElse(null);
        boolean two = r.method() == Reading.Method.TWO_WIRE
                || (r.method() == null && instrument != null && Boolean.FALSE.equals(instrument.fourWire()));
        if (!two) {
            return new OhmReading(logged, meter, 0, celsius, trouble, "");
        }
        if (instrument != null && instrument.leadOhm() != null) {
            double u = instrument.leadOhmU() == null ? instrument.leadOhm() / Math.sqrt(3) : instrument.leadOhmU();
            return new OhmReading(logged, meter.shifted(-instrument.leadOhm(), u), u, celsius, trouble,
                    Phrases.say("ohm.leads-off", Figures.show(instrument.leadOhm(), "ohm")));
        }
        Optional<Double> lead = limits.find("instrument.two-wire-lead").upper();
        if (lead.isEmpty()) {
            return new OhmReading(logged, meter.doubted(), 0, celsius, trouble, Phrases.say("ohm.leads-unknown"));
        }
        double u = lead.get() / Math.sqrt(3);
        return new OhmReading(logged, meter.shifted(0, u), u, celsius, trouble, Phrases.say("ohm.leads-unknown"));
    }

    Observed.Kind kind() {
        return logged.reading().observed().kind();
    }

    /** Whether there is a value and a temperature. */
    boolean usable() {
        return meter != null && celsius != null;
    }

    /** The reading as a term of a triple between lines; null when it says nothing about the path. */
    LineReading asLine(Uncertain ohms) {
        if (kind() == Observed.Kind.ABOVE_RANGE) {
            return LineReading.aboveRange();
        }
        return ohms == null ? null : LineReading.of(ohms);
    }
}
