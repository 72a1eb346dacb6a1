package org.copperbook.desk.register;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.RegisterRow;
import org.copperbook.store.RegisterSlice;
import org.copperbook.store.RegisterSort;

/**
 * The rows of the register as a virtual table needs them: fetched page by page in the background when they are looked
 * at. Owned by one thread (the window's); answers that belong to an earlier filter are dropped.
 */
public final class RegisterRows {

    static final int PAGE = 100;

    private final Function<RegisterQuery, RegisterSlice> source;
    private final Executor background;
    private final Executor owner;
    private final Consumer<Optional<RuntimeException>> changed;
    private final Map<Integer, RegisterSlice> pages = new HashMap<>();
    private final Set<Integer> asked = new HashSet<>();
    private String text = "";
    private RegisterSort sort = RegisterSort.NEWEST_FIRST;
    private int total;
    private int generation;

    /**
     * @param source     answers a query; may wait for a disk
     * @param background where it is asked
     * @param owner      runs on the owning thread
     * @param changed    told on the owning thread when rows have come or could not be fetched
     */
    public RegisterRows(Function<RegisterQuery, RegisterSlice> source, Executor background, Executor owner,
            Consumer<Optional<RuntimeException>> changed) {
        this.source = source;
        this.background = background;
        this.owner = owner;
        this.changed = changed;
    }

    /** Shows the rows that fit a filter, in an order. */
    public void query(String filter, RegisterSort order) {
        text = filter;
        sort = order;
        reload();
    }

    /** Fetches anew what is shown. The rows known stay until the new ones are there. */
    public void reload() {
        generation++;
        asked.clear();
        ask(0);
    }

    public RegisterSort sort() {
        return sort;
    }

    /** Rows that fit the filter. */
    public int total() {
        return total;
    }

    /** A row; empty while it is being fetched. */
    public Optional<RegisterRow> row(int index) {
        int page = index / PAGE;
        RegisterSlice slice = pages.get(page);
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
        int asking = generation;
        RegisterQuery query = new RegisterQuery(text, page * PAGE, PAGE, sort);
        background.execute(() -> {
            try {
                RegisterSlice slice = source.apply(query);
                owner.execute(() -> take(asking, page, slice));
            } catch (RuntimeException e) {
                owner.execute(() -> {
                    if (asking == generation) {
                        changed.accept(Optional.of(e));
                    }
                });
            }
        });
    }

    private void take(int answered, int page, RegisterSlice slice) {
        if (answered != generation) {
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
