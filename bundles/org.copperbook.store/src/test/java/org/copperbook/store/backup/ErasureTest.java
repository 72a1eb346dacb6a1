package org.copperbook.store.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.seal.Seal;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.shop.Workshop;
import org.copperbook.store.Erased;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.PrivateName;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.Revision;
import org.copperbook.store.Sample;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreOptions;
import org.copperbook.store.jdbc.Chain;
import org.copperbook.store.sqlite.SqliteJobStore;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ErasureTest {

    private static final String CUSTOMER = "Wilhelmina Quarrendon";
    private static final String CONTACT = "Bartholomew Pennyfeather";
    private static final PartKey QUOTE = PartKey.parse("quote/1");

    @TempDir
    Path folder;

    private Path file;
    private JobHandle job;

    @BeforeEach
    void aJobOfAPrivatePerson() {
        file = folder.resolve("workshop.sqlite");
        try (JobStore store = SqliteJobStore.open(file)) {
            store.savePerson(new Person("k1", CONTACT, Set.of(), "555 0199", "b@example.org", true), "o");
            Booking booking = Sample.part("booking", "{\"schema\":1,\"customer\":\"" + CUSTOMER
                    + "\",\"contactKey\":\"k1\",\"machine\":\"pump set\"}", Booking.class);
            job = store.create(booking, "p1");
            store.save(job.id(), QUOTE, Sample.part("quote/1",
                    "{\"schema\":1,\"revision\":1,\"approval\":{\"agreed\":true,\"by\":\"" + CUSTOMER + "\"}}", Quote.class), 0, "p1", "");
            store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("S1"), 0, "p1", "");
        }
    }

    @Test
    void namesStandNowhereInTheFileAsPlainTextButInTheDerivedRegister() throws IOException {
        try (JobStore store = SqliteJobStore.open(file)) {
            for (Saved s : store.history(job.id(), Sample.BOOKING)) {
                assertFalse(s.revision().json().contains("Quarrendon"), s.revision().json());
                assertEquals(CUSTOMER, ((Booking) s.part()).customer());
            }
            Saved quote = store.current(job.id(), QUOTE).orElseThrow();
            assertFalse(quote.revision().json().contains("Quarrendon"));
            assertEquals(CUSTOMER, ((Quote) quote.part()).approval().by());
            assertEquals(1, store.register(new RegisterQuery("quarrendon", 0, 9, null)).total());
        }
        // A contact is shown in no derived table.
        assertFalse(bytes(file).contains("Pennyfeather"));
        assertFalse(bytes(file).contains("555 0199"));
    }

    @Test
    void theSameNameHasOneKeyInEveryJobAndAnotherNameAnother() {
        try (JobStore store = SqliteJobStore.open(file)) {
            JobHandle second = store.create(Sample.booking(CUSTOMER, "fan"), "p1");
            store.create(Sample.booking("Somebody Else", "fan"), "p1");
            PrivateName name = named(store, CUSTOMER);
            assertEquals(List.of(job.number(), second.number()), name.jobs());
            assertEquals(3, store.privateNames().size());
        }
    }

    @Test
    void erasingLeavesChainSealAndTheRestAndNoTraceInTheFile() throws IOException {
        String key;
        try (JobStore store = SqliteJobStore.open(file)) {
            key = named(store, CUSTOMER).key();
            Job before = store.load(job.id());
            List<Revision> chain = store.history(job.id(), Sample.BOOKING).stream().map(Saved::revision).toList();
            Erased erased = store.erase(key);
            store.erase("k1");
            assertEquals(new Erased(key, List.of(job.number()), 0), erased);
            assertTrue(store.audit().passed(), () -> store.audit().toString());
            assertEquals(chain, store.history(job.id(), Sample.BOOKING).stream().map(Saved::revision).toList());
            Job after = store.load(job.id());
            assertEquals(Seal.of(before), Seal.of(after));
            assertTrue(after.booking().orElseThrow().customer().contains(key));
            assertEquals("pump set", after.booking().orElseThrow().machine());
            assertEquals(Map.of(), store.persons());
            assertEquals(0, store.register(new RegisterQuery("quarrendon", 0, 9, null)).total());
            assertEquals(List.of(), store.privateNames());
        }
        for (Path f : files()) {
            assertFalse(bytes(f).contains("Quarrendon"), f.toString());
            assertFalse(bytes(f).contains("QUARRENDON"), f.toString());
        }
    }

    @Test
    void anErasedNameSavedAgainStaysErased() {
        try (JobStore store = SqliteJobStore.open(file)) {
            String key = named(store, CUSTOMER).key();
            store.erase(key);
            Saved was = store.current(job.id(), Sample.BOOKING).orElseThrow();
            Saved now = store.save(job.id(), Sample.BOOKING, was.part(), 1, "p1", "");
            assertEquals(was.revision().json(), now.revision().json());
            assertEquals(List.of(), store.privateNames().stream().filter(n -> !n.key().equals("k1")).toList());
        }
    }

    @Test
    void anErasedKeyDoesNotComeToLifeAgain() {
        try (JobStore store = SqliteJobStore.open(file)) {
            store.erase("k1");
            assertEquals(StoreException.Kind.ALREADY_THERE, assertThrows(StoreException.class, () -> store.savePerson(
                    new Person("k1", "Another", Set.of(), null, null, true), "o")).kind());
            assertEquals(StoreException.Kind.NOT_FOUND,
                    assertThrows(StoreException.class, () -> store.erase("nobody")).kind());
        }
    }

    @Test
    void aPhotoIsErasedByItsHashAndTheAuditPasses() {
        try (JobStore store = SqliteJobStore.open(file)) {
            String hash = store.keepPhoto(new byte[] {7, 8, 9});
            store.erase(hash);
            assertTrue(store.photo(hash).isEmpty());
            assertTrue(store.audit().passed());
        }
    }

    @Test
    void backupsThatAreKeptFollowWithTheNextOne() throws IOException {
        Path kept = folder.resolve("backups");
        Backups backups = new Backups(kept, BackupPlan.STANDARD, Clock.systemUTC());
        try (JobStore store = SqliteJobStore.open(file)) {
            Path old = backups.take(store).file();
            assertTrue(bytes(old).contains("Quarrendon"));
            new Erasure(Clock.systemUTC()).erase(store, kept, named(store, CUSTOMER).key());
            new Erasure(Clock.systemUTC()).erase(store, kept, "k1");
            backups.take(store);
            assertEquals(2, backups.of(file).size());
            for (Backups.Backup b : backups.of(file)) {
                assertFalse(bytes(b.file()).contains("Quarrendon"), b.toString());
                Path copy = Files.copy(b.file(), folder.resolve("look-" + b.file().getFileName()));
                try (JobStore restored = SqliteJobStore.open(copy)) {
                    assertEquals(List.of(), restored.privateNames());
                    assertTrue(restored.audit().passed());
                    assertEquals(3, restored.audit().revisions());
                }
            }
        }
    }

    @Test
    void whoWasErasedDoesNotComeBackByRestoring() throws IOException {
        Path elsewhere = folder.resolve("stick").resolve("copy.sqlite");
        try (JobStore store = SqliteJobStore.open(file)) {
            store.backup(elsewhere);
            new Erasure(Clock.systemUTC()).erase(store, folder.resolve("backups"), named(store, CUSTOMER).key());
        }
        new Restore(Clock.systemUTC()).replace(elsewhere, file);
        assertFalse(bytes(file).contains("Quarrendon"));
        try (JobStore store = SqliteJobStore.open(file)) {
            assertEquals(List.of(CONTACT), store.privateNames().stream().map(PrivateName::name).toList());
            assertTrue(store.audit().passed());
        }
    }

    @Test
    void anArchiveCarriesNamesOpenAndOnlyThoseNotErased() throws IOException {
        Path zip = folder.resolve("shop.zip");
        try (JobStore store = SqliteJobStore.open(file)) {
            store.erase("k1");
            store.archive(zip);
            assertThrows(StoreException.class, () -> store.takeInArchive(zip));
        }
        try (JobStore store = SqliteJobStore.open(folder.resolve("new.sqlite"))) {
            store.takeInArchive(zip);
            assertEquals(List.of(CUSTOMER), store.privateNames().stream().map(PrivateName::name).toList());
            assertEquals(List.of(job.number()), named(store, CUSTOMER).jobs());
            assertEquals(CUSTOMER, store.load(job.id()).booking().orElseThrow().customer());
            assertEquals(Set.of("k1"), store.erasures().keySet());
            // A name known from the archive gets its old key again.
            store.create(Sample.booking(CUSTOMER, "fan"), "p1");
            assertEquals(1, store.privateNames().size());
            store.erase(named(store, CUSTOMER).key());
            assertTrue(store.audit().passed());
        }
    }

    @Test
    void namesAreDueWhenTheirJobsWereLeftAloneForLongerThanTheSettingSays() {
        Clock now = Clock.fixed(Instant.parse("2030-01-01T00:00:00Z"), ZoneOffset.UTC);
        try (JobStore store = SqliteJobStore.open(folder.resolve("old.sqlite"), StoreOptions.standard()
                .withClock(Clock.fixed(Instant.parse("2026-01-01T00:00:00Z"), ZoneOffset.UTC)))) {
            store.create(Sample.booking(CUSTOMER, "fan"), "p1");
            assertEquals(List.of(), new Erasure(now).due(store));
            store.saveShopPart(PartKey.parse("workshop"), Sample.part("workshop",
                    "{\"schema\":1,\"keepNamesMonths\":36}", Workshop.class), 0, "p1", "");
            assertEquals(List.of(CUSTOMER), new Erasure(now).due(store).stream().map(PrivateName::name).toList());
            Clock earlier = Clock.offset(now, Duration.ofDays(-400));
            assertEquals(List.of(), new Erasure(earlier).due(store));
        }
    }

    @Test
    void aStoreOfAnOlderVersionGetsItsPeopleUnderKeysAndSaysWhatItsChainKeepsInPlainText() throws Exception {
        String chained = "{\"schema\":1,\"customer\":\"" + CUSTOMER + "\",\"contactKey\":\"k1\"}";
        try (Connection c = DriverManager.getConnection("jdbc:sqlite:" + file); Statement s = c.createStatement()) {
            for (String later : List.of("person_key", "private_name", "person_use", "erased",
                    "month_fact", "account", "register_text", "work_ahead", "stock_move", "stock_item")) {
                s.executeUpdate("DROP TABLE " + later);
            }
            s.executeUpdate("DROP INDEX past_winding_by_kind_and_bore");
            s.executeUpdate("DROP INDEX past_winding_by_kind_and_rating");
            s.executeUpdate("DELETE FROM schema_step WHERE number > 2");
            s.executeUpdate("DELETE FROM setting WHERE name IN ('personal-edition', 'register-edition')");
            s.executeUpdate("UPDATE person SET json = '{\"key\":\"k1\",\"name\":\"" + CONTACT
                    + "\",\"active\":true}' WHERE key = 'k1'");
            s.executeUpdate("INSERT INTO job VALUES ('j2', '1999-1', '')");
            String head;
            try (ResultSet r = s.executeQuery("SELECT hash FROM chain_head")) {
                head = r.getString(1);
            }
            String at = "2026-01-01T00:00:00Z";
            String hash = Chain.hash(head, "j2", "1999-1", "booking", 1, at, "p1", "", chained);
            s.executeUpdate("INSERT INTO revision VALUES (4, 'j2', 'booking', 1, '" + at + "', 'p1', '', '" + chained
                    + "', '" + head + "', '" + hash + "')");
            s.executeUpdate("UPDATE chain_head SET sequence = 4, hash = '" + hash + "'");
        }
        try (JobStore store = SqliteJobStore.open(file)) {
            assertEquals(CONTACT, store.persons().get("k1").name());
            assertEquals(List.of("1999-1", job.number()), named(store, CONTACT).jobs());
            assertEquals(CUSTOMER, store.load("j2").booking().orElseThrow().customer());
            Saved plain = store.current("j2", Sample.BOOKING).orElseThrow();
            Saved moved = store.save("j2", Sample.BOOKING, plain.part(), 1, "p1", "");
            assertFalse(moved.revision().json().contains("Quarrendon"));
            assertEquals(1, store.erase(named(store, CUSTOMER).key()).plainTexts());
            assertTrue(store.audit().passed(), () -> store.audit().toString());
        }
        assertFalse(bytes(file).contains("Pennyfeather"));
    }

    private static PrivateName named(JobStore store, String name) {
        return store.privateNames().stream().filter(n -> n.name().equals(name)).findFirst().orElseThrow();
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).toList();
        }
    }

    private static String bytes(Path f) throws IOException {
        return new String(Files.readAllBytes(f), StandardCharsets.ISO_8859_1);
    }
}
