package org.copperbook.store.sqlite;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.copperbook.store.UserFolders;

/** The file behind a store's back, as somebody with a database tool would get at it. */
final class RawFile {

    private final Path file;

    RawFile(Path file) {
        NativeLibrary.prepare(UserFolders.current().nativeLibraries());
        this.file = file;
    }

    Connection open() throws SQLException {
        Connection c = new SqliteFile(file, Duration.ofSeconds(5), 0).open();
        SqliteFile.run(c, "PRAGMA foreign_keys = OFF");
        return c;
    }

    void run(String... statements) throws SQLException {
        try (Connection c = open(); Statement s = c.createStatement()) {
            for (String sql : statements) {
                s.executeUpdate(sql);
            }
        }
    }

    /** Takes away the guards against changing what was saved; gives what makes them again. */
    List<String> withoutGuards() throws SQLException {
        List<String> made = new ArrayList<>();
        try (Connection c = open(); Statement s = c.createStatement()) {
            List<String> names = new ArrayList<>();
            try (ResultSet r = s.executeQuery("SELECT name, sql FROM sqlite_schema WHERE type = 'trigger'"
                    + " AND tbl_name <> 'register'")) {
                while (r.next()) {
                    names.add(r.getString(1));
                    made.add(r.getString(2));
                }
            }
            for (String name : names) {
                s.executeUpdate("DROP TRIGGER " + name);
            }
        }
        return made;
    }
}
