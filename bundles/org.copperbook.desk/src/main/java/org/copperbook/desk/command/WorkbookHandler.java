package org.copperbook.desk.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.store.StoreException;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.handlers.HandlerUtil;

/**
 * Writes a workbook of the open job, as saved, into the folder for workbooks; outside the window's thread, with
 * progress, and can be cancelled until the file is put in its place.
 */
abstract class WorkbookHandler extends AbstractHandler {

    /** What is written. */
    interface Writing {

        /** Name of the file. */
        String fileName();

        /** Writes it over the target. */
        void write(Path target, IProgressMonitor monitor) throws WorkbookNotWrittenException;
    }

    /** Prepares the writing on the window's thread; null after having said why it cannot be. */
    abstract Writing prepare(JobEditor editor, Job job, Shop shop);

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        if (!(HandlerUtil.getActiveEditor(event) instanceof JobEditor editor) || editor.document() == null) {
            return null;
        }
        if (editor.isDirty()) {
            editor.getSite().getPage().saveEditor(editor, false);
        }
        if (editor.document().number().isEmpty() && editor.document().pending().isEmpty()) {
            editor.say(DeskWords.text("workbook.notBookedIn"));
            return null;
        }
        if (!editor.document().pending().isEmpty() || editor.document().number().isEmpty()) {
            editor.say(DeskWords.text("workbook.saveFirst"));
            return null;
        }
        Writing writing = prepare(editor, editor.document().job(), DeskSession.ofWorkbench().shop());
        if (writing != null) {
            schedule(editor, writing, WorkbookFolder.current());
        }
        return null;
    }

    private static void schedule(JobEditor editor, Writing writing, Path folder) {
        Display display = Display.getCurrent();
        Path target = folder.resolve(writing.fileName());
        DeskJob job = new DeskJob(DeskWords.text("workbook.task", writing.fileName()), monitor -> {
            try {
                Files.createDirectories(folder);
                if (monitor.isCanceled()) {
                    throw new OperationCanceledException();
                }
                writing.write(target, monitor);
                display.asyncExec(() -> editor.wrote(target));
            } catch (WorkbookNotWrittenException | StoreException e) {
                display.asyncExec(() -> editor.say(e.getMessage()));
            } catch (IOException e) {
                display.asyncExec(() -> editor.say(DeskWords.text("workbook.noFolder", folder, e.getMessage())));
                throw new CoreException(Status.warning(folder + " could not be made", e));
            }
        });
        job.setUser(true);
        job.schedule();
    }

    /** A file name without what some system forbids. */
    static String plain(String name) {
        return name.replaceAll("[\\\\/:*?\"<>|]", "-");
    }
}
