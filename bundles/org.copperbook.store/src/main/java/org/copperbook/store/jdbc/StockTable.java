package org.copperbook.store.jdbc;

import java.math.BigDecimal;
import java.math.RoundingMode;
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
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.store.Revision;

/** Which revision of an item is the current one, and which revisions are movements for whom; derived from the revisions. */
final class StockTable {

    /** Raised when rows are derived another way. */
    static final int EDITION = 1;

    private static final String CURRENT = "SELECT " + RevisionTable.COLUMNS + " FROM stock_item i JOIN revision r"
            + " ON r.job_id = 'shop' AND r.part = i.part AND r.revision = i.revision";
    private static final String MOVES = "SELECT " + RevisionTable.COLUMNS + ", EXISTS (SELECT 1 FROM stock_move u"
            + " WHERE u.part = m.part AND u.undoes = m.id AND u.undoes <> '') FROM stock_move m JOIN revision r ON r.sequence = m.sequence";

    private static final String ON_SHELF = "kind IN ('RECEIVE', 'ISSUE', 'RETURN', 'ADJUST')";

    /** A movement's revision, and whether it was taken back. */
    record Move(Revision revision, boolean undone) {
    }

    void clear(Connection c) throws SQLException {
        for (String table : List.of("stock_move", "stock_item")) {
            try (PreparedStatement d = c.prepareStatement("DELETE FROM " + table)) {
                d.executeUpdate();
            }
        }
    }

    /** Notes a revision of an item; they come in their order. */
    void note(Connection c, Revision r, StockItem item) throws SQLException {
        try (PreparedStatement in = c.prepareStatement("INSERT INTO stock_item (part, kind, revision) VALUES (?, ?, ?)"
                + " ON CONFLICT (part) DO UPDATE SET kind = excluded.kind, revision = excluded.revision")) {
            in.setString(1, r.part());
            in.setString(2, item.kind().name());
            in.setInt(3, r.revision());
            in.executeUpdate();
        }
        StockMovement m = item.movement();
        if (m == null) {
            return;
        }
        try (PreparedStatement in = c.prepareStatement("INSERT INTO stock_move (sequence, part, job_id, kind, id, undoes,"
                + " quantity) VALUES (?, ?, ?, ?, ?, ?, ?)")) {
            in.setLong(1, r.sequence());
            in.setString(2, r.part());
            in.setString(3, m.job() == null ? "" : m.job());
            in.setString(4, m.kind().name());
            in.setString(5, m.id());
            in.setString(6, m.undoes() == null ? "" : m.undoes());
            in.setLong(7, m.quantity().setScale(StockItem.DECIMALS, RoundingMode.HALF_EVEN).unscaledValue().longValueExact());
            in.executeUpdate();
        }
    }

    /** The current revisions of all items, by code. */
    List<Revision> items(Connection c) throws SQLException {
        try (PreparedStatement q = c.prepareStatement(CURRENT + " ORDER BY i.part")) {
            return RevisionTable.list(q);
        }
    }

    /** The current revisions of the items of a kind. */
    List<Revision> items(Connection c, StockItem.Kind kind) throws SQLException {
        try (PreparedStatement q = c.prepareStatement(CURRENT + " WHERE i.kind = ? ORDER BY i.part")) {
            q.setString(1, kind.name());
            return RevisionTable.list(q);
        }
    }

    /** What was issued of an item to a job and has not come back. */
    BigDecimal issued(Connection c, String part, String jobId) throws SQLException {
        try (PreparedStatement q = c.prepareStatement("SELECT COALESCE(SUM(CASE kind WHEN 'ISSUE' THEN quantity"
                + " ELSE -quantity END), 0) FROM stock_move WHERE part = ? AND job_id = ? AND kind IN ('ISSUE', 'RETURN')")) {
            q.setString(1, part);
            q.setString(2, jobId == null ? "" : jobId);
            try (ResultSet r = q.executeQuery()) {
                r.next();
                return BigDecimal.valueOf(r.getLong(1), StockItem.DECIMALS).stripTrailingZeros();
            }
        }
    }

    /**
     * The last movement that changed what is on hand of an item.
     *
     * @param part    the item's part
     * @param id      id of the movement
     * @param savedAt when it was kept
     */
    record Last(String part, String id, Instant savedAt) {
    }

    /** The last movement on the shelf of each item that has one, by part. */
    Map<String, Last> lastMoves(Connection c) throws SQLException {
        Map<String, Last> last = new HashMap<>();
        try (PreparedStatement q = c.prepareStatement("SELECT m.part, m.id, r.saved_at FROM stock_move m JOIN revision r"
                + " ON r.sequence = m.sequence WHERE m.sequence IN (SELECT MAX(sequence) FROM stock_move WHERE " + ON_SHELF
                + " GROUP BY part)")) {
            try (ResultSet r = q.executeQuery()) {
                while (r.next()) {
                    last.put(r.getString(1), last(r));
                }
            }
        }
        return last;
    }

    /** The last movement on the shelf of an item. */
    Optional<Last> lastMove(Connection c, String part) throws SQLException {
        try (PreparedStatement q = c.prepareStatement("SELECT m.part, m.id, r.saved_at FROM stock_move m JOIN revision r"
                + " ON r.sequence = m.sequence WHERE m.part = ? AND m." + ON_SHELF + " ORDER BY m.sequence DESC LIMIT 1")) {
            q.setString(1, part);
            try (ResultSet r = q.executeQuery()) {
                return r.next() ? Optional.of(last(r)) : Optional.empty();
            }
        }
    }

    private static Last last(ResultSet r) throws SQLException {
        return new Last(r.getString(1), r.getString(2), Kept.time(r.getString(3)));
    }

    /** Whether a movement of an item was made already. */
    boolean made(Connection c, String part, String id) throws SQLException {
        return any(c, "SELECT 1 FROM stock_move WHERE part = ? AND id = ? LIMIT 1", part, id);
    }

    /** Whether a movement of an item was taken back. */
    boolean undone(Connection c, String part, String id) throws SQLException {
        return any(c, "SELECT 1 FROM stock_move WHERE part = ? AND undoes = ? AND undoes <> '' LIMIT 1", part, id);
    }

    /** Whether an item was ever moved. */
    boolean moved(Connection c, String part) throws SQLException {
        return any(c, "SELECT 1 FROM stock_move WHERE part = ? LIMIT 1", part);
    }

    /** The movements of an item, the newest first. */
    List<Move> ledger(Connection c, String part, int most) throws SQLException {
        try (PreparedStatement q = c.prepareStatement(MOVES + " WHERE m.part = ? ORDER BY m.sequence DESC LIMIT ?")) {
            q.setString(1, part);
            q.setInt(2, most);
            return moves(q);
        }
    }

    /** The movements for a job, the oldest first. */
    List<Move> movesFor(Connection c, String jobId) throws SQLException {
        try (PreparedStatement q = c.prepareStatement(MOVES + " WHERE m.job_id = ? AND m.job_id <> '' ORDER BY m.sequence")) {
            q.setString(1, jobId);
            return moves(q);
        }
    }

    private static List<Move> moves(PreparedStatement q) throws SQLException {
        List<Move> found = new ArrayList<>();
        try (ResultSet r = q.executeQuery()) {
            while (r.next()) {
                found.add(new Move(RevisionTable.row(r), r.getBoolean(11)));
            }
        }
        return found;
    }

    private static boolean any(Connection c, String sql, String... values) throws SQLException {
        try (PreparedStatement q = c.prepareStatement(sql)) {
            for (int i = 0; i < values.length; i++) {
                q.setString(i + 1, values[i]);
            }
            try (ResultSet r = q.executeQuery()) {
                return r.next();
            }
        }
    }
}
