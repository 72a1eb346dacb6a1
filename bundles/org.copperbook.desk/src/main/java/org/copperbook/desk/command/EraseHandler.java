package org.copperbook.desk.command;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.stream.Collectors;
import org.copperbook.desk.backup.BackupPreferences;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.store.JobStore;
import org.copperbook.store.PrivateName;
import org.copperbook.store.StoreException;
import org.copperbook.store.backup.Erasure;
import org.copperbook.store.backup.Erasure.Outcome;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.dialogs.ElementListSelectionDialog;
import org.eclipse.ui.handlers.HandlerUtil;

/** Erases a person or a typed name for good, after a word was typed. */
public final class EraseHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        Shell shell = HandlerUtil.getActiveShellChecked(event);
        JobStore store = DeskSession.ofWorkbench().store();
        work(shell, () -> {
            List<PrivateName> names = store.privateNames();
            shell.getDisplay().asyncExec(() -> choose(shell, store, names));
        });
        return null;
    }

    private static void choose(Shell shell, JobStore store, List<PrivateName> names) {
        if (shell.isDisposed()) {
            return;
        }
        ElementListSelectionDialog dialog = new ElementListSelectionDialog(shell, LabelProvider.createTextProvider(
                n -> label((PrivateName) n)));
        dialog.setTitle(DeskWords.text("erase.title"));
        dialog.setMessage(DeskWords.text("erase.choose"));
        dialog.setElements(names.toArray());
        dialog.setFilter("*");
        if (dialog.open() != Window.OK || !(dialog.getFirstResult() instanceof PrivateName chosen)) {
            return;
        }
        String word = DeskWords.text("erase.word");
        InputDialog ask = new InputDialog(shell, DeskWords.text("erase.title"),
                DeskWords.text("erase.ask", chosen.name(), word), "",
                typed -> word.equals(typed.strip()) ? null : DeskWords.text("erase.notTyped", word));
        if (ask.open() == Window.OK) {
            work(shell, () -> {
                Outcome done = new Erasure(Clock.systemUTC()).erase(store, BackupPreferences.folder(store.file()),
                        chosen.key());
                shell.getDisplay().asyncExec(() -> say(shell, done));
            });
        }
    }

    private static String label(PrivateName n) {
        String where = n.staff() ? DeskWords.text("erase.staff")
                : n.jobs().isEmpty() ? DeskWords.text("erase.contact") : String.join(", ", n.jobs());
        return DeskWords.text("erase.entry", n.name(), where);
    }

    private static void say(Shell shell, Outcome done) {
        if (shell.isDisposed()) {
            return;
        }
        String aside = done.aside().isEmpty() ? "" : "\n\n" + DeskWords.text("erase.aside",
                done.aside().stream().map(Path::toString).collect(Collectors.joining("\n")));
        MessageDialog.openInformation(shell, DeskWords.text("erase.title"),
                DeskWords.text("erase.done", done.erased().plainTexts()) + aside);
    }

    private static void work(Shell shell, Runnable work) {
        new DeskJob(DeskWords.text("erase.task"), monitor -> {
            try {
                work.run();
            } catch (StoreException e) {
                shell.getDisplay().asyncExec(() -> {
                    if (!shell.isDisposed()) {
                        MessageDialog.openError(shell, DeskWords.text("erase.title"), e.getMessage());
                    }
                });
            }
        }).schedule();
    }
}
