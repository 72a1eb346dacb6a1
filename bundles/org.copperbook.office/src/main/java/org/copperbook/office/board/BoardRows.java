package org.copperbook.office.board;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;
import org.copperbook.desk.register.PagedRows;
import org.copperbook.store.BoardQuery;
import org.copperbook.store.BoardRow;
import org.copperbook.store.BoardSlice;

/** Jobs of the board that fit a question, as {@link PagedRows}. */
final class BoardRows {

    static final int PAGE = 60;

    private final Function<BoardQuery, BoardSlice> source;
    private final PagedRows<BoardRow> rows;

    /**
     * @param source     answers a question; may wait for a disk
     * @param background where it is asked
     * @param owner      runs on the owning thread
     * @param changed    told on the owning thread when jobs have come or could not be fetched
     */
    BoardRows(Function<BoardQuery, BoardSlice> source, Executor background, Executor owner,
            Consumer<Optional<RuntimeException>> changed) {
        this.source = source;
        rows = new PagedRows<>(PAGE, background, owner, changed);
    }

    /** Asks anew; the jobs known stay until the new ones are there. Where the page begins is of no matter. */
    void query(BoardQuery query) {
        rows.ask((offset, limit) -> {
            BoardSlice slice = source.apply(new BoardQuery(query.step(), query.which(), query.order(), query.today(),
                    offset, limit));
            return new PagedRows.Page<>(slice.total(), slice.rows());
        });
    }

    /** Jobs there are. */
    int total() {
        return rows.total();
    }

    /** A job; empty while it is being fetched. */
    Optional<BoardRow> row(int index) {
        return rows.row(index);
    }
}
