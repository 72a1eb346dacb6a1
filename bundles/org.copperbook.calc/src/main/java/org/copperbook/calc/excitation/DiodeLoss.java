package org.copperbook.calc.excitation;

import org.copperbook.calc.Require;

/**
 * Forward drop and loss by threshold voltage and slope resistance, the two constants of a diode's data sheet (IEC 60747-2).
 *
 * @param thresholdVolts V(TO), V
 * @param slopeOhms rT, ohm
 */
public record DiodeLoss(double thresholdVolts, double slopeOhms) {

    public DiodeLoss {
        Require.between("threshold voltage", thresholdVolts, 0.2, 2, "V", "silicon rectifiers lie there");
        Require.between("slope resistance", slopeOhms, 0, 1, "ohm", "silicon rectifiers lie there");
    }

    /** Forward drop at an instant current, V. */
    public double drop(double amperes) {
        return thresholdVolts + slopeOhms * Require.notNegative("current", amperes, "A");
    }

    /** Mean loss from mean and rms current, W. */
    public double watts(double meanAmperes, double rmsAmperes) {
        Require.notNegative("mean current", meanAmperes, "A");
        Require.that(rmsAmperes >= meanAmperes, "rms current", rmsAmperes + " A",
                "values from " + meanAmperes + " A", "an rms value is never below the mean");
        return thresholdVolts * meanAmperes + slopeOhms * rmsAmperes * rmsAmperes;
    }
}
