package org.copperbook.sheets.log;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.runup.LogQuantity;

/**
 * Finds the stretches in which a machine ran steadily, row by row and without keeping rows. A stretch ends when a column
 * leaves the band around its mean; one that drifted across the band from end to end is a ramp and no point.
 */
final class SteadyRuns {

    private static final int MOST = 5000;
    /** Part of the band that a straight line through a stretch may cross. */
    private static final double DRIFT = 0.4;

    private final LogQuantity[] quantities;
    private final boolean[] judged;
    private final SteadyRule rule;
    private final List<SteadyPoint> found = new ArrayList<>();
    private final double[] least;
    private final double[] greatest;
    private final double[] sum;
    private final double[] squares;
    private final double[] withTime;
    private final double[] origin;
    private double timeSum;
    private double timeSquares;
    private long count;
    private double begins;
    private double last;
    private long firstRow;
    private long lastRow;

    SteadyRuns(List<LogQuantity> quantities, SteadyRule rule) {
        this.quantities = quantities.toArray(LogQuantity[]::new);
        this.rule = rule;
        int n = this.quantities.length;
        judged = new boolean[n];
        for (int i = 0; i < n; i++) {
            judged[i] = !this.quantities[i].isTemperature();
        }
        least = new double[n];
        greatest = new double[n];
        sum = new double[n];
        squares = new double[n];
        withTime = new double[n];
        origin = new double[n];
    }

    void row(double seconds, long row, double[] values) {
        if (count > 0 && !fits(values)) {
            close();
        }
        if (count == 0) {
            begins = seconds;
            firstRow = row;
            timeSum = 0;
            timeSquares = 0;
            for (int i = 0; i < quantities.length; i++) {
                origin[i] = values[i];
                least[i] = values[i];
                greatest[i] = values[i];
                sum[i] = 0;
                squares[i] = 0;
                withTime[i] = 0;
            }
        }
        count++;
        last = seconds;
        lastRow = row;
        double t = seconds - begins;
        timeSum += t;
        timeSquares += t * t;
        for (int i = 0; i < quantities.length; i++) {
            // sums of differences from the first value keep their digits
            double d = values[i] - origin[i];
            sum[i] += d;
            squares[i] += d * d;
            withTime[i] += d * t;
            least[i] = Math.min(least[i], values[i]);
            greatest[i] = Math.max(greatest[i], values[i]);
        }
    }

    private boolean fits(double[] values) {
        for (int i = 0; i < quantities.length; i++) {
            if (judged[i]) {
                double low = Math.min(least[i], values[i]);
                double high = Math.max(greatest[i], values[i]);
                double mean = Math.abs(origin[i] + sum[i] / count);
                if (high - low > 2 * rule.band() * mean + floor(quantities[i])) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Near zero a fraction of the mean is less than any meter shows. */
    private static double floor(LogQuantity q) {
        return switch (q) {
            case EXCITER_AMPS -> 0.02;
            case LINE_AMPS -> 0.2;
            case LOAD_WATTS, LOAD_VARS -> 200;
            case SPEED -> 1;
            case FREQUENCY -> 0.05;
            default -> 0.5;
        };
    }

    /** Ends the stretch here: at a fault of the log, or at its end. */
    void close() {
        if (count > 1 && last - begins >= rule.seconds() && found.size() < MOST && !drifts()) {
            Map<LogQuantity, Double> means = new EnumMap<>(LogQuantity.class);
            Map<LogQuantity, Double> scatter = new EnumMap<>(LogQuantity.class);
            for (int i = 0; i < quantities.length; i++) {
                double mean = sum[i] / count;
                means.put(quantities[i], origin[i] + mean);
                scatter.put(quantities[i], Math.sqrt(Math.max(0, squares[i] - count * mean * mean) / (count - 1)));
            }
            found.add(new SteadyPoint(begins, last - begins, firstRow, lastRow, means, scatter));
        }
        count = 0;
    }

    private boolean drifts() {
        double spread = timeSquares - timeSum * timeSum / count;
        for (int i = 0; i < quantities.length; i++) {
            if (judged[i] && spread > 0) {
                double slope = (withTime[i] - timeSum * sum[i] / count) / spread;
                double mean = Math.abs(origin[i] + sum[i] / count);
                if (Math.abs(slope) * (last - begins) > DRIFT * (2 * rule.band() * mean + floor(quantities[i]))) {
                    return true;
                }
            }
        }
        return false;
    }

    List<SteadyPoint> found() {
        return List.copyOf(found);
    }
}
