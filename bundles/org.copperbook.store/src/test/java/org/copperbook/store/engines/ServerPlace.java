package org.copperbook.store.engines;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreOptions;
import org.copperbook.store.postgres.PostgresJobStore;
import org.copperbook.store.postgres.ServerConnection;

/** A store in a database of its own on a server. */
public final class ServerPlace extends Place {

    private final TestServer server;
    private final ServerConnection at;

    ServerPlace(TestServer server) throws SQLException {
        this.server = server;
        at = server.newDatabase();
    }

    @Override
    public JobStore open(StoreOptions options) {
        return PostgresJobStore.open(at, TestServer.PASSWORD, options);
    }

    @Override
    public Connection connect() throws SQLException {
        Connection c = server.connect(at.database(), TestServer.USER, TestServer.PASSWORD);
        try (Statement s = c.createStatement()) {
            // Foreign keys are triggers of the system; the guards are ours.
            s.execute("DO $$ DECLARE k record; BEGIN FOR k IN SELECT conname, conrelid::regclass AS t FROM pg_constraint"
                    + " WHERE contype = 'f' LOOP EXECUTE format('ALTER TABLE %s DROP CONSTRAINT %I', k.t, k.conname);"
                    + " END LOOP; END $$");
        }
        return c;
    }

    @Override
    protected String guards() {
        return "SELECT format('DROP TRIGGER %I ON %s', tgname, tgrelid::regclass), pg_get_triggerdef(oid)"
                + " FROM pg_trigger WHERE NOT tgisinternal";
    }

    @Override
    public List<String> arguments() {
        return List.of(at.toString(), TestServer.PASSWORD);
    }
}
