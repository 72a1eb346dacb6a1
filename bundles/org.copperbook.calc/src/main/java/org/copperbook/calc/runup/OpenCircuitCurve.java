package org.copperbook.calc.runup;

import java.util.Arrays;
import java.util.Comparator;

import org.copperbook.calc.Require;

/**
 * Open-circuit voltage against field current at one speed, with its air-gap line. Points are sorted by field current; the
 * curve is read by straight lines between points or by the monotone cubic of Fritsch and Carlson, which adds no bumps.
 * Source: IEC 60034-4-1, open-circuit characteristic; F. N. Fritsch, R. E. Carlson, SIAM J. Numer. Anal. 17 (1980).
 */
public final class OpenCircuitCurve {

    private final double[] field;
    private final double[] volts;
    private final double[] slopes;

    private OpenCircuitCurve(double[] field, double[] volts) {
        this.field = field;
        this.volts = volts;
        this.slopes = monotoneSlopes(field, volts);
    }

    /** Points {field amperes, volts}, two or more, distinct field currents, volts rising with the field. */
    public static OpenCircuitCurve of(double[][] points) {
        Require.between("number of points", points.length, 2, 100_000, "a curve needs two points");
        double[][] sorted = points.clone();
        Arrays.sort(sorted, Comparator.comparingDouble(p -> p[0]));
        double[] x = new double[sorted.length];
        double[] y = new double[sorted.length];
        for (int i = 0; i < sorted.length; i++) {
            x[i] = Require.notNegative("field current", sorted[i][0], "A");
            y[i] = Require.notNegative("voltage", sorted[i][1], "V");
            if (i > 0) {
                Require.that(x[i] > x[i - 1], "field current", x[i] + " A twice", "distinct field currents",
                        "one current has one voltage");
                Require.that(y[i] > y[i - 1], "voltage", y[i] + " V at " + x[i] + " A",
                        "values above " + y[i - 1] + " V", "the open-circuit voltage rises with the field current");
            }
        }
        return new OpenCircuitCurve(x, y);
    }

    /** Volts at a field current by straight lines between points; within the points only. */
    public double linear(double amperes) {
        int i = segment(field, inside("field current", amperes, field, "A"));
        double t = (amperes - field[i]) / (field[i + 1] - field[i]);
        return volts[i] + t * (volts[i + 1] - volts[i]);
    }

    /** Volts at a field current on the smooth monotone curve; within the points only. */
    public double smooth(double amperes) {
        int i = segment(field, inside("field current", amperes, field, "A"));
        double h = field[i + 1] - field[i];
        double t = (amperes - field[i]) / h;
        double t2 = t * t;
        double t3 = t2 * t;
        return volts[i] * (2 * t3 - 3 * t2 + 1) + h * slopes[i] * (t3 - 2 * t2 + t)
                + volts[i + 1] * (3 * t2 - 2 * t3) + h * slopes[i + 1] * (t3 - t2);
    }

    /** Field current for a voltage by straight lines between points; within the points only. */
    public double fieldFor(double wanted) {
        int i = segment(volts, inside("voltage", wanted, volts, "V"));
        double t = (wanted - volts[i]) / (volts[i + 1] - volts[i]);
        return field[i] + t * (field[i + 1] - field[i]);
    }

    /**
     * Slope of the air-gap line, V/A: the steepest mean slope from the origin, once the residual voltage read at no field is
     * taken off. The line is drawn through the lower part of the curve, at or below the share given of the highest
     * voltage, by least squares through the origin.
     *
     * @param lowerShare 0.2 to 0.9; half of the highest voltage is usual
     */
    public double airGapSlope(double lowerShare) {
        Require.between("lower part", lowerShare, 0.2, 0.9, "", "the line is drawn where iron is not saturated");
        double residual = field[0] == 0 ? volts[0] : 0;
        double top = volts[volts.length - 1];
        double xy = 0;
        double xx = 0;
        for (int i = 0; i < field.length; i++) {
            if (volts[i] <= lowerShare * top && field[i] > 0) {
                xy += field[i] * (volts[i] - residual);
                xx += field[i] * field[i];
            }
        }
        Require.that(xx > 0, "points", "none in the lower part", "one point at least below "
                + lowerShare * top + " V", "the air-gap line needs points where the iron is not saturated");
        return xy / xx;
    }

    /** Saturation factor at a voltage: field current needed over field current on the air-gap line; 1 is unsaturated. */
    public double saturationFactor(double atVolts, double airGapSlope) {
        return fieldFor(atVolts) * Require.positive("air-gap slope", airGapSlope, "V/A") / atVolts;
    }

    /** The same curve at another speed, main-field current held: volts in proportion. Speeds in one unit. */
    public OpenCircuitCurve atSpeed(double from, double to) {
        double r = Require.positive("speed", to, "") / Require.positive("speed", from, "");
        return new OpenCircuitCurve(field.clone(), Arrays.stream(volts).map(v -> v * r).toArray());
    }

    /**
     * Greatest relative deviation of this curve from a stored one over the field currents that both cover; signed, positive
     * when this one is higher.
     */
    public double greatestDeviationFrom(OpenCircuitCurve stored) {
        double low = Math.max(field[0], stored.field[0]);
        double high = Math.min(field[field.length - 1], stored.field[stored.field.length - 1]);
        Require.that(low < high, "curves", "without common field currents", "curves that overlap",
                "only the common part can be compared");
        double worst = 0;
        for (int i = 0; i <= 200; i++) {
            double x = low + (high - low) * i / 200;
            double reference = stored.smooth(x);
            if (reference > 0) {
                double d = smooth(x) / reference - 1;
                worst = Math.abs(d) > Math.abs(worst) ? d : worst;
            }
        }
        return worst;
    }

    /** Lowest and highest field current, A. */
    public double[] fieldRange() {
        return new double[] {field[0], field[field.length - 1]};
    }

    /** Highest voltage, V. */
    public double highestVolts() {
        return volts[volts.length - 1];
    }

    private static double inside(String quantity, double value, double[] grid, String unit) {
        return Require.between(quantity, value, grid[0], grid[grid.length - 1], unit,
                "the curve was not measured beyond its points");
    }

    private static int segment(double[] grid, double value) {
        int i = Arrays.binarySearch(grid, value);
        int at = i >= 0 ? i : -i - 2;
        return Math.min(at, grid.length - 2);
    }

    private static double[] monotoneSlopes(double[] x, double[] y) {
        int n = x.length;
        double[] secant = new double[n - 1];
        for (int i = 0; i < n - 1; i++) {
            secant[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
        }
        double[] m = new double[n];
        if (n == 2) {
            return new double[] {secant[0], secant[0]};
        }
        m[0] = endSlope(x[1] - x[0], x[2] - x[1], secant[0], secant[1]);
        m[n - 1] = endSlope(x[n - 1] - x[n - 2], x[n - 2] - x[n - 3], secant[n - 2], secant[n - 3]);
        for (int i = 1; i < n - 1; i++) {
            double h0 = x[i] - x[i - 1];
            double h1 = x[i + 1] - x[i];
            double w0 = 2 * h1 + h0;
            double w1 = h1 + 2 * h0;
            m[i] = secant[i - 1] * secant[i] <= 0 ? 0 : (w0 + w1) / (w0 / secant[i - 1] + w1 / secant[i]);
        }
        return m;
    }

    /** Three-point slope at an end, kept within what stays monotone. */
    private static double endSlope(double near, double next, double nearSecant, double nextSecant) {
        double slope = ((2 * near + next) * nearSecant - near * nextSecant) / (near + next);
        return Math.max(0, Math.min(slope, 3 * nearSecant));
    }
}
