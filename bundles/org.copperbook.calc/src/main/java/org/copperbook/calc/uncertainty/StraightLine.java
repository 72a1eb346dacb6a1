package org.copperbook.calc.uncertainty;

import org.copperbook.calc.Require;

/**
 * A straight line y = a + b x fitted by least squares, with the scatter of the points as its uncertainty.
 * Source: JCGM 100:2008, H.3; any textbook of linear regression.
 */
public final class StraightLine {

    private final double intercept;
    private final double slope;
    private final double meanX;
    private final double sumXx;
    private final double residualVariance;
    private final int points;

    private StraightLine(double intercept, double slope, double meanX, double sumXx, double variance, int points) {
        this.intercept = intercept;
        this.slope = slope;
        this.meanX = meanX;
        this.sumXx = sumXx;
        this.residualVariance = variance;
        this.points = points;
    }

    /** Fits two points or more with at least two different x. */
    public static StraightLine through(double[] x, double[] y) {
        Require.that(x.length == y.length, "points", x.length + " and " + y.length, "equal counts",
                "every x needs its y");
        Require.between("number of points", x.length, 2, 1_000_000, "a line needs two points");
        int n = x.length;
        double mx = 0;
        double my = 0;
        for (int i = 0; i < n; i++) {
            mx += Require.finite("x", x[i], "") / n;
            my += Require.finite("y", y[i], "") / n;
        }
        double sxx = 0;
        double sxy = 0;
        for (int i = 0; i < n; i++) {
            sxx += (x[i] - mx) * (x[i] - mx);
            sxy += (x[i] - mx) * (y[i] - my);
        }
        Require.that(sxx > 0, "points", "all at one x", "two different x", "a line through one x has no slope");
        double b = sxy / sxx;
        double a = my - b * mx;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double e = y[i] - a - b * x[i];
            squares += e * e;
        }
        return new StraightLine(a, b, mx, sxx, n > 2 ? squares / (n - 2) : 0, n);
    }

    /** a, the value at x = 0. */
    public double intercept() {
        return intercept;
    }

    /** b, in units of y per unit of x. */
    public double slope() {
        return slope;
    }

    /** Standard deviation of the residuals; 0 with two points. */
    public double scatter() {
        return Math.sqrt(residualVariance);
    }

    /** Degrees of freedom, points less two. */
    public int freedom() {
        return points - 2;
    }

    /** The line's value at x with the standard uncertainty of the line there. */
    public Uncertain at(double x) {
        double u = Math.sqrt(residualVariance * (1.0 / points + (x - meanX) * (x - meanX) / sumXx));
        return new Uncertain(intercept + slope * x, u);
    }

    /** Standard uncertainty of the slope. */
    public double slopeUncertainty() {
        return Math.sqrt(residualVariance / sumXx);
    }
}
