package org.copperbook.desk.command;

import java.nio.file.Path;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.shell.Judge;
import org.copperbook.desk.shell.Judgement;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.check.HoldPoints;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.sheets.JobRecordWorkbook;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.eclipse.core.runtime.IProgressMonitor;

/**
 * Writes the job record as a workbook, with the verdicts of what is saved. What a release workbook says is kept in the
 * store, so that it can be told from an altered one.
 */
public final class RecordWorkbookHandler extends WorkbookHandler {

    @Override
    Writing prepare(JobEditor editor, Job job, Shop shop) {
        DeskSession session = DeskSession.ofWorkbench();
        IssuedCopiesKeeping keeping = new IssuedCopiesKeeping(session.store(), session.who().orElse(""));
        return new Writing() {
            @Override
            public String fileName() {
                return plain(DeskWords.text("workbook.recordFile", job.number()));
            }

            @Override
            public void write(Path target, IProgressMonitor monitor) throws WorkbookNotWrittenException {
                Judgement now = Judge.of(job, shop);
                new JobRecordWorkbook().since(session.store().earlierOf(job).orElse(null)).write(job, now.verdicts(), now.holdPoints(), shop, target);
                if (HoldPoints.of(now.holdPoints(), HoldPoint.RELEASE).state() == HoldPointState.State.SIGNED) {
                    keeping.keep(job, target);
                }
            }
        };
    }
}
