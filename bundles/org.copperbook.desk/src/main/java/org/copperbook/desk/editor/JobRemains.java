package org.copperbook.desk.editor;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.copperbook.desk.document.Draft;
import org.copperbook.desk.document.DraftText;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.store.JobStore;
import org.copperbook.store.Saved;
import org.copperbook.store.journal.CrashJournal;
import org.copperbook.store.journal.JournalEntry;
import org.copperbook.store.journal.LeftBehind;
import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.widgets.Display;

/** Puts back what a crash left of a job or of the shop's own parts, or throws it away when the person says so. */
final class JobRemains {

    private final CrashJournal journal;
    private final JobDocument document;
    private final DraftText text;
    private final JobStore store;

    JobRemains(CrashJournal journal, JobDocument document, DraftText text, JobStore store) {
        this.journal = journal;
        this.document = document;
        this.text = text;
        this.store = store;
    }

    /** What a crash left of one job; for a background thread. A journal that cannot be read is logged. */
    static List<LeftBehind> of(CrashJournal journal, String storeFile, String jobId) {
        try {
            return journal.left(storeFile).entries().stream().filter(l -> l.entry().jobId().equals(jobId)).toList();
        } catch (IOException e) {
            ILog.of(JobRemains.class).error("the crash journal could not be read", e);
            return List.of();
        }
    }

    /**
     * Puts every draft back that can be read, as typed by who typed it; where the store went on meanwhile the two are shown side by side.
     */
    void putBack(List<LeftBehind> left, Display display, Consumer<String> typedBy, Consumer<PartKey> show) {
        new DeskJob(DeskWords.text("left.task"), monitor -> {
            for (LeftBehind l : left) {
                take(l, display, typedBy, show);
            }
        }).schedule();
    }

    void throwAway(List<LeftBehind> left) {
        new DeskJob(DeskWords.text("left.task"), monitor -> {
            for (LeftBehind l : left) {
                try {
                    journal.discard(l);
                } catch (IOException e) {
                    ILog.of(JobRemains.class).warn("a journal entry could not be taken out: " + l.file(), e);
                }
            }
        }).schedule();
    }

    /** Person keys of those who typed what is left, without those who are not known by now. */
    static Set<String> authors(List<LeftBehind> left) {
        Set<String> authors = new TreeSet<>();
        left.forEach(l -> authors.add(l.entry().who() == null ? "" : l.entry().who()));
        authors.remove("");
        return authors;
    }

    private void take(LeftBehind l, Display display, Consumer<String> typedBy, Consumer<PartKey> show) {
        JournalEntry e = l.entry();
        PartKey key = PartKey.parse(e.part());
        Optional<Draft> draft = text.read(key, e.state());
        try {
            if (draft.isEmpty() || !journal.takeOver(l)) {
                return;
            }
        } catch (IOException x) {
            ILog.of(JobRemains.class).error("what was left of " + key + " could not be taken over", x);
            return;
        }
        // The shop's parts are read one by one, so this one may not have been read at all yet.
        Optional<Saved> now = document.baseRevision(key) != e.basedOnRevision() ? store.current(e.jobId(), key)
                : Optional.empty();
        // The draft began from the revision it names, not from the one that is opened now.
        Optional<Saved> began = now.isEmpty() || e.basedOnRevision() == 0 ? Optional.empty()
                : store.history(e.jobId(), key).stream().filter(s -> s.number() == e.basedOnRevision()).findFirst();
        Part base = began.map(Saved::part).orElse(null);
        display.asyncExec(() -> {
            now.filter(s -> s.number() > document.baseRevision(key))
                    .ifPresent(s -> document.takeOver(key, s.part(), s.number()));
            if (e.who() != null && !e.who().isEmpty()) {
                typedBy.accept(e.who());
            }
            document.recover(key, draft.get());
            now.filter(s -> s.number() > e.basedOnRevision() && !document.merge(key, base, s.part(), s.number()))
                    .ifPresent(s -> document.conflict(key, base, s.part(), s.number(), s.revision().who(),
                            s.revision().savedAt()));
            show.accept(key);
        });
    }
}
