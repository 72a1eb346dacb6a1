package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.RegisterRow;
import org.copperbook.store.RegisterSlice;
import org.copperbook.store.RegisterSort;

/** The derived rows of the register. */
final class RegisterTable {

    private static final String PUT = "INSERT INTO register (job_id, number, customer, machine, serial, stage,"
            + " promised, changed_at, voided, number_key, customer_key, machine_key, serial_key, stage_key, search)"
            + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (job_id) DO UPDATE SET"
            + " customer = excluded.customer, machine = excluded.machine, serial = excluded.serial,"
            + " stage = excluded.stage, promised = excluded.promised, changed_at = excluded.changed_at,"
            + " voided = excluded.voided, customer_key = excluded.customer_key, machine_key = excluded.machine_key,"
            + " serial_key = excluded.serial_key, stage_key = excluded.stage_key, search = excluded.search";

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
            in.setString(11, SearchText.natural(row.customer()));
            in.setString(12, SearchText.natural(row.machine()));
            in.setString(13, SearchText.natural(row.serial()));
            in.setString(14, entry.stageKey());
            in.setString(15, entry.search());
            in.executeUpdate();
        }
    }

    void clear(Connection c) throws SQLException {
        try (PreparedStatement d = c.prepareStatement("DELETE FROM register")) {
            d.executeUpdate();
        }
    }

    RegisterSlice page(Connection c, RegisterQuery query) throws SQLException {
        List<String> words = SearchText.words(query.text()).stream().map(SearchText::anywhere).toList();
        String where = words.isEmpty() ? ""
                : " WHERE " + String.join(" AND ", words.stream().map(w -> "search LIKE ? ESCAPE '\\'").toList());
        int total;
        try (PreparedStatement q = c.prepareStatement("SELECT COUNT(*) FROM register" + where)) {
            fill(q, words);
            try (ResultSet r = q.executeQuery()) {
                r.next();
                total = r.getInt(1);
            }
        }
        List<RegisterRow> rows = new ArrayList<>();
        try (PreparedStatement q = c.prepareStatement("SELECT job_id, number, customer, machine, serial, stage,"
                + " promised, changed_at, voided FROM register" + where + order(query.sort()) + " LIMIT ? OFFSET ?")) {
            int next = fill(q, words);
            q.setInt(next, query.limit());
            q.setInt(next + 1, query.offset());
            try (ResultSet r = q.executeQuery()) {
                while (r.next()) {
                    rows.add(row(r));
                }
            }
        }
        return new RegisterSlice(total, rows);
    }

    private static int fill(PreparedStatement q, List<String> words) throws SQLException {
        int at = 1;
        for (String word : words) {
            q.setString(at++, word);
        }
        return at;
    }

    private static RegisterRow row(ResultSet r) throws SQLException {
        String promised = r.getString(7);
        return new RegisterRow(r.getString(1), r.getString(2), r.getString(3), r.getString(4), r.getString(5),
                r.getString(6), promised == null ? null : LocalDate.parse(promised), Instant.parse(r.getString(8)),
                r.getInt(9) != 0);
    }

    /** Rows without a value last, then the column, then the newest number; the same order on every page. */
    private static String order(RegisterSort sort) {
        String way = sort.ascending() ? " ASC" : " DESC";
        return " ORDER BY " + switch (sort.column()) {
            case NUMBER -> "number_key" + way;
            case CHANGED -> "changed_at" + way + ", number_key" + way;
            case PROMISED -> "promised IS NULL, promised" + way + ", number_key DESC";
            case CUSTOMER -> worded("customer_key", way);
            case MACHINE -> worded("machine_key", way);
            case SERIAL -> worded("serial_key", way);
            case STAGE -> worded("stage_key", way);
        };
    }

    private static String worded(String column, String way) {
        return column + " = '', " + column + way + ", number_key DESC";
    }
}
