package org.copperbook.store.jdbc;

import com.fasterxml.jackson.databind.node.TextNode;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.copperbook.store.JobStore;
import org.copperbook.store.Revision;

/** The chained revisions. */
final class RevisionTable {

    static final String COLUMNS =
            "r.sequence, r.job_id, r.part, r.revision, r.saved_at, r.who, r.why, r.json, r.previous_hash, r.hash";
    private static final int AT_ONCE = 1000;
    private static final String LATEST_OF_JOB = " FROM revision r WHERE r.job_id = ? AND"
            + " r.revision = (SELECT MAX(l.revision) FROM revision l WHERE l.job_id = r.job_id AND l.part = r.part)";

    /** Appends a link at the end of the chain. */
    Revision append(Connection c, String jobId, String number, String part, int revision, Instant savedAt, String who,
            String why, String json) throws SQLException {
        long sequence;
        String previous;
        try (PreparedStatement next = c.prepareStatement(
                "UPDATE chain_head SET sequence = sequence + 1 WHERE id = 1 RETURNING sequence, hash");
                ResultSet r = next.executeQuery()) {
            r.next();
            sequence = r.getLong(1);
            previous = r.getString(2);
        }
        String hash = Chain.hash(previous, jobId, number, part, revision, savedAt.toString(), who, why, json);
        Revision link = new Revision(sequence, jobId, part, revision, savedAt, who, why, json, previous, hash);
        repeat(c, link);
        return link;
    }

    /** Puts a link that has its place and hash already at the end of the chain. */
    void repeat(Connection c, Revision link) throws SQLException {
        try (PreparedStatement in = c.prepareStatement("INSERT INTO revision (sequence, job_id, part, revision,"
                + " saved_at, who, why, json, previous_hash, hash) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
                PreparedStatement head = c.prepareStatement("UPDATE chain_head SET sequence = ?, hash = ? WHERE id = 1")) {
            in.setLong(1, link.sequence());
            in.setString(2, link.jobId());
            in.setString(3, link.part());
            in.setInt(4, link.revision());
            in.setString(5, link.savedAt().toString());
            in.setString(6, link.who());
            in.setString(7, link.why());
            in.setString(8, link.json());
            in.setString(9, link.previousHash());
            in.setString(10, link.hash());
            in.executeUpdate();
            head.setLong(1, link.sequence());
            head.setString(2, link.hash());
            head.executeUpdate();
        }
    }

    /** The links after a sequence, the oldest first, at most some. */
    List<Revision> links(Connection c, long after, int most) throws SQLException {
        try (PreparedStatement q = c.prepareStatement(
                "SELECT " + COLUMNS + " FROM revision r WHERE r.sequence > ? ORDER BY r.sequence LIMIT ?")) {
            q.setLong(1, after);
            q.setInt(2, most);
            return list(q);
        }
    }

    /** The current revision of a part. */
    Optional<Revision> latest(Connection c, String jobId, String part) throws SQLException {
        try (PreparedStatement q = c.prepareStatement("SELECT " + COLUMNS
                + " FROM revision r WHERE r.job_id = ? AND r.part = ? ORDER BY r.revision DESC LIMIT 1")) {
            q.setString(1, jobId);
            q.setString(2, part);
            return list(q).stream().findFirst();
        }
    }

    /** The number of a part's current revision; 0 when the job has no such part. */
    int latestNumber(Connection c, String jobId, String part) throws SQLException {
        try (PreparedStatement q = c.prepareStatement(
                "SELECT COALESCE(MAX(revision), 0) FROM revision WHERE job_id = ? AND part = ?")) {
            q.setString(1, jobId);
            q.setString(2, part);
            try (ResultSet r = q.executeQuery()) {
                r.next();
                return r.getInt(1);
            }
        }
    }

    /** The current revision of every part of a job. */
    List<Revision> latestOfJob(Connection c, String jobId) throws SQLException {
        try (PreparedStatement q = c.prepareStatement("SELECT " + COLUMNS + LATEST_OF_JOB)) {
            q.setString(1, jobId);
            return list(q);
        }
    }

    /** The current revision of every part of a kind of which a job can have many, by name. */
    List<Revision> latestOfKind(Connection c, String jobId, String kind) throws SQLException {
        // '0' follows '/' in every collation that compares bytes, so this is the range of names that begin with "kind/".
        try (PreparedStatement q = c.prepareStatement(
                "SELECT " + COLUMNS + LATEST_OF_JOB + " AND r.part >= ? AND r.part < ? ORDER BY r.part")) {
            q.setString(1, jobId);
            q.setString(2, kind + "/");
            q.setString(3, kind + "0");
            return list(q);
        }
    }

    /**
     * What a part says now.
     *
     * @param sequence place in the chain
     * @param part     text of its key
     * @param revision revision of the part, from 1
     * @param savedAt  when, as kept
     * @param json     the chained text
     */
    record Text(long sequence, String part, int revision, String savedAt, String json) {
    }

    /** The chained texts of the current parts of a job by the names of the parts, and no more: people wait for this. */
    Map<String, String> jsonOfJob(Connection c, String jobId) throws SQLException {
        Map<String, String> found = new HashMap<>();
        try (PreparedStatement q = c.prepareStatement("SELECT r.part, r.json" + LATEST_OF_JOB)) {
            q.setString(1, jobId);
            try (ResultSet r = q.executeQuery()) {
                while (r.next()) {
                    found.put(r.getString(1), r.getString(2));
                }
            }
        }
        return found;
    }

    /** What every part of a job says now, in no order. */
    List<Text> textsOfJob(Connection c, String jobId) throws SQLException {
        List<Text> found = new ArrayList<>();
        try (PreparedStatement q = c.prepareStatement(
                "SELECT r.sequence, r.part, r.revision, r.saved_at, r.json" + LATEST_OF_JOB)) {
            q.setString(1, jobId);
            try (ResultSet r = q.executeQuery()) {
                while (r.next()) {
                    found.add(new Text(r.getLong(1), r.getString(2), r.getInt(3), r.getString(4), r.getString(5)));
                }
            }
        }
        return found;
    }

    /** The names of the parts a job has. */
    List<String> partsOf(Connection c, String jobId) throws SQLException {
        List<String> found = new ArrayList<>();
        try (PreparedStatement q = c.prepareStatement(
                "SELECT DISTINCT part FROM revision WHERE job_id = ? ORDER BY part")) {
            q.setString(1, jobId);
            try (ResultSet r = q.executeQuery()) {
                while (r.next()) {
                    found.add(r.getString(1));
                }
            }
        }
        return found;
    }

    /** Every revision of a part, oldest first. */
    List<Revision> history(Connection c, String jobId, String part) throws SQLException {
        try (PreparedStatement q = c.prepareStatement("SELECT " + COLUMNS
                + " FROM revision r WHERE r.job_id = ? AND r.part = ? ORDER BY r.revision")) {
            q.setString(1, jobId);
            q.setString(2, part);
            return list(q);
        }
    }

    /** Hands over the current revision of one part of every job, one after the other. */
    void eachLatest(Connection c, String part, Consumer<Revision> each) throws SQLException {
        try (PreparedStatement q = c.prepareStatement("SELECT " + COLUMNS + " FROM revision r WHERE r.part = ? AND"
                + " r.revision = (SELECT MAX(l.revision) FROM revision l WHERE l.job_id = r.job_id AND l.part = r.part)")) {
            q.setString(1, part);
            try (ResultSet r = q.executeQuery()) {
                while (r.next()) {
                    each.accept(row(r));
                }
            }
        }
    }

    /** What is done with the chained text of a part. */
    interface Each {
        void take(Connection c, String jobId, String part, String chained) throws SQLException;
    }

    /** Hands over every revision of the parts of some kinds. */
    void eachOf(Connection c, List<String> kinds, Each each) throws SQLException {
        for (String kind : kinds) {
            try (PreparedStatement q = c.prepareStatement(
                    "SELECT job_id, part, json FROM revision WHERE part = ? OR part LIKE ?")) {
                q.setString(1, kind);
                q.setString(2, kind + "/%");
                try (ResultSet r = q.executeQuery()) {
                    while (r.next()) {
                        each.take(c, r.getString(1), r.getString(2), r.getString(3));
                    }
                }
            }
        }
    }

    /** What is done with a revision. */
    interface EachRevision {
        void take(Revision r) throws SQLException;
    }

    /** Hands over every revision of the parts of a kind in a job, in the order of the chain. */
    void eachRevision(Connection c, String jobId, String kind, EachRevision each) throws SQLException {
        for (long after = 0; ; ) {
            List<Revision> some;
            try (PreparedStatement q = c.prepareStatement("SELECT " + COLUMNS + " FROM revision r WHERE r.sequence > ? AND"
                    + " r.job_id = ? AND r.part LIKE ? ORDER BY r.sequence LIMIT ?")) {
                q.setLong(1, after);
                q.setString(2, jobId);
                q.setString(3, kind + "/%");
                q.setInt(4, AT_ONCE);
                some = list(q);
            }
            for (Revision r : some) {
                each.take(r);
            }
            if (some.size() < AT_ONCE) {
                return;
            }
            after = some.get(some.size() - 1).sequence();
        }
    }

    /** How many revisions have a name as plain text, in any field. */
    int saying(Connection c, String name) throws SQLException {
        String quoted = TextNode.valueOf(name).toString();
        try (PreparedStatement q = c.prepareStatement("SELECT COUNT(*) FROM revision WHERE json LIKE ? ESCAPE '\\'")) {
            q.setString(1, SearchText.anywhere(quoted));
            try (ResultSet r = q.executeQuery()) {
                r.next();
                return r.getInt(1);
            }
        }
    }

    /**
     * The unbroken run of revisions round one that the same person made of parts of the same kind with the same reason; empty
     * when there is no such link.
     */
    List<Revision> runAround(Connection c, long sequence) throws SQLException {
        Optional<Revision> of = links(c, sequence - 1, 1).stream().filter(r -> r.sequence() == sequence).findFirst();
        if (of.isEmpty()) {
            return List.of();
        }
        long before = otherNextTo(c, of.get(), "<", "DESC").orElse(0L);
        long after = otherNextTo(c, of.get(), ">", "ASC").orElse(Long.MAX_VALUE);
        try (PreparedStatement q = c.prepareStatement("SELECT " + COLUMNS
                + " FROM revision r WHERE r.sequence > ? AND r.sequence < ? ORDER BY r.sequence")) {
            q.setLong(1, before);
            q.setLong(2, after);
            return list(q);
        }
    }

    private static Optional<Long> otherNextTo(Connection c, Revision of, String side, String order) throws SQLException {
        try (PreparedStatement q = c.prepareStatement("SELECT sequence FROM revision WHERE sequence " + side + " ?"
                + " AND NOT (job_id = ? AND who = ? AND why = ? AND part LIKE ?) ORDER BY sequence " + order + " LIMIT 1")) {
            q.setLong(1, of.sequence());
            q.setString(2, of.jobId());
            q.setString(3, of.who());
            q.setString(4, of.why());
            q.setString(5, of.part().substring(0, of.part().indexOf('/') + 1) + "%");
            try (ResultSet r = q.executeQuery()) {
                return r.next() ? Optional.of(r.getLong(1)) : Optional.empty();
            }
        }
    }

    /** One revision of a part. */
    Optional<Revision> numbered(Connection c, String jobId, String part, int revision) throws SQLException {
        try (PreparedStatement q = c.prepareStatement("SELECT " + COLUMNS
                + " FROM revision r WHERE r.job_id = ? AND r.part = ? AND r.revision = ?")) {
            q.setString(1, jobId);
            q.setString(2, part);
            q.setInt(3, revision);
            return list(q).stream().findFirst();
        }
    }

    /** Where the chain ends. */
    JobStore.ChainEnd end(Connection c) throws SQLException {
        try (PreparedStatement q = c.prepareStatement("SELECT sequence, hash FROM chain_head WHERE id = 1");
                ResultSet r = q.executeQuery()) {
            r.next();
            return new JobStore.ChainEnd(r.getLong(1), r.getString(2));
        }
    }

    /** The number of the last link. */
    long lastSequence(Connection c) throws SQLException {
        return end(c).sequence();
    }

    /** The hash of a link. */
    Optional<String> hashOf(Connection c, long sequence) throws SQLException {
        try (PreparedStatement q = c.prepareStatement("SELECT hash FROM revision WHERE sequence = ?")) {
            q.setLong(1, sequence);
            try (ResultSet r = q.executeQuery()) {
                return r.next() ? Optional.of(r.getString(1)) : Optional.empty();
            }
        }
    }

    /** Where a link stands and what it is of. */
    record Place(long sequence, String jobId, String part) {
    }

    /** The places of the links after a sequence. */
    List<Place> after(Connection c, long sequence) throws SQLException {
        List<Place> found = new ArrayList<>();
        try (PreparedStatement q = c.prepareStatement(
                "SELECT sequence, job_id, part FROM revision WHERE sequence > ? ORDER BY sequence")) {
            q.setLong(1, sequence);
            try (ResultSet r = q.executeQuery()) {
                while (r.next()) {
                    found.add(new Place(r.getLong(1), r.getString(2), r.getString(3)));
                }
            }
        }
        return found;
    }

    /** Whether a part of a kind of which there can be many was saved after a link. */
    boolean anyOfKindAfter(Connection c, long sequence, String jobId, String kind) throws SQLException {
        try (PreparedStatement q = c.prepareStatement("SELECT 1 FROM revision WHERE sequence > ? AND job_id = ?"
                + " AND part >= ? AND part < ? LIMIT 1")) {
            q.setLong(1, sequence);
            q.setString(2, jobId);
            q.setString(3, kind + "/");
            q.setString(4, kind + "0");
            try (ResultSet r = q.executeQuery()) {
                return r.next();
            }
        }
    }

    static List<Revision> list(PreparedStatement q) throws SQLException {
        List<Revision> found = new ArrayList<>();
        try (ResultSet r = q.executeQuery()) {
            while (r.next()) {
                found.add(row(r));
            }
        }
        return found;
    }

    /** The revision in the current row of a query over {@link #COLUMNS}. */
    static Revision row(ResultSet r) throws SQLException {
        return new Revision(r.getLong(1), r.getString(2), r.getString(3), r.getInt(4), Kept.time(r.getString(5)),
                r.getString(6), r.getString(7), r.getString(8), r.getString(9), r.getString(10));
    }
}
