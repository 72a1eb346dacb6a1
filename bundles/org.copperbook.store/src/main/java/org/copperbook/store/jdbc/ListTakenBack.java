package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.store.JobStore;
import org.copperbook.store.Revision;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreText;

/**
 * Takes a list of stock back that was taken in. The revisions of a list stand one after the other in the chain, by one person and
 * with one reason.
 */
final class ListTakenBack {

    private static final int MOST_NAMED = 20;

    private final Tables tables;
    private final Reading reading;
    private final StockWriting stock;
    private final StockWriting.Append append;

    ListTakenBack(Tables tables, Reading reading, StockWriting stock, StockWriting.Append append) {
        this.tables = tables;
        this.reading = reading;
        this.stock = stock;
        this.append = append;
    }

    List<Saved> takeBack(Connection c, long sequence, String who, String why, Instant now, IntPredicate goOn)
            throws SQLException {
        Map<String, List<Revision>> list = list(c, sequence);
        List<String> since = new ArrayList<>();
        for (Map.Entry<String, List<Revision>> e : list.entrySet()) {
            Revision last = e.getValue().get(e.getValue().size() - 1);
            if (tables.revisions().latestNumber(c, JobStore.SHOP, e.getKey()) != last.revision()) {
                since.add(item(c, last).code());
            }
        }
        if (!since.isEmpty()) {
            String named = String.join(", ", since.subList(0, Math.min(MOST_NAMED, since.size())));
            throw new StoreException(StoreException.Kind.STOCK, StoreText.of("stock.listMoved", since.size(),
                    since.size() > MOST_NAMED ? named + " \u2026" : named));
        }
        List<Saved> back = new ArrayList<>();
        for (List<Revision> of : list.values()) {
            JdbcJobStore.goOn(goOn, back.size());
            back.add(takeBack(c, of, who, why, now));
        }
        JdbcJobStore.goOn(goOn, back.size());
        return back;
    }

    /** The revisions of the list by item. */
    private Map<String, List<Revision>> list(Connection c, long sequence) throws SQLException {
        Map<String, List<Revision>> list = new LinkedHashMap<>();
        for (Revision r : tables.revisions().runAround(c, sequence)) {
            boolean foreign = !StockWriting.isItem(r)
                    || Optional.ofNullable(item(c, r).movement()).filter(m -> m.list() == null).isPresent();
            if (foreign) {
                throw noList();
            }
            list.computeIfAbsent(r.part(), p -> new ArrayList<>()).add(r);
        }
        if (list.isEmpty()) {
            throw noList();
        }
        return list;
    }

    private Saved takeBack(Connection c, List<Revision> of, String who, String why, Instant now) throws SQLException {
        Revision first = of.get(0);
        Saved current = reading.saved(c, of.get(of.size() - 1));
        PartKey key = current.key();
        for (Revision r : of) {
            StockItem then = item(c, r);
            if (then.movement() != null) {
                StockItem moved = stock.moved(c, (StockItem) current.part(), then.movement().reverse(now));
                current = append.append(c, key, moved, current.number() + 1, who, why);
            }
        }
        StockItem is = (StockItem) current.part();
        Optional<Revision> before = tables.revisions().numbered(c, JobStore.SHOP, first.part(), first.revision() - 1);
        StockItem next = before.isPresent() ? is.describedAs(item(c, before.get())) : is.retire();
        return next.equals(is.describedAs(is)) ? current : append.append(c, key, next, current.number() + 1, who, why);
    }

    private StockItem item(Connection c, Revision r) throws SQLException {
        return (StockItem) reading.saved(c, r).part();
    }

    private static StoreException noList() {
        return new StoreException(StoreException.Kind.STOCK, StoreText.of("stock.noList"));
    }
}
