package org.copperbook.office.board;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;
import org.copperbook.store.BoardQuery;
import org.copperbook.store.BoardRow;
import org.copperbook.store.BoardSlice;

/**
 * Jobs of the board as a virtual table needs them: fetched page by page in the background when they are looked at. Owned
 * by one thread (the window's); answers to an earlier question are dropped.
 */
final class BoardRows {

    static final int PAGE = 60;

    private final Function<BoardQuery, BoardSlice> source;
    private final Executor background;
    private final Executor owner;
    private final Consumer<Optional<RuntimeException>> changed;
    private final Map<Integer, BoardSlice> pages = new HashMap<>();
    private final Set<Integer> asked = new HashSet<>();
    private BoardQuery asking;
    private int total;
    private int generation;

    /**
     * @param source     answers a question; may wait for a disk
     * @param background where it is asked
     * @param owner      runs on the owning thread
     * @param changed    told on the owning thread when jobs have come or could not be fetched
     */
    BoardRows(Function<BoardQuery, BoardSlice> source, Executor background, Executor owner,
            Consumer<Optional<RuntimeException>> changed) {
        this.source = source;
        this.background = background;
        this.owner = owner;
        this.changed = changed;
    }

    /** Asks anew; the jobs known stay until the new ones are there. Where the page begins is of no matter. */
    void query(BoardQuery query) {
        asking = query;
        generation++;
        asked.clear();
        ask(0);
    }

    /** Jobs there are. */
    int total() {
        return total;
    }

    /** A job; empty while it is being fetched. */
    Optional<BoardRow> row(int index) {
        int page = index / PAGE;
        BoardSlice slice = pages.get(page);
        if (slice == null) {
            ask(page);
            return Optional.empty();
        }
        int at = index - page * PAGE;
        return at < slice.rows().size() ? Optional.of(slice.rows().get(at)) : Optional.empty();
    }

    private void ask(int page) {
        if (!asked.add(page)) {
            return;
        }
        int of = generation;
        BoardQuery q = new BoardQuery(asking.step(), asking.which(), asking.order(), asking.today(), page * PAGE, PAGE);
        background.execute(() -> {
            try {
                BoardSlice slice = source.apply(q);
                owner.execute(() -> take(of, page, slice));
            } catch (RuntimeException e) {
                owner.execute(() -> {
                    if (of == generation) {
                        changed.accept(Optional.of(e));
                    }
                });
            }
        });
    }

    private void take(int of, int page, BoardSlice slice) {
        if (of != generation) {
            return;
        }
        if (page == 0) {
            pages.clear();
        }
        pages.put(page, slice);
        total = slice.total();
        changed.accept(Optional.empty());
    }
}
