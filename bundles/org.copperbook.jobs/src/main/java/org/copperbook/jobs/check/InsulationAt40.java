package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.insulation.InsulationSystem;
import org.copperbook.calc.insulation.InsulationTemperature;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;

/**
 * An insulation reading at 40 degrees Celsius. The kind of insulation follows from the thermal class; where no class is
 * recorded both corrections are made and an outcome that depends on the choice is doubtful.
 *
 * @param corrected the reading by each correction that applies
 * @param trouble   why there is none, in words; empty otherwise
 * @param remark    what is to be said of the correction, in words; empty when nothing
 */
record InsulationAt40(List<Uncertain> corrected, String trouble, String remark) {

    private static final Set<String> LOW_CLASSES = Set.of("Y", "90", "A", "105", "E", "120");
    private static final Set<String> CLASS_105_OR_LOWER = Set.of("Y", "90", "A", "105");

    static InsulationAt40 of(OhmsToEarth at, Optional<String> thermalClass) {
        if (at.meter() == null) {
            return new InsulationAt40(List.of(), "", "");
        }
        if (at.celsius() == null) {
            return new InsulationAt40(List.of(), Phrases.say("ohm.no-temperature"), "");
        }
        List<InsulationSystem> systems = systems(thermalClass);
        List<Uncertain> corrected = new ArrayList<>();
        String refused = "";
        for (InsulationSystem s : systems) {
            try {
                corrected.add(InsulationTemperature.to40(s, at.meter().value(), at.celsius()));
            } catch (OutOfRange e) {
                refused = e.getMessage();
            }
        }
        boolean both = corrected.size() > 1;
        return new InsulationAt40(List.copyOf(corrected), corrected.isEmpty() ? refused : "",
                both ? Phrases.say("insulation.both-corrections", Figures.show(corrected.get(0).value(), "ohm"),
                        Figures.show(corrected.get(1).value(), "ohm")) : refused);
    }

    /** The kind of insulation behind a thermal class; both kinds where no class is recorded. */
    static List<InsulationSystem> systems(Optional<String> thermalClass) {
        return thermalClass.map(c -> List.of(LOW_CLASSES.contains(c) ? InsulationSystem.THERMOPLASTIC
                : InsulationSystem.THERMOSETTING)).orElse(List.of(InsulationSystem.values()));
    }

    static boolean class105OrLower(String thermalClass) {
        return CLASS_105_OR_LOWER.contains(thermalClass);
    }

    boolean isEmpty() {
        return corrected.isEmpty();
    }

    /** The lowest corrected value, ohm. */
    double lowest() {
        return corrected.stream().mapToDouble(Uncertain::value).min().orElse(Double.NaN);
    }

    /** Judges every correction; where they disagree the outcome is doubtful. */
    OhmsToEarth.Finding against(OhmsToEarth at, Bounds bounds) {
        OhmsToEarth.Finding worst = null;
        boolean differ = false;
        for (Uncertain c : corrected) {
            MeterUse m = at.meter();
            MeterUse as = new MeterUse(c, m.trust(), m.lapse(), m.name(), m.key(), m.sharedGain(), m.resolution());
            OhmsToEarth.Finding f = at.against(bounds, as);
            differ |= worst != null && f.outcome() != worst.outcome();
            if (worst == null || c.value() == lowest()) {
                worst = f;
            }
        }
        return differ ? new OhmsToEarth.Finding(Outcome.DOUBTFUL, worst.expandedU(), worst.reason(),
                Phrases.say("settle.thermal-class")) : worst;
    }
}
