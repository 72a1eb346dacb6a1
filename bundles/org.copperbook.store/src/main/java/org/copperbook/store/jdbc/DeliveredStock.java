package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.handback.HandBack;
import org.copperbook.jobs.handback.ReceivedStock;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.store.stock.StockMove;

/**
 * Keeps stock and the deliveries written down for a job together: what a record has more than the one before is received,
 * what it has no more is taken back.
 */
final class DeliveredStock {

    /** What was received, and the delivery it is of. */
    private record Booked(ReceivedStock stock, HandBack.Delivery of) {
    }

    private final Tables tables;
    private final Reading reading;

    DeliveredStock(Tables tables, Reading reading) {
        this.tables = tables;
        this.reading = reading;
    }

    /** The movements that keeping a record in the place of the current one asks for; to be made in the same transaction. */
    List<StockMove> moves(Connection c, String jobId, HandBack next, Instant now) throws SQLException {
        Map<String, Booked> before = booked(reading.current(c, jobId, PartKey.of(PartKind.HAND_BACK))
                .map(s -> (HandBack) s.part()).orElse(null));
        Map<String, Booked> after = booked(next);
        List<StockMove> moves = new ArrayList<>();
        for (Booked b : before.values()) {
            if (!after.containsKey(b.stock().id())) {
                takeBack(c, jobId, b.stock(), now, moves);
            }
        }
        for (Booked b : after.values()) {
            if (!before.containsKey(b.stock().id())) {
                receive(c, jobId, b, moves);
            }
        }
        return moves;
    }

    /** Each once, also where a row of the record was copied with what is in it. */
    private static Map<String, Booked> booked(HandBack record) {
        Map<String, Booked> booked = new LinkedHashMap<>();
        if (record != null) {
            record.deliveries().forEach(d -> d.received().forEach(r -> booked.putIfAbsent(r.id(), new Booked(r, d))));
        }
        return booked;
    }

    /** What was taken back in stock already is not taken back again. The last movement goes first. */
    private void takeBack(Connection c, String jobId, ReceivedStock received, Instant now, List<StockMove> moves)
            throws SQLException {
        List<StockMove> back = new ArrayList<>();
        for (StockTable.Move m : tables.stock().movesFor(c, jobId)) {
            StockItem item = (StockItem) reading.saved(c, m.revision()).part();
            StockMovement made = item.movement();
            if (received.moved(made) && made.undoes() == null && !m.undone()) {
                back.add(0, new StockMove(item.code(), made.reverse(now)));
            }
        }
        moves.addAll(back);
    }

    /** What was taken back before, as by undoing, and is there again, is received anew. */
    private void receive(Connection c, String jobId, Booked b, List<StockMove> moves) throws SQLException {
        if (!StockItem.isCode(b.stock().item())) {
            throw StockWriting.noItem(b.stock().item());
        }
        String part = StockItem.key(b.stock().item()).toString();
        int time = 1;
        List<StockMovement> movements = b.stock().movements(time, jobId, b.of());
        while (tables.stock().made(c, part, movements.get(0).id())) {
            if (!tables.stock().undone(c, part, movements.get(0).id())) {
                return;
            }
            time++;
            movements = b.stock().movements(time, jobId, b.of());
        }
        movements.forEach(m -> moves.add(new StockMove(b.stock().item(), m)));
    }
}
