package org.copperbook.store.jdbc;

import java.security.GeneralSecurityException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreText;

/** Keys of people and private names, the names typed into parts, who is mentioned where, and what was erased. */
final class PersonalTable {

    private static final String LOOKUP = "private-lookup";

    private final PersonalCipher cipher = new PersonalCipher();
    private final SettingTable settings;

    PersonalTable(SettingTable settings) {
        this.settings = settings;
    }

    /**
     * A text under its owner's key, which is made when there is none yet.
     *
     * @throws StoreException ALREADY_THERE when the owner was erased: the key must not come to life again
     */
    String close(Connection c, String owner, String text) throws SQLException {
        Optional<String> secret = one(c, "SELECT secret FROM person_key WHERE key = ?", owner);
        if (secret.isEmpty()) {
            Optional<String> erased = one(c, "SELECT erased_at FROM erased WHERE key = ?", owner);
            if (erased.isPresent()) {
                throw new StoreException(StoreException.Kind.ALREADY_THERE,
                        StoreText.of("erasedKey", owner, erased.get()));
            }
            secret = Optional.of(cipher.newSecret());
            run(c, "INSERT INTO person_key (key, secret) VALUES (?, ?)", owner, secret.get());
        }
        return cipher.close(secret.get(), owner, text);
    }

    /** The text again; one that is not under a key comes back as it is. */
    String open(Connection c, String owner, String text) throws SQLException {
        return PersonalCipher.isClosed(text)
                ? open(owner, text, one(c, "SELECT secret FROM person_key WHERE key = ?", owner)) : text;
    }

    private String open(String owner, String text, Optional<String> secret) {
        if (!PersonalCipher.isClosed(text)) {
            return text;
        }
        try {
            return cipher.open(secret.orElseThrow(() -> new GeneralSecurityException("the key is gone")), owner, text);
        } catch (GeneralSecurityException e) {
            throw new StoreException(StoreException.Kind.UNREADABLE_RECORD,
                    StoreText.of("unreadablePerson", owner, e.getMessage()), e);
        }
    }

    /** The key under which a typed name stands, the same for the same name. */
    String keyOf(Connection c, String name) throws SQLException {
        String lookup = PersonalCipher.lookup(lookupSecret(c), name);
        Optional<String> known = one(c, "SELECT key FROM private_name WHERE lookup = ?", lookup);
        if (known.isPresent()) {
            return known.get();
        }
        String key = PrivateText.NAME_MARK + cipher.newName();
        run(c, "INSERT INTO private_name (key, lookup, text) VALUES (?, ?, ?)", key, lookup, close(c, key, name));
        return key;
    }

    /** The name under a key; nothing when it was erased. */
    Optional<String> name(Connection c, String key) throws SQLException {
        try (PreparedStatement q = c.prepareStatement("SELECT n.text, k.secret FROM private_name n"
                + " LEFT JOIN person_key k ON k.key = n.key WHERE n.key = ?")) {
            q.setString(1, key);
            try (ResultSet r = q.executeQuery()) {
                return r.next() ? Optional.of(open(key, r.getString(1), Optional.ofNullable(r.getString(2))))
                        : Optional.empty();
            }
        }
    }

    /** Every typed name by its key. */
    Map<String, String> names(Connection c) throws SQLException {
        Map<String, String> found = pairs(c, "SELECT key, text FROM private_name ORDER BY key");
        for (Map.Entry<String, String> e : found.entrySet()) {
            e.setValue(open(c, e.getKey(), e.getValue()));
        }
        return found;
    }

    void use(Connection c, String key, String jobId) throws SQLException {
        run(c, "INSERT INTO person_use (key, job_id) VALUES (?, ?) ON CONFLICT DO NOTHING", key, jobId);
    }

    void clearUses(Connection c) throws SQLException {
        run(c, "DELETE FROM person_use");
    }

    /** Keys of the jobs that mention somebody. */
    List<String> jobs(Connection c, String key) throws SQLException {
        return list(c, "SELECT job_id FROM person_use WHERE key = ? ORDER BY job_id", key);
    }

    /** Destroys key and text, and notes it; of somebody who is not here only the note is left. */
    void erase(Connection c, String key, Instant at) throws SQLException {
        run(c, "DELETE FROM person_key WHERE key = ?", key);
        run(c, "DELETE FROM private_name WHERE key = ?", key);
        run(c, "DELETE FROM person WHERE key = ?", key);
        run(c, "DELETE FROM account WHERE key = ?", key);
        run(c, "DELETE FROM photo WHERE hash = ?", key);
        run(c, "INSERT INTO erased (key, erased_at) VALUES (?, ?) ON CONFLICT DO NOTHING", key, at.toString());
    }

    Map<String, Instant> erased(Connection c) throws SQLException {
        Map<String, Instant> found = new LinkedHashMap<>();
        pairs(c, "SELECT key, erased_at FROM erased ORDER BY erased_at, key").forEach((k, at) -> found.put(k, time(at)));
        return found;
    }

    /** That somebody was erased counts even where the time cannot be read. */
    private static Instant time(String text) {
        try {
            return Instant.parse(text);
        } catch (DateTimeException e) {
            return Instant.EPOCH;
        }
    }

    /** Puts everything under its key that is not yet: rows of older versions and those of an archive. */
    void protect(Connection c) throws SQLException {
        for (Map.Entry<String, String> e : pairs(c, "SELECT key, json FROM person").entrySet()) {
            if (!PersonalCipher.isClosed(e.getValue())) {
                run(c, "UPDATE person SET json = ? WHERE key = ?", close(c, e.getKey(), e.getValue()), e.getKey());
            }
        }
        for (Map.Entry<String, String> e : pairs(c, "SELECT key, text FROM private_name WHERE lookup IS NULL")
                .entrySet()) {
            run(c, "UPDATE private_name SET lookup = ?, text = ? WHERE key = ?",
                    PersonalCipher.lookup(lookupSecret(c), e.getValue()), close(c, e.getKey(), e.getValue()), e.getKey());
        }
    }

    private String lookupSecret(Connection c) throws SQLException {
        Optional<String> there = one(c, "SELECT value FROM setting WHERE name = ?", LOOKUP);
        if (there.isEmpty()) {
            there = Optional.of(cipher.newSecret());
            settings.put(c, LOOKUP, there.get());
        }
        return there.get();
    }

    private static Optional<String> one(Connection c, String sql, String value) throws SQLException {
        return list(c, sql, value).stream().findFirst();
    }

    private static List<String> list(Connection c, String sql, String value) throws SQLException {
        try (PreparedStatement q = c.prepareStatement(sql)) {
            q.setString(1, value);
            try (ResultSet r = q.executeQuery()) {
                List<String> found = new ArrayList<>();
                while (r.next()) {
                    found.add(r.getString(1));
                }
                return found;
            }
        }
    }

    private static Map<String, String> pairs(Connection c, String sql) throws SQLException {
        Map<String, String> found = new LinkedHashMap<>();
        try (PreparedStatement q = c.prepareStatement(sql); ResultSet r = q.executeQuery()) {
            while (r.next()) {
                found.put(r.getString(1), r.getString(2));
            }
        }
        return found;
    }

    private static void run(Connection c, String sql, String... values) throws SQLException {
        try (PreparedStatement p = c.prepareStatement(sql)) {
            for (int i = 0; i < values.length; i++) {
                p.setString(i + 1, values[i]);
            }
            p.executeUpdate();
        }
    }
}
