package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.IntPredicate;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.rights.Right;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.store.Change;
import org.copperbook.store.JobStore;
import org.copperbook.store.Saved;
import org.copperbook.store.stock.MovedSinceException;
import org.copperbook.store.stock.Stock;
import org.copperbook.store.stock.StockEntry;
import org.copperbook.store.stock.StockMove;

/** Stock over a database engine with SQL. */
final class JdbcStock implements Stock {

    private final Database database;
    private final Tables tables;
    private final Reading reading;
    private final Writing writing;
    private final Guard guard;
    private final ChangeWatch watch;
    private final Listeners listeners;

    JdbcStock(Database database, Tables tables, Reading reading, Writing writing, Guard guard, ChangeWatch watch,
            Listeners listeners) {
        this.database = database;
        this.tables = tables;
        this.reading = reading;
        this.writing = writing;
        this.guard = guard;
        this.watch = watch;
        this.listeners = listeners;
    }

    @Override
    public List<Saved> items() {
        return database.read(reading::stockItems);
    }

    @Override
    public Optional<Saved> item(String code) {
        return StockItem.isCode(code) ? database.read(c -> reading.current(c, JobStore.SHOP, StockItem.key(code)))
                : Optional.empty();
    }

    @Override
    public List<Stand> stands() {
        return database.read(c -> {
            Map<String, StockTable.Last> last = tables.stock().lastMoves(c);
            return reading.stockItems(c).stream().map(s -> {
                StockTable.Last of = last.get(s.key().toString());
                return new Stand((StockItem) s.part(), of == null ? "" : of.id(), of == null ? null : of.savedAt());
            }).toList();
        });
    }

    @Override
    public Optional<Stand> stand(String code) {
        return StockItem.isCode(code) ? database.read(c -> writing.stock().stand(c, StockItem.key(code))) : Optional.empty();
    }

    @Override
    public Saved describe(StockItem item, StockItem before, String who, String why) {
        item.key();
        JdbcJobStore.named(who);
        Saved saved = watch.write(c -> {
            guard.may(c, Right.KEEP_STOCK, who);
            return writing.stock().describe(c, item, before, who, why == null ? "" : why);
        });
        tell(List.of(saved));
        return saved;
    }

    @Override
    public List<Saved> move(List<StockMove> moves, String who) {
        JdbcJobStore.named(who);
        List<Saved> moved = watch.write(c -> moved(c, moves, who));
        tell(moved);
        return moved;
    }

    /** Makes movements inside a writing transaction; {@link #tell} of them when it is durable. */
    List<Saved> moved(Connection c, List<StockMove> moves, String who) throws SQLException {
        for (StockMove m : moves) {
            guard.may(c, Right.toMove(m.movement().kind()), who);
        }
        return writing.stock().move(c, moves, who);
    }

    @Override
    public List<Saved> takeIn(List<Listed> rows, String who, String why, IntPredicate goOn) {
        rows.forEach(r -> r.item().key());
        JdbcJobStore.named(who);
        String list = UUID.randomUUID().toString();
        List<Saved> taken = watch.write(c -> {
            guard.may(c, Right.KEEP_STOCK, who);
            List<Saved> all = new ArrayList<>();
            List<MovedSinceException.Moved> since = new ArrayList<>();
            for (Listed r : rows) {
                writing.stock().movedSince(c, r).ifPresent(since::add);
            }
            if (!since.isEmpty()) {
                throw new MovedSinceException(since);
            }
            for (Listed r : rows) {
                JdbcJobStore.goOn(goOn, all.size());
                all.add(writing.stock().takeIn(c, r.item(), r.counted(), list, who, why == null ? "" : why));
            }
            JdbcJobStore.goOn(goOn, all.size());
            return all;
        });
        tell(taken);
        return taken;
    }

    @Override
    public List<Saved> takeBackList(long sequence, String who, String why, IntPredicate goOn) {
        JdbcJobStore.named(who);
        List<Saved> back = watch.write(c -> {
            guard.may(c, Right.KEEP_STOCK, who);
            return writing.listTakenBack().takeBack(c, sequence, who, why == null ? "" : why, writing.now(), goOn);
        });
        tell(back);
        return back;
    }

    @Override
    public List<StockEntry> ledger(String code, int most) {
        return StockItem.isCode(code)
                ? database.read(c -> entries(c, tables.stock().ledger(c, StockItem.key(code).toString(), most))) : List.of();
    }

    @Override
    public List<StockEntry> movesFor(String jobId) {
        return database.read(c -> entries(c, tables.stock().movesFor(c, jobId)));
    }

    @Override
    public List<Saved> takeOverWire(String name, String who, String why) {
        JdbcJobStore.named(who);
        List<Saved> made = watch.write(c -> {
            guard.may(c, Right.KEEP_STOCK, who);
            return writing.stock().takeOverWire(c, name, who, why == null ? "" : why);
        });
        if (!made.isEmpty()) {
            tell(made);
            listeners.tell(new Change(JobStore.SHOP, PartKind.WIRE_STOCK.word(), false));
        }
        return made;
    }

    private List<StockEntry> entries(Connection c, List<StockTable.Move> moves) throws SQLException {
        List<StockEntry> entries = new ArrayList<>();
        for (StockTable.Move m : moves) {
            entries.add(new StockEntry(m.revision().sequence(), (StockItem) reading.saved(c, m.revision()).part(), m.revision().savedAt(),
                    m.revision().who(), m.undone()));
        }
        return entries;
    }

    void tell(List<Saved> saved) {
        saved.stream().map(s -> s.key().toString()).distinct()
                .forEach(part -> listeners.tell(new Change(JobStore.SHOP, part, false)));
    }
}
