package org.copperbook.calc.uncertainty;

import org.copperbook.calc.Require;

/** Student's t distribution, for coverage factors with few degrees of freedom (JCGM 100:2008, annex G). */
public final class StudentT {

    private StudentT() {
    }

    /**
     * The coverage factor t for a two-sided level of confidence.
     *
     * @param level 0.5 to 0.9999
     * @param freedom degrees of freedom, 1 or more; positive infinity gives the normal distribution
     */
    public static double coverage(double level, double freedom) {
        Require.between("level of confidence", level, 0.5, 0.9999, "", "other levels are not used for readings");
        Require.that(freedom >= 1, "degrees of freedom", Double.toString(freedom), "values from 1",
                "one reading more than parameters is needed");
        double low = 0;
        double high = 1e5;
        for (int i = 0; i < 200 && high - low > 1e-13 * high; i++) {
            double middle = (low + high) / 2;
            if (inside(middle, freedom) < level) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** Probability that |T| is at most t. */
    static double inside(double t, double freedom) {
        if (freedom > 1e6) {
            return 2 * Normal.cumulative(t) - 1;
        }
        return 1 - incompleteBeta(freedom / (freedom + t * t), freedom / 2, 0.5);
    }

    /** Regularised incomplete beta function by continued fraction (Abramowitz and Stegun 26.5.8, Lentz's evaluation). */
    private static double incompleteBeta(double x, double a, double b) {
        if (x <= 0) {
            return 0;
        }
        if (x >= 1) {
            return 1;
        }
        double front = Math.exp(a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b));
        return x < (a + 1) / (a + b + 2)
                ? front * fraction(x, a, b) / a
                : 1 - front * fraction(1 - x, b, a) / b;
    }

    private static double fraction(double x, double a, double b) {
        double tiny = 1e-300;
        double c = 1;
        double d = 1 / nonZero(1 - (a + b) * x / (a + 1), tiny);
        double h = d;
        for (int m = 1; m < 500; m++) {
            double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
            d = 1 / nonZero(1 + even * d, tiny);
            c = nonZero(1 + even / c, tiny);
            h *= d * c;
            double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
            d = 1 / nonZero(1 + odd * d, tiny);
            c = nonZero(1 + odd / c, tiny);
            h *= d * c;
            if (Math.abs(d * c - 1) < 1e-15) {
                break;
            }
        }
        return h;
    }

    private static double nonZero(double x, double tiny) {
        return Math.abs(x) < tiny ? tiny : x;
    }

    /** Stirling's series after shifting the argument above 8; relative error below 1e-14. */
    private static double logGamma(double x) {
        double shift = 0;
        double z = x;
        while (z < 8) {
            shift -= Math.log(z);
            z++;
        }
        double w = 1 / (z * z);
        double series = (1 / 12.0 - w * (1 / 360.0 - w * (1 / 1260.0 - w * (1 / 1680.0 - w * (1 / 1188.0
                - w * 691 / 360360.0))))) / z;
        return shift + (z - 0.5) * Math.log(z) - z + 0.5 * Math.log(2 * Math.PI) + series;
    }
}
