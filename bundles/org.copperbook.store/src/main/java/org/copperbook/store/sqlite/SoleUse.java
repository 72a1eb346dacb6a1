package org.copperbook.store.sqlite;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreText;
import org.copperbook.store.UserFolders;

/** Makes sure that nobody has a store open, and folds what the engine keeps beside the file into it. */
public final class SoleUse {

    private static final System.Logger LOG = System.getLogger(SoleUse.class.getName());
    private static final Duration PATIENCE = Duration.ofSeconds(2);

    private SoleUse() {
    }

    /**
     * Leaving the write-ahead mode is refused by the engine while any other connection is open. A file too damaged to be
     * asked is left as it is.
     *
     * @throws StoreException LOCKED when another program has it open
     */
    public static void fold(Path store) {
        NativeLibrary.prepare(UserFolders.current().nativeLibraries());
        try (Connection c = new SqliteFile(store, PATIENCE, 0).open()) {
            SqliteFile.run(c, "PRAGMA journal_mode = DELETE");
        } catch (SQLException e) {
            if (SqliteErrors.kind(e) == Kind.LOCKED) {
                throw new StoreException(Kind.LOCKED, StoreText.of("backup.inUse", store), e);
            }
            LOG.log(System.Logger.Level.WARNING, "the store " + store + " is damaged; set aside as it is", e);
        }
    }
}
