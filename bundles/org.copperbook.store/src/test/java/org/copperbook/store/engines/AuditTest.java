package org.copperbook.store.engines;

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
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A store of six links: job 1 has booking, nameplate and three revisions of its nameplate; job 2 its booking. */
@ParameterizedClass
@EnumSource(Engine.class)
class AuditTest {

    @Parameter
    Engine engine;

    @TempDir
    Path folder;

    private Place place;
    private JobHandle one;

    @BeforeEach
    void sixLinks() throws SQLException {
        place = engine.place(folder);
        try (JobStore store = place.open()) {
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
    }

    private AuditReport after(String... statements) throws SQLException {
        place.tamper(statements);
        try (JobStore store = place.open()) {
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
        try (JobStore store = place.open()) {
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
        try (JobStore store = place.open()) {
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
        place.withoutGuards();
        place.run("CREATE TABLE aside AS SELECT * FROM revision");
        try (JobStore store = place.open()) {
            for (int i = 0; i < 60; i++) {
                String column = columns.get(random.nextInt(columns.size()));
                int sequence = 1 + random.nextInt(6);
                place.run("UPDATE revision SET " + column + " = substr(" + column + ", 1, " + random.nextInt(3)
                        + ") || 'q' || substr(" + column + ", 3) WHERE sequence = " + sequence);
                BadLink bad = bad(store.audit());
                assertEquals(Kind.TAMPERED, bad.kind());
                assertEquals(sequence, bad.sequence(), column);
                place.run("DELETE FROM revision", "INSERT INTO revision SELECT * FROM aside");
            }
        }
    }

    @Test
    void missingGuardsAreReported() throws SQLException {
        List<String> guards = place.withoutGuards();
        try (JobStore store = place.open()) {
            AuditReport report = store.audit();
            assertFalse(report.passed());
            assertEquals(guards.size(), report.problems().size());
            assertTrue(report.problems().toString().contains("revision_stays"));
        }
    }

    @Test
    void aChangedPhotoIsReported() throws SQLException {
        try (JobStore store = place.open()) {
            store.keepPhoto("abc".getBytes(StandardCharsets.UTF_8));
            assertTrue(store.audit().passed());
        }
        AuditReport report = after("UPDATE photo SET hash = 'ff'");
        assertFalse(report.passed());
        assertEquals(1, report.problems().size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"UPDATE revision SET json = '{}' WHERE sequence = 3", "DELETE FROM revision",
        "UPDATE revision SET sequence = 99 WHERE sequence = 3", "UPDATE job SET number = 'x'", "DELETE FROM job",
        "INSERT INTO job SELECT id, 'x', created_at FROM job WHERE TRUE ON CONFLICT (id) DO UPDATE SET number = 'x'"})
    void theGuardsRefuseToChangeWhatWasSaved(String statement) {
        refused(statement);
    }

    @ParameterizedTest
    @ValueSource(strings = {"INSERT OR REPLACE INTO revision SELECT sequence, job_id, part, revision, saved_at, 'eve', why, json,"
            + " previous_hash, hash FROM revision WHERE sequence = 3",
        "INSERT OR REPLACE INTO job SELECT id, 'x', created_at FROM job",
        "REPLACE INTO revision SELECT 50, job_id, part, revision, saved_at, 'eve', why, json, previous_hash, 'aa'"
            + " FROM revision WHERE sequence = 3"})
    void theGuardsRefuseToReplaceWhatWasSaved(String statement) {
        if (engine == Engine.SQLITE) {
            refused(statement);
        } else {
            assertThrows(SQLException.class, () -> place.run(statement), "the server has no such statement");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"TRUNCATE revision", "TRUNCATE job CASCADE"})
    void theGuardsRefuseToEmptyTheTables(String statement) {
        if (engine == Engine.POSTGRES) {
            refused(statement);
        } else {
            assertThrows(SQLException.class, () -> place.run(statement), "the engine has no such statement");
        }
    }

    private void refused(String statement) {
        SQLException e = assertThrows(SQLException.class, () -> place.run(statement));
        assertTrue(e.getMessage().contains("never") || e.getMessage().contains("keeps"), e.getMessage());
        try (JobStore store = place.open()) {
            assertTrue(store.audit().passed());
        }
    }

    @Test
    void aClockSetBackIsNotedAndLosesNothing() {
        StoreOptions earlier = StoreOptions.standard()
                .withClock(Clock.fixed(Instant.parse("2001-01-01T00:00:00Z"), ZoneOffset.UTC));
        try (JobStore store = place.open(earlier)) {
            store.save(one.id(), Sample.NAMEPLATE, Sample.nameplate("late"), 4, "ben", "");
            assertEquals("late", store.load(one.id()).nameplate().orElseThrow().serial());
            AuditReport report = store.audit();
            assertTrue(report.passed());
            assertEquals(1, report.notes().size());
            assertTrue(report.notes().get(0).contains("2001-01-01"), report.notes().get(0));
        }
    }
}
