package org.copperbook.store.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.jobs.stock.StockMovement.Kind;
import org.copperbook.jobs.stock.StockUnit;
import org.copperbook.store.JobStore;
import org.copperbook.store.Sample;
import org.copperbook.store.Saved;
import org.copperbook.store.sqlite.SqliteJobStore;
import org.copperbook.store.stock.StockMove;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A shelf that was moved for many years. Small in the daily build; {@code -Pscale} makes 100,000 movements of 500 items, a
 * tenth of them of one, and prints the times beside those of the bare query on the same file in the same run.
 */
class StockScaleTest {

    private static final int MOVEMENTS = Integer.getInteger("copperbook.movements", 1_000);
    private static final int ITEMS = Math.max(5, MOVEMENTS / 200);
    private static final int JOBS = 100;
    private static final int ROUNDS = MOVEMENTS > 1_000 ? 60 : 3;
    private static final int FEW_ROUNDS = MOVEMENTS > 1_000 ? 9 : 3;
    private static final int BATCH = 500;
    private static final int SHOWN = 500;
    private static final int BEGIN = 1000;
    private static final String BUSY = code(0);
    private static final String PART = StockItem.key(BUSY).toString();
    private static final Instant AT = Instant.parse("2026-01-05T07:00:00Z");
    /** What is done again and again; it leaves as much on hand as there was. */
    private static final List<Kind> CYCLE = List.of(Kind.RESERVE, Kind.RELEASE, Kind.ISSUE, Kind.RETURN);

    @TempDir
    Path folder;

    private JobStore store;
    private Connection bare;
    private final List<String> jobs = new ArrayList<>();
    private final Map<String, Integer> onHand = new HashMap<>();

    @BeforeEach
    void open() throws SQLException {
        store = SqliteJobStore.open(folder.resolve("stock.sqlite"));
        bare = connect(store.file());
    }

    private static Connection connect(Path file) throws SQLException {
        Connection c = DriverManager.getConnection("jdbc:sqlite:" + file);
        try (Statement s = c.createStatement()) {
            s.execute("PRAGMA synchronous = FULL");
            s.execute("PRAGMA cache_size = -16384");
        }
        return c;
    }

    @AfterEach
    void close() throws SQLException {
        bare.close();
        store.close();
    }

    private static String code(int item) {
        return String.format(Locale.ROOT, "W-%04d", item);
    }

    @Test
    void everyStepStaysNearTheBareQueryHoweverManyMovementsThereAre() throws Exception {
        move();
        assertEquals(MOVEMENTS, number("SELECT COUNT(*) FROM stock_move"));
        assertEquals(MOVEMENTS / 10, number("SELECT COUNT(*) FROM stock_move WHERE part = '" + PART + "'"));
        for (Saved s : store.stock().items()) {
            StockItem item = (StockItem) s.part();
            assertEquals(0, item.onHand().compareTo(BigDecimal.valueOf(onHand.get(item.code()))), item.code());
        }
        time("list of the stock", ROUNDS, r -> assertEquals(ITEMS, store.stock().items().size()), r -> bareList());
        time("movements of an item", ROUNDS, r -> store.stock().ledger(BUSY, SHOWN), r -> bareLedger("m.part = '"
                + PART + "' ORDER BY m.sequence DESC LIMIT " + SHOWN));
        time("movements of a job", ROUNDS, r -> store.stock().movesFor(jobs.get(r % JOBS)), r -> bareLedger("m.job_id = '"
                + jobs.get(r % JOBS) + "' AND m.job_id <> '' ORDER BY m.sequence"));
        Path copy = folder.resolve("bare.sqlite");
        Files.copy(store.file(), copy);
        try (Connection c = connect(copy)) {
            String json = store.stock().item(BUSY).orElseThrow().revision().json();
            time("make a movement", ROUNDS, r -> store.stock().move(List.of(step(BUSY, r)), "p01"), r -> bareMove(c, json));
        }
        time("check of the chain", FEW_ROUNDS, r -> assertEquals(Optional.empty(), store.audit().bad()), r -> read(
                "SELECT r.*, j.number, j.id FROM revision r LEFT JOIN job j ON j.id = r.job_id ORDER BY r.sequence"));
    }

    private void time(String step, int rounds, Timing.Work work, Timing.Work query) throws Exception {
        System.out.println(Timing.of(step, MOVEMENTS, rounds, r -> { }, work, query).among("movements"));
    }

    /** Each item is received and then moved to and fro in whole cycles; the busy one has a tenth of all movements. */
    private void move() throws SQLException {
        for (int i = 0; i < JOBS; i++) {
            jobs.add(store.create(Sample.booking("Mill " + i, "set"), "p01").id());
        }
        for (int i = 0; i < ITEMS; i++) {
            store.stock().describe(StockItem.of(code(i), StockItem.Kind.WIRE, "Round wire " + i, StockUnit.KG), null, "p01", "");
        }
        List<StockMove> moves = new ArrayList<>();
        for (int i = 0; i < ITEMS; i++) {
            moves.add(new StockMove(code(i), StockMovement.of(Kind.RECEIVE, BigDecimal.valueOf(BEGIN), null, AT)));
            onHand.put(code(i), BEGIN);
        }
        int busy = MOVEMENTS / 10 - 1;
        for (int n = 0; n < MOVEMENTS - ITEMS; n++) {
            boolean ofBusy = n < busy;
            int at = ofBusy ? n : n - busy;
            // The others take turns after each whole cycle.
            StockMove move = step(ofBusy ? BUSY : code(1 + at / CYCLE.size() % (ITEMS - 1)), at);
            moves.add(move);
            onHand.merge(move.code(), move.movement().kind() == Kind.ISSUE ? -1 : move.movement().kind() == Kind.RETURN ? 1 : 0,
                    Integer::sum);
        }
        for (int from = 0; from < moves.size(); from += BATCH) {
            store.stock().move(moves.subList(from, Math.min(moves.size(), from + BATCH)), "p01");
        }
        try (Statement s = bare.createStatement()) {
            s.execute("PRAGMA wal_checkpoint(TRUNCATE)");
        }
    }

    private StockMove step(String code, int n) {
        return new StockMove(code, StockMovement.of(CYCLE.get(n % CYCLE.size()), BigDecimal.ONE, jobs.get(n / CYCLE.size() % JOBS),
                AT.plusSeconds(n)));
    }

    private int bareList() throws SQLException {
        return read("SELECT r.* FROM stock_item i JOIN revision r ON r.job_id = 'shop' AND r.part = i.part"
                + " AND r.revision = i.revision ORDER BY i.part");
    }

    private int bareLedger(String where) throws SQLException {
        return read("SELECT r.*, EXISTS (SELECT 1 FROM stock_move u WHERE u.part = m.part AND u.undoes = m.id"
                + " AND u.undoes <> '') FROM stock_move m JOIN revision r ON r.sequence = m.sequence WHERE " + where);
    }

    /** The same rows with values that are known already, into a copy of the file, because the chain would not hold. */
    private static void bareMove(Connection c, String json) throws SQLException {
        try (Statement s = c.createStatement()) {
            s.execute("BEGIN IMMEDIATE");
            s.execute("UPDATE chain_head SET sequence = sequence + 1 WHERE id = 1");
            try (PreparedStatement in = c.prepareStatement("INSERT INTO revision (sequence, job_id, part, revision, saved_at,"
                    + " who, why, json, previous_hash, hash) SELECT h.sequence, 'shop', ?, i.revision + 1, ?, 'p01', '', ?, ?, ?"
                    + " FROM chain_head h, stock_item i WHERE h.id = 1 AND i.part = ?")) {
                in.setString(1, PART);
                in.setString(2, AT.toString());
                in.setString(3, json);
                in.setString(4, UUID.randomUUID().toString());
                in.setString(5, UUID.randomUUID().toString());
                in.setString(6, PART);
                in.executeUpdate();
            }
            s.execute("UPDATE stock_item SET revision = revision + 1 WHERE part = '" + PART + "'");
            s.execute("INSERT INTO stock_move (sequence, part, job_id, kind, id, undoes, quantity) SELECT sequence, '" + PART
                    + "', 'j', 'ISSUE', '" + UUID.randomUUID() + "', '', 1000 FROM chain_head WHERE id = 1");
            s.execute("COMMIT");
        }
    }

    private int number(String sql) throws SQLException {
        try (Statement s = bare.createStatement(); ResultSet r = s.executeQuery(sql)) {
            r.next();
            return r.getInt(1);
        }
    }

    private int read(String sql) throws SQLException {
        int rows = 0;
        try (Statement s = bare.createStatement(); ResultSet r = s.executeQuery(sql)) {
            int columns = r.getMetaData().getColumnCount();
            while (r.next()) {
                for (int i = 1; i <= columns; i++) {
                    r.getString(i);
                }
                rows++;
            }
        }
        return rows;
    }
}
