package org.copperbook.calc.runup;

import java.util.List;

import org.copperbook.calc.Require;

/** Efficiency of a generator from segregated losses: output over output and losses. Source: IEC 60034-2-1, 5.1. */
public final class Efficiency {

    private Efficiency() {
    }

    /** Output and losses in W; losses not negative. */
    public static double fromLosses(double outputWatts, List<Double> lossesWatts) {
        double sum = Require.positive("output", outputWatts, "W");
        for (double loss : lossesWatts) {
            sum += Require.notNegative("loss", loss, "W");
        }
        return outputWatts / sum;
    }
}
