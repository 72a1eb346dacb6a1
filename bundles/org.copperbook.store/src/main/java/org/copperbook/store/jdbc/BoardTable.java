package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.jobs.booking.Standing.WaitingFor;
import org.copperbook.jobs.report.BoardStep;
import org.copperbook.jobs.report.Workload;
import org.copperbook.store.BoardQuery;
import org.copperbook.store.BoardRow;
import org.copperbook.store.BoardSlice;

/** The register as a board: column by column, and the hours ahead. */
final class BoardTable {

    /** The columns this version knows; whatever else is kept stands under {@link BoardStep#UNKNOWN}. */
    private static final String KNOWN = names(Stream.of(BoardStep.values()).filter(s -> s != BoardStep.UNKNOWN));
    private static final String OWED = names(Stream.of(BoardStep.values()).filter(BoardStep::owed));
    /** Named one by one, so that the index by column is of use: most jobs of an old shop have ended. */
    private static final String OPEN = names(Stream.of(BoardStep.values()).filter(s -> s != BoardStep.ENDED));

    /** Most saves change nothing of the hours ahead, so that looking first spares the rows. */
    void put(Connection c, String jobId, List<Workload.Due> ahead) throws SQLException {
        if (kept(c, jobId).equals(ahead.stream().map(w -> words(w.trade(), BoardPlace.due(w.due()), w.hours())).sorted()
                .toList())) {
            return;
        }
        try (PreparedStatement d = c.prepareStatement("DELETE FROM work_ahead WHERE job_id = ?")) {
            d.setString(1, jobId);
            d.executeUpdate();
        }
        try (PreparedStatement in = c.prepareStatement(
                "INSERT INTO work_ahead (job_id, trade, due, amount) VALUES (?, ?, ?, ?)")) {
            for (Workload.Due w : ahead) {
                in.setString(1, jobId);
                in.setString(2, w.trade());
                in.setString(3, BoardPlace.due(w.due()));
                in.setLong(4, w.hours());
                in.executeUpdate();
            }
        }
    }

    private static List<String> kept(Connection c, String jobId) throws SQLException {
        List<String> kept = new ArrayList<>();
        try (PreparedStatement q = c.prepareStatement("SELECT trade, due, amount FROM work_ahead WHERE job_id = ?")) {
            q.setString(1, jobId);
            try (ResultSet r = q.executeQuery()) {
                while (r.next()) {
                    kept.add(words(r.getString(1), r.getString(2), r.getLong(3)));
                }
            }
        }
        Collections.sort(kept);
        return kept;
    }

    private static String words(String trade, String due, long amount) {
        return String.join("\n", due, Long.toString(amount), trade);
    }

    List<Workload.Due> workAhead(Connection c) throws SQLException {
        List<Workload.Due> ahead = new ArrayList<>();
        try (PreparedStatement q = c.prepareStatement(
                "SELECT trade, due, SUM(amount) FROM work_ahead GROUP BY trade, due"); ResultSet r = q.executeQuery()) {
            while (r.next()) {
                String due = r.getString(2);
                ahead.add(new Workload.Due(r.getString(1),
                        due.equals(BoardPlace.NO_DAY) ? null : Kept.day(due), r.getLong(3)));
            }
        }
        return ahead;
    }

    Map<BoardStep, Integer> counts(Connection c) throws SQLException {
        Map<BoardStep, Integer> counts = new EnumMap<>(BoardStep.class);
        try (PreparedStatement q = c.prepareStatement("SELECT step, COUNT(*) FROM register GROUP BY step");
                ResultSet r = q.executeQuery()) {
            while (r.next()) {
                counts.merge(BoardStep.named(r.getString(1)), r.getInt(2), Integer::sum);
            }
        }
        return counts;
    }

    BoardSlice page(Connection c, BoardQuery query) throws SQLException {
        List<String> where = new ArrayList<>();
        List<String> values = new ArrayList<>();
        query.step().ifPresent(s -> {
            if (s == BoardStep.UNKNOWN) {
                where.add("step NOT IN (" + KNOWN + ")");
            } else {
                where.add("step = ?");
                values.add(s.name());
            }
        });
        switch (query.which()) {
            case ALL -> { }
            case OPEN -> where.add("step IN (" + OPEN + ")");
            case WAITING -> where.add("waiting_for <> ''");
            case NO_DATE -> where.add("due = '" + BoardPlace.NO_DAY + "' AND step IN (" + OPEN + ")");
            case LATE -> {
                where.add("due < ? AND step IN (" + OWED + ")");
                values.add(query.today().toString());
            }
        }
        String from = " FROM register" + (where.isEmpty() ? "" : " WHERE " + String.join(" AND ", where));
        int total = total(c, from, values);
        return new BoardSlice(total, query.limit() == 0 || query.offset() >= total ? List.of()
                : rows(c, from, values, query));
    }

    private static int total(Connection c, String from, List<String> values) throws SQLException {
        try (PreparedStatement q = c.prepareStatement("SELECT COUNT(*)" + from)) {
            fill(q, values);
            try (ResultSet r = q.executeQuery()) {
                r.next();
                return r.getInt(1);
            }
        }
    }

    private static List<BoardRow> rows(Connection c, String from, List<String> values, BoardQuery query)
            throws SQLException {
        String order = switch (query.order()) {
            case DUE -> " ORDER BY due, number_key, job_id";
            case UNTOUCHED -> " ORDER BY changed_at, number_key, job_id";
        };
        List<BoardRow> rows = new ArrayList<>();
        try (PreparedStatement q = c.prepareStatement("SELECT " + RegisterTable.COLUMNS
                + ", step, booked_at, waiting_for, waiting_since, waiting_reason" + from + order + " LIMIT ? OFFSET ?")) {
            int next = fill(q, values);
            q.setInt(next, query.limit());
            q.setInt(next + 1, query.offset());
            try (ResultSet r = q.executeQuery()) {
                while (r.next()) {
                    rows.add(new BoardRow(RegisterTable.row(r), BoardStep.named(r.getString("step")),
                            at(r.getString("booked_at")), waiting(r)));
                }
            }
        }
        return rows;
    }

    private static Optional<BoardRow.Wait> waiting(ResultSet r) throws SQLException {
        String what = r.getString("waiting_for");
        return what.isEmpty() ? Optional.empty() : Optional.of(new BoardRow.Wait(
                Stream.of(WaitingFor.values()).filter(w -> w.name().equals(what)).findFirst(),
                at(r.getString("waiting_since")), r.getString("waiting_reason")));
    }

    private static Instant at(String kept) throws SQLException {
        return kept.isEmpty() ? null : Kept.time(kept);
    }

    private static int fill(PreparedStatement q, List<String> values) throws SQLException {
        int at = 1;
        for (String value : values) {
            q.setString(at++, value);
        }
        return at;
    }

    private static String names(Stream<BoardStep> steps) {
        return steps.map(s -> "'" + s.name() + "'").collect(Collectors.joining(", "));
    }
}
