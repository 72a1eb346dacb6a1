package org.copperbook.store.scale;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.store.Revision;
import org.copperbook.store.jdbc.Chain;

/**
 * Writes the rows of a nameplate with another serial by SQL alone: the revision, the end of the chain, and the rows by which
 * job and winding are found, durable like the store's own. Every value is known beforehand; nothing is read, checked or
 * derived.
 */
final class BareSave implements AutoCloseable {

    private static final String NAMEPLATE = "nameplate";

    private final PartJson json = new PartJson();
    private final Connection copy;
    private Revision link;
    private String serial;
    private String search;
    private String found;

    BareSave(Path file) throws SQLException {
        copy = DriverManager.getConnection("jdbc:sqlite:" + file);
        for (String pragma : new String[] {"journal_mode = WAL", "synchronous = FULL", "secure_delete = ON",
            "cache_size = -16384", "trusted_schema = OFF", "foreign_keys = ON"}) {
            run("PRAGMA " + pragma);
        }
    }

    /** Works out the values. */
    void next(Revision was, Nameplate plate) throws SQLException {
        serial = plate.serial();
        String text = json.write(plate);
        String now = Instant.now().toString();
        long sequence = Long.parseLong(one("SELECT sequence FROM chain_head", null)) + 1;
        String previous = one("SELECT hash FROM chain_head", null);
        String number = one("SELECT number FROM job WHERE id = ?", was.jobId());
        link = new Revision(sequence, was.jobId(), NAMEPLATE, was.revision() + 1, Instant.parse(now), "p01", "", text, previous,
                Chain.hash(previous, was.jobId(), number, NAMEPLATE, was.revision() + 1, now, "p01", "", text));
        search = one("SELECT search || 'x' FROM register WHERE job_id = ?", was.jobId());
        found = one("SELECT search || 'x' FROM past_winding WHERE job_id = ?", was.jobId());
    }

    /** Writes them. */
    void save() throws SQLException {
        run("BEGIN IMMEDIATE");
        write("UPDATE chain_head SET sequence = ?, hash = ? WHERE id = 1", link.sequence(), link.hash());
        write("INSERT INTO revision (sequence, job_id, part, revision, saved_at, who, why, json, previous_hash, hash)"
                + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)", link.sequence(), link.jobId(), link.part(), link.revision(),
                link.savedAt().toString(), link.who(), link.why(), link.json(), link.previousHash(), link.hash());
        write("UPDATE register SET serial = ?, serial_key = ?, search = ?, changed_at = ? WHERE job_id = ?", serial,
                serial.toLowerCase(java.util.Locale.ROOT), search, link.savedAt().toString(), link.jobId());
        write("UPDATE past_winding SET serial = ?, serial_key = ?, search = ?, recorded_at = ? WHERE job_id = ?", serial,
                serial.toLowerCase(java.util.Locale.ROOT), found, link.savedAt().toString(), link.jobId());
        run("COMMIT");
    }

    private void write(String sql, Object... values) throws SQLException {
        try (PreparedStatement p = copy.prepareStatement(sql)) {
            for (int i = 0; i < values.length; i++) {
                p.setObject(i + 1, values[i]);
            }
            p.executeUpdate();
        }
    }

    private String one(String sql, String value) throws SQLException {
        try (PreparedStatement p = copy.prepareStatement(sql)) {
            if (value != null) {
                p.setString(1, value);
            }
            try (java.sql.ResultSet r = p.executeQuery()) {
                r.next();
                return r.getString(1);
            }
        }
    }

    private void run(String sql) throws SQLException {
        try (Statement s = copy.createStatement()) {
            s.execute(sql);
        }
    }

    @Override
    public void close() throws SQLException {
        copy.close();
    }
}
