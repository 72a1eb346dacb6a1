package org.copperbook.store.jdbc;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.copperbook.jobs.PartKind;
import org.copperbook.store.Change;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;

/**
 * Notices what other programs change in the same store. Every writing transaction goes through here, so that own
 * changes are known by their place in the chain and only those of others are told as made elsewhere.
 */
final class ChangeWatch implements AutoCloseable {

    private static final System.Logger LOG = System.getLogger(ChangeWatch.class.getName());

    private static final long GATHER_MILLIS = 100;

    private final Database database;
    private final Tables tables;
    private final Listeners listeners;
    private final ScheduledExecutorService clockwork;
    private final AtomicBoolean soon = new AtomicBoolean();
    private final List<Range> own = new ArrayList<>();
    private long mark;
    private long seenSequence;
    private long seenPeople;

    /** Sequences after {@code from} up to {@code to}. */
    private record Range(long from, long to, long people) {
    }

    ChangeWatch(Database database, Tables tables, Listeners listeners, Duration every) {
        this.database = database;
        this.tables = tables;
        this.listeners = listeners;
        mark = database.changeMark();
        seenSequence = database.read(tables.revisions()::lastSequence);
        seenPeople = database.read(tables.people()::changes);
        clockwork = Executors.newSingleThreadScheduledExecutor(r -> {
            Thread t = new Thread(r, "copperbook-change-watch");
            t.setDaemon(true);
            return t;
        });
        clockwork.scheduleWithFixedDelay(this::look, every.toMillis(), every.toMillis(), TimeUnit.MILLISECONDS);
        database.onNotice(this::lookSoon);
    }

    /** Runs a writing transaction and remembers which links it made. */
    <T> T write(Work<T> work) {
        List<Range> made = new ArrayList<>();
        try {
            return database.write(c -> {
                long from = tables.revisions().lastSequence(c);
                long people = tables.people().changes(c);
                T result = work.on(c);
                // Noted before the commit: afterwards the watching thread could see the links first.
                made.add(new Range(from, tables.revisions().lastSequence(c), tables.people().changes(c) - people));
                note(made.get(0));
                return result;
            });
        } catch (RuntimeException e) {
            forget(made);
            throw e;
        }
    }

    /** Looks once and tells what others changed since the last look. */
    void look() {
        try {
            changesOfOthers().forEach(listeners::tell);
        } catch (StoreException e) {
            LOG.log(System.Logger.Level.DEBUG, "looking for changes of others failed; tried again later", e);
        }
    }

    /** Many notices in a row are one look: in a busy shop each save would otherwise set everybody reading. */
    private void lookSoon() {
        if (!soon.compareAndSet(false, true)) {
            return;
        }
        try {
            clockwork.schedule(() -> {
                soon.set(false);
                look();
            }, GATHER_MILLIS, TimeUnit.MILLISECONDS);
        } catch (RejectedExecutionException e) {
            LOG.log(System.Logger.Level.DEBUG, "a notice came after the end", e);
        }
    }

    @Override
    public void close() {
        clockwork.shutdown();
    }

    private synchronized void note(Range range) {
        own.add(range);
    }

    private synchronized void forget(List<Range> ranges) {
        own.removeAll(ranges);
    }

    private synchronized Set<Change> changesOfOthers() {
        Set<Change> found = new LinkedHashSet<>();
        long now = database.changeMark();
        if (now == mark) {
            return found;
        }
        return database.read(c -> {
            long last = tables.revisions().lastSequence(c);
            for (RevisionTable.Place p : tables.revisions().after(c, seenSequence)) {
                // What is noted of the staff comes with a change of people, which is told below.
                if (!PartKind.STAFF.word().equals(p.part())
                        && own.stream().noneMatch(r -> p.sequence() > r.from() && p.sequence() <= r.to())) {
                    // Ten thousand cards taken in are one change to whoever shows them.
                    found.add(new Change(p.jobId(), JobStore.CARDS.equals(p.jobId()) ? Change.CARDS : p.part(), true));
                }
            }
            List<Range> settled = own.stream().filter(r -> r.to() <= last).toList();
            long people = tables.people().changes(c);
            if (people > seenPeople + settled.stream().mapToLong(Range::people).sum()) {
                found.add(new Change(JobStore.SHOP, Change.PEOPLE, true));
            }
            own.removeAll(settled);
            seenSequence = last;
            seenPeople = people;
            mark = now;
            return found;
        });
    }
}
