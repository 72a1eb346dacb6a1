package org.copperbook.sheets.log;

import java.time.LocalDate;

/** How a log writes its moments. Each turns into seconds; the origin does not matter. */
enum LogTime {
    /** A number of seconds, or of another unit that the title names. */
    NUMBER,
    /** Year, month, day and time of day, in this order. */
    YEAR_FIRST,
    /** Day, month and year with dots, and time of day. */
    DAY_FIRST,
    /** Time of day only. */
    TIME_OF_DAY;

    static final double DAY = 86_400;

    /** Which way a cell is written; null when it is no moment that can be told for certain. */
    static LogTime of(String cell) {
        if (cell.matches("\\d{4}[-/.]\\d{1,2}[-/.]\\d{1,2}[ T]\\d{1,2}:\\d{2}(:\\d{2}([.,]\\d+)?)?(Z|[+-]\\d{2}:?\\d{2})?")) {
            return YEAR_FIRST;
        }
        if (cell.matches("\\d{1,2}\\.\\d{1,2}\\.\\d{4} \\d{1,2}:\\d{2}(:\\d{2}([.,]\\d+)?)?")) {
            return DAY_FIRST;
        }
        if (cell.matches("\\d{1,2}:\\d{2}(:\\d{2}([.,]\\d+)?)?")) {
            return TIME_OF_DAY;
        }
        return cell.matches("[+-]?\\d+([.,]\\d+)?([eE][+-]?\\d+)?") ? NUMBER : null;
    }

    /** Seconds, or NaN when the bytes are no such moment. */
    double seconds(byte[] b, int from, int to, char mark) {
        if (this == NUMBER) {
            return LogText.number(b, from, to, mark);
        }
        int[] at = {from};
        if (this == TIME_OF_DAY) {
            return clock(b, at, to);
        }
        double one = whole(b, at, to);
        at[0]++;
        double two = whole(b, at, to);
        at[0]++;
        double three = whole(b, at, to);
        at[0]++;
        double time = clock(b, at, to);
        double year = this == YEAR_FIRST ? one : three;
        double day = this == YEAR_FIRST ? three : one;
        if (Double.isNaN(one + two + three + time) || two < 1 || two > 12 || day < 1 || day > 31 || year < 1) {
            return Double.NaN;
        }
        return days((int) year, (int) two, (int) day) * DAY + time;
    }

    /** Days from a fixed day; a day that the month does not have runs on into the next and shows as a clock jump. */
    private static long days(int year, int month, int day) {
        return LocalDate.of(year, month, 1).toEpochDay() + day - 1;
    }

    private static double clock(byte[] b, int[] at, int to) {
        double hours = whole(b, at, to);
        if (at[0] >= to || b[at[0]] != ':') {
            return Double.NaN;
        }
        at[0]++;
        double minutes = whole(b, at, to);
        double seconds = 0;
        if (at[0] < to && b[at[0]] == ':') {
            at[0]++;
            int end = at[0];
            while (end < to && (b[end] >= '0' && b[end] <= '9' || b[end] == '.' || b[end] == ',')) {
                end++;
            }
            int point = at[0];
            while (point < end && b[point] != '.' && b[point] != ',') {
                point++;
            }
            seconds = LogText.number(b, at[0], end, point < end ? (char) b[point] : '.');
            at[0] = end;
        }
        boolean zone = at[0] == to || b[at[0]] == 'Z' || b[at[0]] == '+' || b[at[0]] == '-';
        return !zone || hours > 23 || minutes > 59 || seconds >= 61 ? Double.NaN : (hours * 60 + minutes) * 60 + seconds;
    }

    private static double whole(byte[] b, int[] at, int to) {
        int i = at[0];
        int v = 0;
        while (i < to && b[i] >= '0' && b[i] <= '9' && i - at[0] < 9) {
            v = v * 10 + b[i++] - '0';
        }
        boolean none = i == at[0];
        at[0] = i;
        return none ? Double.NaN : v;
    }
}
