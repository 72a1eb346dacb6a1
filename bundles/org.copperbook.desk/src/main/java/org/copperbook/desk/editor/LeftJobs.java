package org.copperbook.desk.editor;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.copperbook.store.UserFolders;
import org.copperbook.store.journal.CrashJournal;
import org.eclipse.core.runtime.ILog;

/** The jobs in which something was typed and not saved when the program last ended; for a background thread. */
public final class LeftJobs {

    private LeftJobs() {
    }

    /** The jobs to open again, those typed into last first; a machine that was being booked in is among them. */
    public static List<JobInput> of(JobStore store) {
        Set<String> ids = new LinkedHashSet<>();
        try {
            new CrashJournal(UserFolders.current().journal()).left(store.file().toString()).entries()
                    .forEach(l -> ids.add(l.entry().jobId()));
        } catch (IOException e) {
            ILog.of(LeftJobs.class).error("the crash journal could not be read", e);
        }
        List<JobInput> jobs = new ArrayList<>();
        for (String id : ids) {
            jobs.add(new JobInput(id, number(store, id)));
        }
        return jobs;
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
