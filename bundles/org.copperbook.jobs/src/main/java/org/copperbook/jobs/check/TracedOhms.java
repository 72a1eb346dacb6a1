package org.copperbook.jobs.check;

import java.util.List;
import org.copperbook.calc.resistance.TemperatureCorrection;
import org.copperbook.calc.uncertainty.SharedSources;
import org.copperbook.calc.uncertainty.SharedTerms;
import org.copperbook.calc.uncertainty.Traced;
import org.copperbook.calc.uncertainty.Uncertain;

/**
 * A set of usable readings at the reference temperature, with what they share: the gain of one meter, its leads, one
 * thermometer. Shared terms cancel in the differences between the readings.
 */
final class TracedOhms {

    private final Machine machine;
    private final SharedSources sources;
    private final SharedSources coldSources;

    TracedOhms(List<OhmReading> set, Machine machine) {
        this.machine = machine;
        List<MeterUse> meters = set.stream().map(OhmReading::meter).toList();
        double gain = MeterUse.commonGain(meters);
        double lead = gain > 0 || oneMeter(meters) ? common(set.stream().mapToDouble(OhmReading::leadU).toArray()) : 0;
        double kelvin = common(set.stream().mapToDouble(r -> r.celsius().u()).toArray());
        SharedTerms meter = new SharedTerms(gain, lead, 0, 0);
        sources = new SharedSources(meter.withThermometer(kelvin));
        coldSources = new SharedSources(meter);
    }

    private static boolean oneMeter(List<MeterUse> meters) {
        return !meters.isEmpty() && !meters.get(0).key().isEmpty()
                && meters.stream().allMatch(m -> m.key().equals(meters.get(0).key()));
    }

    /** The common value, or 0 when they differ. */
    private static double common(double[] values) {
        for (double v : values) {
            if (v != values[0]) {
                return 0;
            }
        }
        return values.length == 0 ? 0 : values[0];
    }

    /** At the reference temperature, with every uncertainty. */
    Traced atReference(OhmReading r) {
        return TemperatureCorrection.correct(r.meter().value(), r.celsius(), machine.reference(), machine.conductor(),
                sources);
    }

    /** At the reference temperature, with the meter's uncertainty only. */
    Traced byMeterOnly(OhmReading r) {
        return TemperatureCorrection.correct(r.meter().value(), Uncertain.exact(r.celsius().value()),
                machine.reference(), machine.conductor(), coldSources);
    }

    /**
     * The uncertainty of the winding temperature as it counts at the reference temperature: relative uncertainty of the
     * resistance is u(t)/(k + t) there and here.
     */
    double kelvinAtReference(OhmReading r) {
        double k = machine.conductor().inferredZero();
        return r.celsius().u() * (k + machine.reference()) / (k + r.celsius().value());
    }
}
