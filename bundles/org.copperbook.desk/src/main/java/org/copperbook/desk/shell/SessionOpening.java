package org.copperbook.desk.shell;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.copperbook.desk.shared.ServerPasswords;
import org.copperbook.desk.shared.SharedPreference;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreOptions;
import org.copperbook.store.UserFolders;
import org.copperbook.store.backup.RestoreRequest;
import org.copperbook.store.demo.DemoShop;
import org.copperbook.store.mirror.MirroredStore;
import org.copperbook.store.postgres.PostgresJobStore;
import org.copperbook.store.postgres.ServerConnection;
import org.copperbook.store.sqlite.SqliteJobStore;
import org.eclipse.equinox.security.storage.StorageException;

/** Opens the store that the arguments and preferences ask for: a file of the user, a named one, the demo's, a server's. */
public final class SessionOpening {

    private SessionOpening() {
    }

    /** The server to open, when the preferences name one and the arguments ask for no file. */
    public static Optional<ServerConnection> server(DeskArguments arguments) {
        return arguments.demo().isPresent() || arguments.store().isPresent() ? Optional.empty()
                : SharedPreference.chosen();
    }

    /**
     * Opens the store on a server and begins the session; the copy on this computer while the server does not answer.
     *
     * @throws StoreException when it cannot be opened, or its password cannot be read
     */
    public static DeskSession open(ServerConnection at, DeskArguments arguments) {
        JobStore store = MirroredStore.open(() -> PostgresJobStore.open(at, password(at), StoreOptions.standard()),
                PostgresJobStore.standsFor(at), StoreOptions.standard());
        try {
            return new DeskSession(store, false, arguments, Optional.of(at));
        } catch (RuntimeException e) {
            store.close();
            throw e;
        }
    }

    private static String password(ServerConnection at) {
        try {
            return ServerPasswords.current().of(at);
        } catch (IOException | StorageException e) {
            throw new StoreException(StoreException.Kind.NO_ENTRY, DeskWords.text("shared.passwordLost"), e);
        }
    }

    /**
     * Puts a backup in the store's place, if that was asked for.
     *
     * @throws org.copperbook.store.StoreException when it could not be done; the store is then as it was
     */
    public static void restoreWhatWasAskedFor(DeskArguments arguments) {
        new RestoreRequest(file(arguments)).carryOut(Clock.systemUTC());
    }

    private static Path file(DeskArguments arguments) {
        UserFolders folders = UserFolders.current();
        return arguments.store().orElseGet(() -> arguments.demo().isPresent() ? folders.demoStore() : folders.store());
    }

    /**
     * Opens the store in a file and begins the session.
     *
     * @throws org.copperbook.store.StoreException when the store cannot be opened
     */
    public static DeskSession open(DeskArguments arguments) {
        boolean demo = arguments.demo().isPresent();
        JobStore store = SqliteJobStore.open(file(arguments));
        try {
            if (demo) {
                fill(store, arguments.demo().get());
            }
            return new DeskSession(store, demo, arguments, Optional.empty());
        } catch (RuntimeException e) {
            store.close();
            throw e;
        }
    }

    private static void fill(JobStore store, Path folder) {
        try {
            new DemoShop(folder).load(store);
        } catch (IOException | BadRecordException e) {
            throw new DemoUnreadable(DeskWords.text("demo.unreadable", folder, e.getMessage()), e);
        }
    }
}
