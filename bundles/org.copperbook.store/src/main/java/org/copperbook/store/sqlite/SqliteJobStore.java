package org.copperbook.store.sqlite;

import java.nio.file.Path;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreOptions;
import org.copperbook.store.UserFolders;
import org.copperbook.store.jdbc.JdbcJobStore;
import org.copperbook.store.jdbc.Migrations;

/** The store in one SQLite file on this machine; no server is needed. */
public final class SqliteJobStore {

    private SqliteJobStore() {
    }

    /** Opens the store in a file, made when it is not there; as {@link #open(Path, StoreOptions)}. */
    public static JobStore open(Path file) {
        return open(file, StoreOptions.standard());
    }

    /**
     * Opens the store in a file, made with its folder when it is not there.
     *
     * @throws org.copperbook.store.StoreException READ_ONLY when file or folder may not be written, LOCKED, CORRUPT,
     *         NOT_A_STORE, FOREIGN_SCHEMA, or NEWER_SCHEMA when not even reading is possible; the file then is as it
     *         was
     */
    public static JobStore open(Path file, StoreOptions options) {
        return open(new SqliteFile(file.toAbsolutePath().normalize(), options.patience(), 0), options);
    }

    static JobStore open(SqliteFile file, StoreOptions options) {
        NativeLibrary.prepare(UserFolders.current().nativeLibraries());
        SqliteDatabase database = SqliteDatabase.open(file, Migrations.of("sqlite"));
        return JdbcJobStore.over(database, options);
    }
}
