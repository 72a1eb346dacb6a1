package org.copperbook.calc.insulation;

import org.copperbook.calc.Require;

/** Withstand levels outside the two main tables. */
public final class WithstandOther {

    private WithstandOther() {
    }

    /**
     * Exciter parts of a small brushless army set: 10 x exciter ceiling voltage, 1500 to 3500 V, one minute. Source: US Army
     * TM 5-6115-585-34, high-potential paragraph (whose print gives the formulas against the wrong parts).
     */
    public static double exciterByCeiling(double ceilingVolts) {
        return Math.min(3500, Math.max(1500, 10 * Require.positive("exciter ceiling voltage", ceilingVolts, "V")));
    }

    /**
     * Maintenance test of a winding in service: a share of the rated voltage, 1.25 to 1.5. Source: IEEE 95-2002, 6.2.
     *
     * @return V rms; the direct value is {@link WithstandIec#DIRECT} times it
     */
    public static double maintenance(double ratedVolts, double share) {
        Require.positive("rated voltage", ratedVolts, "V");
        Require.between("share of rated voltage", share, 1.25, 1.5, "", "the recommended range ends there");
        return ratedVolts * share;
    }
}
