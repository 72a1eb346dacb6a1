package org.copperbook.calc.runup;

import org.copperbook.calc.Require;

/**
 * The short-circuit characteristic. Readings are joined by straight lines; beyond the last the line through origin and last
 * point goes on, because the curve is straight while the iron is not saturated. Source: IEC 60034-4-1.
 */
public final class ShortCircuitLine {

    private final OpenCircuitCurve points;
    private final double lastField;
    private final double lastAmperes;

    private ShortCircuitLine(OpenCircuitCurve points, double lastField, double lastAmperes) {
        this.points = points;
        this.lastField = lastField;
        this.lastAmperes = lastAmperes;
    }

    /** Points {field A, armature A}, one or more; the origin is added when it is missing. */
    public static ShortCircuitLine through(double[][] readings) {
        Require.between("number of points", readings.length, 1, 100_000, "a line needs a point beside the origin");
        boolean origin = false;
        double[] last = readings[0];
        for (double[] p : readings) {
            origin |= p[0] == 0;
            last = p[0] > last[0] ? p : last;
        }
        double[][] all = readings;
        if (!origin) {
            all = new double[readings.length + 1][];
            all[0] = new double[] {0, 0};
            System.arraycopy(readings, 0, all, 1, readings.length);
        }
        return new ShortCircuitLine(OpenCircuitCurve.of(all), last[0], last[1]);
    }

    /** Armature current at a field current, A. */
    public double amperes(double field) {
        return field <= lastField ? points.linear(field) : lastAmperes * field / lastField;
    }

    /** Field current for an armature current, A. */
    public double fieldFor(double amperes) {
        return amperes <= lastAmperes ? points.fieldFor(amperes) : lastField * amperes / lastAmperes;
    }
}
