package org.copperbook.desk.command;

import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.seal.IssuedCopies;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.sheets.copy.RecordCopy;
import org.copperbook.sheets.copy.UnreadableCopy;
import org.copperbook.store.ConflictException;
import org.copperbook.store.JobStore;
import org.copperbook.store.Saved;

/** Keeps in the store what a release workbook says. Not for the window's thread. */
final class IssuedCopiesKeeping {

    private static final PartKey KEY = PartKey.of(PartKind.ISSUED_COPIES);
    private static final int TRIES = 5;

    private final JobStore store;
    private final String who;

    /** @param who person key of whoever writes the workbook; "" when nobody has said who works here */
    IssuedCopiesKeeping(JobStore store, String who) {
        this.store = store;
        this.who = who;
    }

    /**
     * Adds the workbook to those issued, unless one that says the same stands there.
     *
     * @throws WorkbookNotWrittenException when what was written cannot be read back
     */
    void keep(Job job, Path file) throws WorkbookNotWrittenException {
        RecordCopy copy = readBack(file);
        for (int left = TRIES; left > 0; left--) {
            Optional<Saved> before = store.current(job.id(), KEY);
            Job with = before.map(saved -> job.with(KEY, saved.part())).orElse(job);
            Optional<IssuedCopies> next = copy.addedTo(with, file.getFileName().toString(),
                    Instant.now().truncatedTo(ChronoUnit.SECONDS));
            if (next.isEmpty()) {
                return;
            }
            try {
                store.save(job.id(), KEY, next.get(), before.map(Saved::number).orElse(0), who,
                        DeskWords.text("copy.why"));
                return;
            } catch (ConflictException another) {
                // somebody wrote the same workbook at this moment: add this one to theirs
                if (left == 1) {
                    throw another;
                }
            }
        }
    }

    private static RecordCopy readBack(Path file) throws WorkbookNotWrittenException {
        try {
            return RecordCopy.read(file);
        } catch (UnreadableCopy e) {
            throw new WorkbookNotWrittenException(WorkbookNotWrittenException.Reason.CONTENT, e.getMessage(), e);
        }
    }
}
