package org.copperbook.calc.uncertainty;

import org.copperbook.calc.OutOfRange;

/**
 * A value with its standard uncertainty (coverage factor 1), both in the same unit.
 * Source: JCGM 100:2008, 2.3.1.
 *
 * @param value the best estimate, finite
 * @param u the standard uncertainty, finite and not negative
 */
public record Uncertain(double value, double u) {

    public Uncertain {
        if (!Double.isFinite(value)) {
            throw new OutOfRange("value", Double.toString(value), "the finite numbers", "a reading needs a number");
        }
        if (!(u >= 0) || Double.isInfinite(u)) {
            throw new OutOfRange("standard uncertainty", Double.toString(u), "the finite numbers from 0",
                    "an uncertainty is a width and cannot be negative");
        }
    }

    /** A value taken as exact. */
    public static Uncertain exact(double value) {
        return new Uncertain(value, 0);
    }

    /** Standard uncertainty over the size of the value; infinite at zero unless u is zero too. */
    public double relative() {
        return u == 0 ? 0 : u / Math.abs(value);
    }

    /** The lower end of the coverage interval, value - k u. */
    public double low(double k) {
        return value - k * u;
    }

    /** The upper end of the coverage interval, value + k u. */
    public double high(double k) {
        return value + k * u;
    }

    /** The expanded uncertainty k u. */
    public double expanded(double k) {
        return k * u;
    }

    /** The value and its uncertainty multiplied by an exact factor. */
    public Uncertain times(double factor) {
        return new Uncertain(value * factor, u * Math.abs(factor));
    }

    /** The value shifted by an exact amount. */
    public Uncertain plus(double amount) {
        return new Uncertain(value + amount, u);
    }
}
