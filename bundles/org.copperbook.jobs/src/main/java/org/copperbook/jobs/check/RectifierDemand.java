package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.calc.excitation.RectifierRelations;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.jobs.shop.Shop;

/**
 * What a diode of the rotating rectifier has to carry in this machine, worked out of the main field at rated load and of
 * the exciter armature where its voltage is known. What the data do not tell is absent and named in {@link #missing}.
 *
 * @param fieldV       main-field volts, V dc
 * @param fieldA       main-field amps, A dc
 * @param exciterLineV line volts of the exciter armature, V rms: measured, or worked out of the field volts
 * @param peakReverseV peak reverse volts in service, V
 * @param meanA        mean current of one diode in service, A
 * @param rmsA         rms current of one diode with smooth direct current, A
 * @param leastPeakV   least repetitive peak reverse rating, V, margin included
 * @param leastMeanA   least mean forward rating, A, margin included
 * @param missing      what has to be known for the figures that are absent, in words
 */
public record RectifierDemand(Optional<Double> fieldV, Optional<Double> fieldA, Optional<Double> exciterLineV,
        Optional<Double> peakReverseV, Optional<Double> meanA, Optional<Double> rmsA, Optional<Double> leastPeakV,
        Optional<Double> leastMeanA, List<String> missing) {

    /** Works it out for a job; empty when no rectifier is recorded. Figures that are not above zero count as absent. */
    public static Optional<RectifierDemand> of(Job job, Shop shop) {
        return job.rectifier().map(set -> of(set, job, new LimitBook(job, shop)));
    }

    private static RectifierDemand of(RectifierSet set, Job job, LimitBook limits) {
        List<String> missing = new ArrayList<>();
        Optional<RectifierSet.Duty> duty = Optional.ofNullable(set.duty());
        Optional<Double> volts = positive(duty.map(RectifierSet.Duty::fieldV))
                .or(() -> positive(job.nameplate().map(Nameplate::mainFieldV)));
        Optional<Double> amps = positive(duty.map(RectifierSet.Duty::fieldA))
                .or(() -> positive(job.nameplate().map(Nameplate::mainFieldA)));
        Optional<Double> stated = positive(duty.map(RectifierSet.Duty::exciterLineV));
        Optional<RectifierRelations> circuit = circuit(set);
        Optional<Double> fromField = circuit.flatMap(c -> volts.map(c::lineVolts));
        Optional<Double> line = stated.isPresent() && fromField.isPresent()
                ? Optional.of(Math.max(stated.get(), fromField.get())) : stated.or(() -> fromField);
        Optional<Double> peak = circuit.flatMap(c -> line.map(c::peakReverseVolts));
        Optional<Double> mean = circuit.flatMap(c -> amps.map(c::diodeMeanAmperes));
        say(circuit.isEmpty(), "demand.no-circuit", missing);
        say(circuit.isPresent() && line.isEmpty(), "demand.no-volts", missing);
        say(circuit.isPresent() && amps.isEmpty(), "demand.no-amps", missing);
        return new RectifierDemand(volts, amps, line, peak, mean, circuit.flatMap(c -> amps.map(c::diodeRmsAmperes)),
                least("diode.rating.peak", "Up", peak, limits), least("diode.rating.mean", "Im", mean, limits), missing);
    }

    /** The relations of the circuit recorded. */
    static Optional<RectifierRelations> circuit(RectifierSet set) {
        return Optional.ofNullable(set.circuit()).map(c -> c == RectifierSet.Circuit.HALF_WAVE
                ? RectifierRelations.HALF_WAVE : RectifierRelations.BRIDGE);
    }

    private static Optional<Double> least(String id, String symbol, Optional<Double> working, LimitBook limits) {
        return working.flatMap(w -> limits.find(id, Map.of(symbol, w)).lower());
    }

    private static void say(boolean absent, String key, List<String> missing) {
        if (absent) {
            missing.add(Phrases.say(key));
        }
    }

    private static Optional<Double> positive(Optional<Double> d) {
        return d.filter(x -> x > 0);
    }
}
