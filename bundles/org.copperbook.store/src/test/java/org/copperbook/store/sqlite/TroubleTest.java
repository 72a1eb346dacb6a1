package org.copperbook.store.sqlite;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.jobs.stock.StockUnit;
import org.copperbook.store.AuditReport;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.Sample;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreOptions;
import org.copperbook.store.jdbc.Migrations;
import org.copperbook.store.stock.StockMove;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

class TroubleTest {

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void name() {
        file = folder.resolve("workshop.sqlite");
    }

    private StoreException refused(Path path) {
        return assertThrows(StoreException.class, () -> SqliteJobStore.open(path).close());
    }

    private JobHandle oneJob() {
        try (JobStore store = SqliteJobStore.open(file)) {
            return store.create(Sample.booking("Harbour Ice", "set"), "ada");
        }
    }

    @Test
    void aFolderThatMayNotBeWrittenIsNamed() {
        // Not even root may make a folder there, while a chmod would not stop root.
        Path nobodys = Path.of(Files.isDirectory(Path.of("/proc")) ? "/proc/copperbook" : "/copperbook-of-nobody");
        StoreException e = refused(nobodys.resolve("workshop.sqlite"));
        assertEquals(Kind.READ_ONLY, e.kind());
        assertTrue(e.getMessage().contains(nobodys.toString()), e.getMessage());
    }

    @Test
    void aFolderThatIsAFileIsNamed() throws IOException {
        Path notAFolder = Files.writeString(folder.resolve("notes"), "x");
        StoreException e = refused(notAFolder.resolve("workshop.sqlite"));
        assertEquals(Kind.READ_ONLY, e.kind());
        assertTrue(e.getMessage().contains(notAFolder.toString()), e.getMessage());
    }

    @Test
    void aFileThatMayNotBeWrittenSaysWhatWasKept() throws SQLException {
        JobHandle job = oneJob();
        try (JobStore store = SqliteJobStore.open(file); Connection c = new RawFile(file).open()) {
            SqliteFile.run(c, "PRAGMA query_only = ON");
            SQLException e = assertThrows(SQLException.class,
                    () -> SqliteFile.run(c, "DELETE FROM setting"));
            StoreException told = new SqliteErrors(file).translate(e);
            assertEquals(Kind.READ_ONLY, told.kind());
            assertTrue(told.getMessage().contains("everything saved before is kept"), told.getMessage());
            assertEquals(1, store.history(job.id(), Sample.BOOKING).size());
        }
    }

    @ParameterizedTest
    @CsvSource({"SQLITE_BUSY, LOCKED", "SQLITE_BUSY_SNAPSHOT, LOCKED", "SQLITE_LOCKED, LOCKED",
        "SQLITE_READONLY, READ_ONLY", "SQLITE_READONLY_DIRECTORY, READ_ONLY", "SQLITE_CANTOPEN, READ_ONLY",
        "SQLITE_PERM, READ_ONLY", "SQLITE_FULL, DISK_FULL", "SQLITE_CORRUPT, CORRUPT", "SQLITE_NOTADB, NOT_A_STORE",
        "SQLITE_IOERR, IO", "SQLITE_IOERR_FSYNC, IO"})
    void everyRefusalOfTheEngineHasItsKindAndAMessage(SQLiteErrorCode code, Kind kind) {
        StoreException told = new SqliteErrors(file).translate(new SQLiteException("engine says", code));
        assertEquals(kind, told.kind());
        assertTrue(told.getMessage().contains(file.toString()), told.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"This is a shopping list, and a rather long one so that it is more than a header long. ",
        "SQLite format 3\0 but then nothing of the kind"})
    void aFileOfSomethingElseIsRefusedAndLeftAlone(String text) throws IOException {
        Files.writeString(file, text.repeat(30));
        byte[] before = Files.readAllBytes(file);
        StoreException e = refused(file);
        assertTrue(e.kind() == Kind.NOT_A_STORE || e.kind() == Kind.CORRUPT, e.kind() + " " + e.getMessage());
        assertTrue(e.getMessage().contains(file.toString()), e.getMessage());
        assertArrayEquals(before, Files.readAllBytes(file));
        try (Stream<Path> beside = Files.list(folder)) {
            assertEquals(List.of(file), beside.toList());
        }
    }

    @Test
    void aDatabaseOfAnotherApplicationIsRefusedAndLeftAlone() throws Exception {
        new RawFile(file).run("CREATE TABLE recipe (name TEXT)");
        byte[] before = Files.readAllBytes(file);
        assertEquals(Kind.NOT_A_STORE, refused(file).kind());
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void aNewerLayoutIsOpenedForReadingOnlyAndLeftAlone() throws Exception {
        JobHandle job = oneJob();
        new RawFile(file).run("INSERT INTO schema_step VALUES (99, '0099-of-tomorrow', 'ff', '2030-01-01')");
        byte[] before = Files.readAllBytes(file);
        try (JobStore store = SqliteJobStore.open(file)) {
            assertTrue(store.onlyReading().orElseThrow().contains("99"), store.onlyReading().orElseThrow());
            assertEquals("Harbour Ice", store.load(job.id()).booking().orElseThrow().customer());
            StoreException e = assertThrows(StoreException.class,
                    () -> store.create(Sample.booking("Harbour Ice", "set"), "ada"));
            assertEquals(Kind.NEWER_SCHEMA, e.kind());
            assertTrue(e.getMessage().contains("Update Copperbook"), e.getMessage());
        }
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void aNewerLayoutThatCannotEvenBeReadIsRefused() throws Exception {
        oneJob();
        new RawFile(file).run("INSERT INTO schema_step VALUES (99, '0099-of-tomorrow', 'ff', '2030-01-01')",
                "ALTER TABLE chain_head RENAME TO chain_heads");
        assertEquals(Kind.NEWER_SCHEMA, refused(file).kind());
    }

    @Test
    void aLayoutMadeByOtherStepsIsRefused() throws Exception {
        oneJob();
        new RawFile(file).run("UPDATE schema_step SET checksum = 'ff'");
        assertEquals(Kind.FOREIGN_SCHEMA, refused(file).kind());
    }

    @Test
    void aStepThatFailsLeavesTheStoreAsItWas() {
        JobHandle job = oneJob();
        List<String> steps = new ArrayList<>(Migrations.ALL);
        steps.add("9001-fails-half-way");
        SqliteFile raw = new SqliteFile(file, Duration.ofSeconds(1), 0);
        assertThrows(StoreException.class, () -> SqliteDatabase.open(raw, new Migrations("sqlite", steps)).close());
        try (JobStore store = SqliteJobStore.open(file)) {
            assertEquals(job.number(), store.load(job.id()).number());
            assertThrows(SQLException.class, () -> new RawFile(file).run("DELETE FROM half_made"));
        }
    }

    @Test
    void aFileLockedByAnotherProgramSaysSoAndIsUsableAfterwards() throws Exception {
        JobHandle job = oneJob();
        try (JobStore store = SqliteJobStore.open(file,
                StoreOptions.standard().withPatience(Duration.ofMillis(200)))) {
            try (Connection other = new RawFile(file).open()) {
                SqliteFile.run(other, "BEGIN IMMEDIATE");
                StoreException e = assertThrows(StoreException.class, () -> store.save(job.id(), Sample.NAMEPLATE,
                        Sample.nameplate("A"), 0, "ada", ""));
                assertEquals(Kind.LOCKED, e.kind());
                assertEquals("Harbour Ice", store.load(job.id()).booking().orElseThrow().customer());
                SqliteFile.run(other, "ROLLBACK");
            }
            assertEquals(1, store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("A"), 0, "ada", "").number());
        }
    }

    @Test
    void aFullDiskKeepsWhatWasSavedAndTheStoreWorksAgainWhenThereIsRoom() {
        JobHandle job = oneJob();
        int saved = 0;
        StoreException full = null;
        try (JobStore store = SqliteJobStore.open(new SqliteFile(file, Duration.ofSeconds(1), 160),
                StoreOptions.standard())) {
            while (full == null) {
                try {
                    store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("x".repeat(30_000)), saved, "ada", "");
                    saved++;
                } catch (StoreException e) {
                    full = e;
                }
            }
            assertEquals(Kind.DISK_FULL, full.kind());
            assertTrue(full.getMessage().contains("Make room"), full.getMessage());
            assertTrue(saved > 0);
            assertEquals(saved, store.history(job.id(), Sample.NAMEPLATE).size());
        }
        try (JobStore store = SqliteJobStore.open(file)) {
            assertEquals(saved, store.history(job.id(), Sample.NAMEPLATE).size());
            assertTrue(store.audit().passed());
            store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("y".repeat(30_000)), saved, "ada", "");
        }
    }

    @Test
    void aRowThatHoldsNoTimeOrDayAnyMoreIsDamageAndSaidPlainlyOnUse() throws SQLException {
        try (JobStore store = SqliteJobStore.open(file)) {
            JobHandle job = store.create(Sample.booking("Harbour Ice", "set"), "ada");
            for (String column : List.of("changed_at", "promised")) {
                new RawFile(file).run("UPDATE register SET " + column + " = '2026-11-26T23z12:42.875Z'");
                StoreException e = assertThrows(StoreException.class, () -> store.register(RegisterQuery.first(10)));
                assertEquals(Kind.CORRUPT, e.kind());
                assertTrue(e.getMessage().contains(file.getFileName().toString()), e.getMessage());
                new RawFile(file).run("UPDATE register SET changed_at = '2026-11-26T23:12:42.875Z', promised = NULL");
                assertEquals(job.number(), store.register(RegisterQuery.first(10)).rows().get(0).number());
            }
        }
    }

    @Test
    void anAmountBeyondAnyShelfKeepsNobodyOutOfTheStore() throws SQLException {
        try (JobStore store = SqliteJobStore.open(file)) {
            for (String code : List.of("6205", "6206")) {
                store.stock().describe(StockItem.of(code, StockItem.Kind.BEARING, "Bearing", StockUnit.PC), null, "ada", "");
                store.stock().move(List.of(new StockMove(code, StockMovement.of(StockMovement.Kind.RECEIVE,
                        BigDecimal.valueOf(77), null, null))), "ada");
            }
        }
        RawFile raw = new RawFile(file);
        raw.withoutGuards();
        raw.run("UPDATE revision SET json = replace(json, '\"quantity\":77', '\"quantity\":1e40')"
                + " WHERE part LIKE '%6205%'", "UPDATE setting SET value = '0' WHERE name = 'stock-edition'");
        try (JobStore store = SqliteJobStore.open(file)) {
            assertTrue(store.stock().items().stream().anyMatch(s -> ((StockItem) s.part()).code().equals("6206")));
            assertFalse(store.audit().passed(), "that it was altered is found");
        }
    }

    @Test
    void aDamagedPageIsFoundByTheAuditAndSaidPlainlyOnUse() throws IOException {
        try (JobStore store = SqliteJobStore.open(file)) {
            for (int i = 0; i < 200; i++) {
                store.create(Sample.booking("Harbour Ice", "set " + i), "ada");
            }
        }
        // The second half of the file: the header and the layout stay readable.
        try (RandomAccessFile f = new RandomAccessFile(file.toFile(), "rw")) {
            long from = f.length() / 2 / 4096 * 4096;
            f.seek(from);
            f.write(new byte[(int) (f.length() - from)]);
        }
        try (JobStore store = SqliteJobStore.open(file)) {
            AuditReport report = store.audit();
            assertFalse(report.passed());
        } catch (StoreException e) {
            assertEquals(Kind.CORRUPT, e.kind());
            assertTrue(e.getMessage().contains("backup"), e.getMessage());
        }
    }
}
