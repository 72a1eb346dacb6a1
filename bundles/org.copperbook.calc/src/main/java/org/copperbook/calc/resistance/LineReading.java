package org.copperbook.calc.resistance;

import org.copperbook.calc.uncertainty.Uncertain;

/** A resistance reading between two terminals: a value, or a finding that no current flows. */
public sealed interface LineReading {

    /** A reading in ohm, not negative once its uncertainty is taken into account. */
    record Value(Uncertain ohms) implements LineReading {
    }

    /** The meter showed more than its range: the path between the terminals is open. */
    record AboveRange() implements LineReading {
    }

    static LineReading of(Uncertain ohms) {
        return new Value(ohms);
    }

    /** A value in ohm with its standard uncertainty. */
    static LineReading of(double ohms, double u) {
        return new Value(new Uncertain(ohms, u));
    }

    static LineReading aboveRange() {
        return new AboveRange();
    }
}
