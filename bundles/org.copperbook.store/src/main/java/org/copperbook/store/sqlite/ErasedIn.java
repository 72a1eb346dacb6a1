package org.copperbook.store.sqlite;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.util.HashSet;
import java.util.Set;
import org.copperbook.store.UserFolders;

/** Looks into a store's file, without opening it as a store, for what was erased in it. */
public final class ErasedIn {

    private ErasedIn() {
    }

    /** The keys erased in a file; none when it is of an older layout or no store. */
    public static Set<String> file(Path file) {
        NativeLibrary.prepare(UserFolders.current().nativeLibraries());
        Set<String> found = new HashSet<>();
        try (Connection c = new SqliteFile(file, Duration.ofSeconds(1), 0).reader();
                PreparedStatement q = c.prepareStatement("SELECT key FROM erased"); ResultSet r = q.executeQuery()) {
            while (r.next()) {
                found.add(r.getString(1));
            }
        } catch (SQLException e) {
            return Set.of();
        }
        return found;
    }
}
