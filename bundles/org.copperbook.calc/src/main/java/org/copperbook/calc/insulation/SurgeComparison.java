package org.copperbook.calc.insulation;

import org.copperbook.calc.Require;

/** Comparison of two surge waves sampled at the same times. */
public final class SurgeComparison {

    private SurgeComparison() {
    }

    /**
     * Error area ratio: sum of the differences' sizes over the sum of the first wave's sizes, a fraction. Definition as used
     * in surge test literature (from memory).
     */
    public static double errorAreaRatio(double[] first, double[] second) {
        Require.that(first.length == second.length && first.length > 1, "samples",
                first.length + " and " + second.length, "equal counts above 1", "waves are compared sample by sample");
        double difference = 0;
        double size = 0;
        for (int i = 0; i < first.length; i++) {
            difference += Math.abs(first[i] - second[i]);
            size += Math.abs(first[i]);
        }
        return difference / Require.positive("sum of the first wave", size, "");
    }
}
