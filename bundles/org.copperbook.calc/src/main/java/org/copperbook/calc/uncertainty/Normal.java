package org.copperbook.calc.uncertainty;

/** The normal distribution, for probabilities of conformity (JCGM 106:2012, 7.2.1). */
public final class Normal {

    private static final double ROOT_2 = Math.sqrt(2);
    private static final double ROOT_PI = Math.sqrt(Math.PI);

    private Normal() {
    }

    /** Probability that a standard normal variable lies at or below z; absolute error below 1e-14. */
    public static double cumulative(double z) {
        if (Double.isNaN(z)) {
            return Double.NaN;
        }
        double tail = upperTail(Math.abs(z) / ROOT_2) / 2;
        return z > 0 ? 1 - tail : tail;
    }

    /** Probability that a normal variable with this mean and deviation lies at or below x. */
    public static double cumulative(double x, double mean, double deviation) {
        if (deviation == 0) {
            return x >= mean ? 1 : 0;
        }
        return cumulative((x - mean) / deviation);
    }

    /** erfc(x) for x from 0: power series near zero, continued fraction (Lentz) beyond. */
    private static double upperTail(double x) {
        if (x < 2.5) {
            double term = x;
            double sum = x;
            for (int n = 1; n < 200; n++) {
                term *= -x * x / n;
                double add = term / (2 * n + 1);
                sum += add;
                if (Math.abs(add) < 1e-18) {
                    break;
                }
            }
            return 1 - 2 / ROOT_PI * sum;
        }
        if (x > 27) {
            return 0;
        }
        double f = x;
        for (int n = 120; n >= 1; n--) {
            f = x + n / 2.0 / f;
        }
        return Math.exp(-x * x) / ROOT_PI / f;
    }
}
