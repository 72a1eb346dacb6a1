package org.copperbook.calc.resistance;

import org.copperbook.calc.Require;

/**
 * A published resistance band.
 *
 * @param low lower limit, ohm
 * @param high upper limit, ohm
 */
public record LimitBand(double low, double high) {

    public LimitBand {
        Require.positive("lower limit", low, "ohm");
        Require.that(high > low && Double.isFinite(high), "upper limit", high + " ohm", "values above " + low + " ohm",
                "a band needs a width");
    }

    /** The middle, ohm. */
    public double middle() {
        return (low + high) / 2;
    }

    /** The half-width over the middle, a fraction. */
    public double relativeHalfWidth() {
        return (high - low) / (high + low);
    }

    /** A band of so many per cent either side of a value, as manuals give it. */
    public static LimitBand around(double ohms, double fraction) {
        Require.positive("nominal resistance", ohms, "ohm");
        Require.between("half-width", fraction, 1e-6, 0.999, "", "the band must stay above zero");
        return new LimitBand(ohms * (1 - fraction), ohms * (1 + fraction));
    }

    /**
     * Whether the band is oddly wide beside its neighbours of the same table: more than half as wide again. One such band
     * in a published table is more often a misprint than a wide tolerance.
     */
    public boolean widerThan(LimitBand neighbour) {
        return relativeHalfWidth() > 1.5 * neighbour.relativeHalfWidth();
    }
}
