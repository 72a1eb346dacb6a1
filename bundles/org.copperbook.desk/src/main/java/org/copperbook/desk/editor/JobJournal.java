package org.copperbook.desk.editor;

import java.io.IOException;
import java.time.Clock;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.copperbook.desk.document.Draft;
import org.copperbook.desk.document.DraftText;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.jobs.PartKey;
import org.copperbook.store.journal.CrashJournal;
import org.copperbook.store.journal.JournalEntry;
import org.eclipse.core.runtime.ILog;

/**
 * Writes what is typed into a job and not saved to the crash journal, a quarter of a second after the first key,
 * and takes it out again when it is saved or thrown away. Called on the window's thread; writes on another.
 */
final class JobJournal {

    private static final long PAUSE_MILLIS = 250;

    private record Entry(Draft draft, int basedOn) {
    }

    private final CrashJournal journal;
    private final ScheduledExecutorService writer;
    private final DraftText text;
    private final String store;
    private final Clock clock;
    private final Set<PartKey> kept = new TreeSet<>();
    private Map<PartKey, Entry> wanted = Map.of();
    private String jobId;
    private String who = "";
    private boolean asked;

    JobJournal(CrashJournal journal, ScheduledExecutorService writer, DraftText text, String store, String jobId,
            Clock clock) {
        this.journal = journal;
        this.writer = writer;
        this.text = text;
        this.store = store;
        this.jobId = jobId;
        this.clock = clock;
    }

    /** Notes what is unsaved now. */
    synchronized void follow(JobDocument document, String person) {
        Map<PartKey, Entry> now = new TreeMap<>();
        document.unsaved().forEach((k, d) -> now.put(k, new Entry(d, document.baseRevision(k))));
        wanted = now;
        who = person;
        if (!asked && !writer.isShutdown()) {
            asked = true;
            writer.schedule(this::write, PAUSE_MILLIS, TimeUnit.MILLISECONDS);
        }
    }

    /** The job has the store's key from now on; entries under the old one go with the next writing. */
    synchronized void renamed(String storeId) {
        String old = jobId;
        if (old.equals(storeId)) {
            return;
        }
        Set<PartKey> gone = new TreeSet<>(kept);
        kept.clear();
        jobId = storeId;
        writer.execute(() -> gone.forEach(k -> discard(old, k)));
    }

    /** Takes everything out: the person closed the job without saving, knowing what that means. */
    synchronized void forget() {
        wanted = Map.of();
        if (!writer.isShutdown()) {
            writer.execute(this::write);
        }
    }

    /** Writes what is unsaved now, and says from another thread whether it is durable. */
    void keep(Consumer<Boolean> kept) {
        writer.execute(() -> kept.accept(write()));
    }

    private boolean write() {
        Map<PartKey, Entry> now;
        String id;
        String person;
        Set<PartKey> gone;
        synchronized (this) {
            asked = false;
            now = wanted;
            id = jobId;
            person = who;
            gone = new TreeSet<>(kept);
            gone.removeAll(now.keySet());
            kept.removeAll(gone);
            kept.addAll(now.keySet());
        }
        boolean durable = true;
        for (Map.Entry<PartKey, Entry> e : now.entrySet()) {
            PartKey key = e.getKey();
            Entry entry = e.getValue();
            try {
                journal.keep(new JournalEntry(store, id, key.toString(), entry.basedOn(), person, clock.instant(),
                        text.write(entry.draft())));
            } catch (IOException x) {
                durable = false;
                ILog.of(JobJournal.class).error("what was typed into " + key + " could not be kept for a crash", x);
            }
        }
        gone.forEach(k -> discard(id, k));
        return durable;
    }

    private void discard(String id, PartKey key) {
        try {
            journal.discard(store, id, key.toString());
        } catch (IOException e) {
            ILog.of(JobJournal.class).warn("the journal entry of " + key + " could not be taken out", e);
        }
    }
}
