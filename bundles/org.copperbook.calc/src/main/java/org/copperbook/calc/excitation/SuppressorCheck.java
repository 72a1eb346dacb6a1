package org.copperbook.calc.excitation;

import org.copperbook.calc.Require;
import org.copperbook.calc.verdict.Outcome;

/**
 * The surge suppressor across a rotating rectifier: with its leads lifted it reads open both ways. The manuals differ in
 * what counts as open; both limits are offered. Source: US Army TM 9-4940-568-34, TM 5-6115-593-34 and TM 55-1930-209-14P-9-4.
 */
public enum SuppressorCheck {
    /** At least 1 megohm either way. */
    ONE_MEGOHM(1e6),
    /** At least 15 kilohm either way. */
    FIFTEEN_KILOHM(15e3);

    private final double leastOhms;

    SuppressorCheck(double leastOhms) {
        this.leastOhms = leastOhms;
    }

    /** The least resistance either way, ohm. */
    public double leastOhms() {
        return leastOhms;
    }

    /**
     * Judges two readings in ohm, positive infinity for above range. In circuit the field lies in parallel, so a low reading
     * is doubtful there; a high one is not, because parallel paths only lower it.
     */
    public Outcome judge(double oneWay, double otherWay, boolean leadsLifted) {
        double least = Math.min(notNegative(oneWay), notNegative(otherWay));
        if (least >= leastOhms) {
            return Outcome.MEETS;
        }
        return leadsLifted ? Outcome.FAILS : Outcome.DOUBTFUL;
    }

    private static double notNegative(double ohms) {
        return Double.isInfinite(ohms) && ohms > 0 ? ohms : Require.notNegative("suppressor reading", ohms, "ohm");
    }
}
