package org.copperbook.store.mirror;

import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.store.Saved;
import org.copperbook.store.stock.Stock;
import org.copperbook.store.stock.StockEntry;
import org.copperbook.store.stock.StockMove;

/** Stock on the server, read from the copy while the server does not answer. */
final class MirroredStock implements Stock {

    private final MirroredStore store;

    MirroredStock(MirroredStore store) {
        this.store = store;
    }

    @Override
    public List<Saved> items() {
        return store.read(s -> s.stock().items());
    }

    @Override
    public Optional<Saved> item(String code) {
        return store.read(s -> s.stock().item(code));
    }

    @Override
    public List<Stand> stands() {
        return store.read(s -> s.stock().stands());
    }

    @Override
    public Optional<Stand> stand(String code) {
        return store.read(s -> s.stock().stand(code));
    }

    @Override
    public Saved describe(StockItem item, StockItem before, String who, String why) {
        return store.onServer(s -> s.stock().describe(item, before, who, why));
    }

    @Override
    public List<Saved> move(List<StockMove> moves, String who) {
        return store.onServer(s -> s.stock().move(moves, who));
    }

    @Override
    public List<Saved> takeIn(List<Listed> rows, String who, String why, IntPredicate goOn) {
        return store.onServer(s -> s.stock().takeIn(rows, who, why, goOn));
    }

    @Override
    public List<Saved> takeBackList(long sequence, String who, String why, IntPredicate goOn) {
        return store.onServer(s -> s.stock().takeBackList(sequence, who, why, goOn));
    }

    @Override
    public List<StockEntry> ledger(String code, int most) {
        return store.read(s -> s.stock().ledger(code, most));
    }

    @Override
    public List<StockEntry> movesFor(String jobId) {
        return store.read(s -> s.stock().movesFor(jobId));
    }

    @Override
    public List<Saved> takeOverWire(String name, String who, String why) {
        return store.onServer(s -> s.stock().takeOverWire(name, who, why));
    }
}
