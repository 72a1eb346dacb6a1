package org.copperbook.store.postgres;

import java.nio.file.Path;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreOptions;
import org.copperbook.store.UserFolders;
import org.copperbook.store.jdbc.JdbcJobStore;
import org.copperbook.store.jdbc.Migrations;

/** The store of a whole shop on a PostgreSQL server, version 15 or newer. */
public final class PostgresJobStore {

    private PostgresJobStore() {
    }

    /**
     * Opens the store in a database, laid out when it is empty.
     *
     * @param password of the user; empty when the server asks for none
     * @throws org.copperbook.store.StoreException UNREACHABLE when the server does not answer, NO_ENTRY when it does not
     *         let the user in or has no such database, FORBIDDEN when the user may not lay the store out, NOT_A_STORE,
     *         FOREIGN_SCHEMA, or NEWER_SCHEMA when not even reading is possible
     */
    public static JobStore open(ServerConnection at, String password, StoreOptions options) {
        return open(new PostgresServer(at, password, options.patience()), Migrations.of("postgres"), options);
    }

    static JobStore open(PostgresServer server, Migrations migrations, StoreOptions options) {
        return JdbcJobStore.over(PostgresDatabase.open(server, standsFor(server.at()), migrations), options);
    }

    /** The local file that stands for a shared store: what belongs to it on this machine lies beside it. */
    public static Path standsFor(ServerConnection at) {
        String name = at.host() + "-" + at.port() + "-" + at.database();
        return UserFolders.current().shared().resolve(name.replaceAll("[^A-Za-z0-9._-]", "_") + ".sqlite");
    }
}
