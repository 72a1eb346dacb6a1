package org.copperbook.sheets.log;

import java.util.Map;
import org.copperbook.jobs.runup.LogQuantity;

/**
 * A stretch of steady rows, or the rows around one temperature.
 *
 * @param begins   seconds from the first row of the log
 * @param seconds  duration
 * @param firstRow first row of the file, from 1
 * @param lastRow  last row
 * @param means    mean of each column, unit of the quantity
 * @param scatter  standard deviation of each column's rows
 */
public record SteadyPoint(double begins, double seconds, long firstRow, long lastRow,
        Map<LogQuantity, Double> means, Map<LogQuantity, Double> scatter) {

    public SteadyPoint {
        means = Map.copyOf(means);
        scatter = Map.copyOf(scatter);
    }
}
