package org.copperbook.desk.backup;

import java.nio.file.Path;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.store.StoreException;
import org.copperbook.store.backup.Restore;
import org.copperbook.store.backup.RestoreRequest;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;

/** Asks for a backup, proves it, and starts the window again on what it holds; the present store is set aside. */
public final class RestoreHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        Shell shell = HandlerUtil.getActiveShellChecked(event);
        if (DeskSession.ofWorkbench().server().isPresent()) {
            MessageDialog.openInformation(shell, DeskWords.text("restore.title"), DeskWords.text("restore.server"));
            return null;
        }
        Path store = DeskSession.ofWorkbench().store().file();
        FileDialog dialog = new FileDialog(shell, SWT.OPEN);
        dialog.setText(DeskWords.text("restore.choose"));
        dialog.setFilterPath(BackupPreferences.folder(store).toString());
        dialog.setFilterExtensions(new String[] {"*.sqlite", "*.*"});
        String chosen = dialog.open();
        if (chosen != null) {
            prove(shell, store, Path.of(chosen));
        }
        return null;
    }

    private static void prove(Shell shell, Path store, Path backup) {
        DeskJob job = new DeskJob(DeskWords.text("restore.task", backup.getFileName()), monitor -> {
            String problem = problem(backup, store);
            shell.getDisplay().asyncExec(() -> {
                if (shell.isDisposed()) {
                    return;
                }
                if (problem != null) {
                    MessageDialog.openError(shell, DeskWords.text("restore.title"), problem);
                } else if (MessageDialog.open(MessageDialog.WARNING, shell, DeskWords.text("restore.title"),
                        DeskWords.text("restore.ask", backup.getFileName(), store.getFileName()), SWT.NONE,
                        DeskWords.text("restore.now"), DeskWords.text("restore.not")) == 0) {
                    restart(shell, store, backup);
                }
            });
        });
        job.setUser(true);
        job.schedule();
    }

    private static String problem(Path backup, Path store) {
        try {
            Restore.prove(backup, store.getParent());
            return null;
        } catch (StoreException e) {
            return e.getMessage();
        }
    }

    /** Whoever keeps the window open because of unsaved work keeps the store too. */
    private static void restart(Shell shell, Path store, Path backup) {
        RestoreRequest request = new RestoreRequest(store);
        try {
            request.leave(backup);
            if (!PlatformUI.getWorkbench().restart()) {
                request.withdraw();
            }
        } catch (StoreException e) {
            MessageDialog.openError(shell, DeskWords.text("restore.title"), e.getMessage());
        }
    }
}
