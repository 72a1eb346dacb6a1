package org.copperbook.desk.editor;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.copperbook.store.UserFolders;
import org.copperbook.store.journal.CrashJournal;
import org.copperbook.store.journal.JournalEntry;
import org.copperbook.store.journal.LeftBehind;
import org.eclipse.core.runtime.ILog;

/** The jobs in which something was typed and not saved when the program last ended; for a background thread. */
public final class LeftJobs {

    private LeftJobs() {
    }

    /** The jobs to open again, those typed into last first; a machine that was being booked in is among them. */
    public static List<JobInput> of(JobStore store) {
        Set<String> ids = new LinkedHashSet<>();
        entries(store).forEach(e -> ids.add(e.jobId()));
        ids.remove(JobStore.SHOP);
        List<JobInput> jobs = new ArrayList<>();
        for (String id : ids) {
            jobs.add(new JobInput(id, number(store, id)));
        }
        return jobs;
    }

    /** The kinds of the shop's own parts in which something was typed and not saved. */
    public static Set<PartKind> ofShop(JobStore store) {
        Set<PartKind> kinds = EnumSet.noneOf(PartKind.class);
        entries(store).stream().filter(e -> JobStore.SHOP.equals(e.jobId()))
                .forEach(e -> kinds.add(PartKey.parse(e.part()).kind()));
        return kinds;
    }

    private static List<JournalEntry> entries(JobStore store) {
        try {
            return new CrashJournal(UserFolders.current().journal()).left(store.file().toString()).entries().stream()
                    .map(LeftBehind::entry).toList();
        } catch (IOException e) {
            ILog.of(LeftJobs.class).error("the crash journal could not be read", e);
            return List.of();
        }
    }

    private static String number(JobStore store, String id) {
        try {
            return store.load(id).number();
        } catch (StoreException e) {
            if (e.kind() == StoreException.Kind.NOT_FOUND) {
                return "";
            }
            throw e;
        }
    }
}
