package org.copperbook.desk.backup;

import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.TimeUnit;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.copperbook.store.backup.Backups;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

/** Takes a backup of the workshop's store whenever one is due, out of the way of whoever works. */
public final class AutomaticBackups extends Job {

    private static final long FIRST = TimeUnit.MINUTES.toMillis(2);
    private static final long AGAIN = TimeUnit.MINUTES.toMillis(10);

    private final DeskSession session;
    private volatile boolean stopped;

    public AutomaticBackups(DeskSession session) {
        super(DeskWords.text("backup.task"));
        this.session = session;
        setSystem(true);
        setPriority(DECORATE);
    }

    /** Begins to look; the invented demo workshop needs no backup. */
    public void begin() {
        if (!session.isDemo()) {
            schedule(FIRST);
        }
    }

    /** Ends the looking; a backup under way is not waited for, since half a backup is never seen. */
    public void end() {
        stopped = true;
        cancel();
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        JobStore store = session.store();
        try {
            Path folder = BackupPreferences.folder(store.file());
            new Backups(folder, BackupPreferences.plan(), Clock.systemUTC()).takeIfDue(store)
                    .ifPresent(b -> say(DeskWords.text("backup.taken", b.file().getFileName())));
        } catch (StoreException e) {
            if (!stopped) {
                ILog.of(AutomaticBackups.class).error("no backup could be taken", e);
                say(e.getMessage());
            }
        }
        if (!stopped) {
            schedule(AGAIN);
        }
        return Status.OK_STATUS;
    }

    private void say(String words) {
        Display display = Display.getDefault();
        if (!stopped && !display.isDisposed()) {
            display.asyncExec(() -> session.say(words));
        }
    }
}
