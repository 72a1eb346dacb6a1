package org.copperbook.desk.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.desk.document.PendingSave;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.store.ConflictException;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;

/** Saves the parts that wait, one revision each; for a background thread. Books the machine in first where it is new. */
final class JobSaving {

    /**
     * What came of it. What was saved before a failure is saved.
     *
     * @param booked    the job's key and number when it was booked in now
     * @param saved     parts saved
     * @param conflicts parts that somebody else saved meanwhile
     * @param failure   what stopped it; empty when everything was tried
     */
    record Outcome(Optional<JobHandle> booked, List<Saved> saved, List<ConflictException> conflicts,
            Optional<StoreException> failure) {
    }

    private static final int FIRST = 1;

    private final JobStore store;
    private final String who;

    JobSaving(JobStore store, String who) {
        this.store = store;
        this.who = who;
    }

    Outcome save(String jobId, boolean isNew, List<PendingSave> pending, IProgressMonitor monitor) {
        SubMonitor progress = SubMonitor.convert(monitor, DeskWords.text("save.task"), pending.size());
        List<Saved> saved = new ArrayList<>();
        List<ConflictException> conflicts = new ArrayList<>();
        Optional<JobHandle> booked = Optional.empty();
        Optional<StoreException> refused = Optional.empty();
        try {
            for (PendingSave p : pending) {
                progress.subTask(p.key().toString());
                if (isNew && booked.isEmpty()) {
                    booked = Optional.of(there(jobId).orElseGet(() -> store.create(jobId, booking(pending), who)));
                }
                if (isNew && p.key().kind() == PartKind.BOOKING) {
                    booking(p, saved, conflicts, jobId);
                } else {
                    Optional<StoreException> now = one(jobId, p, saved, conflicts);
                    refused = refused.isPresent() ? refused : now;
                }
                progress.worked(1);
            }
        } catch (StoreException e) {
            return new Outcome(booked, saved, conflicts, Optional.of(e));
        }
        return new Outcome(booked, saved, conflicts, refused);
    }

    /** What this person may not save, or what stock does not allow, does not keep back the rest; gives the refusal. */
    private Optional<StoreException> one(String id, PendingSave p, List<Saved> saved, List<ConflictException> conflicts) {
        try {
            saved.add(store.save(id, p.key(), p.part(), p.basedOnRevision(), who, ""));
        } catch (ConflictException e) {
            conflicts.add(e);
        } catch (StoreException e) {
            if (!refusal(e)) {
                throw e;
            }
            return Optional.of(e);
        }
        return Optional.empty();
    }

    /** Whether a save was refused for what it asks for, and the store itself is sound. */
    static boolean refusal(StoreException e) {
        return e.kind() == StoreException.Kind.NOT_ALLOWED || e.kind() == StoreException.Kind.STOCK;
    }

    /** The job when it was booked in already, by a try of which nothing was heard any more. */
    private Optional<JobHandle> there(String jobId) {
        try {
            return Optional.of(new JobHandle(jobId, store.load(jobId).number()));
        } catch (StoreException e) {
            if (e.kind() != StoreException.Kind.NOT_FOUND) {
                throw e;
            }
            return Optional.empty();
        }
    }

    /** The booking came with the job; what was typed since an earlier try is a revision of its own. */
    private void booking(PendingSave p, List<Saved> saved, List<ConflictException> conflicts, String jobId) {
        Saved now = store.current(jobId, p.key()).orElseThrow(() -> new StoreException(StoreException.Kind.UNREACHABLE,
                DeskWords.text("save.notSeen")));
        if (now.part().equals(p.part())) {
            saved.add(now);
        } else {
            one(jobId, new PendingSave(p.key(), p.part(), FIRST), saved, conflicts).ifPresent(e -> {
                throw e;
            });
        }
    }

    private static Booking booking(List<PendingSave> pending) {
        return pending.stream().filter(p -> p.part() instanceof Booking).map(p -> (Booking) p.part()).findFirst()
                .orElseThrow(() -> new StoreException(StoreException.Kind.NOT_FOUND,
                        DeskWords.text("save.noBooking")));
    }
}
