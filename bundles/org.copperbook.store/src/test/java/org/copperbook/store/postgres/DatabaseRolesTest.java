package org.copperbook.store.postgres;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
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

    private String appended(PartKind kind) {
        String part = kind.many() ? kind.word() + "/any" : kind.word();
        return "INSERT INTO revision (sequence, job_id, part, revision, saved_at, who, why, json, previous_hash, hash)"
                + " VALUES (900, '" + (kind.ofShop() ? "shop" : job.id()) + "', '" + part + "', 900, '2026-03-03T09:00:00Z',"
                + " 'x', '', '{}', '0', 'made up')";
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void aRoleAppendsTheKindsOfPartThatItMaySave(Role role) throws SQLException {
        for (PartKind kind : PartKind.values()) {
            boolean expected = Rights.of(Right.toSave(kind)).contains(role) || kind == PartKind.STAFF;
            assertEquals(expected, may(role, appended(kind)), role + " and " + kind);
        }
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void nobodyChangesTheRecordOrTheLayout(Role role) throws SQLException {
        for (String sql : new String[] {"UPDATE revision SET json = '{}'", "DELETE FROM revision", "TRUNCATE revision",
            "DELETE FROM job", "UPDATE job SET number = '1'", "DROP TABLE revision", "CREATE TABLE copperbook.mine (a TEXT)",
            "ALTER TABLE revision DISABLE ROW LEVEL SECURITY", "DROP TRIGGER revision_stays ON revision",
            "UPDATE schema_step SET checksum = ''", "DELETE FROM chain_head", "UPDATE photo SET bytes = ''"}) {
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
