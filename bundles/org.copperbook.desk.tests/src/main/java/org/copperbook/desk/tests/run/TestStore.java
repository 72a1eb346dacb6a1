package org.copperbook.desk.tests.run;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import org.copperbook.desk.shared.ServerPasswords;
import org.copperbook.desk.shell.DeskArguments;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.shell.SessionOpening;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreOptions;
import org.copperbook.store.UserFolders;
import org.copperbook.store.copy.StoreCopy;
import org.copperbook.store.engines.TestServer;
import org.copperbook.store.postgres.PostgresJobStore;
import org.copperbook.store.postgres.ServerConnection;
import org.eclipse.equinox.security.storage.StorageException;
import org.sqlite.SQLiteDataSource;

/** The store that a start of the product for tests works on, with the demo workshop in it or empty. */
abstract class TestStore implements AutoCloseable {

    static TestStore of(String only, DeskArguments demo) {
        return switch (OwnStart.Way.of(only).orElse(OwnStart.Way.ALONE)) {
            case FIRST -> new InFile(DeskArguments.NONE);
            case SERVER -> new OnServer(demo);
            case READING -> new NewerLayout(demo);
            default -> new InFile(demo);
        };
    }

    abstract DeskSession open();

    @Override
    public void close() {
    }

    private static final class InFile extends TestStore {

        private final DeskArguments arguments;

        InFile(DeskArguments arguments) {
            this.arguments = arguments;
        }

        @Override
        DeskSession open() {
            return SessionOpening.open(arguments);
        }
    }

    /** The server ends with the program and its database with it. */
    private static final class OnServer extends TestStore {

        private final DeskArguments demo;
        private final TestServer server = TestServer.shared();

        OnServer(DeskArguments demo) {
            this.demo = demo;
        }

        @Override
        DeskSession open() {
            try {
                ServerConnection at = server.newDatabase();
                Path scratch = UserFolders.current().home();
                try (DeskSession file = SessionOpening.open(demo);
                        JobStore shared = PostgresJobStore.open(at, TestServer.PASSWORD, StoreOptions.standard())) {
                    StoreCopy.copy(file.store(), shared, scratch);
                }
                ServerPasswords.current().keep(at, TestServer.PASSWORD);
                return SessionOpening.open(at, DeskArguments.NONE);
            } catch (SQLException | IOException | StorageException e) {
                throw new IllegalStateException("the demo workshop could not be put on a server", e);
            }
        }
    }

    private static final class NewerLayout extends TestStore {

        private final DeskArguments demo;

        NewerLayout(DeskArguments demo) {
            this.demo = demo;
        }

        @Override
        DeskSession open() {
            Path file;
            try (DeskSession filled = SessionOpening.open(demo)) {
                file = filled.store().file();
            }
            SQLiteDataSource source = new SQLiteDataSource();
            source.setUrl("jdbc:sqlite:" + file);
            try (Connection c = source.getConnection(); Statement s = c.createStatement()) {
                s.executeUpdate("INSERT INTO schema_step VALUES (99, '0099-of-tomorrow', 'ff', '2030-01-01')");
            } catch (SQLException e) {
                throw new IllegalStateException("the store could not be made one of a newer version", e);
            }
            return SessionOpening.open(new DeskArguments(java.util.Optional.empty(), java.util.Optional.of(file),
                    java.util.Optional.empty()));
        }
    }
}
