package org.copperbook.store.postgres;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.InetAddress;
import java.net.ServerSocket;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.copperbook.store.Change;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.Sample;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreOptions;
import org.copperbook.store.engines.TestServer;
import org.copperbook.store.jdbc.Migrations;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What only a server can do to a store. */
class ServerTroubleTest {

    private static final StoreOptions QUICK = StoreOptions.standard().withPatience(Duration.ofSeconds(2));
    /** Changes are heard of by notice alone. */
    private static final StoreOptions NO_LOOKING = StoreOptions.standard().withLookForChangesEvery(Duration.ofHours(1));

    private TestServer server;
    private ServerConnection at;

    @BeforeEach
    void database() throws SQLException {
        server = TestServer.shared();
        at = server.newDatabase();
    }

    private JobStore open() {
        return PostgresJobStore.open(at, TestServer.PASSWORD, QUICK);
    }

    private static StoreException refused(ServerConnection at, String password) {
        return assertThrows(StoreException.class, () -> PostgresJobStore.open(at, password, QUICK).close());
    }

    private void sql(String... statements) throws SQLException {
        server.sql(at.database(), statements);
    }

    @Test
    void aWrongPasswordAMissingDatabaseAndASilentServerAreToldApart() throws Exception {
        StoreException wrong = refused(at, "guessed");
        assertEquals(Kind.NO_ENTRY, wrong.kind());
        assertTrue(wrong.getMessage().contains(TestServer.USER), wrong.getMessage());
        assertFalse(wrong.getMessage().contains("guessed"), wrong.getMessage());
        StoreException empty = refused(at, "");
        assertEquals(Kind.NO_ENTRY, empty.kind());
        assertEquals(wrong.getMessage(), empty.getMessage());
        StoreException none = refused(server.at("nowhere", TestServer.USER), TestServer.PASSWORD);
        assertEquals(Kind.NO_ENTRY, none.kind());
        assertTrue(none.getMessage().contains("nowhere"), none.getMessage());
        int nobodys;
        try (ServerSocket s = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            nobodys = s.getLocalPort();
        }
        StoreException silent = refused(new ServerConnection("127.0.0.1", nobodys, "x", "y", ServerConnection.Tls.OFF), "");
        assertEquals(Kind.UNREACHABLE, silent.kind());
        assertTrue(silent.getMessage().contains(Integer.toString(nobodys)), silent.getMessage());
    }

    @Test
    void encryptionThatTheServerDoesNotHaveIsNotDoneWithout() {
        StoreException e = refused(new ServerConnection("127.0.0.1", at.port(), at.database(), at.user(),
                ServerConnection.Tls.ENCRYPTED), TestServer.PASSWORD);
        assertEquals(Kind.UNREACHABLE, e.kind());
        assertTrue(e.getMessage().contains("Nothing was sent"), e.getMessage());
    }

    @Test
    void aUserWithoutRightsIsToldSo() throws SQLException {
        sql("CREATE ROLE visitor LOGIN PASSWORD 'v'");
        StoreException e = refused(server.at(at.database(), "visitor"), "v");
        assertEquals(Kind.FORBIDDEN, e.kind());
        assertTrue(e.getMessage().contains("visitor"), e.getMessage());
    }

    @Test
    void aDatabaseOfOtherTextIsRefused() throws SQLException {
        sql("DROP DATABASE IF EXISTS latin", "CREATE DATABASE latin ENCODING 'LATIN1' LOCALE 'C' TEMPLATE template0");
        StoreException e = refused(server.at("latin", TestServer.USER), TestServer.PASSWORD);
        assertEquals(Kind.NOT_A_STORE, e.kind());
        assertTrue(e.getMessage().contains("LATIN1"), e.getMessage());
    }

    @Test
    void aSchemaOfSomebodyElseIsLeftAlone() throws SQLException {
        sql("CREATE SCHEMA copperbook", "CREATE TABLE copperbook.job (recipe TEXT)");
        assertEquals(Kind.NOT_A_STORE, refused(at, TestServer.PASSWORD).kind());
        sql("INSERT INTO copperbook.job VALUES ('still mine')");
    }

    @ParameterizedTest
    @CsvSource({"08006, UNREACHABLE", "08004, NO_ENTRY", "57P01, UNREACHABLE", "53300, UNREACHABLE", "28P01, NO_ENTRY", "42501, FORBIDDEN",
        "53100, DISK_FULL", "55P03, LOCKED", "40001, LOCKED", "25006, READ_ONLY", "XX001, CORRUPT", "22021, BAD_TEXT",
        "58030, IO"})
    void everyRefusalOfTheServerHasItsKindAndAMessage(String state, Kind kind) {
        StoreException told = new PostgresErrors(at).translate(new SQLException("server says", state));
        assertEquals(kind, told.kind());
        assertTrue(told.getMessage().contains(at.place()), told.getMessage());
    }

    @Test
    void aNewerLayoutIsOpenedForReadingOnly() throws SQLException {
        JobHandle job;
        try (JobStore store = open()) {
            job = store.create(Sample.booking("Harbour Ice", "set"), "ada");
        }
        sql("INSERT INTO copperbook.schema_step VALUES (99, '0099-of-tomorrow', 'ff', '2030-01-01')");
        try (JobStore store = open()) {
            assertTrue(store.onlyReading().orElseThrow().contains("99"));
            assertEquals("Harbour Ice", store.load(job.id()).booking().orElseThrow().customer());
            assertEquals(Kind.NEWER_SCHEMA, assertThrows(StoreException.class,
                    () -> store.create(Sample.booking("a", "b"), "ada")).kind());
        }
        sql("DELETE FROM copperbook.schema_step WHERE number = 99", "UPDATE copperbook.schema_step SET checksum = 'ff'");
        assertEquals(Kind.FOREIGN_SCHEMA, refused(at, TestServer.PASSWORD).kind());
    }

    @Test
    void tryingAConnectionSaysWhatStandsThereAndChangesNothing() throws SQLException {
        assertEquals(ServerTrial.Found.NOTHING, ServerTrial.of(at, TestServer.PASSWORD));
        assertEquals(ServerTrial.Found.NOTHING, ServerTrial.of(at, TestServer.PASSWORD), "the first look made nothing");
        assertEquals(Kind.NO_ENTRY,
                assertThrows(StoreException.class, () -> ServerTrial.of(at, "another")).kind());
        PostgresDatabase.open(new PostgresServer(at, TestServer.PASSWORD, Duration.ofSeconds(10)),
                PostgresJobStore.standsFor(at), new Migrations("postgres", Migrations.ALL.subList(0, 1))).close();
        assertEquals(ServerTrial.Found.OLDER_STORE, ServerTrial.of(at, TestServer.PASSWORD));
        open().close();
        assertEquals(ServerTrial.Found.STORE, ServerTrial.of(at, TestServer.PASSWORD));
        sql("INSERT INTO copperbook.schema_step VALUES (99, '0099-of-tomorrow', 'ff', '2030-01-01')");
        assertEquals(ServerTrial.Found.NEWER_STORE, ServerTrial.of(at, TestServer.PASSWORD));
    }

    @Test
    void tryingSaysWhenTheUserMayNotLayTheStoreOut() throws SQLException {
        sql("DROP ROLE IF EXISTS onlooker", "CREATE ROLE onlooker LOGIN PASSWORD 'look'");
        StoreException e = assertThrows(StoreException.class,
                () -> ServerTrial.of(server.at(at.database(), "onlooker"), "look"));
        assertEquals(Kind.FORBIDDEN, e.kind());
        assertTrue(e.getMessage().contains("onlooker"), e.getMessage());
    }

    @Test
    void fourThatStartTogetherOnAnOlderStoreBringItUpOnce() throws Exception {
        PostgresServer raw = new PostgresServer(at, TestServer.PASSWORD, Duration.ofSeconds(10));
        PostgresDatabase.open(raw, PostgresJobStore.standsFor(at),
                new Migrations("postgres", Migrations.ALL.subList(0, 1))).close();
        sql("INSERT INTO copperbook.job VALUES ('k1', '2020-0001', '')");
        ExecutorService pool = Executors.newFixedThreadPool(4);
        try {
            List<Callable<String>> all = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                all.add(() -> {
                    try (JobStore store = PostgresJobStore.open(at, TestServer.PASSWORD, StoreOptions.standard())) {
                        return store.create(Sample.booking("Harbour Ice", "set"), "ada").number();
                    }
                });
            }
            List<String> numbers = new ArrayList<>();
            for (Future<String> f : pool.invokeAll(all)) {
                numbers.add(f.get().substring(5));
            }
            assertEquals(List.of("0001", "0002", "0003", "0004"), numbers.stream().sorted().toList());
        } finally {
            pool.shutdown();
        }
        try (JobStore store = open()) {
            assertEquals("2020-0001", store.load("k1").number());
            assertTrue(store.audit().passed(), () -> store.audit().toString());
        }
    }

    @Test
    void aWriterWhoDoesNotLetGoIsNamedAndTheStoreIsUsableAfterwards() throws Exception {
        try (JobStore store = PostgresJobStore.open(at, TestServer.PASSWORD,
                StoreOptions.standard().withPatience(Duration.ofMillis(200)))) {
            JobHandle job = store.create(Sample.booking("Harbour Ice", "set"), "ada");
            try (Connection other = server.connect(at.database(), TestServer.USER, TestServer.PASSWORD);
                    Statement s = other.createStatement()) {
                other.setAutoCommit(false);
                s.execute("SELECT * FROM chain_head FOR UPDATE");
                assertEquals(Kind.LOCKED, assertThrows(StoreException.class, () -> store.save(job.id(), Sample.NAMEPLATE,
                        Sample.nameplate("A"), 0, "ada", "")).kind());
                assertEquals("Harbour Ice", store.load(job.id()).booking().orElseThrow().customer());
                other.rollback();
            }
            assertEquals(1, store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("A"), 0, "ada", "").number());
        }
    }

    @Test
    void changesOfOthersAreHeardOfWithoutLookingAndAlsoAfterABreak() throws Exception {
        BlockingQueue<Change> heard = new LinkedBlockingQueue<>();
        try (JobStore mine = PostgresJobStore.open(at, TestServer.PASSWORD, NO_LOOKING); JobStore theirs = open()) {
            mine.onChange(heard::add);
            JobHandle first = theirs.create(Sample.booking("Harbour Ice", "set"), "ben");
            assertEquals(new Change(first.id(), "booking", true), heard.poll(10, TimeUnit.SECONDS));
            sql("SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = current_database()"
                    + " AND pid <> pg_backend_pid()");
            JobHandle second = theirs.create(Sample.booking("Mill Lane Bakery", "oven fan"), "ben");
            assertEquals(new Change(second.id(), "booking", true), heard.poll(10, TimeUnit.SECONDS));
        }
    }

    @Test
    void aGuardThatIsGoneIsReportedByTheAudit() throws SQLException {
        try (JobStore store = open()) {
            assertTrue(store.audit().passed(), () -> store.audit().toString());
            sql("DROP TRIGGER revision_stays ON copperbook.revision");
            assertTrue(store.audit().problems().toString().contains("revision_stays"));
        }
    }

    @Test
    void aStoreSurvivesItsServersEndAndRestart() throws Exception {
        try (TestServer own = TestServer.own()) {
            ServerConnection there = own.newDatabase();
            try (JobStore store = PostgresJobStore.open(there, TestServer.PASSWORD, QUICK)) {
                JobHandle job = store.create(Sample.booking("Harbour Ice", "set"), "ada");
                own.kill();
                StoreException e = assertThrows(StoreException.class, () -> store.save(job.id(), Sample.NAMEPLATE,
                        Sample.nameplate("A"), 0, "ada", ""));
                assertEquals(Kind.UNREACHABLE, e.kind());
                assertEquals(Kind.UNREACHABLE, assertThrows(StoreException.class, () -> store.load(job.id())).kind());
                own.start();
                assertEquals("Harbour Ice", store.load(job.id()).booking().orElseThrow().customer());
                assertEquals(1, store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("A"), 0, "ada", "").number());
                assertTrue(store.audit().passed(), () -> store.audit().toString());
            }
        }
    }
}
