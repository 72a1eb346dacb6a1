package org.copperbook.calc.insulation;

import org.copperbook.calc.Require;

/** The least one-minute insulation resistance at 40 degrees Celsius, ohm. */
public final class InsulationMinimum {

    private static final double MEGOHM = 1e6;

    private InsulationMinimum() {
    }

    /**
     * IEEE 43-2013, table 3 (dc armature also by the 2000 edition).
     *
     * @param ratedVolts line-to-line rms volts of an ac winding, rated dc volts of a field or armature; above 0 to
     *        50 000
     * @return ohm at 40 degrees Celsius
     */
    public static double ohms(WindingInsulation winding, double ratedVolts) {
        Require.positive("rated voltage", ratedVolts, "V");
        Require.between("rated voltage", ratedVolts, 0, 50_000, "V", "no machine winding is rated higher");
        return switch (winding) {
            case BEFORE_1970_OR_FIELD -> (ratedVolts / 1000 + 1) * MEGOHM;
            case FORM_WOUND_AC, DC_ARMATURE_2000 -> 100 * MEGOHM;
            case RANDOM_OR_BELOW_1_KV, DC_ARMATURE_2013 -> 5 * MEGOHM;
        };
    }

    /**
     * The old American rule: rated volts / (kVA/100 + 1000) megohm, hot. Source: AIEE rule as given in generator
     * manuals of the 1940s; offered for old plates only.
     *
     * @param ratedVolts volts, above 0
     * @param ratedKilovoltamperes kVA, 0 or more
     * @return ohm
     */
    public static double oldRuleOhms(double ratedVolts, double ratedKilovoltamperes) {
        Require.positive("rated voltage", ratedVolts, "V");
        Require.notNegative("rated power", ratedKilovoltamperes, "kVA");
        return ratedVolts / (ratedKilovoltamperes / 100 + 1000) * MEGOHM;
    }
}
