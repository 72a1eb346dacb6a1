package org.copperbook.store.sqlite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.store.Change;
import org.copperbook.store.ConflictException;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.Sample;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreOptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two programs on one file, and a backup while somebody saves. */
class TwoAtOnceTest {

    private static final StoreOptions QUICK = StoreOptions.standard()
            .withLookForChangesEvery(Duration.ofMillis(30));

    @TempDir
    Path folder;

    @Test
    void aSecondInstanceSeesTheFirstAndConflictsAreReportedAcross() {
        Path file = folder.resolve("workshop.sqlite");
        try (JobStore first = SqliteJobStore.open(file); JobStore second = SqliteJobStore.open(file)) {
            JobHandle job = first.create(Sample.booking("Harbour Ice", "set"), "ada");
            assertEquals("Harbour Ice", second.load(job.id()).booking().orElseThrow().customer());
            second.save(job.id(), Sample.BOOKING, Sample.booking("Harbour Ice", "second"), 1, "ben", "");
            ConflictException e = assertThrows(ConflictException.class, () -> first.save(job.id(), Sample.BOOKING,
                    Sample.booking("Harbour Ice", "first"), 1, "ada", ""));
            assertEquals("ben", e.theirs().revision().who());
        }
    }

    @Test
    void changesOfAnotherInstanceAreToldOnceAndOwnOnesOnlyAsOwn() throws Exception {
        Path file = folder.resolve("workshop.sqlite");
        BlockingQueue<Change> heard = new LinkedBlockingQueue<>();
        try (JobStore mine = SqliteJobStore.open(file, QUICK); JobStore theirs = SqliteJobStore.open(file)) {
            mine.onChange(heard::add);
            JobHandle own = mine.create(Sample.booking("Harbour Ice", "set"), "ada");
            assertEquals(new Change(own.id(), "booking", false), heard.poll(5, TimeUnit.SECONDS));
            JobHandle other = theirs.create(Sample.booking("Mill Lane Bakery", "oven fan"), "ben");
            assertEquals(new Change(other.id(), "booking", true), heard.poll(5, TimeUnit.SECONDS));
            mine.savePerson(person("p1", "Ada Brook"));
            assertEquals(new Change(JobStore.SHOP, Change.PEOPLE, false), heard.poll(5, TimeUnit.SECONDS));
            theirs.savePerson(person("p2", "Ben Mill"));
            assertEquals(new Change(JobStore.SHOP, Change.PEOPLE, true), heard.poll(5, TimeUnit.SECONDS));
            mine.save(own.id(), Sample.NAMEPLATE, Sample.nameplate("A"), 0, "ada", "");
            assertEquals(new Change(own.id(), "nameplate", false), heard.poll(5, TimeUnit.SECONDS));
            assertNull(heard.poll(300, TimeUnit.MILLISECONDS));
        }
    }

    private static Person person(String key, String name) {
        return new Person(key, name, Set.of(Role.WINDER), null, null, true);
    }

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
