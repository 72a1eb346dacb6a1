package org.copperbook.store.postgres;

import java.sql.Connection;
import java.sql.SQLException;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreText;
import org.copperbook.store.jdbc.Migrations;

/** Makes the schema or brings it up to date; several programs starting together take turns by an advisory lock. */
final class PostgresLayout {

    private static final int OLDEST = 150_000;
    /** "Copp" in ASCII, so that nobody else in the database takes the same number by chance. */
    private static final int LOCK = 0x436f7070;

    private final ServerConnection at;
    private final Migrations migrations;

    PostgresLayout(ServerConnection at, Migrations migrations) {
        this.at = at;
        this.migrations = migrations;
    }

    /**
     * Applies what is lacking, in one transaction. Who may only use the schema is not asked for more when nothing is
     * lacking.
     *
     * @return what to say when the layout is a newer one, which is left alone; otherwise null
     */
    StoreException bringUp(Connection writer) throws SQLException {
        refuse(writer);
        boolean done = false;
        try {
            if (!current(writer)) {
                PostgresServer.text(writer, "SELECT pg_advisory_xact_lock(" + LOCK + ")");
                PostgresServer.run(writer, "CREATE SCHEMA IF NOT EXISTS " + PostgresServer.SCHEMA);
                migrations.apply(writer, "");
                DatabaseRoles.renew(writer);
            }
            writer.commit();
            done = true;
            return null;
        } catch (StoreException e) {
            if (e.kind() == Kind.NEWER_SCHEMA) {
                return e;
            }
            throw e;
        } finally {
            if (!done) {
                writer.rollback();
            }
        }
    }

    /** Refuses a server that is too old or a database of other text. */
    void refuse(Connection c) throws SQLException {
        if (Integer.parseInt(PostgresServer.text(c, "SHOW server_version_num")) < OLDEST) {
            throw new StoreException(Kind.NOT_A_STORE,
                    StoreText.of("server.old", at.place(), PostgresServer.text(c, "SHOW server_version")));
        }
        String encoding = PostgresServer.text(c, "SHOW server_encoding");
        if (!"UTF8".equals(encoding)) {
            throw new StoreException(Kind.NOT_A_STORE, StoreText.of("server.encoding", at.place(), encoding));
        }
    }

    /** Whether the store is there with nothing lacking; changes nothing. */
    boolean current(Connection c) throws SQLException {
        if (there(c, "schema_step")) {
            return migrations.current(c);
        }
        // A program starting beside this one makes all of it in one transaction: either all is there or nothing.
        if (there(c, "job") && !there(c, "schema_step")) {
            throw new StoreException(Kind.NOT_A_STORE, StoreText.of("server.notAStore", at.place()));
        }
        return false;
    }

    /** Whether the schema has a table. */
    static boolean there(Connection c, String table) throws SQLException {
        return PostgresServer.text(c, "SELECT to_regclass('" + PostgresServer.SCHEMA + "." + table + "')") != null;
    }
}
