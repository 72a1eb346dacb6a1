package org.copperbook.calc.runup;

import org.copperbook.calc.Require;

/**
 * The repair shop limit: 0.15 in/s peak above 1200 r/min, 0.0025 in peak to peak displacement at and below; 0.8 of it on a
 * rigid mounting. Source: ANSI/EASA AR100, vibration clause.
 */
public final class ShopVibration {

    private static final double INCH = 0.0254;
    private static final double ROOT_2 = Math.sqrt(2);

    private ShopVibration() {
    }

    /** Greatest velocity, m/s rms, at a speed in r/s; the displacement limit is read as velocity at running speed. */
    public static double velocityRms(double perSecond, boolean rigid) {
        Require.positive("speed", perSecond, "1/s");
        double peak = perSecond > 20 ? 0.15 * INCH : velocityPeak(0.0025 * INCH, perSecond);
        return peak / ROOT_2 * (rigid ? 0.8 : 1);
    }

    /** Peak velocity of a sine, m/s, from displacement peak to peak in m and its frequency in Hz. */
    public static double velocityPeak(double peakToPeak, double hertz) {
        return Math.PI * Require.positive("frequency", hertz, "Hz")
                * Require.notNegative("displacement", peakToPeak, "m");
    }
}
