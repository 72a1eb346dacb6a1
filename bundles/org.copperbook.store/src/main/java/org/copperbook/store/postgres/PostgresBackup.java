package org.copperbook.store.postgres;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreText;
import org.copperbook.store.copy.StoreCopy;
import org.copperbook.store.files.DurableFile;
import org.copperbook.store.files.OwnFolder;
import org.copperbook.store.sqlite.SoleUse;
import org.copperbook.store.sqlite.SqliteJobStore;

/** Copies a shared store into a file that opens as a store without any server. */
final class PostgresBackup {

    private final JobStore store;

    PostgresBackup(JobStore store) {
        this.store = store;
    }

    void write(Path target) {
        Path whole = target.toAbsolutePath().normalize();
        if (Files.exists(whole)) {
            throw new StoreException(Kind.ALREADY_THERE, StoreText.of("backup.there", whole));
        }
        try {
            Files.createDirectories(whole.getParent());
            Path scratch = Files.createTempDirectory(whole.getParent(), ".backup");
            Path beside = scratch.resolve("store.sqlite");
            try {
                try (JobStore copy = SqliteJobStore.open(beside)) {
                    StoreCopy.copy(store, copy, scratch);
                }
                SoleUse.fold(beside);
                DurableFile.force(beside);
                DurableFile.moveInto(beside, whole);
            } finally {
                OwnFolder.remove(scratch);
            }
        } catch (IOException e) {
            throw new StoreException(Kind.IO, StoreText.of("backup.failed", whole, e.getMessage()), e);
        }
    }
}
