package org.copperbook.store.postgres;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import org.postgresql.ds.PGSimpleDataSource;

/**
 * Opens connections to one database.
 *
 * @param at       where
 * @param password of the user; empty when the server asks for none
 * @param patience how long a statement waits for the lock of somebody else
 */
record PostgresServer(ServerConnection at, String password, Duration patience) {

    /** The schema that holds the store, so that a database may serve others beside it. */
    static final String SCHEMA = "copperbook";

    private static final int CONNECT_SECONDS = 5;
    private static final int ANSWER_SECONDS = 120;
    private static final int ROWS_AT_ONCE = 500;

    /**
     * A connection that writes. A workstation that vanishes in the middle must not hold the lock for the hours that
     * the network would give it; a commit is on the disk when it returns, whatever the server's default.
     */
    Connection writer() throws SQLException {
        Connection c = open("-c synchronous_commit=on -c idle_in_transaction_session_timeout=60s"
                + " -c tcp_keepalives_idle=10 -c tcp_keepalives_interval=5 -c tcp_keepalives_count=3"
                + " -c lock_timeout=" + patience.toMillis());
        c.setAutoCommit(false);
        return c;
    }

    /** A connection that only reads, each transaction one snapshot. */
    Connection reader() throws SQLException {
        Connection c = open("");
        c.setReadOnly(true);
        c.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
        c.setAutoCommit(false);
        return c;
    }

    /** A connection with nothing set. */
    Connection open(String options) throws SQLException {
        // The class itself: in OSGi a driver cannot be found through DriverManager.
        PGSimpleDataSource source = new PGSimpleDataSource();
        source.setServerNames(new String[] {at.host()});
        source.setPortNumbers(new int[] {at.port()});
        source.setDatabaseName(at.database());
        source.setUser(at.user());
        source.setPassword(password);
        source.setSslMode(at.tls().mode());
        source.setCurrentSchema(SCHEMA);
        source.setApplicationName("copperbook");
        source.setConnectTimeout(CONNECT_SECONDS);
        source.setSocketTimeout(ANSWER_SECONDS);
        source.setTcpKeepAlive(true);
        // Without it the driver takes all rows of a query into memory.
        source.setDefaultRowFetchSize(ROWS_AT_ONCE);
        if (!options.isEmpty()) {
            source.setOptions(options);
        }
        return source.getConnection();
    }

    static void run(Connection c, String sql) throws SQLException {
        try (Statement s = c.createStatement()) {
            s.execute(sql);
        }
    }

    /** The first value of the first row, nothing (null) when there is no row. */
    static String text(Connection c, String sql) throws SQLException {
        try (Statement s = c.createStatement(); ResultSet r = s.executeQuery(sql)) {
            return r.next() ? r.getString(1) : null;
        }
    }
}
