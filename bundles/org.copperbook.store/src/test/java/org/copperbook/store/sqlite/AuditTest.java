package org.copperbook.store.sqlite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import org.copperbook.store.AuditReport;
import org.copperbook.store.BadLink;
import org.copperbook.store.BadLink.Kind;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.Revision;
import org.copperbook.store.Sample;
import org.copperbook.store.StoreOptions;
import org.copperbook.store.jdbc.Chain;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A store of six links: job 1 has booking, nameplate and three revisions of its nameplate; job 2 its booking. */
class AuditTest {

    @TempDir
    Path folder;

    private Path file;
    private RawFile raw;
    private JobHandle one;
    private List<String> guards;

    @BeforeEach
    void sixLinks() throws SQLException {
        file = folder.resolve("workshop.sqlite");
        try (JobStore store = SqliteJobStore.open(file)) {
            one = store.create(Sample.booking("Harbour Ice", "set"), "ada");
            for (int i = 0; i < 4; i++) {
                store.save(one.id(), Sample.NAMEPLATE, Sample.nameplate("A" + i), i, "ben", "reading " + i);
            }
            store.create(Sample.booking("Mill Lane Bakery", "oven fan"), "ada");
            AuditReport whole = store.audit();
            assertTrue(whole.passed(), () -> whole.toString());
            assertEquals(6, whole.revisions());
            assertEquals(2, whole.jobs());
        }
        raw = new RawFile(file);
    }

    /** Changes the file as somebody would who covers their traces: the guards are put back afterwards. */
    private AuditReport after(String... statements) throws SQLException {
        guards = raw.withoutGuards();
        raw.run(statements);
        raw.run(guards.toArray(String[]::new));
        try (JobStore store = SqliteJobStore.open(file)) {
            return store.audit();
        }
    }

    private static BadLink bad(AuditReport report) {
        assertFalse(report.passed());
        return report.bad().orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"json = '{\"schema\":1,\"serial\":\"A9\"}'", "who = 'eve'", "why = ''",
        "saved_at = '2026-01-01T00:00:00Z'", "revision = 9", "part = 'inspection'", "job_id = 'shop'",
        "job_id = 'nobody'", "previous_hash = 'ff'", "hash = 'ff'", "json = json || ' '"})
    void anAlteredRevisionIsTampered(String change) throws SQLException {
        BadLink bad = bad(after("UPDATE revision SET " + change + " WHERE sequence = 3"));
        assertEquals(Kind.TAMPERED, bad.kind());
        assertEquals(3, bad.sequence());
        assertTrue(bad.message().contains("3"), bad.message());
    }

    @Test
    void aBadLinkNamesJobPartAndRevision() throws SQLException {
        BadLink bad = bad(after("UPDATE revision SET json = '{}' WHERE sequence = 3"));
        assertEquals(one.number(), bad.job());
        assertEquals("nameplate", bad.part());
        assertEquals(2, bad.revision());
        assertTrue(bad.message().contains(one.number()), bad.message());
    }

    @Test
    void aTextPutInPlaceWithItsHashMadeAnewIsTampered() throws SQLException {
        Revision r;
        try (JobStore store = SqliteJobStore.open(file)) {
            r = store.history(one.id(), Sample.NAMEPLATE).get(1).revision();
        }
        String json = "{\"schema\":1,\"serial\":\"A9\"}";
        String hash = Chain.hash(r.previousHash(), r.jobId(), one.number(), r.part(), r.revision(),
                r.savedAt().toString(), r.who(), r.why(), json);
        BadLink bad = bad(after("UPDATE revision SET json = '" + json + "', hash = '" + hash + "' WHERE sequence = 3"));
        assertEquals(Kind.TAMPERED, bad.kind());
        assertEquals(3, bad.sequence());
    }

    @Test
    void aChangedJobNumberIsTampered() throws SQLException {
        BadLink bad = bad(after("UPDATE job SET number = '2026-0099' WHERE id = '" + one.id() + "'"));
        assertEquals(Kind.TAMPERED, bad.kind());
        assertEquals(1, bad.sequence());
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "3, 3", "6, 6"})
    void aRemovedRevisionIsMissing(int from, int first) throws SQLException {
        BadLink bad = bad(after("DELETE FROM revision WHERE sequence = " + from));
        assertEquals(Kind.MISSING, bad.kind());
        assertEquals(first, bad.sequence());
    }

    @Test
    void aRemovedRevisionIsMissingThoughTheRestIsNumberedAnew() throws SQLException {
        BadLink bad = bad(after("DELETE FROM revision WHERE sequence = 3",
                "UPDATE revision SET sequence = sequence - 1 WHERE sequence = 4",
                "UPDATE revision SET sequence = sequence - 1 WHERE sequence = 5",
                "UPDATE revision SET sequence = sequence - 1 WHERE sequence = 6"));
        assertEquals(Kind.MISSING, bad.kind());
        assertEquals(3, bad.sequence());
    }

    @Test
    void aWholeJobThatVanishedIsMissing() throws SQLException {
        BadLink bad = bad(after("DELETE FROM register WHERE job_id <> '" + one.id() + "'",
                "DELETE FROM revision WHERE job_id <> '" + one.id() + "'",
                "DELETE FROM job WHERE number IS NOT NULL AND id <> '" + one.id() + "'"));
        assertEquals(Kind.MISSING, bad.kind());
        assertEquals(6, bad.sequence());
    }

    @Test
    void severalRemovedRevisionsAreNamedTogether() throws SQLException {
        BadLink bad = bad(after("DELETE FROM revision WHERE sequence BETWEEN 3 AND 5"));
        assertEquals(Kind.MISSING, bad.kind());
        assertTrue(bad.message().contains("3 to 5"), bad.message());
    }

    @ParameterizedTest
    @CsvSource({"3, 4, 3", "2, 5, 2", "1, 6, 1"})
    void exchangedRevisionsAreReordered(int a, int b, int first) throws SQLException {
        BadLink bad = bad(after("UPDATE revision SET sequence = -1 WHERE sequence = " + a,
                "UPDATE revision SET sequence = " + a + " WHERE sequence = " + b,
                "UPDATE revision SET sequence = " + b + " WHERE sequence = -1"));
        assertEquals(Kind.REORDERED, bad.kind());
        assertEquals(first, bad.sequence());
    }

    @Test
    void aRevisionSlippedInAtTheEndIsTampered() throws SQLException {
        Revision last;
        try (JobStore store = SqliteJobStore.open(file)) {
            last = store.current(store.idOf(one.number().substring(0, 5) + "0002").orElseThrow(), Sample.BOOKING)
                    .orElseThrow().revision();
        }
        String hash = Chain.hash(last.hash(), one.id(), one.number(), "nameplate", 5, "2026-01-01T00:00:00Z", "eve",
                "", "{}");
        BadLink bad = bad(after("INSERT INTO revision VALUES (7, '" + one.id() + "', 'nameplate', 5,"
                + " '2026-01-01T00:00:00Z', 'eve', '', '{}', '" + last.hash() + "', '" + hash + "')"));
        assertEquals(Kind.TAMPERED, bad.kind());
    }

    @Test
    void aForgedEndOfTheChainIsTampered() throws SQLException {
        assertEquals(Kind.TAMPERED, bad(after("UPDATE chain_head SET hash = 'ff'")).kind());
    }

    @Test
    void noSingleChangeToAnyRevisionPasses() throws SQLException {
        Random random = new Random(7);
        List<String> columns = List.of("job_id", "part", "saved_at", "who", "why", "json", "previous_hash", "hash");
        raw.withoutGuards();
        for (int i = 0; i < 60; i++) {
            String column = columns.get(random.nextInt(columns.size()));
            int sequence = 1 + random.nextInt(6);
            String kept = "CREATE TEMP TABLE kept AS SELECT * FROM revision";
            raw.run(kept, "UPDATE revision SET " + column + " = substr(" + column + ", 1, "
                    + random.nextInt(3) + ") || 'q' || substr(" + column + ", 3) WHERE sequence = " + sequence,
                    "CREATE TABLE IF NOT EXISTS aside AS SELECT * FROM temp.kept");
            try (JobStore store = SqliteJobStore.open(file)) {
                BadLink bad = bad(store.audit());
                assertEquals(Kind.TAMPERED, bad.kind());
                assertEquals(sequence, bad.sequence(), column);
            }
            raw.run("DELETE FROM revision", "INSERT INTO revision SELECT * FROM aside", "DROP TABLE aside");
        }
    }

    @Test
    void missingGuardsAreReported() throws SQLException {
        guards = raw.withoutGuards();
        try (JobStore store = SqliteJobStore.open(file)) {
            AuditReport report = store.audit();
            assertFalse(report.passed());
            assertEquals(guards.size(), report.problems().size());
            assertTrue(report.problems().toString().contains("revision_stays"));
        }
    }

    @Test
    void aChangedPhotoIsReported() throws SQLException {
        try (JobStore store = SqliteJobStore.open(file)) {
            store.keepPhoto("abc".getBytes(StandardCharsets.UTF_8));
            assertTrue(store.audit().passed());
        }
        AuditReport report = after("UPDATE photo SET bytes = X'00'");
        assertFalse(report.passed());
        assertEquals(1, report.problems().size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"UPDATE revision SET json = '{}' WHERE sequence = 3", "DELETE FROM revision",
        "UPDATE revision SET sequence = 99 WHERE sequence = 3", "UPDATE job SET number = 'x'", "DELETE FROM job",
        "INSERT OR REPLACE INTO revision SELECT sequence, job_id, part, revision, saved_at, 'eve', why, json,"
            + " previous_hash, hash FROM revision WHERE sequence = 3",
        "INSERT OR REPLACE INTO job SELECT id, 'x', created_at FROM job",
        "REPLACE INTO revision SELECT 50, job_id, part, revision, saved_at, 'eve', why, json, previous_hash, 'aa'"
            + " FROM revision WHERE sequence = 3"})
    void theGuardsRefuseToChangeWhatWasSaved(String statement) {
        SQLException e = assertThrows(SQLException.class, () -> raw.run(statement));
        assertTrue(e.getMessage().contains("never") || e.getMessage().contains("keeps"), e.getMessage());
        try (JobStore store = SqliteJobStore.open(file)) {
            assertTrue(store.audit().passed());
        }
    }

    @Test
    void aClockSetBackIsNotedAndLosesNothing() {
        StoreOptions earlier = StoreOptions.standard()
                .withClock(Clock.fixed(Instant.parse("2001-01-01T00:00:00Z"), ZoneOffset.UTC));
        try (JobStore store = SqliteJobStore.open(file, earlier)) {
            store.save(one.id(), Sample.NAMEPLATE, Sample.nameplate("late"), 4, "ben", "");
            assertEquals("late", store.load(one.id()).nameplate().orElseThrow().serial());
            AuditReport report = store.audit();
            assertTrue(report.passed());
            assertEquals(1, report.notes().size());
            assertTrue(report.notes().get(0).contains("2001-01-01"), report.notes().get(0));
        }
    }
}
