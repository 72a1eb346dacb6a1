package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.copperbook.store.Change;
import org.copperbook.store.JobStore;
import org.copperbook.store.JobStore.ChainEnd;
import org.copperbook.store.Revision;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreText;

/**
 * Brings a store in a file up to what another store holds, link by link and never the other way: jobs, revisions, people
 * and names with their keys, and what was erased. Photos and secrets of people are not carried over.
 */
public final class Mirror {

    private static final int LINKS_AT_ONCE = 500;
    private static final String WHOLE = "copied-whole";

    private final JdbcJobStore from;
    private final JdbcJobStore to;
    private boolean erased;

    /** The copy is of another store, or its chain has gone another way: it is to be made anew. */
    public static final class OtherStore extends StoreException {

        private static final long serialVersionUID = 1L;

        OtherStore() {
            super(StoreException.Kind.FOREIGN_SCHEMA, StoreText.of("mirror.other"));
        }
    }

    /** @param to nobody else writes into it but mirrors of the same store */
    public Mirror(JobStore from, JobStore to) {
        this.from = (JdbcJobStore) from;
        this.to = (JdbcJobStore) to;
    }

    /** Whether everything was copied once; a copy that was only begun must not be shown as what is known. */
    public static boolean isWhole(JobStore copy) {
        JdbcJobStore store = (JdbcJobStore) copy;
        return store.database().read(c -> store.tables().settings().number(c, WHOLE)) == 1;
    }

    /** The places in a store that were written after a link, to be told to whoever missed it. */
    public static Set<Change> writtenAfter(JobStore in, long sequence) {
        JdbcJobStore store = (JdbcJobStore) in;
        Set<Change> found = new LinkedHashSet<>();
        store.database().read(c -> store.tables().revisions().after(c, sequence)).forEach(p -> found.add(new Change(
                p.jobId(), JobStore.CARDS.equals(p.jobId()) ? Change.CARDS : p.part(), true)));
        return found;
    }

    /**
     * Takes over what is new, in steps of which each is whole.
     *
     * @return what changed in the mirror
     * @throws OtherStore when the mirror has to be made anew
     */
    public Set<Change> pull() {
        Set<Change> changed = new LinkedHashSet<>();
        while (true) {
            ChainEnd have = to.chainEnd();
            // Nothing is noted before the first time; a store that came from an archive has never counted a change.
            long people = to.database().read(c -> to.tables().settings().number(c, SettingTable.COPIED_PEOPLE)) - 1;
            Piece piece = from.database().readApart(c -> read(c, have, people));
            if (piece.links().isEmpty() && piece.people() == null) {
                if (!isWhole(to)) {
                    to.database().write(c -> {
                        to.tables().settings().put(c, WHOLE, "1");
                        return piece;
                    });
                }
                return changed;
            }
            to.database().write(c -> {
                // Another window of this computer may have been quicker.
                erased = false;
                if (to.tables().revisions().end(c).equals(have)) {
                    put(c, piece);
                }
                return piece;
            });
            if (erased) {
                to.database().scrub();
            }
            piece.links().forEach(r -> changed.add(new Change(r.jobId(),
                    JobStore.CARDS.equals(r.jobId()) ? Change.CARDS : r.part(), true)));
            if (piece.people() != null) {
                changed.add(new Change(JobStore.SHOP, Change.PEOPLE, true));
            }
        }
    }

    /**
     * The next links, and what they need.
     *
     * @param jobs   rows of the jobs, which may be there already
     * @param names  rows of private_name that the links mention
     * @param keys   secrets of these names by key
     * @param series rows of number_series
     * @param people everybody, or null when nobody changed
     */
    private record Piece(List<Revision> links, List<String[]> jobs, List<String[]> names, Map<String, String> keys,
            List<String[]> series, People people) {
    }

    /**
     * The people as they stand.
     *
     * @param changes how often people were changed by then
     * @param rows    rows of person
     * @param keys    secrets by key
     */
    private record People(long changes, List<String[]> rows, Map<String, String> keys, Map<String, Instant> erased) {
    }

    private Piece read(Connection c, ChainEnd have, long peopleChanges) throws SQLException {
        Tables t = from.tables();
        if (have.sequence() > 0
                && !t.revisions().hashOf(c, have.sequence()).equals(Optional.of(have.hash()))) {
            throw new OtherStore();
        }
        List<Revision> links = t.revisions().links(c, have.sequence(), LINKS_AT_ONCE);
        Set<String> jobIds = new LinkedHashSet<>();
        Set<String> mentioned = new TreeSet<>();
        for (Revision r : links) {
            jobIds.add(r.jobId());
            mentioned.addAll(t.privateText().mentioned(r.part(), r.json()));
        }
        List<String[]> jobs = new ArrayList<>();
        for (String id : jobIds) {
            jobs.addAll(rows(c, "SELECT id, number, created_at FROM job WHERE number IS NOT NULL AND id = ?", id));
        }
        List<String[]> names = new ArrayList<>();
        Map<String, String> keys = new LinkedHashMap<>();
        for (String key : mentioned) {
            names.addAll(rows(c, "SELECT key, lookup, text FROM private_name WHERE key = ?", key));
            rows(c, "SELECT key, secret FROM person_key WHERE key = ?", key).forEach(r -> keys.put(r[0], r[1]));
        }
        long changes = t.people().changes(c);
        return new Piece(links, jobs, names, keys, rows(c, "SELECT pattern, year, last FROM number_series"),
                changes == peopleChanges ? null : people(c, changes));
    }

    private People people(Connection c, long changes) throws SQLException {
        Map<String, String> keys = new LinkedHashMap<>();
        rows(c, "SELECT k.key, k.secret FROM person_key k JOIN person p ON p.key = k.key").forEach(r -> keys.put(r[0], r[1]));
        return new People(changes, rows(c, "SELECT key, json FROM person"), keys, from.tables().personal().erased(c));
    }

    private void put(Connection c, Piece piece) throws SQLException {
        Tables t = to.tables();
        for (String[] job : piece.jobs()) {
            if (t.jobs().numberOf(c, job[0]).isEmpty()) {
                run(c, "INSERT INTO job (id, number, created_at) VALUES (?, ?, ?)", job);
            }
        }
        for (Map.Entry<String, String> e : piece.keys().entrySet()) {
            putKey(c, e);
        }
        for (String[] name : piece.names()) {
            run(c, "INSERT INTO private_name (key, lookup, text) VALUES (?, ?, ?) ON CONFLICT (key) DO NOTHING", name);
        }
        for (String[] series : piece.series()) {
            run(c, "INSERT INTO number_series (pattern, year, last) VALUES (?, CAST(? AS INTEGER), CAST(? AS INTEGER))"
                    + " ON CONFLICT (pattern, year) DO UPDATE SET last = excluded.last", series);
        }
        if (piece.people() != null) {
            putPeople(c, piece.people());
        }
        Set<String> jobs = new LinkedHashSet<>();
        for (Revision r : piece.links()) {
            t.revisions().repeat(c, r);
            if (JobStore.CARDS.equals(r.jobId())) {
                to.writing().rememberCard(c, r);
            } else if (!JobStore.SHOP.equals(r.jobId())) {
                jobs.add(r.jobId());
            }
            if (StockWriting.isItem(r)) {
                to.writing().stock().note(c, r);
            }
            for (String key : t.privateText().mentioned(r.part(), r.json())) {
                t.personal().use(c, key, r.jobId());
            }
        }
        for (String id : jobs) {
            to.writing().derive(c, id);
        }
    }

    private void putPeople(Connection c, People people) throws SQLException {
        Tables t = to.tables();
        Map<String, Instant> fresh = new LinkedHashMap<>(people.erased());
        fresh.keySet().removeAll(t.personal().erased(c).keySet());
        to.writing().erase(c, fresh);
        erased = !fresh.isEmpty();
        for (Map.Entry<String, String> e : people.keys().entrySet()) {
            putKey(c, e);
        }
        run(c, "DELETE FROM person");
        for (String[] person : people.rows()) {
            run(c, "INSERT INTO person (key, json) VALUES (?, ?)", person);
        }
        t.people().changed(c);
        t.settings().put(c, SettingTable.COPIED_PEOPLE, Long.toString(people.changes() + 1));
    }

    private static void putKey(Connection c, Map.Entry<String, String> e) throws SQLException {
        run(c, "INSERT INTO person_key (key, secret) VALUES (?, ?) ON CONFLICT (key) DO NOTHING", e.getKey(),
                e.getValue());
    }

    private static List<String[]> rows(Connection c, String sql, String... values) throws SQLException {
        try (PreparedStatement q = c.prepareStatement(sql)) {
            fill(q, values);
            try (ResultSet r = q.executeQuery()) {
                List<String[]> found = new ArrayList<>();
                while (r.next()) {
                    String[] row = new String[r.getMetaData().getColumnCount()];
                    for (int i = 0; i < row.length; i++) {
                        row[i] = r.getString(i + 1);
                    }
                    found.add(row);
                }
                return found;
            }
        }
    }

    private static void run(Connection c, String sql, String... values) throws SQLException {
        try (PreparedStatement p = c.prepareStatement(sql)) {
            fill(p, values);
            p.executeUpdate();
        }
    }

    private static void fill(PreparedStatement p, String... values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            p.setString(i + 1, values[i]);
        }
    }
}
