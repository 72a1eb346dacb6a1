package org.copperbook.calc.runup;

import org.copperbook.calc.Require;

/** Speed, frequency, poles and slip: n = 2 f / poles in revolutions per second. Source: IEC 60034-1, definition. */
public final class SynchronousSpeed {

    private SynchronousSpeed() {
    }

    /** Synchronous speed, r/s; frequency in Hz, even number of poles. */
    public static double perSecond(double hertz, int poles) {
        return 2 * Require.positive("frequency", hertz, "Hz") / Require.poles(poles);
    }

    /** Frequency from speed in r/s, Hz. */
    public static double hertz(double perSecond, int poles) {
        return Require.notNegative("speed", perSecond, "1/s") * Require.poles(poles) / 2;
    }

    /** Slip, a share of the synchronous (not the rotor) speed; speeds in one unit. */
    public static double slip(double synchronous, double rotor) {
        Require.positive("synchronous speed", synchronous, "1/s");
        return (synchronous - Require.notNegative("rotor speed", rotor, "1/s")) / synchronous;
    }

    /** The even number of poles that belongs to a frequency and a nameplate speed within 1 % below synchronous. */
    public static int poles(double hertz, double perSecond) {
        Require.positive("frequency", hertz, "Hz");
        Require.positive("speed", perSecond, "1/s");
        int poles = 2 * (int) Math.floor(hertz / perSecond * 1.0001);
        return Require.poles(poles);
    }
}
