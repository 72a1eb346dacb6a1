package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.store.BadLink;
import org.copperbook.store.BadLink.Kind;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreText;

/**
 * Walks the chain from its first link to its last and stops at the first that does not hold.
 *
 * <p>A link whose own hash does not fit its fields was altered. One that fits itself but does not follow the link
 * before was moved when its true predecessor still is in the store; otherwise its predecessor is gone, or was replaced
 * by a link with a hash made anew when none is lacking by count. The end of the chain is checked against the head.
 *
 * <p>Somebody who can write the file and makes every hash after the change anew, the head included, is not found out
 * by this alone; a hash noted outside the store (on a printed record, in a backup) finds them.
 */
final class ChainAudit {

    private static final String WALK = "SELECT r.sequence, r.job_id, r.part, r.revision, r.saved_at, r.who, r.why,"
            + " r.json, r.previous_hash, r.hash, j.number, j.id FROM revision r LEFT JOIN job j ON j.id = r.job_id"
            + " ORDER BY r.sequence";

    private final List<String> notes = new ArrayList<>();
    private Link before = new Link(0, "", "", "", 0, "", "", "", "", "", Chain.START, true);
    private long read;
    private long lacking;

    /**
     * A link as it stands in the file, as text, so that nothing in it can stop the walk.
     *
     * @param known whether the job it belongs to is in the store
     */
    private record Link(long sequence, String jobId, String number, String part, int revision, String savedAt,
            String who, String why, String json, String previous, String hash, boolean known) {

        boolean holds() {
            return known && hash.equals(Chain.hash(previous, jobId, number, part, revision, savedAt, who, why, json));
        }
    }

    /** The first bad link, if any. Call once. */
    Optional<BadLink> firstBad(Connection c) throws SQLException {
        long headSequence = 0;
        String headHash = "";
        long count;
        try (PreparedStatement q = c.prepareStatement(
                "SELECT (SELECT COUNT(*) FROM revision), sequence, hash FROM chain_head WHERE id = 1");
                ResultSet r = q.executeQuery()) {
            if (!r.next()) {
                return Optional.of(bad(Kind.MISSING, before, "audit.noHead"));
            }
            count = r.getLong(1);
            headSequence = r.getLong(2);
            headHash = r.getString(3);
        }
        lacking = headSequence - count;
        try (PreparedStatement q = c.prepareStatement(WALK); ResultSet r = q.executeQuery()) {
            while (r.next()) {
                read++;
                Link link = link(r);
                Optional<BadLink> bad = check(c, link);
                if (bad.isPresent()) {
                    return bad;
                }
                noteClock(link);
                before = link;
            }
        }
        if (headSequence > before.sequence()) {
            return Optional.of(missing(before.sequence() + 1, headSequence));
        }
        if (!headHash.equals(before.hash()) || headSequence < before.sequence()) {
            return Optional.of(bad(Kind.TAMPERED, before, "audit.head"));
        }
        return Optional.empty();
    }

    /** Links read until the end or the first bad one. */
    long read() {
        return read;
    }

    /** Odd but harmless things seen on the way. */
    List<String> notes() {
        return notes;
    }

    private Optional<BadLink> check(Connection c, Link link) throws SQLException {
        if (!link.holds()) {
            return Optional.of(bad(Kind.TAMPERED, link, "audit.tampered"));
        }
        boolean follows = link.previous().equals(before.hash());
        if (follows && link.sequence() == before.sequence() + 1) {
            return Optional.empty();
        }
        if (follows) {
            return Optional.of(bad(Kind.TAMPERED, link, "audit.renumbered"));
        }
        if (isThere(c, link.previous())) {
            return Optional.of(bad(Kind.REORDERED, link, "audit.reordered"));
        }
        if (link.sequence() != before.sequence() + 1) {
            return Optional.of(missing(before.sequence() + 1, link.sequence() - 1));
        }
        if (lacking > 0) {
            return Optional.of(missing(link.sequence(), link.sequence()));
        }
        return Optional.of(bad(Kind.TAMPERED, before.sequence() == 0 ? link : before, "audit.replaced"));
    }

    private static boolean isThere(Connection c, String hash) throws SQLException {
        if (hash.equals(Chain.START)) {
            return true;
        }
        try (PreparedStatement q = c.prepareStatement("SELECT 1 FROM revision WHERE hash = ?")) {
            q.setString(1, hash);
            try (ResultSet r = q.executeQuery()) {
                return r.next();
            }
        }
    }

    private void noteClock(Link link) {
        if (before.sequence() == 0) {
            return;
        }
        try {
            if (Instant.parse(link.savedAt()).isBefore(Instant.parse(before.savedAt()))) {
                notes.add(StoreText.of("audit.clock", link.sequence(), link.savedAt(), before.savedAt()));
            }
        } catch (DateTimeException e) {
            notes.add(StoreText.of("audit.time", link.sequence(), link.savedAt()));
        }
    }

    private static BadLink bad(Kind kind, Link at, String message) {
        String job = JobStore.SHOP.equals(at.jobId()) ? JobStore.SHOP : at.number();
        return new BadLink(kind, at.sequence(), job, at.part(), at.revision(),
                StoreText.of(message, at.sequence(), job, at.part(), at.revision(), at.savedAt()));
    }

    private static BadLink missing(long from, long to) {
        return new BadLink(Kind.MISSING, from, "", "", 0,
                from >= to ? StoreText.of("audit.missing", from) : StoreText.of("audit.missingMany", from, to));
    }

    private static Link link(ResultSet r) throws SQLException {
        String number = r.getString(11);
        return new Link(r.getLong(1), text(r, 2), number == null ? "" : number, text(r, 3), r.getInt(4), text(r, 5),
                text(r, 6), text(r, 7), text(r, 8), text(r, 9), text(r, 10), r.getString(12) != null);
    }

    private static String text(ResultSet r, int column) throws SQLException {
        String t = r.getString(column);
        return t == null ? "" : t;
    }
}
