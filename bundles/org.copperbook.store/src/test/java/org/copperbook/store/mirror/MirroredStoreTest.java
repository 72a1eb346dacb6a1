package org.copperbook.store.mirror;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BooleanSupplier;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.jobs.stock.StockUnit;
import org.copperbook.store.Change;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.Sample;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreOptions;
import org.copperbook.store.engines.TestServer;
import org.copperbook.store.postgres.PostgresJobStore;
import org.copperbook.store.postgres.ServerConnection;
import org.copperbook.store.sqlite.SqliteJobStore;
import org.copperbook.store.stock.StockMove;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Work beside a server that goes and comes back; the test stops and starts a real one. */
class MirroredStoreTest {

    private static final StoreOptions QUICK = StoreOptions.standard().withLookForChangesEvery(Duration.ofMillis(100))
            .withPatience(Duration.ofSeconds(2));

    @TempDir
    Path folder;

    private final TestServer server = TestServer.own();
    private ServerConnection at;
    private MirroredStore store;

    @BeforeEach
    void open() throws Exception {
        at = server.newDatabase();
        store = mirrored();
    }

    @AfterEach
    void close() {
        store.close();
        server.close();
    }

    private MirroredStore mirrored() {
        return MirroredStore.open(() -> PostgresJobStore.open(at, TestServer.PASSWORD, QUICK),
                folder.resolve("shop.sqlite"), QUICK);
    }

    private JobStore another() {
        return PostgresJobStore.open(at, TestServer.PASSWORD, QUICK);
    }

    private static void until(String what, BooleanSupplier holds) throws InterruptedException {
        for (int tenths = 0; !holds.getAsBoolean(); tenths++) {
            assertTrue(tenths < 300, "waited in vain until " + what);
            Thread.sleep(100);
        }
    }

    private String secretOf(String person) throws SQLException {
        try (Connection c = DriverManager.getConnection("jdbc:sqlite:" + store.copyFile());
                PreparedStatement q = c.prepareStatement("SELECT secret FROM person_key WHERE key = ?")) {
            q.setString(1, person);
            try (ResultSet r = q.executeQuery()) {
                assertTrue(r.next());
                return r.getString(1);
            }
        }
    }

    /** The bytes of the copy's file and of what the engine keeps beside it. */
    private String bytesOfTheCopy() throws IOException {
        StringBuilder all = new StringBuilder();
        for (String beside : List.of("", "-wal")) {
            Path file = store.copyFile().resolveSibling(store.copyFile().getFileName() + beside);
            if (Files.exists(file)) {
                all.append(Files.readString(file, StandardCharsets.ISO_8859_1));
            }
        }
        return all.toString();
    }

    private static Booking booking(String customer) {
        return Sample.booking(customer, "set");
    }

    private static Kind refused(Runnable change) {
        return assertThrows(StoreException.class, change::run).kind();
    }

    private JobHandle filled() {
        store.savePerson(new Person("ada", "Ada Brook", Set.of(Role.WINDER), null, null, true), "ada");
        JobHandle job = store.create(booking("Harbour Ice"), "ada");
        store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("A-1"), 0, "ada", "");
        store.create(booking("Mill Lane Bakery"), "ada");
        store.stock().describe(StockItem.of("6205", StockItem.Kind.BEARING, "Bearing", StockUnit.PC), null, "ada", "");
        store.stock().move(List.of(new StockMove("6205", StockMovement.of(StockMovement.Kind.RECEIVE, BigDecimal.TEN, null,
                null)), new StockMove("6205", StockMovement.of(StockMovement.Kind.ISSUE, BigDecimal.ONE, job.id(), null))),
                "ada");
        store.follow();
        return job;
    }

    @Test
    void theCopyHasEveryRevisionAndHashAndWhatIsDerivedFromThem() {
        filled();
        try (JobStore copy = SqliteJobStore.open(store.copyFile())) {
            assertEquals(store.chainEnd(), copy.chainEnd());
            assertEquals(store.register(RegisterQuery.first(9)), copy.register(RegisterQuery.first(9)));
            assertEquals(store.stock().items(), copy.stock().items());
            assertEquals(store.stock().ledger("6205", 9), copy.stock().ledger("6205", 9));
            assertEquals(2, copy.stock().ledger("6205", 9).size());
            assertEquals(store.persons(), copy.persons());
            assertEquals(store.privateNames(), copy.privateNames());
            assertTrue(copy.audit().passed(), () -> copy.audit().toString());
            assertEquals(List.of(), copy.audit().notes());
        }
    }

    @Test
    void twoWindowsOnOneComputerShareTheCopyAndWriteNoLinkTwice() throws Exception {
        JobHandle job = filled();
        try (MirroredStore second = mirrored(); JobStore elsewhere = another()) {
            for (int i = 1; i <= 20; i++) {
                JobStore whose = List.of(store, second, elsewhere).get(i % 3);
                whose.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("A-" + i), i, "ada", "");
                if (i % 5 == 0) {
                    store.savePerson(new Person("p" + i, "Person " + i, Set.of(), null, null, true), "ada");
                    Thread one = new Thread(store::follow);
                    one.start();
                    second.follow();
                    one.join();
                }
            }
            store.follow();
            second.follow();
            assertEquals(store.copyFile(), second.copyFile());
            try (JobStore copy = SqliteJobStore.open(store.copyFile())) {
                assertEquals(elsewhere.chainEnd(), copy.chainEnd());
                assertEquals(elsewhere.persons(), copy.persons());
                assertTrue(copy.audit().passed(), () -> copy.audit().toString());
            }
        }
    }

    @Test
    void peopleAreCopiedAlsoOfAStoreThatNeverCountedAChangeOfThem() throws Exception {
        store.close();
        try (JobStore filled = another()) {
            filled.savePerson(new Person("ben", "Ben Mill", Set.of(Role.OFFICE), null, null, true), "ben");
        }
        server.sql(at.database(), "UPDATE copperbook.setting SET value = '0' WHERE name = 'people-changes'");
        store = mirrored();
        store.follow();
        try (JobStore copy = SqliteJobStore.open(store.copyFile())) {
            assertEquals(Set.of("ben"), copy.persons().keySet());
        }
    }

    @Test
    void readingGoesOnWithoutTheServerAndNothingIsTakenForSavedUntilItAnswersAgain() throws Exception {
        JobHandle job = filled();
        String photo = store.keepPhoto(new byte[] {1, 2, 3});
        assertTrue(store.photo(photo).isPresent());
        List<Change> heard = new CopyOnWriteArrayList<>();
        store.onChange(heard::add);
        server.stop();
        assertEquals(Kind.UNREACHABLE, refused(() -> store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("A-2"), 1,
                "ada", "")));
        assertTrue(store.unreachable().isPresent());
        assertTrue(heard.contains(new Change(JobStore.SHOP, Change.REACH, true)), heard.toString());
        assertEquals(2, store.register(RegisterQuery.first(9)).total());
        assertEquals("Harbour Ice", store.load(job.id()).booking().orElseThrow().customer());
        assertEquals("Ada Brook", store.shop().nameOf("ada"));
        assertArrayEquals(new byte[] {1, 2, 3}, store.photo(photo).orElseThrow());
        assertEquals(Kind.UNREACHABLE, refused(() -> store.create(booking("Nobody"), "ada")));

        server.start();
        JobHandle theirs;
        try (JobStore other = another()) {
            theirs = other.create(booking("Came meanwhile"), "ada");
            other.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("A-3"), 1, "ada", "");
        }
        until("the server answers again", () -> store.unreachable().isEmpty());
        until("what the others saved is told", () -> heard.contains(new Change(job.id(), "nameplate", true))
                && heard.contains(new Change(theirs.id(), "booking", true)));
        assertEquals(3, store.register(RegisterQuery.first(9)).total());
        store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("A-4"), 2, "ada", "");
        assertTrue(store.audit().passed());
    }

    @Test
    void aStartWithoutTheServerReadsTheCopyAndFindsTheServerLater() throws Exception {
        JobHandle job = filled();
        store.close();
        server.stop();
        store = mirrored();
        assertTrue(store.unreachable().isPresent());
        assertTrue(store.unreachableSince().isPresent());
        assertEquals(job.number(), store.load(job.id()).number());
        assertEquals(Kind.UNREACHABLE, refused(() -> store.create(booking("Nobody"), "ada")));
        server.start();
        until("the server answers", () -> store.unreachable().isEmpty());
        assertEquals(Optional.of(job.id()), store.idOf(job.number()));
        assertEquals(3, Integer.parseInt(store.create(booking("Somebody"), "ada").number().replaceAll(".*-", "")));
    }

    @Test
    void aCopyThatWasOnlyBegunIsNotTakenForWhatIsKnown() throws Exception {
        filled();
        store.close();
        try (Connection c = DriverManager.getConnection("jdbc:sqlite:" + store.copyFile());
                Statement s = c.createStatement()) {
            assertEquals(1, s.executeUpdate("DELETE FROM setting WHERE name = 'copied-whole'"));
        }
        server.stop();
        assertEquals(Kind.UNREACHABLE, refused(this::mirrored));
    }

    @Test
    void troubleOfTheCopyAloneKeepsNobodyFromTheServer() throws Exception {
        store.close();
        Path copy = store.copyFile();
        Files.deleteIfExists(copy);
        Files.createDirectories(copy.resolve("in the way"));
        store = mirrored();
        JobHandle job = store.create(booking("Harbour Ice"), "ada");
        assertEquals(job.number(), store.load(job.id()).number());
        String photo = store.keepPhoto(new byte[] {4});
        assertTrue(store.photo(photo).isPresent());
        server.stop();
        assertEquals(Kind.UNREACHABLE, refused(() -> store.load(job.id())));
    }

    @Test
    void aFirstStartWithoutTheServerSaysSo() throws Exception {
        store.close();
        server.stop();
        assertEquals(Kind.UNREACHABLE, refused(this::mirrored));
    }

    @Test
    void whatIsErasedOnTheServerIsErasedInTheCopy() throws Exception {
        filled();
        String secret = secretOf("ada");
        assertTrue(bytesOfTheCopy().contains(secret), "it is there before");
        try (JobStore copy = SqliteJobStore.open(store.copyFile())) {
            String key = copy.privateNames().stream().filter(n -> n.name().equals("Harbour Ice")).findFirst().orElseThrow()
                    .key();
            store.erase(key);
            store.erase("ada");
            store.follow();
            assertTrue(copy.privateNames().stream().noneMatch(n -> n.name().equals("Harbour Ice")));
            assertFalse(copy.persons().containsKey("ada"));
            assertEquals(Set.of("ada", key), copy.erasures().keySet());
            assertFalse(bytesOfTheCopy().contains(secret), "the key of who was erased stands in no byte of the copy");
            assertFalse(copy.register(RegisterQuery.first(9)).rows().toString().contains("Harbour Ice"));
            assertTrue(copy.audit().passed());
        }
    }

    @Test
    void aCopyOfAnotherStoreIsMadeAnew() throws Exception {
        filled();
        store.close();
        at = server.newDatabase();
        try (JobStore other = another()) {
            for (int i = 0; i < 9; i++) {
                other.create(booking("Other works " + i), "ben");
            }
        }
        store = mirrored();
        store.follow();
        try (JobStore copy = SqliteJobStore.open(store.copyFile())) {
            assertEquals(store.chainEnd(), copy.chainEnd());
            assertEquals(9, copy.register(RegisterQuery.first(99)).total());
            assertFalse(copy.persons().containsKey("ada"), "nobody of the other store is left");
        }
    }

    @Test
    void withoutTheServerNobodySignsInAndWhoDidStays() throws Exception {
        store.savePerson(new Person("o", "Olga Owner", Set.of(Role.OWNER), null, null, true), "o");
        store.accounts().begin("o", "owners own words".toCharArray());
        assertTrue(store.accounts().inForce());
        store.follow();
        server.stop();
        assertEquals(Kind.UNREACHABLE, refused(() -> store.create(booking("Nobody"), "o")));
        assertTrue(store.accounts().inForce());
        assertEquals(Optional.of("o"), store.accounts().signedIn());
        char[] secret = "owners own words".toCharArray();
        assertEquals(Kind.UNREACHABLE, refused(() -> store.accounts().signIn("o", secret)));
        assertArrayEquals(new char[secret.length], secret, "wiped all the same");
        store.close();
        store = mirrored();
        assertTrue(store.accounts().inForce(), "noted for a start without the server");
        assertEquals(Optional.empty(), store.accounts().signedIn());
    }
}
