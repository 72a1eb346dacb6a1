package org.copperbook.store.copy;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.Sample;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.engines.Engine;
import org.copperbook.store.engines.Place;
import org.copperbook.store.sqlite.SqliteJobStore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a file to a server and back to a file. */
class StoreCopyTest {

    @TempDir
    Path folder;

    private static void fill(JobStore store) {
        store.savePerson(new Person("ada", "Ada Brook", Set.of(Role.WINDER), null, null, true), "o");
        for (int i = 0; i < 12; i++) {
            JobHandle job = store.create(Sample.booking("Harbour Ice " + i, "set \u03a9 \ud83d\udd27"), "ada");
            for (int n = 0; n <= i; n++) {
                store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("A" + n + "x".repeat(n * 900)), n, "ben", "r");
            }
        }
        store.keepPhoto(new byte[] {1, 2, 3});
    }

    /** Every column of every revision, read behind the stores' backs. */
    private static List<String> revisions(Place place) throws SQLException {
        List<String> found = new ArrayList<>();
        try (Connection c = place.connect(); Statement s = c.createStatement(); ResultSet r = s.executeQuery(
                "SELECT sequence, job_id, part, revision, saved_at, who, why, json, previous_hash, hash FROM revision"
                        + " ORDER BY sequence")) {
            while (r.next()) {
                StringBuilder row = new StringBuilder();
                for (int i = 1; i <= 10; i++) {
                    row.append(r.getString(i)).append('|');
                }
                found.add(row.toString());
            }
        }
        return found;
    }

    @Test
    void everyRevisionAndHashSurvivesTheWayToAServerAndBack() throws Exception {
        Place file = Engine.SQLITE.place(folder.resolve("first"));
        Place server = Engine.POSTGRES.place(folder);
        Place back = Engine.SQLITE.place(folder.resolve("back"));
        StoreCopy.Copied there;
        StoreCopy.Copied again;
        try (JobStore a = file.open(); JobStore b = server.open(); JobStore c = back.open()) {
            fill(a);
            there = StoreCopy.copy(a, b, folder);
            again = StoreCopy.copy(b, c, folder);
            assertEquals(a.register(RegisterQuery.first(99)), c.register(RegisterQuery.first(99)));
            assertEquals(a.persons(), c.persons());
            assertEquals(a.chainEnd(), c.chainEnd());
            assertArrayEquals(new byte[] {1, 2, 3},
                    c.photo("039058c6f2c0cb492c533b0a4d14ef77cc0f78abccced5287d84a1a2011cfb81").orElseThrow());
            // Numbering goes on where it was, on either engine.
            assertEquals(a.create(Sample.booking("a", "b"), "ada").number(),
                    b.create(Sample.booking("a", "b"), "ada").number());
        }
        assertEquals(91, there.revisions());
        assertEquals(12, there.jobs());
        assertEquals(1, there.people());
        assertEquals(there, again);
        assertEquals(revisions(file).subList(0, 91), revisions(back));
        assertEquals(revisions(server).subList(0, 91), revisions(back));
        try (var left = Files.list(folder)) {
            assertEquals(List.of(), left.filter(p -> p.toString().endsWith(".zip")).toList());
        }
    }

    @Test
    void aStoreThatHoldsRecordsIsNotCopiedOver() {
        try (JobStore a = Engine.SQLITE.place(folder.resolve("a")).open(); JobStore b = Engine.POSTGRES.place(folder)
                .open()) {
            fill(a);
            b.create(Sample.booking("Mill Lane Bakery", "oven fan"), "ben");
            assertEquals(Kind.ALREADY_THERE,
                    assertThrows(StoreException.class, () -> StoreCopy.copy(a, b, folder)).kind());
            assertEquals(1, b.audit().revisions());
        }
    }

    @Test
    void aTamperedStoreIsNotCopied() throws SQLException {
        Place place = Engine.POSTGRES.place(folder);
        try (JobStore a = place.open(); JobStore b = Engine.SQLITE.place(folder.resolve("b")).open()) {
            fill(a);
            place.tamper("UPDATE revision SET who = 'eve' WHERE sequence = 7");
            assertEquals(Kind.CORRUPT, assertThrows(StoreException.class, () -> StoreCopy.copy(a, b, folder)).kind());
            assertEquals(0, b.audit().revisions());
        }
    }

    @Test
    void aBackupOfAServersStoreIsAFileThatOpensWithoutIt() throws Exception {
        Path target = folder.resolve("backups").resolve("monday.sqlite");
        try (JobStore a = Engine.POSTGRES.place(folder).open()) {
            fill(a);
            a.backup(target);
            assertEquals(Kind.ALREADY_THERE, assertThrows(StoreException.class, () -> a.backup(target)).kind());
            try (JobStore copy = SqliteJobStore.open(target)) {
                assertEquals(a.chainEnd(), copy.chainEnd());
                assertTrue(copy.audit().passed());
            }
        }
        try (var left = Files.list(target.getParent())) {
            assertEquals(List.of(target), left.filter(p -> !p.toString().matches(".*-(wal|shm)")).toList());
        }
    }
}
