package org.copperbook.desk.command;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.JobEditor;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.handlers.HandlerUtil;

/** Goes back to the job worked on last, whatever is open before it; with no job open, to the page in front. */
public final class OpenJobHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage();
        Optional<IWorkbenchPart> job = Stream.of(page.getEditorReferences()).map(r -> r.getPart(false))
                .filter(JobEditor.class::isInstance).map(JobEditor.class::cast)
                .max(Comparator.comparingLong(JobEditor::workedOnAt)).map(IWorkbenchPart.class::cast);
        // A job that was open when the program ended is made only once somebody looks at it.
        job.or(() -> Stream.of(page.getEditorReferences()).filter(r -> Desk.EDITOR.equals(r.getId()))
                .map(r -> r.getPart(true)).findFirst()).or(() -> Optional.ofNullable(page.getActiveEditor()))
                .ifPresent(page::activate);
        return null;
    }
}
