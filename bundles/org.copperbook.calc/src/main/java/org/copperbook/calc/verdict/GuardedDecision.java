package org.copperbook.calc.verdict;

import org.copperbook.calc.Require;
import org.copperbook.calc.uncertainty.Normal;
import org.copperbook.calc.uncertainty.Uncertain;

/**
 * Conformity decided with a guard band as wide as the expanded uncertainty.
 * Source: JCGM 106:2012, 8.3.2 (guarded acceptance), 8.3.3 (guarded rejection), 7.2-7.4 (probability of conformity,
 * normal distribution).
 */
public final class GuardedDecision {

    /** The usual coverage factor, about 95 % for a normal distribution (JCGM 100:2008, 6.3.3). */
    public static final double USUAL_COVERAGE = 2;

    private GuardedDecision() {
    }

    /** Decides with coverage factor 2. */
    public static Decision decide(Uncertain x, Bounds bounds) {
        return decide(x, bounds, USUAL_COVERAGE);
    }

    /**
     * Meets when the whole interval x ± k u lies inside the bounds (touching them conforms), fails when it lies wholly
     * outside, doubtful otherwise.
     *
     * @param x the measured value, or null when nothing was measured
     * @param bounds the limits in the unit of x; null or empty gives no limit set
     * @param coverageFactor k, from 0 to 5
     */
    public static Decision decide(Uncertain x, Bounds bounds, double coverageFactor) {
        Require.between("coverage factor", coverageFactor, 0, 5, "", "wider intervals are not used for decisions");
        if (bounds == null || bounds.isEmpty()) {
            return new Decision(Outcome.NO_LIMIT_SET, Double.NaN);
        }
        if (x == null) {
            return new Decision(Outcome.NOT_MEASURED, Double.NaN);
        }
        return new Decision(outcome(x, bounds, coverageFactor), conformity(x, bounds));
    }

    private static Outcome outcome(Uncertain x, Bounds bounds, double k) {
        boolean aboveLower = bounds.lower() == null || x.low(k) >= bounds.lower();
        boolean belowUpper = bounds.upper() == null || x.high(k) <= bounds.upper();
        if (aboveLower && belowUpper) {
            return Outcome.MEETS;
        }
        boolean underLower = bounds.lower() != null && x.high(k) < bounds.lower();
        boolean overUpper = bounds.upper() != null && x.low(k) > bounds.upper();
        return underLower || overUpper ? Outcome.FAILS : Outcome.DOUBTFUL;
    }

    private static double conformity(Uncertain x, Bounds bounds) {
        if (x.u() == 0) {
            return outcome(x, bounds, 0) == Outcome.MEETS ? 1 : 0;
        }
        double toUpper = bounds.upper() == null ? 1 : Normal.cumulative(bounds.upper(), x.value(), x.u());
        double toLower = bounds.lower() == null ? 0 : Normal.cumulative(bounds.lower(), x.value(), x.u());
        return Math.max(0, toUpper - toLower);
    }
}
