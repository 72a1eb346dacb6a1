package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import org.copperbook.store.NumberPattern;

/** Gives out job numbers without gaps: the count is raised in the transaction that keeps the job. */
final class NumberSeries {

    private final JobTable jobs;

    NumberSeries(JobTable jobs) {
        this.jobs = jobs;
    }

    /** The next number that no job has; jobs taken in under their own number are stepped over. */
    String next(Connection c, NumberPattern pattern, int year) throws SQLException {
        while (true) {
            String number = pattern.format(year, raise(c, pattern.text(), pattern.seriesYear(year)));
            if (jobs.idOf(c, number).isEmpty()) {
                return number;
            }
        }
    }

    private static long raise(Connection c, String pattern, int year) throws SQLException {
        try (PreparedStatement up = c.prepareStatement("INSERT INTO number_series (pattern, year, last)"
                + " VALUES (?, ?, 1) ON CONFLICT (pattern, year) DO UPDATE SET last = number_series.last + 1"
                + " RETURNING last")) {
            up.setString(1, pattern);
            up.setInt(2, year);
            try (ResultSet r = up.executeQuery()) {
                r.next();
                return r.getLong(1);
            }
        }
    }
}
