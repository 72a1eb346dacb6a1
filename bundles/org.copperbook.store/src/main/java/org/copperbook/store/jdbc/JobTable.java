package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.store.JobHandle;

/** The jobs' keys and numbers. */
final class JobTable {

    void add(Connection c, JobHandle job, Instant at) throws SQLException {
        try (PreparedStatement in = c.prepareStatement("INSERT INTO job (id, number, created_at) VALUES (?, ?, ?)")) {
            in.setString(1, job.id());
            in.setString(2, job.number());
            in.setString(3, at.toString());
            in.executeUpdate();
        }
    }

    /** The number of a job, empty text for the shop; nothing when there is no such job. */
    Optional<String> numberOf(Connection c, String id) throws SQLException {
        return one(c, "SELECT COALESCE(number, '') FROM job WHERE id = ?", id);
    }

    Optional<String> idOf(Connection c, String number) throws SQLException {
        return one(c, "SELECT id FROM job WHERE number = ?", number);
    }

    /** Every job, not the shop. */
    List<JobHandle> all(Connection c) throws SQLException {
        List<JobHandle> found = new ArrayList<>();
        try (PreparedStatement q = c.prepareStatement("SELECT id, number FROM job WHERE number IS NOT NULL");
                ResultSet r = q.executeQuery()) {
            while (r.next()) {
                found.add(new JobHandle(r.getString(1), r.getString(2)));
            }
        }
        return found;
    }

    private static Optional<String> one(Connection c, String sql, String value) throws SQLException {
        try (PreparedStatement q = c.prepareStatement(sql)) {
            q.setString(1, value);
            try (ResultSet r = q.executeQuery()) {
                return r.next() ? Optional.of(r.getString(1)) : Optional.empty();
            }
        }
    }
}
