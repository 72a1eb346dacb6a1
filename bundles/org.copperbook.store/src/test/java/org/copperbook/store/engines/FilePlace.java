package org.copperbook.store.engines;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreOptions;
import org.copperbook.store.sqlite.SqliteJobStore;
import org.sqlite.SQLiteDataSource;

/** A store in a file. */
final class FilePlace extends Place {

    private final Path file;

    FilePlace(Path file) {
        this.file = file;
    }

    @Override
    public JobStore open(StoreOptions options) {
        return SqliteJobStore.open(file, options);
    }

    @Override
    public Connection connect() throws SQLException {
        SQLiteDataSource source = new SQLiteDataSource();
        source.setUrl("jdbc:sqlite:" + file);
        Connection c = source.getConnection();
        try (Statement s = c.createStatement()) {
            s.execute("PRAGMA foreign_keys = OFF");
            s.execute("PRAGMA busy_timeout = 5000");
        }
        return c;
    }

    @Override
    protected String guards() {
        return "SELECT 'DROP TRIGGER ' || name, sql FROM sqlite_schema WHERE type = 'trigger'"
                + " AND tbl_name <> 'register'";
    }

    @Override
    public List<String> arguments() {
        return List.of(file.toString());
    }
}
