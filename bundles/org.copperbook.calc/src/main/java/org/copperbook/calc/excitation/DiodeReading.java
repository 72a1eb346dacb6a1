package org.copperbook.calc.excitation;

/**
 * A diode read both ways; the two directions may be read on different ranges of the meter.
 *
 * @param placement whether its leads were lifted
 * @param forwardMode what the meter showed forward
 * @param forward positive probe on the anode
 * @param reverseMode what the meter showed in reverse
 * @param reverse positive probe on the cathode
 */
public record DiodeReading(Placement placement, Mode forwardMode, Side forward, Mode reverseMode, Side reverse) {

    /** Both directions read on one range. */
    public DiodeReading(Placement placement, Mode mode, Side forward, Side reverse) {
        this(placement, mode, forward, mode, reverse);
    }

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

        /** Ohm or volt by the {@link Mode} of its direction. */
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

    /** A reading in ohm or volt, by the mode of its direction. */
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
