package org.copperbook.store.postgres;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.rights.Right;
import org.copperbook.jobs.rights.Rights;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreText;

/**
 * Roles of a PostgreSQL database that match the roles of the workshop, so that somebody who connects past the program can
 * write no more than the role allows. A login gets the group roles of its person ({@code GRANT copperbook_winder TO ada});
 * who owns the tables stands above all of it and is for administration only.
 *
 * <p>What a role may append to the record is decided row by row, by the kind of part. Reading is the same for all. Everybody
 * may write what is derived from the record and count wrong secrets; secrets are set with a login that keeps people, since
 * which person a login is the database does not know.
 */
public final class DatabaseRoles {

    /** Tables derived from the record, which every save brings up to date. */
    static final List<String> DERIVED = List.of("register", "past_winding", "month_fact", "work_ahead",
            "person_use", "stock_item", "stock_move");
    /** Tables kept for good, each with rights of its own. */
    static final List<String> KEPT = List.of("job", "revision", "chain_head", "number_series", "person", "photo", "setting",
            "person_key", "private_name", "erased", "account", "schema_step");
    /** Marks of the store that every save or rebuilding may move. */
    private static final String MARKS = "'people-changes', 'register-edition', 'past-windings-edition',"
            + " 'stock-edition'";
    private static final String END = "head_is_the_last_revision";
    private static final int PATIENCE_SECONDS = 10;
    private static final String POLICY = "copperbook_";

    private DatabaseRoles() {
    }

    /** Name of the group role in the database. */
    public static String name(Role role) {
        return "copperbook_" + role.name().toLowerCase(Locale.ROOT);
    }

    /**
     * Makes the roles where they are missing and gives each what it may, in one transaction; can be repeated.
     *
     * @param password of a user who owns the store's tables and may create roles
     * @throws StoreException FORBIDDEN when the user may not; NOT_A_STORE when there is no store in the database
     */
    public static void grant(ServerConnection at, String password) {
        PostgresServer server = new PostgresServer(at, password, Duration.ofSeconds(PATIENCE_SECONDS));
        try (Connection c = server.writer()) {
            if (!PostgresLayout.there(c, "schema_step")) {
                throw new StoreException(Kind.NOT_A_STORE, StoreText.of("server.notAStore", at.place()));
            }
            for (String statement : statements()) {
                PostgresServer.run(c, statement);
            }
            c.commit();
        } catch (SQLException e) {
            throw new PostgresErrors(at).translate(e);
        }
    }

    /** Gives the roles their rights on a layout that changed, in its transaction, where they were given any before. */
    static void renew(Connection owner) throws SQLException {
        if (PostgresServer.text(owner, "SELECT policyname FROM pg_policies WHERE schemaname = '" + PostgresServer.SCHEMA
                + "' AND policyname = '" + POLICY + "read' LIMIT 1") != null) {
            for (String statement : statements()) {
                PostgresServer.run(owner, statement);
            }
        }
    }

    static List<String> statements() {
        List<String> all = new ArrayList<>();
        for (Role role : Role.values()) {
            all.add("DO $$ BEGIN IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = '" + name(role)
                    + "') THEN CREATE ROLE " + name(role) + " NOLOGIN; END IF; END $$");
        }
        String everybody = names(EnumSet.allOf(Role.class));
        all.add("REVOKE ALL ON ALL TABLES IN SCHEMA copperbook FROM PUBLIC, " + everybody);
        all.add("GRANT USAGE ON SCHEMA copperbook TO " + everybody);
        all.add("GRANT SELECT ON ALL TABLES IN SCHEMA copperbook TO " + everybody);
        all.add("GRANT USAGE ON ALL SEQUENCES IN SCHEMA copperbook TO " + everybody);
        record(all, everybody);
        for (String table : DERIVED) {
            all.add(to("INSERT, UPDATE, DELETE", table, everybody));
        }
        settings(all, everybody);
        all.add(to("INSERT", "photo", everybody));
        // Signing in counts an attempt before it looks at the secret, whoever tries.
        all.add(to("UPDATE (failures, failed_at)", "account", everybody));
        String booking = names(both(Right.BOOK_IN, Right.TAKE_IN_JOBS));
        all.add(to("INSERT", "job", booking));
        all.add(to("INSERT, UPDATE", "number_series", booking));
        String naming = names(both(both(Right.BOOK_IN, Right.QUOTE), Rights.of(Right.KEEP_CONTACTS)));
        for (String table : List.of("private_name", "person_key")) {
            all.add(to("INSERT", table, naming));
        }
        people(all);
        String erasing = names(Rights.of(Right.ERASE));
        for (String table : List.of("person", "person_key", "private_name", "photo", "account")) {
            all.add(to("DELETE", table, erasing));
        }
        all.add(to("INSERT", "erased", erasing));
        return all;
    }

    /** The chained record: everybody reads it, each role appends its kinds of part, nobody changes a row. */
    private static void record(List<String> all, String everybody) {
        all.add(to("INSERT", "revision", everybody));
        all.add(to("UPDATE (sequence, hash)", "chain_head", everybody));
        chainEnd(all);
        all.add("ALTER TABLE copperbook.revision ENABLE ROW LEVEL SECURITY");
        policy(all, "read", "revision", "FOR SELECT USING (true)");
        for (Role role : Role.values()) {
            policy(all, role.name().toLowerCase(Locale.ROOT), "revision", "FOR INSERT TO " + name(role)
                    + " WITH CHECK (split_part(part, '/', 1) IN (" + kinds(role) + ") AND EXISTS (SELECT 1 FROM"
                    + " copperbook.chain_head h WHERE h.id = 1 AND h.sequence = revision.sequence"
                    + " AND h.hash = revision.previous_hash))");
        }
    }

    /** Everybody who saves moves the end of the chain; nobody leaves it anywhere but at the last revision. */
    private static void chainEnd(List<String> all) {
        all.add("CREATE OR REPLACE FUNCTION copperbook." + END + "() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN"
                + " IF NOT EXISTS (SELECT 1 FROM copperbook.chain_head h WHERE h.id = 1 AND h.sequence ="
                + " COALESCE((SELECT max(r.sequence) FROM copperbook.revision r), 0) AND (h.sequence = 0 OR h.hash ="
                + " (SELECT r.hash FROM copperbook.revision r WHERE r.sequence = h.sequence))) THEN"
                + " RAISE EXCEPTION 'the end of the chain is its last revision' USING ERRCODE = 'insufficient_privilege';"
                + " END IF; RETURN NULL; END $$");
        all.add("DROP TRIGGER IF EXISTS " + END + " ON copperbook.chain_head");
        all.add("CREATE CONSTRAINT TRIGGER " + END + " AFTER UPDATE ON copperbook.chain_head DEFERRABLE INITIALLY DEFERRED"
                + " FOR EACH ROW EXECUTE FUNCTION copperbook." + END + "()");
    }

    /** The marks may be moved; the key by which typed names are found may be made once. */
    private static void settings(List<String> all, String everybody) {
        all.add(to("INSERT, UPDATE (value)", "setting", everybody));
        all.add("ALTER TABLE copperbook.setting ENABLE ROW LEVEL SECURITY");
        policy(all, "read", "setting", "FOR SELECT USING (true)");
        policy(all, "mark", "setting", "FOR INSERT TO " + everybody + " WITH CHECK (name IN (" + MARKS
                + ", 'private-lookup'))");
        policy(all, "move", "setting", "FOR UPDATE TO " + everybody + " USING (name IN (" + MARKS + "))");
    }

    /** People of the shop are the owner's, customers' contacts are not; the chain says who is of the shop. */
    private static void people(List<String> all) {
        String contacts = names(Rights.of(Right.KEEP_CONTACTS));
        String owners = names(Rights.of(Right.KEEP_PEOPLE));
        all.add(to("INSERT, UPDATE", "person", contacts));
        all.add(to("INSERT, UPDATE", "account", owners));
        all.add("ALTER TABLE copperbook.person ENABLE ROW LEVEL SECURITY");
        policy(all, "read", "person", "FOR SELECT USING (true)");
        policy(all, "people", "person", "FOR ALL TO " + owners + " USING (true) WITH CHECK (true)");
        String contact = "NOT EXISTS (SELECT 1 FROM copperbook.revision r WHERE r.job_id = 'shop' AND r.part = '"
                + PartKind.STAFF.word() + "' AND (r.json::jsonb -> 'members') ? person.key)";
        policy(all, "add_contacts", "person", "FOR INSERT TO " + contacts + " WITH CHECK (" + contact + ")");
        policy(all, "change_contacts", "person", "FOR UPDATE TO " + contacts + " USING (" + contact + ") WITH CHECK ("
                + contact + ")");
    }

    private static void policy(List<String> all, String name, String table, String what) {
        all.add("DROP POLICY IF EXISTS " + POLICY + name + " ON copperbook." + table);
        all.add("CREATE POLICY " + POLICY + name + " ON copperbook." + table + " " + what);
    }

    /** Words of the kinds of part that a role may append. */
    private static String kinds(Role role) {
        return Arrays.stream(PartKind.values()).filter(k -> Rights.of(Right.toSave(k)).contains(role))
                .map(k -> "'" + k.word() + "'").collect(Collectors.joining(", "));
    }

    private static String to(String privileges, String table, String roles) {
        return "GRANT " + privileges + " ON copperbook." + table + " TO " + roles;
    }

    private static Set<Role> both(Right one, Right other) {
        return both(Rights.of(one), Rights.of(other));
    }

    private static Set<Role> both(Set<Role> one, Set<Role> other) {
        Set<Role> roles = EnumSet.copyOf(one);
        roles.addAll(other);
        return roles;
    }

    private static String names(Set<Role> roles) {
        return roles.stream().map(DatabaseRoles::name).collect(Collectors.joining(", "));
    }
}
