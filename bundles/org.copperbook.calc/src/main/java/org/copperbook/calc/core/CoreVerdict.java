package org.copperbook.calc.core;

import org.copperbook.calc.Require;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Decision;
import org.copperbook.calc.verdict.GuardedDecision;

/** Judging a loop test: change of specific loss and hottest spot. Limits are the caller's, with the usual ones named. */
public final class CoreVerdict {

    /** Greatest rise of the specific loss by stripping, a fraction: 20 % (EASA/AEMT rewind study, AR100 practice). */
    public static final double USUAL_LOSS_RISE = 0.20;
    /** Hot spot over the mean core temperature by IEEE 1068 (as quoted in trade articles), K. */
    public static final double HOT_SPOT_IEEE_1068 = 10;
    /** Hot spot over the mean core temperature, common practice, no source, K. */
    public static final double HOT_SPOT_PRACTICE = 15;
    /** Specific loss above which shops look closer, 4 W/lb (trade guide), W/kg. */
    public static final double USUAL_SPECIFIC_LOSS = 4 / 0.45359237;
    /** Highest part temperature at burn-out, organic core plate (ANSI/EASA AR100, core plate clause), °C. */
    public static final double BURN_OUT_ORGANIC = 370;
    /** The same, inorganic core plate, °C. */
    public static final double BURN_OUT_INORGANIC = 400;

    private CoreVerdict() {
    }

    /** Specific loss after over before, less one; both in W/kg at the same density and frequency. */
    public static double lossChange(double before, double after) {
        return Require.positive("specific loss after", after, "W/kg")
                / Require.positive("specific loss before", before, "W/kg") - 1;
    }

    /**
     * Judges the change of loss. One meter and one set-up before and after: the gain it shares cancels.
     *
     * @param sharedRelative relative standard uncertainty common to both readings
     */
    public static Decision lossChange(Uncertain before, Uncertain after, double sharedRelative, double greatestRise) {
        double change = lossChange(before.value(), after.value());
        double own = Math.max(0, square(before.relative()) - square(sharedRelative))
                + Math.max(0, square(after.relative()) - square(sharedRelative));
        return GuardedDecision.decide(new Uncertain(change, (1 + change) * Math.sqrt(own)),
                Bounds.atMost(greatestRise));
    }

    /** Judges the hottest spot against the mean temperature of the core, both in °C. */
    public static Decision hotSpot(Uncertain hottest, Uncertain mean, double greatestKelvin) {
        return GuardedDecision.decide(new Uncertain(hottest.value() - mean.value(), Math.hypot(hottest.u(), mean.u())),
                Bounds.atMost(greatestKelvin));
    }

    /**
     * Specific loss brought to the target density by the square of density, for a test that missed it by no more than 10 %.
     * Common practice, no source.
     */
    public static double atDensity(double wattsPerKilogram, double testedTesla, double targetTesla) {
        Require.positive("specific loss", wattsPerKilogram, "W/kg");
        Require.between("tested over target density", testedTesla / targetTesla, 0.9, 1.1, "",
                "the square law is good only near the target");
        return wattsPerKilogram * square(targetTesla / testedTesla);
    }

    private static double square(double x) {
        return x * x;
    }
}
