package org.copperbook.calc;

/** The range checks that every calculation shares; each throws {@link OutOfRange} or returns its argument. */
public final class Require {

    private Require() {
    }

    /** A finite number. */
    public static double finite(String quantity, double value, String unit) {
        if (!Double.isFinite(value)) {
            throw new OutOfRange(quantity, show(value, unit), "the finite numbers", "a calculation needs a number");
        }
        return value;
    }

    /** A finite number greater than zero. */
    public static double positive(String quantity, double value, String unit) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new OutOfRange(quantity, show(value, unit), "values above 0" + blank(unit),
                    "it must be greater than zero");
        }
        return value;
    }

    /** A finite number, zero or more. */
    public static double notNegative(String quantity, double value, String unit) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new OutOfRange(quantity, show(value, unit), "values from 0" + blank(unit),
                    "it cannot be negative");
        }
        return value;
    }

    /** A number in the closed interval from low to high. */
    public static double between(String quantity, double value, double low, double high, String unit, String reason) {
        if (!(value >= low && value <= high)) {
            throw new OutOfRange(quantity, show(value, unit), show(low) + " to " + show(high, unit), reason);
        }
        return value;
    }

    /** A whole number in the closed interval from low to high. */
    public static int between(String quantity, int value, int low, int high, String reason) {
        if (value < low || value > high) {
            throw new OutOfRange(quantity, Integer.toString(value), low + " to " + high, reason);
        }
        return value;
    }

    /** An even number of poles, at least two. */
    public static int poles(int poles) {
        if (poles < 2 || poles % 2 != 0) {
            throw new OutOfRange("number of poles", Integer.toString(poles), "the even numbers from 2",
                    "north and south poles come in pairs");
        }
        return poles;
    }

    /** Any other condition, with its own words. */
    public static void that(boolean holds, String quantity, String value, String range, String reason) {
        if (!holds) {
            throw new OutOfRange(quantity, value, range, reason);
        }
    }

    private static String show(double value, String unit) {
        return show(value) + blank(unit);
    }

    private static String show(double value) {
        if (value == Math.rint(value) && Math.abs(value) < 1e15) {
            return Long.toString((long) value);
        }
        return Double.toString(value);
    }

    private static String blank(String unit) {
        return unit == null || unit.isEmpty() ? "" : " " + unit;
    }
}
