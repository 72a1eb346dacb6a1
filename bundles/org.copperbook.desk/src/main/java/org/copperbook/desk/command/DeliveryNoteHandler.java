package org.copperbook.desk.command;

import java.nio.file.Path;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.handback.HandBack;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.sheets.DeliveryNoteWorkbook;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.store.JobStore;
import org.eclipse.core.runtime.IProgressMonitor;

/** Writes the delivery note of a job whose handing back is written down. */
public final class DeliveryNoteHandler extends WorkbookHandler {

    @Override
    Writing prepare(JobEditor editor, Job job, Shop shop) {
        HandBack back = DeliveryNoteWorkbook.of(job);
        if (!DeliveryNoteWorkbook.isReady(back)) {
            editor.say(DeskWords.text("workbook.nothingBack"));
            return null;
        }
        JobStore store = DeskSession.ofWorkbench().store();
        return new Writing() {
            @Override
            public String fileName() {
                return plain(DeskWords.text("workbook.deliveryFile", job.number()));
            }

            @Override
            public void write(Path target, IProgressMonitor monitor) throws WorkbookNotWrittenException {
                new DeliveryNoteWorkbook().write(job, back, shop,
                        DeliveryNoteWorkbook.language(back, store.customerOf(job)), target);
            }
        };
    }
}
