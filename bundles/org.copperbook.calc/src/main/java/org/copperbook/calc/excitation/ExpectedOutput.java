package org.copperbook.calc.excitation;

import org.copperbook.calc.uncertainty.Uncertain;

/** Where the output expected of a separate-excitation run comes from; line-to-line volts at nominal speed. */
public sealed interface ExpectedOutput {

    /** The maker's or a stored excitation point, read at the exciter amperes measured. */
    record StoredPoint(Uncertain volts) implements ExpectedOutput {
    }

    /** Practice says that this battery brings this machine to its nominal voltage. */
    record Nominal(double volts) implements ExpectedOutput {
    }

    /**
     * Nothing is known of what the battery should give; the rated voltage, or null, serves only to tell residual
     * voltage from output.
     */
    record Unknown(Double ratedVolts) implements ExpectedOutput {
    }
}
