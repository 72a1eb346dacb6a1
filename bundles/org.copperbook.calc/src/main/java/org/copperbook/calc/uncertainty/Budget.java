package org.copperbook.calc.uncertainty;

import java.util.List;

import org.copperbook.calc.Require;

/** Uncertainty budgets by hand: half-widths to standard uncertainties, combination, effective degrees of freedom. */
public final class Budget {

    private Budget() {
    }

    /** Shapes of a distribution given by its half-width, each with its divisor (JCGM 100:2008, 4.3.7 to 4.3.9, 4.3.3). */
    public enum Shape {
        RECTANGULAR(Math.sqrt(3)), TRIANGULAR(Math.sqrt(6)), U_SHAPED(Math.sqrt(2)), EXPANDED_K2(2), STANDARD(1);

        private final double divisor;

        Shape(double divisor) {
            this.divisor = divisor;
        }

        /** The standard uncertainty of a half-width, in the same unit. */
        public double standard(double halfWidth) {
            return Require.notNegative("half-width", halfWidth, "") / divisor;
        }
    }

    /**
     * One line of a budget.
     *
     * @param contribution sensitivity times standard uncertainty, signed, in the unit of the result
     * @param freedom its degrees of freedom, 1 or more; positive infinity for a stated limit
     */
    public record Line(double contribution, double freedom) {
    }

    /** Square root of the sum of squares (JCGM 100:2008, 5.1.2, inputs independent). */
    public static double independent(List<Line> lines) {
        return Math.sqrt(lines.stream().mapToDouble(l -> l.contribution() * l.contribution()).sum());
    }

    /** Size of the signed sum (JCGM 100:2008, 5.2.2, note 1: all inputs correlated with coefficient +1). */
    public static double correlated(List<Line> lines) {
        return Math.abs(lines.stream().mapToDouble(Line::contribution).sum());
    }

    /** Effective degrees of freedom by the Welch-Satterthwaite formula (JCGM 100:2008, G.4.1); infinite when all are. */
    public static double effectiveFreedom(List<Line> lines) {
        double u = independent(lines);
        double sum = 0;
        for (Line l : lines) {
            Require.that(l.freedom() >= 1, "degrees of freedom", Double.toString(l.freedom()), "values from 1",
                    "a contribution without freedom has no known width");
            sum += Math.pow(l.contribution(), 4) / l.freedom();
        }
        return sum == 0 ? Double.POSITIVE_INFINITY : Math.pow(u, 4) / sum;
    }

    /** Standard uncertainty of the mean of repeated readings, n - 1 degrees of freedom (JCGM 100:2008, 4.2.3). */
    public static Uncertain mean(double... readings) {
        Require.between("number of readings", readings.length, 2, 1_000_000, "a spread needs two readings");
        double sum = 0;
        for (double r : readings) {
            sum += Require.finite("reading", r, "");
        }
        double mean = sum / readings.length;
        double squares = 0;
        for (double r : readings) {
            squares += (r - mean) * (r - mean);
        }
        return new Uncertain(mean, Math.sqrt(squares / (readings.length - 1) / readings.length));
    }
}
