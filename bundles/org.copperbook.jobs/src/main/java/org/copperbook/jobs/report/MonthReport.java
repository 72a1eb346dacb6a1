package org.copperbook.jobs.report;

import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.List;

/**
 * A month in figures.
 *
 * @param month which
 * @param lines in the order of the kinds, then by what they are of; kinds that did not happen are left out
 */
public record MonthReport(YearMonth month, List<Line> lines) {

    public MonthReport {
        lines = List.copyOf(lines);
    }

    /**
     * A figure.
     *
     * @param kind   of what
     * @param what   of which currency, trade or test; may be empty
     * @param count  how many
     * @param amount what they add up to, with three decimals; 0 where nothing is added up
     */
    public record Line(MonthFact.Kind kind, String what, long count, BigDecimal amount) {
    }

    /** How many of a kind, whatever they are of. */
    public long count(MonthFact.Kind kind) {
        return lines.stream().filter(l -> l.kind() == kind).mapToLong(Line::count).sum();
    }
}
