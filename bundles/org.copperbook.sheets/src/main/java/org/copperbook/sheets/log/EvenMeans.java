package org.copperbook.sheets.log;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.runup.LogQuantity;

/** Temperatures at even distances: the mean of the minute before each mark. */
final class EvenMeans {

    private static final double MINUTE = 60;
    private static final int MOST = 2000;

    private final List<LogQuantity> quantities;
    private final int[] places;
    private final double distance;
    private final List<SteadyPoint> found = new ArrayList<>();
    private final double[] sums;
    private final double[] squares;
    private final double[] origins;
    private long count;
    private long firstRow;
    private long lastRow;
    private long mark = 1;
    private double from;
    private double to;

    EvenMeans(List<LogQuantity> all, double minutes) {
        quantities = all.stream().filter(LogQuantity::isTemperature).toList();
        places = quantities.stream().mapToInt(all::indexOf).toArray();
        distance = minutes * MINUTE;
        sums = new double[places.length];
        squares = new double[places.length];
        origins = new double[places.length];
    }

    void row(double seconds, long row, double[] values) {
        if (places.length == 0) {
            return;
        }
        if (seconds > mark * distance) {
            close();
            mark = (long) Math.ceil(seconds / distance - 1e-9);
        }
        if (seconds < mark * distance - Math.min(MINUTE, distance)) {
            return;
        }
        if (count == 0) {
            from = seconds;
            firstRow = row;
            for (int i = 0; i < places.length; i++) {
                origins[i] = values[places[i]];
                sums[i] = 0;
                squares[i] = 0;
            }
        }
        count++;
        to = seconds;
        lastRow = row;
        for (int i = 0; i < places.length; i++) {
            double d = values[places[i]] - origins[i];
            sums[i] += d;
            squares[i] += d * d;
        }
    }

    void close() {
        if (count > 0 && found.size() < MOST) {
            Map<LogQuantity, Double> means = new EnumMap<>(LogQuantity.class);
            Map<LogQuantity, Double> scatter = new EnumMap<>(LogQuantity.class);
            for (int i = 0; i < places.length; i++) {
                double mean = sums[i] / count;
                means.put(quantities.get(i), origins[i] + mean);
                scatter.put(quantities.get(i), count < 2 ? 0
                        : Math.sqrt(Math.max(0, squares[i] - count * mean * mean) / (count - 1)));
            }
            found.add(new SteadyPoint(from, to - from, firstRow, lastRow, means, scatter));
        }
        count = 0;
    }

    List<SteadyPoint> found() {
        return List.copyOf(found);
    }
}
