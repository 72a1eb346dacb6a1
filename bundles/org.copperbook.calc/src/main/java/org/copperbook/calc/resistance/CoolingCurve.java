package org.copperbook.calc.resistance;

import org.copperbook.calc.Require;
import org.copperbook.calc.uncertainty.StraightLine;
import org.copperbook.calc.uncertainty.StudentT;
import org.copperbook.calc.uncertainty.Uncertain;

/**
 * A cooling curve R(t) = Rend + A exp(-t/T) fitted to readings after shutdown as a straight line on a semi-logarithmic
 * plot, Rend being the resistance at coolant temperature. Source: IEC 60034-1, 8.6.2.3.3; the confidence band is that of
 * the fitted line (Student's t) carried back from the logarithm.
 */
public final class CoolingCurve {

    private final StraightLine line;
    private final double endOhms;
    private final double latest;

    private CoolingCurve(StraightLine line, double endOhms, double latest) {
        this.line = line;
        this.endOhms = endOhms;
        this.latest = latest;
    }

    /** A value on the curve with its confidence band, ohm. */
    public record Point(double seconds, double ohms, double low, double high) {
    }

    /**
     * Fits the curve.
     *
     * @param seconds times after shutdown, three or more, not negative
     * @param ohms readings, each above the end value
     * @param endOhms resistance at the coolant temperature, ohm
     */
    public static CoolingCurve fit(double[] seconds, double[] ohms, double endOhms) {
        Require.that(seconds.length == ohms.length, "readings", seconds.length + " times and " + ohms.length + " ohms",
                "equal counts", "every reading needs its time");
        Require.between("number of readings", seconds.length, 3, 100_000,
                "two readings fit any curve and show no scatter");
        Require.positive("resistance at coolant temperature", endOhms, "ohm");
        double[] log = new double[ohms.length];
        double latest = 0;
        for (int i = 0; i < ohms.length; i++) {
            Require.notNegative("time after shutdown", seconds[i], "s");
            latest = Math.max(latest, seconds[i]);
            Require.that(ohms[i] > endOhms, "reading", ohms[i] + " ohm", "values above " + endOhms + " ohm",
                    "the winding is still warmer than its coolant");
            log[i] = Math.log(ohms[i] - endOhms);
        }
        StraightLine line = StraightLine.through(seconds, log);
        Require.that(line.slope() < 0, "readings", "rising with time", "falling with time", "a winding cools");
        return new CoolingCurve(line, endOhms, latest);
    }

    /** The time constant T, s. */
    public double timeConstant() {
        return -1 / line.slope();
    }

    /** Whether the readings reach far enough to show the curve: at least a fifth of the time constant. */
    public boolean showsItsBend() {
        return latest >= timeConstant() / 5;
    }

    /** The curve at a time from shutdown, s, with its two-sided band at the level of confidence given. */
    public Point at(double seconds, double level) {
        Require.notNegative("time after shutdown", seconds, "s");
        Uncertain log = line.at(seconds);
        double half = StudentT.coverage(level, line.freedom()) * log.u();
        return new Point(seconds, endOhms + Math.exp(log.value()), endOhms + Math.exp(log.value() - half),
                endOhms + Math.exp(log.value() + half));
    }

    /** The curve at a time as a value with its standard uncertainty, ohm. */
    public Uncertain ohmsAt(double seconds) {
        Require.notNegative("time after shutdown", seconds, "s");
        Uncertain log = line.at(seconds);
        double above = Math.exp(log.value());
        return new Uncertain(endOhms + above, above * log.u());
    }
}
