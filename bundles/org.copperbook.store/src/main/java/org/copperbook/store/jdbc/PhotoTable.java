package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.store.StoreText;

/** Photos by the hash of their bytes; the same photo is kept once. */
final class PhotoTable {

    String put(Connection c, byte[] bytes, Instant at) throws SQLException {
        String hash = Chain.hash(bytes);
        try (PreparedStatement in = c.prepareStatement(
                "INSERT INTO photo (hash, kept_at, bytes) VALUES (?, ?, ?) ON CONFLICT (hash) DO NOTHING")) {
            in.setString(1, hash);
            in.setString(2, at.toString());
            in.setBytes(3, bytes);
            in.executeUpdate();
        }
        return hash;
    }

    Optional<byte[]> get(Connection c, String hash) throws SQLException {
        try (PreparedStatement q = c.prepareStatement("SELECT bytes FROM photo WHERE hash = ?")) {
            q.setString(1, hash);
            try (ResultSet r = q.executeQuery()) {
                return r.next() ? Optional.of(r.getBytes(1)) : Optional.empty();
            }
        }
    }

    /** Photos whose bytes are not those they were kept with; one line each. */
    List<String> problems(Connection c) throws SQLException {
        List<String> found = new ArrayList<>();
        try (PreparedStatement q = c.prepareStatement("SELECT hash, bytes FROM photo ORDER BY hash");
                ResultSet r = q.executeQuery()) {
            while (r.next()) {
                if (!Chain.hash(r.getBytes(2)).equals(r.getString(1))) {
                    found.add(StoreText.of("audit.photo", r.getString(1)));
                }
            }
        }
        return found;
    }
}
