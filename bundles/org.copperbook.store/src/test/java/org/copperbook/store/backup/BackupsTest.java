package org.copperbook.store.backup;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.Sample;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.sqlite.SqliteJobStore;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackupsTest {

    @TempDir
    Path folder;

    private Path file;
    private Path kept;
    private final Hand hand = new Hand();

    /** A clock that is set by hand. */
    private static class Hand extends Clock {
        private Instant now = Instant.parse("2026-03-02T08:00:00Z");

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }

    @BeforeEach
    void name() {
        file = folder.resolve("workshop.sqlite");
        kept = folder.resolve("backups");
    }

    private List<String> names() throws IOException {
        try (Stream<Path> in = Files.list(kept)) {
            return in.map(p -> p.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void aBackupIsTakenWhenOneIsDueAndNotBefore() throws IOException {
        Backups backups = new Backups(kept, new BackupPlan(Duration.ofHours(4), 3, 0), hand);
        try (JobStore store = SqliteJobStore.open(file)) {
            store.create(Sample.booking("Harbour Ice", "set"), "ada");
            assertTrue(backups.takeIfDue(store).isPresent());
            hand.now = hand.now.plus(Duration.ofHours(3));
            assertTrue(backups.takeIfDue(store).isEmpty());
            hand.now = hand.now.plus(Duration.ofHours(1));
            assertTrue(backups.takeIfDue(store).isPresent());
            // The clock is set back by a year: the series goes on.
            hand.now = hand.now.minus(Duration.ofDays(365));
            assertTrue(backups.takeIfDue(store).isPresent());
        }
        assertEquals(List.of("workshop-20250302-120000.sqlite", "workshop-20260302-080000.sqlite",
                "workshop-20260302-120000.sqlite"), names());
    }

    @Test
    void theNewestAreKeptByNumberAndTheYoungByAge() throws IOException {
        Backups backups = new Backups(kept, new BackupPlan(Duration.ofHours(1), 2, 3), hand);
        try (JobStore store = SqliteJobStore.open(file)) {
            for (int day = 0; day < 6; day++) {
                backups.take(store);
                hand.now = hand.now.plus(Duration.ofDays(1));
            }
            assertEquals(4, backups.of(file).size(), () -> backups.of(file).toString());
            hand.now = hand.now.plus(Duration.ofDays(60));
            backups.take(store);
        }
        assertEquals(List.of("workshop-20260307-080000.sqlite", "workshop-20260507-080000.sqlite"), names());
    }

    @Test
    void filesThatAreNoBackupsOfThisStoreAreLeftAlone() throws IOException {
        Files.createDirectories(kept);
        List<String> others = List.of("demo-20200101-000000.sqlite", "notes.txt", "workshop-before-the-move.sqlite");
        for (String n : others) {
            Files.writeString(kept.resolve(n), "x");
        }
        Backups backups = new Backups(kept, new BackupPlan(Duration.ofHours(1), 1, 0), hand);
        try (JobStore store = SqliteJobStore.open(file)) {
            backups.take(store);
            hand.now = hand.now.plus(Duration.ofDays(1));
            backups.take(store);
        }
        assertTrue(names().containsAll(others), names().toString());
        assertEquals(4, names().size());
    }

    @Test
    void aCopyThatDoesNotPassTheAuditIsThrownAwayAndEarlierOnesStay() throws Exception {
        Backups backups = new Backups(kept, new BackupPlan(Duration.ofHours(1), 1, 0), hand);
        try (JobStore store = SqliteJobStore.open(file)) {
            store.create(Sample.booking("Harbour Ice", "set"), "ada");
            backups.take(store);
        }
        List<String> before = names();
        tamper(file);
        hand.now = hand.now.plus(Duration.ofDays(1));
        try (JobStore store = SqliteJobStore.open(file)) {
            StoreException e = assertThrows(StoreException.class, () -> backups.take(store));
            assertEquals(Kind.CORRUPT, e.kind());
            assertTrue(e.getMessage().contains("Earlier backups were kept"), e.getMessage());
        }
        assertEquals(before, names());
    }

    /** Exchanges a letter of a saved text where it lies in the file. */
    private static void tamper(Path store) throws IOException {
        byte[] all = Files.readAllBytes(store);
        String text = new String(all, java.nio.charset.StandardCharsets.ISO_8859_1);
        int at = text.indexOf("\"machine\":\"set\"");
        assertTrue(at > 0);
        try (RandomAccessFile f = new RandomAccessFile(store.toFile(), "rw")) {
            f.seek(at + "\"machine\":\"".length());
            f.write('B');
        }
    }

    @Test
    void aRestoreBringsTheBackupBackAndKeepsThePresentStoreAside() {
        Backups.Backup backup;
        JobHandle one;
        try (JobStore store = SqliteJobStore.open(file)) {
            one = store.create(Sample.booking("Harbour Ice", "set"), "ada");
            backup = new Backups(kept, BackupPlan.STANDARD, hand).take(store);
            store.create(Sample.booking("Mill Lane Bakery", "oven fan"), "ada");
        }
        Path aside = new Restore(hand).replace(backup.file(), file).orElseThrow();
        try (JobStore store = SqliteJobStore.open(file); JobStore was = SqliteJobStore.open(aside)) {
            assertEquals(1, store.register(RegisterQuery.first(0)).total());
            assertEquals(one.number(), store.load(one.id()).number());
            assertTrue(store.audit().passed());
            assertEquals(2, was.register(RegisterQuery.first(0)).total());
            assertTrue(was.audit().passed());
        }
        Optional<Path> again = new Restore(hand).replace(backup.file(), file);
        assertFalse(again.orElseThrow().equals(aside));
    }

    @Test
    void aRestoreIsRefusedWhileAnybodyHasTheStoreOpen() {
        try (JobStore store = SqliteJobStore.open(file)) {
            JobHandle job = store.create(Sample.booking("Harbour Ice", "set"), "ada");
            Path backup = new Backups(kept, BackupPlan.STANDARD, hand).take(store).file();
            StoreException e = assertThrows(StoreException.class, () -> new Restore(hand).replace(backup, file));
            assertEquals(Kind.LOCKED, e.kind());
            assertTrue(e.getMessage().contains("Close"), e.getMessage());
            store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("A"), 0, "ada", "");
        }
    }

    @Test
    void aRestoreThatFailsHalfwayPutsThePresentStoreBack() throws IOException {
        Path backup;
        try (JobStore store = SqliteJobStore.open(file)) {
            store.create(Sample.booking("Harbour Ice", "set"), "ada");
            backup = new Backups(kept, BackupPlan.STANDARD, hand).take(store).file();
            store.create(Sample.booking("Northwick Dairy", "set"), "ada");
        }
        Clock takesTheCopyAway = new Hand() {
            @Override
            public Instant instant() {
                try (Stream<Path> in = Files.list(folder)) {
                    for (Path scratch : in.filter(p -> p.getFileName().toString().startsWith(".scratch-")).toList()) {
                        ProvenBackup.deleteFolder(scratch);
                    }
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
                return super.instant();
            }
        };
        StoreException e = assertThrows(StoreException.class, () -> new Restore(takesTheCopyAway).replace(backup, file));
        assertEquals(Kind.IO, e.kind());
        try (Stream<Path> in = Files.list(folder)) {
            assertTrue(in.noneMatch(p -> p.getFileName().toString().contains(Restore.ASIDE)), "set aside and left there");
        }
        try (JobStore store = SqliteJobStore.open(file)) {
            assertEquals(2, store.register(RegisterQuery.first(10)).total());
        }
    }

    @Test
    void aBackupThatIsNotSoundRestoresNothing() throws IOException {
        try (JobStore store = SqliteJobStore.open(file)) {
            store.create(Sample.booking("Harbour Ice", "set"), "ada");
        }
        byte[] before = Files.readAllBytes(file);
        Path bad = Files.copy(file, folder.resolve("bad.sqlite"));
        tamper(bad);
        Path none = Files.writeString(folder.resolve("shopping.txt"), "milk ".repeat(1000));
        for (Path p : List.of(bad, none, folder.resolve("not-there.sqlite"))) {
            assertThrows(StoreException.class, () -> new Restore(hand).replace(p, file));
            assertArrayEquals(before, Files.readAllBytes(file));
        }
        assertEquals("milk ".repeat(1000), Files.readString(none));
    }

    @Test
    void aDamagedStoreCanBeReplacedByItsBackup() throws IOException {
        Path backup;
        try (JobStore store = SqliteJobStore.open(file)) {
            store.create(Sample.booking("Harbour Ice", "set"), "ada");
            backup = new Backups(kept, BackupPlan.STANDARD, hand).take(store).file();
        }
        byte[] damaged = "no store any more, and for long".repeat(300).getBytes(java.nio.charset.StandardCharsets.UTF_8);
        Files.write(file, damaged);
        Path aside = new Restore(hand).replace(backup, file).orElseThrow();
        assertArrayEquals(damaged, Files.readAllBytes(aside));
        try (JobStore store = SqliteJobStore.open(file)) {
            assertTrue(store.audit().passed());
        }
    }

    @Test
    void aRequestIsCarriedOutOnceBeforeTheStoreIsOpened() {
        Path backup;
        RestoreRequest request = new RestoreRequest(file);
        try (JobStore store = SqliteJobStore.open(file)) {
            backup = new Backups(kept, BackupPlan.STANDARD, hand).take(store).file();
            store.create(Sample.booking("Harbour Ice", "set"), "ada");
            request.leave(backup);
            request.withdraw();
            assertTrue(request.carryOut(hand).isEmpty());
            request.leave(backup);
        }
        assertTrue(request.carryOut(hand).isPresent());
        assertTrue(request.carryOut(hand).isEmpty());
        try (JobStore store = SqliteJobStore.open(file)) {
            assertEquals(0, store.register(RegisterQuery.first(0)).total());
        }
        request.leave(folder.resolve("not-there.sqlite"));
        assertThrows(StoreException.class, () -> request.carryOut(hand));
        assertTrue(request.carryOut(hand).isEmpty());
    }
}
