package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.copperbook.store.people.LockOut;
import org.copperbook.store.people.SecretHash;

/** Hashes of secrets, and how often a wrong one was given. */
final class AccountTable {

    /** What is kept of one person's secret. */
    record Account(SecretHash secret, LockOut lockOut) {
    }

    boolean any(Connection c) throws SQLException {
        try (PreparedStatement q = c.prepareStatement("SELECT 1 FROM account LIMIT 1"); ResultSet r = q.executeQuery()) {
            return r.next();
        }
    }

    Set<String> keys(Connection c) throws SQLException {
        Set<String> found = new TreeSet<>();
        try (PreparedStatement q = c.prepareStatement("SELECT key FROM account"); ResultSet r = q.executeQuery()) {
            while (r.next()) {
                found.add(r.getString(1));
            }
        }
        return found;
    }

    Optional<Account> find(Connection c, String key) throws SQLException {
        try (PreparedStatement q = c.prepareStatement(
                "SELECT algorithm, iterations, salt, hash, failures, failed_at FROM account WHERE key = ?")) {
            q.setString(1, key);
            try (ResultSet r = q.executeQuery()) {
                return r.next() ? Optional.of(new Account(
                        new SecretHash(r.getString(1), r.getInt(2), r.getString(3), r.getString(4)),
                        new LockOut(r.getInt(5), time(r.getString(6))))) : Optional.empty();
            }
        }
    }

    /** Keeps a new hash; wrong secrets so far are forgotten. */
    void put(Connection c, String key, SecretHash secret, Instant now) throws SQLException {
        try (PreparedStatement in = c.prepareStatement("INSERT INTO account (key, algorithm, iterations, salt, hash, set_at,"
                + " failures) VALUES (?, ?, ?, ?, ?, ?, 0) ON CONFLICT (key) DO UPDATE SET algorithm = excluded.algorithm,"
                + " iterations = excluded.iterations, salt = excluded.salt, hash = excluded.hash,"
                + " set_at = excluded.set_at, failures = 0, failed_at = NULL")) {
            in.setString(1, key);
            in.setString(2, secret.algorithm());
            in.setInt(3, secret.iterations());
            in.setString(4, secret.salt());
            in.setString(5, secret.hash());
            in.setString(6, now.toString());
            in.executeUpdate();
        }
    }

    void failed(Connection c, String key, int failures, Instant at) throws SQLException {
        try (PreparedStatement up = c.prepareStatement("UPDATE account SET failures = ?, failed_at = ? WHERE key = ?")) {
            up.setInt(1, failures);
            up.setString(2, at.toString());
            up.setString(3, key);
            up.executeUpdate();
        }
    }

    void succeeded(Connection c, String key) throws SQLException {
        try (PreparedStatement up = c.prepareStatement(
                "UPDATE account SET failures = 0, failed_at = NULL WHERE key = ?")) {
            up.setString(1, key);
            up.executeUpdate();
        }
    }

    /** A time that cannot be read must not let anybody in sooner: the wait then counts as whole. */
    private static Instant time(String text) {
        try {
            return text == null ? null : Instant.parse(text);
        } catch (DateTimeException e) {
            return null;
        }
    }
}
