package org.copperbook.desk.editor;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/** Work outside the window's thread, in the desk's family of jobs. */
public final class DeskJob extends Job {

    private final ICoreRunnable work;

    public DeskJob(String name, ICoreRunnable work) {
        super(name);
        this.work = work;
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            work.run(monitor);
            return monitor.isCanceled() ? Status.CANCEL_STATUS : Status.OK_STATUS;
        } catch (CoreException e) {
            return e.getStatus();
        }
    }

    @Override
    public boolean belongsTo(Object family) {
        return family == DeskJobs.FAMILY;
    }
}
