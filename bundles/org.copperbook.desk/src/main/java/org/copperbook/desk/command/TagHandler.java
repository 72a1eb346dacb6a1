package org.copperbook.desk.command;

import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.tag.TagWindow;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.booking.ProvisionalTag;
import org.copperbook.jobs.shop.Shop;
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
        Optional<ProvisionalTag> provisional = editor.provisionalTag();
        if (job.number().isEmpty() && provisional.isEmpty()) {
            editor.say(DeskWords.text("tag.notBookedIn"));
        } else if (job.booking().isEmpty()) {
            editor.say(DeskWords.text("tag.noBooking"));
        } else {
            Shop shop = DeskSession.ofWorkbench().shop();
            Locale locale = Locale.getDefault(Locale.Category.FORMAT);
            ZoneId zone = ZoneId.systemDefault();
            new TagWindow(editor.getSite().getShell(), provisional.map(ProvisionalTag::name).orElse(job.number()),
                    provisional.map(t -> JobTag.provisional(t, job, shop, locale, zone))
                            .orElseGet(() -> new JobTag(job, shop, locale, zone)));
        }
        return null;
    }
}
