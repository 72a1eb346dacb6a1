package org.copperbook.sheets.log;

import java.util.List;

/**
 * How a log is read: which column is the clock, and what the others carry.
 *
 * @param titles  titles of all columns, by which the mapping is found again
 * @param clock   index of the column with the moments
 * @param second  seconds in one of its units, for clocks that are numbers
 * @param columns the columns used
 */
public record LogMapping(List<String> titles, int clock, double second, List<LogColumn> columns) {

    public LogMapping {
        titles = List.copyOf(titles);
        columns = List.copyOf(columns);
    }
}
