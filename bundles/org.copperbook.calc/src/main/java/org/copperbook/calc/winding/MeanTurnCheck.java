package org.copperbook.calc.winding;

import org.copperbook.calc.Require;

/**
 * Compares a written mean length of turn with the one the copper mass implies, and tells a slipped decimal from a small
 * difference (a published rewind sheet prints 2209.8 mm for a small exciter whose copper fits 221 mm).
 *
 * @param written mean length of turn as written in m
 * @param implied mean length of turn from the mass in m
 * @param ratio written over implied
 * @param finding what the ratio says
 */
public record MeanTurnCheck(double written, double implied, double ratio, Finding finding) {
    private static final double AGREES = 0.05;
    private static final double SLIP = 0.2;

    /** What the ratio says. */
    public enum Finding {
        /** Within five percent, as far as hand winding and residue go. */
        AGREES,
        /** Further off. */
        DIFFERS,
        /** Near ten, a hundred, a tenth or a hundredth: the decimal mark has slipped. */
        DECIMAL_SLIP
    }

    /**
     * @param written mean length of turn as written in m, above 0
     * @param kilograms bare mass of the winding in kg, above 0
     * @param turns turns of all coils, above 0
     * @param bundle strands in hand
     * @return comparison
     */
    public static MeanTurnCheck of(double written, double kilograms, double turns, ConductorBundle bundle) {
        Require.positive("mean length of turn", written, "m");
        double implied = EqualCoils.meanTurnFromMass(kilograms, turns, bundle);
        double ratio = written / implied;
        double decades = Math.log10(ratio);
        Finding finding = Finding.DIFFERS;
        if (Math.abs(ratio - 1) <= AGREES) {
            finding = Finding.AGREES;
        } else if (Math.rint(decades) != 0 && Math.abs(decades - Math.rint(decades)) < Math.log10(1 + SLIP)) {
            finding = Finding.DECIMAL_SLIP;
        }
        return new MeanTurnCheck(written, implied, ratio, finding);
    }
}
