package org.copperbook.desk.shell;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.store.JobStore;
import org.copperbook.store.UserFolders;
import org.copperbook.store.backup.RestoreRequest;
import org.copperbook.store.demo.DemoShop;
import org.copperbook.store.sqlite.SqliteJobStore;

/** Opens the store that the arguments ask for: the user's own, a named one, or the demo workshop's. */
public final class SessionOpening {

    private SessionOpening() {
    }

    /**
     * Opens the store and begins the session.
     *
     * @throws org.copperbook.store.StoreException when the store cannot be opened, or a backup that was to take its
     *         place could not; the store is then as it was
     */
    public static DeskSession open(DeskArguments arguments) {
        UserFolders folders = UserFolders.current();
        boolean demo = arguments.demo().isPresent();
        Path file = arguments.store().orElse(demo ? folders.demoStore() : folders.store());
        new RestoreRequest(file).carryOut(Clock.systemUTC());
        JobStore store = SqliteJobStore.open(file);
        try {
            if (demo) {
                fill(store, arguments.demo().get());
            }
            return new DeskSession(store, demo, arguments);
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
