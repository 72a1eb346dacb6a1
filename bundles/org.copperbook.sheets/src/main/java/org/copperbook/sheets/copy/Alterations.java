package org.copperbook.sheets.copy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.check.CopyCheck;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.sheets.JobRecordWorkbook;

/** Where an altered release workbook departs from what was written. */
public final class Alterations {

    private Alterations() {
    }

    /**
     * Writes the record anew and compares. Only a record that still comes out as one that was issued can be compared;
     * for any other (a limit or an instrument of the shop has changed since) nothing is named.
     *
     * @param workbook the writer, with the earlier job where there is one
     * @return what the record says and what the file says, by place; empty when nothing can be named
     */
    public static Map<String, RecordCopy.Difference> of(JobRecordWorkbook workbook, Job job, List<Verdict> verdicts,
            List<HoldPointState> holdPoints, Shop shop, RecordCopy altered) {
        try {
            Path fresh = Files.createTempFile("record", ".xlsx");
            try {
                workbook.write(job, verdicts, holdPoints, shop, fresh);
                RecordCopy written = RecordCopy.read(fresh);
                CopyCheck.Result asWritten = CopyCheck.of(job, shop, written.marks().fingerprint(), written.digest())
                        .result();
                boolean issued = asWritten == CopyCheck.Result.GENUINE || asWritten == CopyCheck.Result.SUPERSEDED;
                return issued ? written.differences(altered) : Map.of();
            } finally {
                Files.deleteIfExists(fresh);
            }
        } catch (IOException | UnreadableCopy e) {
            return Map.of();
        }
    }
}
