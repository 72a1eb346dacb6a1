package org.copperbook.store.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.UUID;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreText;
import org.copperbook.store.files.DurableFile;
import org.copperbook.store.sqlite.ErasedIn;
import org.copperbook.store.sqlite.SqliteJobStore;

/** A copy of a backup without those who were erased since; written anew as a whole, so that no page remembers them. */
final class CleanedCopy {

    private CleanedCopy() {
    }

    /**
     * Makes one and forces it to the disk.
     *
     * @param scratch folder for it and what it takes to make it
     * @throws StoreException CORRUPT when the copy does not pass the audit, or as opening a store does
     */
    static Path of(Path backup, Map<String, Instant> erased, Path scratch) throws IOException {
        String name = UUID.randomUUID().toString();
        Path work = Files.copy(backup, scratch.resolve(name + ".work.sqlite"));
        Path clean = work;
        if (!ErasedIn.file(work).containsAll(erased.keySet())) {
            clean = scratch.resolve(name + ".clean.sqlite");
            try (JobStore store = SqliteJobStore.open(work)) {
                store.eraseAgain(erased);
                store.backup(clean);
            }
            Path proof = Files.copy(clean, scratch.resolve(name + ".proof.sqlite"));
            ProvenBackup.check(proof).ifPresent(bad -> {
                throw new StoreException(Kind.CORRUPT, StoreText.of("backup.notSound", backup, bad));
            });
        }
        DurableFile.force(clean);
        return clean;
    }
}
