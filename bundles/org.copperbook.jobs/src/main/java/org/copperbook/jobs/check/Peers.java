package org.copperbook.jobs.check;

import java.util.Comparator;
import java.util.List;
import org.copperbook.calc.uncertainty.Traced;

/** Resistances that ought to be alike, and their middle. */
final class Peers {

    private Peers() {
    }

    /** The mean, as the unbalance of NEMA MG 1 takes it. */
    static Traced mean(List<PhaseOhms> alike) {
        Traced sum = Traced.exact(0);
        for (PhaseOhms p : alike) {
            sum = sum.plus(p.atReference());
        }
        return sum.times(1.0 / alike.size());
    }

    /** The middle value: one or two bad ones do not move it as they would move the mean. */
    static Traced middle(List<Traced> values) {
        if (values.isEmpty()) {
            return Traced.exact(0);
        }
        List<Traced> sorted = values.stream().sorted(Comparator.comparingDouble(Traced::value)).toList();
        int half = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(half) : sorted.get(half - 1).plus(sorted.get(half)).times(0.5);
    }

    /** The one farthest from the mean. */
    static PhaseOhms worst(List<PhaseOhms> alike) {
        double mean = mean(alike).value();
        return alike.stream().max(Comparator.comparingDouble(p -> Math.abs(p.atReference().value() - mean)))
                .orElseThrow();
    }
}
