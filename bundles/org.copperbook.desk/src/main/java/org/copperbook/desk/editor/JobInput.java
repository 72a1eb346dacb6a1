package org.copperbook.desk.editor;

import java.util.UUID;
import org.copperbook.desk.Desk;
import org.copperbook.desk.text.DeskWords;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;

/**
 * A job to be opened: one of the store's, or a machine being booked in that has no number before it is first saved.
 *
 * @param jobId  key of the job; a key of the window's own while it is not booked in
 * @param number number; empty while it is not booked in
 */
public record JobInput(String jobId, String number) implements IEditorInput {

    /** A machine to be booked in. */
    public static JobInput bookingIn() {
        return new JobInput(UUID.randomUUID().toString(), "");
    }

    /** Opens the job in a window, or brings its editor to the front. */
    public void openIn(IWorkbenchPage page) {
        try {
            page.openEditor(this, Desk.EDITOR);
        } catch (PartInitException e) {
            ILog.of(JobInput.class).error("job " + getName() + " could not be opened", e);
        }
    }

    /** Whether the job is not in the store yet. */
    public boolean isNew() {
        return number.isEmpty();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof JobInput j && j.jobId.equals(jobId);
    }

    @Override
    public int hashCode() {
        return jobId.hashCode();
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return null;
    }

    @Override
    public boolean exists() {
        return !isNew();
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return null;
    }

    @Override
    public String getName() {
        return isNew() ? DeskWords.text("editor.new") : number;
    }

    @Override
    public IPersistableElement getPersistable() {
        return null;
    }

    @Override
    public String getToolTipText() {
        return getName();
    }
}
