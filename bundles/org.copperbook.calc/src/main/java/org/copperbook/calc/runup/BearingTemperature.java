package org.copperbook.calc.runup;

import org.copperbook.calc.Require;

/**
 * Bearings run until their temperature is steady, and it is recorded (ANSI/EASA AR100, bearing clause).
 *
 * @param steady whether the last half hour changed by no more than the limit
 * @param changePerHour change over the last half hour or more, K/h; not a number when the readings span less
 * @param last last temperature, °C
 * @param rise last temperature over ambient, K
 */
public record BearingTemperature(boolean steady, double changePerHour, double last, double rise) {

    /** Thermal equilibrium: 2 K per hour (IEC 60034-1, definition of thermal equilibrium). */
    public static final double STEADY_KELVIN_PER_HOUR = 2;
    /** Caution by rise, K: common practice, no source. */
    public static final double CAUTION_RISE = 40;
    /** Caution by temperature, °C: common practice, no source. */
    public static final double CAUTION_CELSIUS = 90;

    private static final double HALF_HOUR = 0.5;

    /**
     * Reads a run.
     *
     * @param readings {hours, °C} in order of time, two or more
     * @param ambient ambient temperature, °C
     */
    public static BearingTemperature of(double[][] readings, double ambient) {
        Require.between("number of readings", readings.length, 2, 100_000, "steadiness needs two readings");
        double[] last = readings[readings.length - 1];
        double change = Double.NaN;
        for (int i = readings.length - 2; i >= 0; i--) {
            Require.that(readings[i][0] < readings[i + 1][0], "time", readings[i + 1][0] + " h",
                    "times after " + readings[i][0] + " h", "readings come in order of time");
            double span = last[0] - readings[i][0];
            if (Double.isNaN(change) && span >= HALF_HOUR - 1e-9) {
                change = (last[1] - readings[i][1]) / span;
            }
        }
        boolean steady = Math.abs(change) <= STEADY_KELVIN_PER_HOUR;
        return new BearingTemperature(steady, change, last[1], last[1] - ambient);
    }

    /** Whether temperature or rise asks for caution. */
    public boolean caution() {
        return last > CAUTION_CELSIUS || rise > CAUTION_RISE;
    }
}
