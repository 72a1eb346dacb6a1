package org.copperbook.desk.register;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.RegisterRow;
import org.copperbook.store.RegisterSlice;
import org.copperbook.store.RegisterSort;

/** The rows of the register that fit a filter, in an order, as {@link PagedRows}. */
public final class RegisterRows {

    static final int PAGE = 100;

    private final Function<RegisterQuery, RegisterSlice> source;
    private final PagedRows<RegisterRow> rows;
    private String text = "";
    private RegisterSort sort = RegisterSort.NEWEST_FIRST;

    /**
     * @param source     answers a query; may wait for a disk
     * @param background where it is asked
     * @param owner      runs on the owning thread
     * @param changed    told on the owning thread when rows have come or could not be fetched
     */
    public RegisterRows(Function<RegisterQuery, RegisterSlice> source, Executor background, Executor owner,
            Consumer<Optional<RuntimeException>> changed) {
        this.source = source;
        rows = new PagedRows<>(PAGE, background, owner, changed);
    }

    /** Shows the rows that fit a filter, in an order. */
    public void query(String filter, RegisterSort order) {
        text = filter;
        sort = order;
        reload();
    }

    /** Fetches anew what is shown. The rows known stay until the new ones are there. */
    public void reload() {
        String words = text;
        RegisterSort order = sort;
        rows.ask((offset, limit) -> {
            RegisterSlice slice = source.apply(new RegisterQuery(words, offset, limit, order));
            return new PagedRows.Page<>(slice.total(), slice.rows());
        });
    }

    public RegisterSort sort() {
        return sort;
    }

    /** Rows that fit the filter. */
    public int total() {
        return rows.total();
    }

    /** A row; empty while it is being fetched. */
    public Optional<RegisterRow> row(int index) {
        return rows.row(index);
    }
}
