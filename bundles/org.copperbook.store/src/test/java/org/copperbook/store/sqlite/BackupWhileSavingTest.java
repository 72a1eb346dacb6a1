package org.copperbook.store.sqlite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.copperbook.store.JobStore;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.Sample;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A backup while somebody saves. */
class BackupWhileSavingTest {

    @TempDir
    Path folder;

    @Test
    void aBackupTakenWhileSomebodySavesIsAWholeStore() throws Exception {
        Path file = folder.resolve("workshop.sqlite");
        Path copy = folder.resolve("backups").resolve("monday.sqlite");
        AtomicBoolean enough = new AtomicBoolean();
        try (JobStore store = SqliteJobStore.open(file); JobStore writing = SqliteJobStore.open(file)) {
            for (int i = 0; i < 20; i++) {
                store.create(Sample.booking("Harbour Ice", "set " + i), "ada");
            }
            Thread writer = new Thread(() -> {
                while (!enough.get()) {
                    writing.create(Sample.booking("Mill Lane Bakery", "oven fan"), "ben");
                }
            });
            writer.start();
            try {
                store.backup(copy);
            } finally {
                enough.set(true);
                writer.join();
            }
            StoreException e = assertThrows(StoreException.class, () -> store.backup(copy));
            assertEquals(Kind.ALREADY_THERE, e.kind());
        }
        try (Stream<Path> beside = Files.list(copy.getParent())) {
            assertEquals(List.of(copy), beside.toList());
        }
        try (JobStore restored = SqliteJobStore.open(copy)) {
            assertTrue(restored.audit().passed());
            assertTrue(restored.register(RegisterQuery.first(0)).total() >= 20);
            assertEquals("2", restored.create(Sample.booking("a", "b"), "ada").number().substring(0, 1));
        }
    }

    @Test
    void aBackupThatCannotBeWrittenLeavesNothing() throws Exception {
        Path notAFolder = Files.writeString(folder.resolve("notes"), "x");
        try (JobStore store = SqliteJobStore.open(folder.resolve("workshop.sqlite"))) {
            StoreException e = assertThrows(StoreException.class, () -> store.backup(notAFolder.resolve("b.sqlite")));
            assertTrue(e.getMessage().contains("notes"), e.getMessage());
        }
        assertEquals("x", Files.readString(notAFolder));
    }
}
