package org.copperbook.calc.insulation;

import java.util.Optional;

import org.copperbook.calc.Require;
import org.copperbook.calc.uncertainty.Uncertain;

/**
 * Polarisation index (ten minutes over one) and dielectric absorption ratio (60 s over 30 s) of readings taken in one
 * run, at one temperature. Source: IEEE 43-2013, clauses 3 and 12.2; the ratio of 60 s to 30 s is common practice.
 */
public final class AbsorptionIndex {

    /** One-minute value at 40 degrees above which the index is not used as a criterion, ohm (IEEE 43-2013, 12.2.1). */
    public static final double NOT_JUDGED_ABOVE_OHMS = 5000e6;

    /** An index above this may mean dry, brittle insulation (IEEE 43-2013, 12.2). */
    public static final double BRITTLE_ABOVE = 8;

    private AbsorptionIndex() {
    }

    /** Why the index does not decide. */
    public enum NotJudged {
        /** The corrected one-minute value is above 5000 megohm: the current is too small to be read reliably. */
        ABOVE_5000_MEGOHM,
        /** Small random windings: absorption is over in two or three minutes. */
        SMALL_RANDOM_WINDING,
        /** Field windings with no insulation between turns are not judged by the index. */
        UNINSULATED_FIELD
    }

    /** Thermal classes that differ in the least index (IEEE 43-2013, table 2). */
    public enum ThermalGroup {
        CLASS_105_OR_LOWER(1.5), CLASS_130_OR_HIGHER(2.0);

        private final double minimum;

        ThermalGroup(double minimum) {
            this.minimum = minimum;
        }

        /** The least acceptable polarisation index. */
        public double minimumIndex() {
            return minimum;
        }
    }

    /** Later reading over earlier reading, both in ohm and positive: PI from 10 min and 1 min, DAR from 60 s and 30 s. */
    public static double ratio(double laterOhms, double earlierOhms) {
        return Require.positive("later reading", laterOhms, "ohm")
                / Require.positive("earlier reading", earlierOhms, "ohm");
    }

    /**
     * The ratio with its uncertainty. The meter's gain is common to both readings and cancels.
     *
     * @param sharedRelative relative standard uncertainty common to both readings
     */
    public static Uncertain ratio(Uncertain later, Uncertain earlier, double sharedRelative) {
        double r = ratio(later.value(), earlier.value());
        double own = ownVariance(later, sharedRelative) + ownVariance(earlier, sharedRelative);
        return new Uncertain(r, r * Math.sqrt(own));
    }

    /** Whether, and why, the index is not to be judged; the one-minute value is at 40 degrees, in ohm. */
    public static Optional<NotJudged> notJudged(double oneMinuteAt40, boolean smallRandomWinding,
            boolean uninsulatedField) {
        if (uninsulatedField) {
            return Optional.of(NotJudged.UNINSULATED_FIELD);
        }
        if (smallRandomWinding) {
            return Optional.of(NotJudged.SMALL_RANDOM_WINDING);
        }
        return oneMinuteAt40 > NOT_JUDGED_ABOVE_OHMS ? Optional.of(NotJudged.ABOVE_5000_MEGOHM) : Optional.empty();
    }

    private static double ownVariance(Uncertain x, double shared) {
        return Math.max(0, x.relative() * x.relative() - shared * shared);
    }
}
