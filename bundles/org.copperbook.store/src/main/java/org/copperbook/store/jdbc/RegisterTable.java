package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.RegisterRow;
import org.copperbook.store.RegisterSlice;
import org.copperbook.store.RegisterSort;

/** The derived rows of the register. */
final class RegisterTable {

    /** What {@link #row} reads, in its order. */
    static final String COLUMNS = "job_id, number, customer, machine, serial, stage, promised, changed_at, voided";

    private static final String PUT = "INSERT INTO register (job_id, number, customer, machine, serial, stage,"
            + " promised, changed_at, voided, number_key, customer_key, machine_key, serial_key, stage_key, search,"
            + " step, due, booked_at, waiting_for, waiting_since, waiting_reason)"
            + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (job_id) DO UPDATE SET"
            + " customer = excluded.customer, machine = excluded.machine, serial = excluded.serial,"
            + " stage = excluded.stage, promised = excluded.promised, changed_at = excluded.changed_at,"
            + " voided = excluded.voided, customer_key = excluded.customer_key, machine_key = excluded.machine_key,"
            + " serial_key = excluded.serial_key, stage_key = excluded.stage_key, search = excluded.search,"
            + " step = excluded.step, due = excluded.due, booked_at = excluded.booked_at,"
            + " waiting_for = excluded.waiting_for, waiting_since = excluded.waiting_since,"
            + " waiting_reason = excluded.waiting_reason";

    private final boolean textList;

    /** @param textList as {@link Database#hasRegisterText} */
    RegisterTable(boolean textList) {
        this.textList = textList;
    }

    void put(Connection c, RegisterEntry entry) throws SQLException {
        RegisterRow row = entry.row();
        try (PreparedStatement in = c.prepareStatement(PUT)) {
            in.setString(1, row.jobId());
            in.setString(2, row.number());
            in.setString(3, row.customer());
            in.setString(4, row.machine());
            in.setString(5, row.serial());
            in.setString(6, row.stage());
            in.setString(7, row.promised() == null ? null : row.promised().toString());
            in.setString(8, row.changedAt().toString());
            in.setInt(9, row.voided() ? 1 : 0);
            in.setString(10, SearchText.natural(row.number()));
            in.setString(11, SearchText.key(row.customer()));
            in.setString(12, SearchText.key(row.machine()));
            in.setString(13, SearchText.key(row.serial()));
            in.setString(14, SearchText.cut(entry.stageKey()));
            in.setString(15, entry.search());
            in.setString(16, entry.board().step().name());
            in.setString(17, BoardPlace.due(row.promised()));
            in.setString(18, entry.board().bookedAt());
            in.setString(19, entry.board().waitingFor());
            in.setString(20, entry.board().waitingSince());
            in.setString(21, entry.board().waitingReason());
            in.executeUpdate();
        }
    }

    void clear(Connection c) throws SQLException {
        try (PreparedStatement d = c.prepareStatement("DELETE FROM register")) {
            d.executeUpdate();
        }
    }

    /** @param families customers with several names */
    RegisterSlice page(Connection c, RegisterQuery query, List<CustomerAliases.Family> families) throws SQLException {
        RegisterFilter filter = RegisterFilter.of(query.text(), textList, families);
        int total = count(c, filter.counting());
        List<RegisterRow> rows = new ArrayList<>();
        if (query.offset() >= total) {
            return new RegisterSlice(total, rows);
        }
        Order order = Order.of(query.sort());
        RegisterFilter.Found found = filter.rows(total);
        RegisterFilter.Found first = found.and(order.has());
        rows.addAll(rows(c, first, order.inOrder(), query.limit(), query.offset()));
        if (rows.size() < query.limit() && !order.lacks().isEmpty()) {
            int skipped = rows.isEmpty() ? query.offset() - count(c, first) : 0;
            rows.addAll(rows(c, found.and(order.lacks()), " ORDER BY number_key DESC", query.limit() - rows.size(),
                    skipped));
        }
        return new RegisterSlice(total, rows);
    }

    /** By the key that sorts, which is indexed and finds a little more than the number itself. */
    List<RegisterRow> withSerial(Connection c, String serial) throws SQLException {
        RegisterFilter.Found found = new RegisterFilter.Found("register", List.of("serial_key = ?"),
                List.of(SearchText.key(serial)));
        return rows(c, found, " ORDER BY number_key DESC", Integer.MAX_VALUE, 0).stream()
                .filter(r -> r.serial().equalsIgnoreCase(serial)).toList();
    }

    private static int count(Connection c, RegisterFilter.Found of) throws SQLException {
        try (PreparedStatement q = c.prepareStatement("SELECT COUNT(*)" + of.sql())) {
            fill(q, of.values());
            try (ResultSet r = q.executeQuery()) {
                r.next();
                return r.getInt(1);
            }
        }
    }

    private static List<RegisterRow> rows(Connection c, RegisterFilter.Found of, String order, int limit, int offset)
            throws SQLException {
        List<RegisterRow> rows = new ArrayList<>();
        try (PreparedStatement q = c.prepareStatement("SELECT " + COLUMNS + of.sql() + order + " LIMIT ? OFFSET ?")) {
            int next = fill(q, of.values());
            q.setInt(next, limit);
            q.setInt(next + 1, offset);
            try (ResultSet r = q.executeQuery()) {
                while (r.next()) {
                    rows.add(row(r));
                }
            }
        }
        return rows;
    }

    private static int fill(PreparedStatement q, List<String> values) throws SQLException {
        int at = 1;
        for (String value : values) {
            q.setString(at++, value);
        }
        return at;
    }

    static RegisterRow row(ResultSet r) throws SQLException {
        String promised = r.getString(7);
        return new RegisterRow(r.getString(1), r.getString(2), r.getString(3), r.getString(4), r.getString(5),
                r.getString(6), promised == null ? null : Kept.day(promised), Kept.time(r.getString(8)),
                r.getInt(9) != 0);
    }

    /**
     * Rows without a value last, then the column, then the newest number; the same order on every page. Those with and
     * those without a value are asked for one after the other, so that an index serves both ways of the column.
     *
     * @param has     condition of the rows that come first; empty when there are no others
     * @param inOrder order of those
     * @param lacks   condition of the rows that come last; empty when there are none
     */
    private record Order(String has, String inOrder, String lacks) {

        static Order of(RegisterSort sort) {
            String way = sort.ascending() ? " ASC" : " DESC";
            return switch (sort.column()) {
                case NUMBER -> new Order("", " ORDER BY number_key" + way, "");
                case CHANGED -> new Order("", " ORDER BY changed_at" + way + ", number_key" + way, "");
                case PROMISED -> new Order("promised IS NOT NULL", " ORDER BY promised" + way + ", number_key DESC",
                        "promised IS NULL");
                case CUSTOMER -> worded("customer_key", way);
                case MACHINE -> worded("machine_key", way);
                case SERIAL -> worded("serial_key", way);
                case STAGE -> worded("stage_key", way);
            };
        }

        private static Order worded(String column, String way) {
            return new Order(column + " > ''", " ORDER BY " + column + way + ", number_key DESC", column + " = ''");
        }
    }
}
