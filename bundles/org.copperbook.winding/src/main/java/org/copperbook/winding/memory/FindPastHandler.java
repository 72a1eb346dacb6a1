package org.copperbook.winding.memory;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.winding.WindingPage;
import org.copperbook.winding.Windings;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/**
 * Goes to where past windings are looked for: on the winding page shown, or on that of the first winding of the job,
 * which is begun when the job has none.
 */
public final class FindPastHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        if (HandlerUtil.getActiveEditor(event) instanceof JobEditor editor && editor.document() != null) {
            if (editor.page().filter(WindingPage.class::isInstance).isEmpty()) {
                show(editor);
            }
            // A page that was only just shown takes the cursor once it is laid out.
            editor.getSite().getShell().getDisplay().asyncExec(() -> search(editor));
        }
        return null;
    }

    private static void search(JobEditor editor) {
        if (!editor.page().map(p -> p.reveal(WindingPage.PAST)).orElse(false)) {
            editor.say(Words.of(WindingPage.class).text("memory.notHere"));
        }
    }

    private static void show(JobEditor editor) {
        Job job = editor.document().job();
        List<PartKey> here = job.keys(PartKind.WINDING);
        Optional<PartKey> first = Stream.concat(here.stream(), new Windings().offers(job).stream()).findFirst();
        first.ifPresent(key -> {
            if (!editor.show(key)) {
                editor.begin(key);
            }
        });
    }
}
