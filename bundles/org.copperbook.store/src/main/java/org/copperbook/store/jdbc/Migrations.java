package org.copperbook.store.jdbc;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreText;

/**
 * Brings a store's layout up to date with numbered SQL steps. To be run inside one writing transaction, so that a
 * store has either all steps or those it had, and several programs starting at once take turns. Our own few lines
 * instead of a library, because the library at hand fails when several programs open a new file together.
 *
 * @param engine folder that holds the steps, one for each engine
 * @param steps  names of the steps in order; the number is their place, from 1
 */
public record Migrations(String engine, List<String> steps) {

    /** The steps of this version; every engine has each, so that a number means the same layout everywhere. */
    public static final List<String> ALL = List.of("0001-jobs-and-revisions", "0002-past-windings",
            "0003-personal-data", "0004-month-facts", "0005-past-windings-by-size", "0006-accounts",
            "0007-register-by-text", "0008-past-windings-by-kind",
            "0009-board", "0010-stock");

    private record Step(String name, String checksum) {
    }

    /** All steps of this version for an engine. */
    public static Migrations of(String engine) {
        return new Migrations(engine, ALL);
    }

    /**
     * Whether nothing is lacking. The store must have the table of steps.
     *
     * @throws StoreException as {@link #apply}
     */
    public boolean current(Connection c) throws SQLException {
        Map<Integer, Step> done = done(c);
        done.forEach(this::check);
        return done.size() == steps.size();
    }

    /**
     * Applies what is lacking.
     *
     * @param tableOptions what the engine wants to hear after the columns of the table of steps
     * @throws StoreException NEWER_SCHEMA when the store has steps this version does not know; FOREIGN_SCHEMA when one
     *                        of its steps was another text
     */
    public void apply(Connection c, String tableOptions) throws SQLException {
        try (Statement s = c.createStatement()) {
            s.executeUpdate("CREATE TABLE IF NOT EXISTS schema_step (number INTEGER PRIMARY KEY, name TEXT NOT NULL,"
                    + " checksum TEXT NOT NULL, applied_at TEXT NOT NULL)" + tableOptions);
        }
        Map<Integer, Step> done = done(c);
        done.forEach(this::check);
        for (int number = done.size() + 1; number <= steps.size(); number++) {
            String sql = text(steps.get(number - 1));
            try (Statement s = c.createStatement()) {
                s.executeUpdate(sql);
            }
            note(c, number, new Step(steps.get(number - 1), checksum(sql)));
        }
    }

    private void check(int number, Step step) {
        if (number > steps.size()) {
            throw new StoreException(Kind.NEWER_SCHEMA, StoreText.of("newerSchema", number, steps.size()));
        }
        if (!step.checksum().equals(checksum(text(steps.get(number - 1))))) {
            throw new StoreException(Kind.FOREIGN_SCHEMA, StoreText.of("foreignSchema", step.name()));
        }
    }

    private static Map<Integer, Step> done(Connection c) throws SQLException {
        // Newest first: a newer version is the first thing to say, whatever it did to older steps.
        Map<Integer, Step> found = new TreeMap<>(Comparator.reverseOrder());
        try (PreparedStatement q = c.prepareStatement("SELECT number, name, checksum FROM schema_step");
                ResultSet r = q.executeQuery()) {
            while (r.next()) {
                found.put(r.getInt(1), new Step(r.getString(2), r.getString(3)));
            }
        }
        return found;
    }

    private static void note(Connection c, int number, Step step) throws SQLException {
        try (PreparedStatement in = c.prepareStatement(
                "INSERT INTO schema_step (number, name, checksum, applied_at) VALUES (?, ?, ?, ?)")) {
            in.setInt(1, number);
            in.setString(2, step.name());
            in.setString(3, step.checksum());
            in.setString(4, Instant.now().toString());
            in.executeUpdate();
        }
    }

    private String text(String step) {
        String name = "/org/copperbook/store/migrations/" + engine + "/" + step + ".sql";
        try (InputStream in = Migrations.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is not in the bundle");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(name + " cannot be read", e);
        }
    }

    private static String checksum(String sql) {
        try {
            return HexFormat.of().formatHex(
                    MessageDigest.getInstance("SHA-256").digest(sql.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
