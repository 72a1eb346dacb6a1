package org.copperbook.calc.excitation;

import org.copperbook.calc.Require;

/**
 * The limits by which a diode reading is classed. Between "conducts" and "blocks" a reading is doubtful.
 *
 * @param conductsBelowOhms at or below this it conducts, ohm
 * @param blocksAboveOhms at or above this it blocks, ohm
 * @param forwardLowVolts least forward drop of a healthy junction on a diode range, V
 * @param forwardHighVolts greatest forward drop of a healthy junction on a diode range, V
 * @param shortBelowVolts at or below this drop it is a short, V
 */
public record DiodeLimits(double conductsBelowOhms, double blocksAboveOhms, double forwardLowVolts,
        double forwardHighVolts, double shortBelowVolts) {

    /**
     * Forward about 10 ohm and reverse 30 to 300 kilohm: US Army TM 55-1930-209-14P-9-4. Forward 0.4 to 0.7 V on a diode
     * range: common practice, no source; widened to 0.3 to 0.9 V for cold and for small test currents. The conducting
     * ceiling of 1000 ohm allows for the low test current of multimeters (common practice, no source).
     */
    public static final DiodeLimits DEFAULT = new DiodeLimits(1000, 30_000, 0.3, 0.9, 0.1);

    public DiodeLimits {
        Require.positive("conducting limit", conductsBelowOhms, "ohm");
        Require.positive("blocking limit", blocksAboveOhms, "ohm");
        Require.that(blocksAboveOhms > conductsBelowOhms, "blocking limit", blocksAboveOhms + " ohm",
                "values above " + conductsBelowOhms + " ohm", "a diode that conducts there cannot block there");
        Require.that(forwardLowVolts < forwardHighVolts && shortBelowVolts < forwardLowVolts, "forward drop",
                forwardLowVolts + " V", "short < low < high", "the classes must not overlap");
    }
}
