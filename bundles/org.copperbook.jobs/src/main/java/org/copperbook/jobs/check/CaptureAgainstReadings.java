package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.resistance.TemperatureCorrection;
import org.copperbook.calc.winding.CircuitPlan;
import org.copperbook.calc.winding.ConductorBundle;
import org.copperbook.calc.winding.Winding;
import org.copperbook.calc.winding.capture.CaptureCheck;
import org.copperbook.calc.winding.capture.CaptureReading;
import org.copperbook.calc.winding.capture.CaptureReport;
import org.copperbook.calc.winding.capture.CaptureUncertainty;
import org.copperbook.calc.winding.capture.CapturedWinding;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingModel;

/**
 * What a captured distributed winding implies for its resistances and its copper, beside what was read: the
 * probabilities of single slips by Bayes' rule ({@link CaptureCheck}).
 *
 * @param missing  what keeps it from being computed, in words; empty when there is a report
 * @param report   the outcome; null while something is missing
 * @param places   the reading behind each comparison of the report, in order; null for the mass
 */
record CaptureAgainstReadings(List<String> missing, CaptureReport report, List<PhaseOhms> places) {

    /** Relative standard uncertainty of a reading whose meter is not known; common practice, no source. */
    private static final double METER_UNKNOWN = 0.01;
    private static final double FINEST = 1e-4;
    /** Relative standard uncertainty of copper burnt clean and weighed; common practice, no source. */
    private static final double MASS = 0.015;

    static CaptureAgainstReadings of(WindingCase c) {
        WindingData d = c.data();
        Optional<Winding> coils = c.coils();
        List<String> missing = new ArrayList<>(WindingCase.lacking(coils, "figure.needs.coils", d.circuits(),
                "capture.circuits", d.meanTurnM(), "capture.mean-turn"));
        if (d.wire().isEmpty()) {
            missing.add(Phrases.say("capture.wire"));
        }
        if (d.groups().stream().anyMatch(g -> !g.wire().isEmpty())) {
            missing.add(Phrases.say("figure.needs.one-wire"));
        }
        Sets sets = Sets.of(c);
        if (sets.readings.isEmpty()) {
            missing.add(Phrases.say("figure.needs.readings"));
        }
        if (!missing.isEmpty()) {
            return new CaptureAgainstReadings(missing, null, List.of());
        }
        ConductorBundle bundle = new WindingModel(d).conductor().orElseThrow();
        CapturedWinding captured = new CapturedWinding(coils.orElseThrow(), plan(d, coils.get()), bundle, d.meanTurnM(),
                sets.celsius);
        return new CaptureAgainstReadings(List.of(),
                CaptureCheck.check(captured, sets.readings, sets.uncertainty(c)), sets.places);
    }

    /** The circuits as the groups name them, else shared out evenly. */
    private static CircuitPlan plan(WindingData d, Winding w) {
        if (d.groups().stream().anyMatch(g -> g.circuit() == null)) {
            return CircuitPlan.equal(w, d.circuits());
        }
        List<List<List<Integer>>> phases = new ArrayList<>();
        for (int p = 1; p <= w.phases(); p++) {
            Map<Integer, List<Integer>> circuits = new LinkedHashMap<>();
            for (CoilGroup g : d.groups()) {
                if (WindingModel.phase(g.phase()) == p) {
                    circuits.computeIfAbsent(g.circuit(), k -> new ArrayList<>()).add(g.number());
                }
            }
            phases.add(new ArrayList<>(circuits.values()));
        }
        boolean asStated = phases.stream().allMatch(p -> p.size() == d.circuits());
        return asStated ? new CircuitPlan(phases) : CircuitPlan.equal(w, d.circuits());
    }

    /** The readings of one state, all at the mean of their temperatures. */
    private static final class Sets {

        private final List<CaptureReading> readings = new ArrayList<>();
        private final List<PhaseOhms> places = new ArrayList<>();
        private final List<PhaseOhms> ohms = new ArrayList<>();
        private double celsius;
        private double kelvin;

        static Sets of(WindingCase c) {
            Sets sets = new Sets();
            ResistanceSet set = chosen(c);
            Machine machine = c.machine();
            sets.temperatures(set, machine);
            double factor = TemperatureCorrection.factor(machine.conductor(), machine.reference(), sets.celsius);
            Map<Integer, Boolean> groups = new HashMap<>();
            c.data().groups().forEach(g -> groups.put(g.number(), WindingModel.turns(g) > 0));
            for (PhaseOhms g : WindingOhms.groups(set, machine)) {
                int number = number(g.key());
                if (groups.getOrDefault(number, false) && g.atReference().value() > 0) {
                    sets.add(g, new CaptureReading.OfGroup(number, g.atReference().value() * factor, relative(g)));
                }
            }
            for (PhaseOhms p : WindingOhms.of(set, machine).phases()) {
                int phase = p.like() == Like.PHASE ? WindingModel.phase(p.key()) : 0;
                if (phase > 0 && c.data().phases() != null && phase <= c.data().phases() && p.atReference().value() > 0) {
                    sets.add(p, new CaptureReading.OfPhase(phase, p.atReference().value() * factor, relative(p)));
                }
            }
            if (c.data().copperRemovedKg() != null && c.data().copperRemovedKg() > 0) {
                sets.readings.add(new CaptureReading.OfMass(c.data().copperRemovedKg(), MASS));
                sets.places.add(null);
            }
            return sets;
        }

        /** As found for the old winding; for the new one in process, or as left when nothing was read before. */
        private static ResistanceSet chosen(WindingCase c) {
            ReadingLog log = new ReadingLog(c.job());
            LimitBook limits = new LimitBook(c.job(), c.shop());
            if (!c.data().asWound()) {
                return ResistanceSet.of(c.role(), Reading.State.AS_FOUND, log, c.machine(), limits, c.shop());
            }
            ResistanceSet inProcess = ResistanceSet.of(c.role(), Reading.State.IN_PROCESS, log, c.machine(), limits,
                    c.shop());
            return !inProcess.isEmpty() ? inProcess
                    : ResistanceSet.of(c.role(), Reading.State.AS_LEFT, log, c.machine(), limits, c.shop());
        }

        private void temperatures(ResistanceSet set, Machine machine) {
            List<OhmReading> usable = new ArrayList<>(set.groups().values());
            usable.addAll(set.sections().values());
            usable.addAll(set.pairs().values());
            usable.removeIf(r -> !r.usable());
            celsius = usable.stream().mapToDouble(r -> r.celsius().value()).average().orElse(machine.reference());
            kelvin = usable.stream().mapToDouble(r -> r.celsius().u()).max().orElse(0);
        }

        private void add(PhaseOhms at, CaptureReading reading) {
            readings.add(reading);
            places.add(at);
            ohms.add(at);
        }

        private static int number(String key) {
            try {
                return Integer.parseInt(key.substring("group-".length()));
            } catch (NumberFormatException e) {
                return 0;
            }
        }

        /** What this reading does not share with the others, relative. */
        private static double relative(PhaseOhms p) {
            if (!MeterUse.allKnown(p.meters())) {
                return METER_UNKNOWN;
            }
            double whole = p.byMeterOnly().u() / p.byMeterOnly().value();
            double gain = MeterUse.commonGain(p.meters());
            return Math.min(0.5, Math.max(FINEST, Math.sqrt(Math.max(0, whole * whole - gain * gain))));
        }

        CaptureUncertainty uncertainty(WindingCase c) {
            CaptureUncertainty usual = CaptureUncertainty.usual();
            List<MeterUse> meters = ohms.stream().flatMap(p -> p.meters().stream()).toList();
            double gain = MeterUse.commonGain(meters);
            return new CaptureUncertainty(usual.meanTurn(), usual.area(), Math.min(20, kelvin),
                    Math.min(0.1, gain > 0 ? gain : usual.gain()), usual.coilSpread(), usual.cleanProbability(),
                    usual.alarmBelow());
        }
    }

    /** Worded refusal instead of a report. */
    static CaptureAgainstReadings refused(OutOfRange e) {
        return new CaptureAgainstReadings(List.of(e.getMessage()), null, List.of());
    }
}
