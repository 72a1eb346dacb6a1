package org.copperbook.sheets.log;

import java.util.List;
import java.util.Map;
import org.copperbook.jobs.runup.LogQuantity;

/**
 * What was found in a log. Nothing of it is in any record yet.
 *
 * @param hash         SHA-256 of the file, lower-case hex
 * @param bytes        size of the file
 * @param rows         rows of readings
 * @param used         rows read without a problem
 * @param begins       first moment as the file writes it
 * @param seconds      seconds from the first row to the last
 * @param problems     what was wrong, by row
 * @param steady       stretches of steady rows
 * @param temperatures temperatures at even distances; empty when no column carries any
 * @param lows         lowest values in stretches of equal length, by column; NaN where a stretch holds none
 * @param highs        highest values
 */
public record LogReport(String hash, long bytes, long rows, long used, String begins, double seconds,
        List<LogProblem> problems, List<SteadyPoint> steady, List<SteadyPoint> temperatures,
        Map<LogQuantity, double[]> lows, Map<LogQuantity, double[]> highs) {

    public LogReport {
        problems = List.copyOf(problems);
        steady = List.copyOf(steady);
        temperatures = List.copyOf(temperatures);
        lows = Map.copyOf(lows);
        highs = Map.copyOf(highs);
    }
}
