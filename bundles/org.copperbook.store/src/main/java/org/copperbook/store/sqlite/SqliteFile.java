package org.copperbook.store.sqlite;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * Opens connections to one file.
 *
 * @param path     the file
 * @param patience how long a statement waits for another program's lock
 * @param maxPages largest size in pages, 0 for no limit of our own
 */
record SqliteFile(Path path, Duration patience, long maxPages) {

    /** "Copp" in ASCII, so that a file of another application is not taken for a store. */
    static final int APPLICATION_ID = 0x436f7070;

    private static final int CACHE_KIB = 16 * 1024;

    /** A connection that writes: durable when a commit returns, also through a loss of power. */
    Connection writer() throws SQLException {
        Connection c = open();
        try {
            // A new file only; the mode then is a property of the file itself.
            run(c, "PRAGMA journal_mode = WAL");
            run(c, "PRAGMA synchronous = FULL");
            // Without these macOS only hands the bytes to the drive.
            run(c, "PRAGMA fullfsync = ON");
            run(c, "PRAGMA checkpoint_fullfsync = ON");
            // What is deleted is overwritten, so that an erased key cannot be read out of free pages.
            run(c, "PRAGMA secure_delete = ON");
            if (maxPages > 0) {
                run(c, "PRAGMA max_page_count = " + maxPages);
            }
            return KeptStatements.over(c);
        } catch (SQLException e) {
            c.close();
            throw e;
        }
    }

    /** A connection that only reads. */
    Connection reader() throws SQLException {
        Connection c = open();
        try {
            run(c, "PRAGMA query_only = ON");
            return KeptStatements.over(c);
        } catch (SQLException e) {
            c.close();
            throw e;
        }
    }

    /** A connection with nothing set but the wait for locks. */
    Connection open() throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout((int) patience.toMillis());
        config.enforceForeignKeys(true);
        // The class itself: in OSGi a driver cannot be found through DriverManager.
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + path);
        Connection c = source.getConnection();
        try {
            run(c, "PRAGMA trusted_schema = OFF");
            // The engine's own 2 MB are too few for the indexes of a large shop.
            run(c, "PRAGMA cache_size = -" + CACHE_KIB);
            return c;
        } catch (SQLException e) {
            c.close();
            throw e;
        }
    }

    static void run(Connection c, String sql) throws SQLException {
        try (Statement s = c.createStatement()) {
            s.execute(sql);
        }
    }

    static long number(Connection c, String sql) throws SQLException {
        try (Statement s = c.createStatement(); ResultSet r = s.executeQuery(sql)) {
            r.next();
            return r.getLong(1);
        }
    }
}
