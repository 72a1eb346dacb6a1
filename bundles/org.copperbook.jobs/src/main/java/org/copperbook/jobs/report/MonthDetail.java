package org.copperbook.jobs.report;

import java.util.List;

/**
 * A month in figures with what is behind them.
 *
 * @param report  the figures
 * @param entries every fact with its job, by number of the job
 */
public record MonthDetail(MonthReport report, List<MonthEntry> entries) {

    public MonthDetail {
        entries = List.copyOf(entries);
    }
}
