package org.copperbook.jobs.report;

import java.math.BigDecimal;

/**
 * One fact behind a figure of a month, with its job as the register shows it.
 *
 * @param kind     of what
 * @param what     of which currency, trade or test; may be empty
 * @param jobId    key of the job
 * @param number   number of the job
 * @param customer customer, may be empty
 * @param machine  machine, may be empty
 * @param amount   what it adds, with three decimals; 0 where nothing is added up
 */
public record MonthEntry(MonthFact.Kind kind, String what, String jobId, String number, String customer, String machine,
        BigDecimal amount) {

    /** Whether it is behind a line of the report. */
    public boolean isOf(MonthReport.Line line) {
        return kind == line.kind() && what.equals(line.what());
    }
}
