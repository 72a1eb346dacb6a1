package org.copperbook.desk.command;

import java.time.ZoneId;
import java.util.Locale;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.tag.TagWindow;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.Job;
import org.copperbook.sheets.tag.JobTag;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows the tag and the card of the open job, as saved, to be printed. */
public final class TagHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        if (!(HandlerUtil.getActiveEditor(event) instanceof JobEditor editor) || editor.document() == null) {
            return null;
        }
        if (editor.isDirty()) {
            editor.getSite().getPage().saveEditor(editor, false);
        }
        Job job = editor.document().job();
        if (job.number().isEmpty()) {
            editor.say(DeskWords.text("tag.notBookedIn"));
        } else if (job.booking().isEmpty()) {
            editor.say(DeskWords.text("tag.noBooking"));
        } else {
            new TagWindow(editor.getSite().getShell(), job.number(), new JobTag(job, DeskSession.ofWorkbench().shop(),
                    Locale.getDefault(Locale.Category.FORMAT), ZoneId.systemDefault()));
        }
        return null;
    }
}
