package org.copperbook.desk.command;

import java.nio.file.Path;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.store.JobStore;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;

/** Asks for a record workbook and says whether it still says what was written. */
public final class CheckCopyHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        Shell shell = HandlerUtil.getActiveShellChecked(event);
        FileDialog dialog = new FileDialog(shell, SWT.OPEN);
        dialog.setText(DeskWords.text("copy.choose"));
        dialog.setFilterExtensions(new String[] {"*.xlsx", "*.*"});
        String chosen = dialog.open();
        if (chosen != null) {
            inspect(shell, DeskSession.ofWorkbench().store(), Path.of(chosen));
        }
        return null;
    }

    private static void inspect(Shell shell, JobStore store, Path file) {
        DeskJob job = new DeskJob(DeskWords.text("copy.task", file.getFileName()), monitor -> {
            CopyInspection found = CopyInspection.of(store, file);
            shell.getDisplay().asyncExec(() -> {
                if (!shell.isDisposed()) {
                    MessageDialog.open(found.genuine() ? MessageDialog.INFORMATION : MessageDialog.WARNING, shell,
                            DeskWords.text("copy.title", file.getFileName()), found.words(), SWT.NONE);
                }
            });
        });
        job.setUser(true);
        job.schedule();
    }
}
