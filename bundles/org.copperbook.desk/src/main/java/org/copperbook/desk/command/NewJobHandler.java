package org.copperbook.desk.command;

import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.JobInput;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Books a machine in: opens a job that gets its number when it is first saved. */
public final class NewJobHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        try {
            return HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage()
                    .openEditor(JobInput.bookingIn(), Desk.EDITOR);
        } catch (PartInitException e) {
            throw new ExecutionException("a machine could not be booked in", e);
        }
    }
}
