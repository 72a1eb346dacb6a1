package org.copperbook.calc.excitation;

/**
 * A diode read both ways.
 *
 * @param placement whether its leads were lifted
 * @param mode what the meter showed
 * @param forward positive probe on the anode
 * @param reverse positive probe on the cathode
 */
public record DiodeReading(Placement placement, Mode mode, Side forward, Side reverse) {

    /** Whether armature, field and suppressor leads were lifted. */
    public enum Placement {
        ISOLATED, IN_CIRCUIT
    }

    /** The range of the meter. */
    public enum Mode {
        /** Resistance, ohm. */
        OHMS,
        /** Diode range: forward voltage, volt. */
        VOLTS
    }

    /** One direction: a value, a finding, or nothing. */
    public sealed interface Side {

        /** Ohm or volt by {@link Mode}. */
        record Value(double amount) implements Side {
        }

        /** More than the meter's range: it blocks. */
        record AboveRange() implements Side {
        }

        /** Less than the last digit: it conducts without drop. */
        record BelowResolution() implements Side {
        }

        /** Not read, unstable or not possible. */
        record NotTaken() implements Side {
        }
    }

    /** A reading in ohm or volt, by the mode. */
    public static Side value(double amount) {
        return new Side.Value(amount);
    }

    /** The meter showed more than its range. */
    public static Side aboveRange() {
        return new Side.AboveRange();
    }

    /** No usable reading. */
    public static Side notTaken() {
        return new Side.NotTaken();
    }
}
