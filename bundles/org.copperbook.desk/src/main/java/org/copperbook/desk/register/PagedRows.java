package org.copperbook.desk.register;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Rows as a virtual table needs them: fetched page by page in the background when they are looked at. Owned by one thread
 * (the window's); answers to an earlier question are dropped.
 *
 * @param <R> a row
 */
public final class PagedRows<R> {

    /**
     * Some of the rows.
     *
     * @param total rows there are in all
     * @param rows  those of the page
     */
    public record Page<R>(int total, List<R> rows) {
    }

    /** Answers a question; may wait for a disk. */
    public interface Source<R> {
        Page<R> page(int offset, int limit);
    }

    private final int pageSize;
    private final Executor background;
    private final Executor owner;
    private final Consumer<Optional<RuntimeException>> changed;
    private final Map<Integer, Page<R>> pages = new HashMap<>();
    private final Set<Integer> asked = new HashSet<>();
    private Source<R> source;
    private int total;
    private int generation;

    /**
     * @param pageSize   rows fetched at once
     * @param background where is asked
     * @param owner      runs on the owning thread
     * @param changed    told on the owning thread when rows have come or could not be fetched
     */
    public PagedRows(int pageSize, Executor background, Executor owner, Consumer<Optional<RuntimeException>> changed) {
        this.pageSize = pageSize;
        this.background = background;
        this.owner = owner;
        this.changed = changed;
    }

    /** Asks anew; the rows known stay until the new ones are there. */
    public void ask(Source<R> question) {
        source = question;
        generation++;
        asked.clear();
        ask(0);
    }

    /** Rows there are. */
    public int total() {
        return total;
    }

    /** A row; empty while it is being fetched. */
    public Optional<R> row(int index) {
        int page = index / pageSize;
        Page<R> there = pages.get(page);
        if (there == null) {
            ask(page);
            return Optional.empty();
        }
        int at = index - page * pageSize;
        return at < there.rows().size() ? Optional.of(there.rows().get(at)) : Optional.empty();
    }

    private void ask(int page) {
        if (!asked.add(page)) {
            return;
        }
        int of = generation;
        Source<R> question = source;
        background.execute(() -> {
            try {
                Page<R> answer = question.page(page * pageSize, pageSize);
                owner.execute(() -> take(of, page, answer));
            } catch (RuntimeException e) {
                owner.execute(() -> {
                    if (of == generation) {
                        changed.accept(Optional.of(e));
                    }
                });
            }
        });
    }

    private void take(int of, int page, Page<R> answer) {
        if (of != generation) {
            return;
        }
        if (page == 0) {
            pages.clear();
        }
        pages.put(page, answer);
        total = answer.total();
        changed.accept(Optional.empty());
    }
}
