package org.copperbook.store.jdbc;

import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.shop.WireStock;
import org.copperbook.jobs.stock.Refusal;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.jobs.stock.StockMovement.Kind;
import org.copperbook.jobs.stock.StockRules;
import org.copperbook.jobs.stock.WireOnShelf;
import org.copperbook.store.ConflictException;
import org.copperbook.store.JobStore;
import org.copperbook.store.Revision;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreText;
import org.copperbook.store.stock.MovedSinceException;
import org.copperbook.store.stock.Stock;
import org.copperbook.store.stock.StockMove;
import org.copperbook.store.stock.StockRefusedException;

/** The steps that move stock, each inside one writing transaction. */
final class StockWriting {

    /** Appends a revision of one of the shop's parts. */
    interface Append {
        Saved append(Connection c, PartKey key, org.copperbook.jobs.Part part, int revision, String who, String why)
                throws SQLException;
    }

    private final Tables tables;
    private final Reading reading;
    private final PartJson json;
    private final Append append;

    StockWriting(Tables tables, Reading reading, PartJson json, Append append) {
        this.tables = tables;
        this.reading = reading;
        this.json = json;
        this.append = append;
    }

    /** Notes a revision of an item that was kept. One that cannot be read, or whose amount is beyond any shelf, stays out of the lists. */
    void note(Connection c, Revision r) throws SQLException {
        try {
            tables.stock().note(c, r, (StockItem) json.read(PartKey.parse(r.part()), r.json()));
        } catch (BadRecordException | IllegalArgumentException | ArithmeticException e) {
            System.getLogger(StockWriting.class.getName()).log(System.Logger.Level.WARNING,
                    "revision " + r.revision() + " of " + r.part() + " cannot be read and is not listed", e);
        }
    }

    /** Whether a revision is one of an item. */
    static boolean isItem(Revision r) {
        return JobStore.SHOP.equals(r.jobId()) && r.part().startsWith(PartKind.STOCK_ITEM.word() + "/");
    }

    void rebuild(Connection c) throws SQLException {
        tables.stock().clear(c);
        tables.revisions().eachRevision(c, JobStore.SHOP, PartKind.STOCK_ITEM.word(), r -> note(c, r));
        tables.settings().put(c, SettingTable.STOCK_EDITION, Integer.toString(StockTable.EDITION));
    }

    Saved describe(Connection c, StockItem item, StockItem before, String who, String why) throws SQLException {
        PartKey key = item.key();
        Optional<Saved> now = reading.current(c, JobStore.SHOP, key);
        if (now.isEmpty()) {
            return append.append(c, key, StockItem.of(item.code(), item.kind(), item.name(), item.unit()).describedAs(item), 1,
                    who, why);
        }
        if (before == null) {
            throw new StoreException(StoreException.Kind.ALREADY_THERE, StoreText.of("stock.codeTaken", item.code()));
        }
        StockItem current = (StockItem) now.get().part();
        StockItem next = current.describedAs(item);
        if (!current.describedAs(before).equals(current.describedAs(current))) {
            throw new ConflictException(StoreText.of("stock.described", item.code(), now.get().revision().who()),
                    now.get(), item, now.get().number());
        }
        boolean counted = current.onHand().signum() != 0 || tables.stock().moved(c, key.toString());
        if (current.unit() != next.unit() && counted) {
            throw new StoreException(StoreException.Kind.STOCK, StoreText.of("stock.unit", item.code(),
                    current.unit().sign()));
        }
        return next.equals(current.describedAs(current)) ? now.get()
                : append.append(c, key, next, now.get().number() + 1, who, why);
    }

    List<Saved> move(Connection c, List<StockMove> moves, String who) throws SQLException {
        List<Saved> made = new ArrayList<>();
        for (StockMove m : moves) {
            PartKey key = key(m.code());
            Saved now = reading.current(c, JobStore.SHOP, key).orElseThrow(() -> noItem(m.code()));
            if (tables.stock().made(c, key.toString(), m.movement().id())) {
                made.add(now);
            } else {
                if (m.movement().job() != null) {
                    reading.number(c, m.movement().job());
                }
                made.add(append.append(c, key, moved(c, (StockItem) now.part(), m.movement()), now.number() + 1, who,
                        m.movement().note() == null ? "" : m.movement().note()));
            }
        }
        return made;
    }

    StockItem moved(Connection c, StockItem item, StockMovement m) throws SQLException {
        String part = item.key().toString();
        if (m.undoes() != null && tables.stock().undone(c, part, m.undoes())) {
            throw refused(c, new Refusal(Refusal.Why.UNDONE_ALREADY, item, m, null, List.of()));
        }
        BigDecimal issued = m.kind() == Kind.RETURN ? tables.stock().issued(c, part, m.job()) : BigDecimal.ZERO;
        StockRules.Moved moved = StockRules.move(item, m, issued);
        if (moved instanceof StockRules.Refused r) {
            throw refused(c, r.refusal());
        }
        return ((StockRules.Done) moved).item();
    }

    private StockRefusedException refused(Connection c, Refusal refusal) throws SQLException {
        List<String> numbers = new ArrayList<>();
        for (String job : refusal.jobs()) {
            numbers.add(tables.jobs().numberOf(c, job).orElse(job));
        }
        return new StockRefusedException(refusal, refusal.message(job -> numbers.get(refusal.jobs().indexOf(job))));
    }

    /** How an item stands in this transaction; nothing when it is not there. */
    Optional<Stock.Stand> stand(Connection c, PartKey key) throws SQLException {
        Optional<Saved> now = reading.current(c, JobStore.SHOP, key);
        if (now.isEmpty()) {
            return Optional.empty();
        }
        Optional<StockTable.Last> last = tables.stock().lastMove(c, key.toString());
        return Optional.of(new Stock.Stand((StockItem) now.get().part(), last.map(StockTable.Last::id).orElse(""),
                last.map(StockTable.Last::savedAt).orElse(null)));
    }

    /** How an item stands that was moved on the shelf since its row of a list was made; nothing when it was not. */
    Optional<MovedSinceException.Moved> movedSince(Connection c, Stock.Listed row) throws SQLException {
        if (row.counted() == null || row.seen() == null) {
            return Optional.empty();
        }
        return stand(c, row.item().key()).filter(now -> !row.seen().holds(now))
                .map(now -> new MovedSinceException.Moved(row, now));
    }

    /**
     * Takes in an item from a list: a new one with what is on hand as its first delivery, one that is there described anew
     * and counted. What is set aside comes as movements and not with the item.
     *
     * @param counted how much is on hand; null when nobody counted
     * @param list    key of the list that it is of; null for none
     */
    Saved takeIn(Connection c, StockItem item, BigDecimal counted, String list, String who, String why) throws SQLException {
        Optional<Saved> now = reading.current(c, JobStore.SHOP, item.key());
        StockItem before = now.map(s -> (StockItem) s.part()).orElse(null);
        Saved described = describe(c, before == null ? item : item.filledFrom(before), before, who, why);
        StockItem is = (StockItem) described.part();
        BigDecimal more = counted == null ? BigDecimal.ZERO : counted.subtract(is.onHand());
        if (more.signum() == 0) {
            return described;
        }
        StockMovement said = item.movement();
        boolean told = before == null && said != null && said.kind() == Kind.RECEIVE && said.quantity().compareTo(more) == 0;
        if (told && said.job() != null) {
            reading.number(c, said.job());
        }
        StockMovement m = told ? said : StockMovement.of(before == null && more.signum() > 0 ? Kind.RECEIVE : Kind.ADJUST,
                more, null, null).allTheSame().withList(list);
        return append.append(c, item.key(), moved(c, is, m), described.number() + 1, who, why);
    }

    List<Saved> takeOverWire(Connection c, String name, String who, String why) throws SQLException {
        PartKey old = PartKey.of(PartKind.WIRE_STOCK);
        Optional<Saved> list = reading.current(c, JobStore.SHOP, old);
        if (list.isEmpty() || ((WireStock) list.get().part()).spools().isEmpty()) {
            return List.of();
        }
        WireStock spools = (WireStock) list.get().part();
        List<String> codes = reading.stockItems(c).stream().map(s -> ((StockItem) s.part()).code()).toList();
        List<Saved> made = new ArrayList<>();
        for (StockItem item : WireOnShelf.items(spools, codes, name, list.get().revision().savedAt())) {
            made.add(append.append(c, item.key(), item, 1, who, why));
        }
        append.append(c, old, new WireStock(spools.schema(), List.of(), spools.more()), list.get().number() + 1, who, why);
        return made;
    }

    private static PartKey key(String code) {
        if (!StockItem.isCode(code)) {
            throw noItem(code);
        }
        return StockItem.key(code);
    }

    static StoreException noItem(String code) {
        return new StoreException(StoreException.Kind.NOT_FOUND, StoreText.of("stock.noItem", code));
    }
}
