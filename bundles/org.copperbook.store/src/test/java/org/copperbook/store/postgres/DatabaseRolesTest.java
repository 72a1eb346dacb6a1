package org.copperbook.store.postgres;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.inspection.Inspection;
import org.copperbook.jobs.rights.Right;
import org.copperbook.jobs.rights.Rights;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.Sample;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreOptions;
import org.copperbook.store.engines.TestServer;
import org.copperbook.store.people.SecretHash;
import org.copperbook.store.people.SignIn;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Who connects past the program can write no more than the role allows. */
class DatabaseRolesTest {

    private static final String FORBIDDEN = "42501";
    private static final String SECRET = "of a login";

    private final TestServer server = TestServer.shared();
    private ServerConnection at;
    private JobHandle job;

    @BeforeEach
    void storeWithRoles() throws SQLException {
        at = server.newDatabase();
        try (JobStore store = PostgresJobStore.open(at, TestServer.PASSWORD, StoreOptions.standard())) {
            job = store.create(Sample.booking("Harbour Ice", "set"), "o");
            store.savePerson(new Person("o", "Olga Owner", Set.of(Role.OWNER), null, null, true), "o");
            store.savePerson(new Person("c", "A Contact", Set.of(), null, null, true), "o");
        }
        DatabaseRoles.grant(at, TestServer.PASSWORD);
        DatabaseRoles.grant(at, TestServer.PASSWORD);
        for (Role role : Role.values()) {
            server.sql("postgres", "DO $$ BEGIN IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = '" + login(role)
                    + "') THEN CREATE ROLE " + login(role) + " LOGIN PASSWORD '" + SECRET + "'; END IF; END $$",
                    "GRANT " + DatabaseRoles.name(role) + " TO " + login(role));
        }
    }

    private static String login(Role role) {
        return "test_" + role.name().toLowerCase(Locale.ROOT);
    }

    /** Whether the database lets a login do something; nothing of it stays. */
    private boolean may(Role role, String sql) throws SQLException {
        try (Connection c = server.connect(at.database(), login(role), SECRET); Statement s = c.createStatement()) {
            c.setAutoCommit(false);
            try {
                s.execute(sql);
                return true;
            } catch (SQLException e) {
                assertEquals(FORBIDDEN, e.getSQLState(), e.getMessage());
                return false;
            } finally {
                c.rollback();
            }
        }
    }

    /** A revision where the program would put it, with a made-up hash. */
    private String appended(PartKind kind) {
        String part = kind.many() ? kind.word() + "/any" : kind.word();
        return "UPDATE chain_head SET sequence = sequence + 1; INSERT INTO revision SELECT sequence, '"
                + (kind.ofShop() ? "shop" : job.id()) + "', '" + part + "', 900, '2026-03-03T09:00:00Z', 'x', '', '{}', hash,"
                + " 'made up' FROM chain_head; UPDATE chain_head SET hash = 'made up'; SET CONSTRAINTS ALL IMMEDIATE";
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void aRoleAppendsTheKindsOfPartThatItMaySave(Role role) throws SQLException {
        for (PartKind kind : PartKind.values()) {
            assertEquals(Rights.of(Right.toSave(kind)).contains(role), may(role, appended(kind)), role + " and " + kind);
        }
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void nobodyChangesTheRecordOrTheLayout(Role role) throws SQLException {
        for (String sql : new String[] {"UPDATE revision SET json = '{}'", "DELETE FROM revision", "TRUNCATE revision",
            "DELETE FROM job", "UPDATE job SET number = '1'", "DROP TABLE revision", "CREATE TABLE copperbook.mine (a TEXT)",
            "ALTER TABLE revision DISABLE ROW LEVEL SECURITY", "DROP TRIGGER revision_stays ON revision",
            "UPDATE schema_step SET checksum = ''", "DELETE FROM chain_head", "UPDATE photo SET bytes = ''",
            "UPDATE chain_head SET sequence = 900; SET CONSTRAINTS ALL IMMEDIATE",
            "UPDATE chain_head SET hash = 'x'; SET CONSTRAINTS ALL IMMEDIATE",
            "INSERT INTO revision SELECT 900, job_id, part, 900, saved_at, who, why, json, hash, 'x' FROM revision WHERE"
                    + " part = 'booking'",
            "INSERT INTO setting VALUES ('mine', 'x')", "DELETE FROM setting", "DELETE FROM erased"}) {
            assertEquals(false, may(role, sql), role + ": " + sql);
        }
        assertTrue(may(role, "SELECT * FROM revision"), "reading is the same for all");
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void peopleOfTheShopAreTheOwnersContactsAreNot(Role role) throws SQLException {
        assertEquals(Rights.of(Right.ERASE).contains(role), may(role, "DELETE FROM person_key WHERE key = 'c'"));
        assertEquals(Rights.of(Right.KEEP_CONTACTS).contains(role),
                may(role, "INSERT INTO person (key, json) VALUES ('n', 'x')"));
        assertEquals(Rights.of(Right.KEEP_PEOPLE).contains(role), changed(role, "o"));
        assertEquals(Rights.of(Right.KEEP_CONTACTS).contains(role), changed(role, "c"));
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void aSecretIsSetByWhoKeepsPeopleAndWrongOnesAreCountedForAll(Role role) throws SQLException {
        boolean keeps = Rights.of(Right.KEEP_PEOPLE).contains(role);
        assertEquals(keeps, may(role, "UPDATE account SET hash = 'known to me'"));
        assertEquals(keeps, may(role, "INSERT INTO account VALUES ('x', 'a', 1, '', '', '', 0)"));
        assertTrue(may(role, "UPDATE account SET failures = failures + 1, failed_at = 'now'"));
    }

    /** The hash has fewer iterations than a new one, so that signing in would make it anew. */
    @Test
    void aLoginThatMayChangeNoSecretSignsInWithOneKeptInAnOlderWay() throws SQLException {
        server.sql(at.database(), "INSERT INTO copperbook.account VALUES ('o', 'PBKDF2WithHmacSHA256', 1, '00', '"
                + SecretHash.of("old but right".toCharArray(), 1, new byte[1]).hash() + "', '2026-01-01T00:00:00Z', 0)");
        try (JobStore store = PostgresJobStore.open(server.at(at.database(), login(Role.WINDER)), SECRET,
                StoreOptions.standard())) {
            assertInstanceOf(SignIn.Done.class, store.accounts().signIn("o", "old but right".toCharArray()));
            assertEquals(Kind.FORBIDDEN, assertThrows(StoreException.class, () -> store.accounts().change(
                    "old but right".toCharArray(), "another one, longer".toCharArray())).kind());
            assertInstanceOf(SignIn.Done.class, store.accounts().signIn("o", "old but right".toCharArray()));
        }
    }

    @Test
    void everyTableHasItsRightsAndAChangeOfTheLayoutRenewsThem() throws SQLException {
        Set<String> found = new TreeSet<>();
        Set<String> named = new TreeSet<>(DatabaseRoles.KEPT);
        named.addAll(DatabaseRoles.DERIVED);
        server.sql(at.database(), "REVOKE ALL ON copperbook.register FROM " + DatabaseRoles.name(Role.WINDER));
        try (Connection c = server.connect(at.database(), TestServer.USER, TestServer.PASSWORD);
                Statement s = c.createStatement();
                ResultSet r = s.executeQuery("SELECT tablename FROM pg_tables WHERE schemaname = 'copperbook'")) {
            while (r.next()) {
                found.add(r.getString(1));
            }
            DatabaseRoles.renew(c);
        }
        assertEquals(named, found, "a new table has to be named in DatabaseRoles");
        assertTrue(may(Role.WINDER, "UPDATE register SET stage = 'x'"));
    }

    /** Whether a login changed the row of a person; a row that a policy hides is not changed and no error. */
    private boolean changed(Role role, String key) throws SQLException {
        try (Connection c = server.connect(at.database(), login(role), SECRET); Statement s = c.createStatement()) {
            c.setAutoCommit(false);
            try {
                return s.executeUpdate("UPDATE person SET json = 'x' WHERE key = '" + key + "'") == 1;
            } catch (SQLException e) {
                assertEquals(FORBIDDEN, e.getSQLState(), e.getMessage());
                return false;
            } finally {
                c.rollback();
            }
        }
    }

    @Test
    void theProgramWorksWithALoginOfARoleAndIsToldWhatTheDatabaseForbids() {
        Map<Role, Boolean> booksIn = Map.of(Role.OFFICE, true, Role.FOREMAN, true, Role.WINDER, false, Role.TESTER, false);
        booksIn.forEach((role, may) -> {
            try (JobStore store = PostgresJobStore.open(server.at(at.database(), login(role)), SECRET,
                    StoreOptions.standard())) {
                if (may) {
                    store.create(Sample.booking("Mill Lane " + role, "fan"), "x");
                } else {
                    StoreException e = assertThrows(StoreException.class,
                            () -> store.create(Sample.booking("Mill Lane", "fan"), "x"));
                    assertEquals(Kind.FORBIDDEN, e.kind(), e.getMessage());
                    Inspection inspection = Sample.part("inspection", "{\"schema\":1}", Inspection.class);
                    store.save(job.id(), PartKey.parse("inspection"), inspection, store.history(job.id(),
                            PartKey.parse("inspection")).size(), "x", "");
                }
                assertTrue(store.audit().passed(), () -> store.audit().toString());
            }
        });
    }

    @Test
    void aDatabaseWithoutAStoreIsSaid() throws SQLException {
        ServerConnection empty = server.newDatabase();
        assertEquals(Kind.NOT_A_STORE,
                assertThrows(StoreException.class, () -> DatabaseRoles.grant(empty, TestServer.PASSWORD)).kind());
    }
}
