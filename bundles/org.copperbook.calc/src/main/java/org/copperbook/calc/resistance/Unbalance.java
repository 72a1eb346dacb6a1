package org.copperbook.calc.resistance;

import java.util.List;

import org.copperbook.calc.Require;
import org.copperbook.calc.uncertainty.SharedSources;
import org.copperbook.calc.uncertainty.SharedTerms;
import org.copperbook.calc.uncertainty.Traced;
import org.copperbook.calc.uncertainty.Uncertain;

/** How far a set of volts or ohms is from equal. All results are fractions (0.01 = 1 %). */
public final class Unbalance {

    private Unbalance() {
    }

    /**
     * The largest deviation from the mean, over the mean. Source: NEMA MG 1, 12.45 and 14.36 (percent voltage
     * unbalance). Values of one kind, two or more, with a positive mean.
     */
    public static double ofMean(double... values) {
        double mean = mean(values);
        double worst = 0;
        for (double v : values) {
            worst = Math.max(worst, Math.abs(v - mean));
        }
        return worst / mean;
    }

    /**
     * The spread over a rated value: (largest - smallest) / rated. Source: US Army TM 9-6115-464-34 and
     * TM 5-6115-593-34, voltage unbalance test.
     */
    public static double spreadOfRated(double rated, double... values) {
        Require.positive("rated value", rated, "");
        mean(values);
        double low = values[0];
        double high = values[0];
        for (double v : values) {
            low = Math.min(low, v);
            high = Math.max(high, v);
        }
        return (high - low) / rated;
    }

    /**
     * Negative over positive sequence from the three line-to-line magnitudes, exact for any closed triangle:
     * sqrt((1 - sqrt(3 - 6 b)) / (1 + sqrt(3 - 6 b))), b = sum of fourth powers over square of the sum of squares.
     * Source: IEC 61000-4-30, 5.7.1.
     */
    public static double negativeSequence(double uv, double vw, double wu) {
        mean(uv, vw, wu);
        double square = uv * uv + vw * vw + wu * wu;
        double fourth = Math.pow(uv, 4) + Math.pow(vw, 4) + Math.pow(wu, 4);
        double b = fourth / (square * square);
        Require.that(b <= 0.5 + 1e-12, "line voltages", uv + ", " + vw + ", " + wu, "triples that close a triangle",
                "three line-to-line voltages add to zero as phasors");
        double root = Math.sqrt(Math.max(0, 3 - 6 * b));
        return Math.sqrt(Math.max(0, 1 - root) / (1 + root));
    }

    /** {@link #ofMean} with its standard uncertainty, readings independent. */
    public static Uncertain ofReadings(Uncertain... readings) {
        return ofReadings(List.of(readings), SharedTerms.NONE);
    }

    /**
     * {@link #ofMean} with its standard uncertainty. A gain error common to all readings cancels; a common lead
     * resistance nearly does.
     *
     * @param shared what the readings have in common; for volts only the gain applies
     */
    public static Uncertain ofReadings(List<Uncertain> readings, SharedTerms shared) {
        SharedSources sources = new SharedSources(shared);
        return ofTraced(readings.stream().map(sources::ohms).toList()).uncertain();
    }

    /** {@link #ofMean} of values whose causes of uncertainty are known. */
    public static Traced ofTraced(List<Traced> values) {
        double mean = mean(values.stream().mapToDouble(Traced::value).toArray());
        Traced sum = Traced.exact(0);
        Traced worst = values.get(0);
        for (Traced v : values) {
            sum = sum.plus(v);
            if (Math.abs(v.value() - mean) > Math.abs(worst.value() - mean)) {
                worst = v;
            }
        }
        Traced deviation = worst.over(sum.times(1.0 / values.size())).plus(-1);
        return deviation.value() < 0 ? deviation.times(-1) : deviation;
    }

    private static double mean(double... values) {
        Require.between("number of readings", values.length, 2, 1000, "unbalance compares readings with each other");
        double sum = 0;
        for (double v : values) {
            sum += Require.notNegative("reading", v, "");
        }
        return Require.positive("mean of the readings", sum / values.length, "");
    }
}
