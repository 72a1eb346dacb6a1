package org.copperbook.store.postgres;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreText;
import org.copperbook.store.jdbc.Migrations;

/** Looks whether a connection would do, and changes nothing. */
public final class ServerTrial {

    private static final Duration PATIENCE = Duration.ofSeconds(5);

    /** What stands behind a connection that works. */
    public enum Found {
        /** A store of this version. */
        STORE,
        /** A store of an older version, brought up to date when it is opened. */
        OLDER_STORE,
        /** A store of a newer version, which can only be read. */
        NEWER_STORE,
        /** Nothing yet; the store is laid out when it is opened. */
        NOTHING
    }

    private ServerTrial() {
    }

    /**
     * Connects once. Waits for the network; not for the window's thread.
     *
     * @param password of the user; empty when the server asks for none
     * @throws StoreException as {@link PostgresJobStore#open}; FORBIDDEN when there is nothing yet and the user may not
     *         lay it out
     */
    public static Found of(ServerConnection at, String password) {
        try (Connection c = new PostgresServer(at, password, PATIENCE).open("")) {
            return look(at, c);
        } catch (SQLException e) {
            throw new PostgresErrors(at).translate(e);
        }
    }

    private static Found look(ServerConnection at, Connection c) throws SQLException {
        PostgresLayout layout = new PostgresLayout(at, Migrations.of("postgres"));
        layout.refuse(c);
        try {
            if (layout.current(c)) {
                return Found.STORE;
            }
        } catch (StoreException e) {
            if (e.kind() == Kind.NEWER_SCHEMA) {
                return Found.NEWER_STORE;
            }
            throw e;
        }
        if (PostgresLayout.there(c, "schema_step")) {
            return Found.OLDER_STORE;
        }
        if (!"t".equals(PostgresServer.text(c, "SELECT has_database_privilege(current_database(), 'CREATE')"))) {
            throw new StoreException(Kind.FORBIDDEN, StoreText.of("server.mayNotMake", at.place(), at.user()));
        }
        return Found.NOTHING;
    }
}
