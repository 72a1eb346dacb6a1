package org.copperbook.store.jdbc;

import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.copperbook.jobs.report.MonthEntry;
import org.copperbook.jobs.report.MonthFact;
import org.copperbook.jobs.report.MonthReport;

/** The derived facts of which the month's report is made. */
final class MonthTable {

    /** Adds a month up; the index holds all it needs. */
    static final String REPORT = "SELECT kind, what, COUNT(*), SUM(amount) FROM month_fact WHERE month = ?"
            + " GROUP BY kind, what";

    private static final int THOUSANDTHS = 3;

    /** Most saves change nothing of a month, so that looking first spares the indexes. */
    void put(Connection c, String jobId, List<MonthFact> facts) throws SQLException {
        if (kept(c, jobId).equals(facts.stream().map(MonthTable::words).sorted().toList())) {
            return;
        }
        try (PreparedStatement d = c.prepareStatement("DELETE FROM month_fact WHERE job_id = ?")) {
            d.setString(1, jobId);
            d.executeUpdate();
        }
        try (PreparedStatement in = c.prepareStatement(
                "INSERT INTO month_fact (job_id, month, kind, what, amount) VALUES (?, ?, ?, ?, ?)")) {
            for (MonthFact f : facts) {
                in.setString(1, jobId);
                in.setString(2, f.month().toString());
                in.setString(3, f.kind().name());
                in.setString(4, what(f));
                in.setLong(5, f.thousandths());
                in.executeUpdate();
            }
        }
    }

    private static String words(MonthFact f) {
        return words(f.month().toString(), f.kind().name(), what(f), f.thousandths());
    }

    private static String words(String month, String kind, String what, long amount) {
        return String.join("\n", month, kind, Long.toString(amount), what);
    }

    private static String what(MonthFact f) {
        return f.what() == null ? "" : f.what();
    }

    private static List<String> kept(Connection c, String jobId) throws SQLException {
        List<String> kept = new ArrayList<>();
        try (PreparedStatement q = c.prepareStatement(
                "SELECT month, kind, what, amount FROM month_fact WHERE job_id = ?")) {
            q.setString(1, jobId);
            try (ResultSet r = q.executeQuery()) {
                while (r.next()) {
                    kept.add(words(r.getString(1), r.getString(2), r.getString(3), r.getLong(4)));
                }
            }
        }
        Collections.sort(kept);
        return kept;
    }

    List<MonthEntry> entries(Connection c, YearMonth month) throws SQLException {
        List<MonthEntry> entries = new ArrayList<>();
        try (PreparedStatement q = c.prepareStatement("SELECT f.kind, f.what, f.job_id, r.number, r.customer, r.machine,"
                + " f.amount FROM month_fact f JOIN register r ON r.job_id = f.job_id WHERE f.month = ?"
                + " ORDER BY r.number_key, f.kind, f.what")) {
            q.setString(1, month.toString());
            try (ResultSet r = q.executeQuery()) {
                while (r.next()) {
                    entries.add(new MonthEntry(Kept.word(r.getString(1), MonthFact.Kind::valueOf), r.getString(2), r.getString(3),
                            r.getString(4), r.getString(5), r.getString(6), BigDecimal.valueOf(r.getLong(7), THOUSANDTHS)));
                }
            }
        }
        return entries;
    }

    MonthReport report(Connection c, YearMonth month) throws SQLException {
        List<MonthReport.Line> lines = new ArrayList<>();
        try (PreparedStatement q = c.prepareStatement(REPORT)) {
            q.setString(1, month.toString());
            try (ResultSet r = q.executeQuery()) {
                while (r.next()) {
                    lines.add(new MonthReport.Line(Kept.word(r.getString(1), MonthFact.Kind::valueOf), r.getString(2), r.getLong(3),
                            BigDecimal.valueOf(r.getLong(4), THOUSANDTHS)));
                }
            }
        }
        lines.sort(Comparator.comparing(MonthReport.Line::kind).thenComparing(MonthReport.Line::what));
        return new MonthReport(month, lines);
    }
}
