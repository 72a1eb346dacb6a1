package org.copperbook.sheets;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.seal.Seal;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.winding.BlindCounts;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.sheets.copy.CopyMarks;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Letterhead;
import org.copperbook.sheets.page.Words;
import org.copperbook.sheets.record.AsFoundSheet;
import org.copperbook.sheets.record.BookingSheet;
import org.copperbook.sheets.record.CautionSheet;
import org.copperbook.sheets.record.ChartSheet;
import org.copperbook.sheets.record.ComparisonSheet;
import org.copperbook.sheets.record.CoreSheet;
import org.copperbook.sheets.record.CoverSheet;
import org.copperbook.sheets.record.DrawingSheet;
import org.copperbook.sheets.record.FaultSheet;
import org.copperbook.sheets.record.InstrumentSheet;
import org.copperbook.sheets.record.ProcessSheet;
import org.copperbook.sheets.record.RecordContext;
import org.copperbook.sheets.record.PlanSheet;
import org.copperbook.sheets.record.RecordSheet;
import org.copperbook.sheets.record.RectifierSheet;
import org.copperbook.sheets.record.RunUpSheet;
import org.copperbook.sheets.record.SignOffSheet;
import org.copperbook.sheets.record.SinceEarlierSheet;
import org.copperbook.sheets.record.VerdictIndex;
import org.copperbook.sheets.record.VerdictSheet;
import org.copperbook.sheets.record.WindingSheet;

/**
 * The record of a job as a workbook: everything that was seen, read, wound, tested, judged and signed, for the customer
 * and for whoever opens the machine next.
 */
public final class JobRecordWorkbook {

    private final ZoneId zone;
    private final Job earlier;

    /** Times are written in the time zone of this machine. */
    public JobRecordWorkbook() {
        this(ZoneId.systemDefault());
    }

    /** @param zone time zone in which every time is written; the workbook says which */
    public JobRecordWorkbook(ZoneId zone) {
        this(zone, null);
    }

    private JobRecordWorkbook(ZoneId zone, Job earlier) {
        this.zone = zone;
        this.earlier = earlier;
    }

    /**
     * A workbook that also shows how the machine left on an earlier job.
     *
     * @param job the earlier job; null when this one does not return from any
     */
    public JobRecordWorkbook since(Job job) {
        return new JobRecordWorkbook(zone, job);
    }

    /**
     * Writes a record over the target, as a whole or not at all. Turns that two people are still counting blind are left
     * out of it.
     *
     * @param verdicts   what the checks say of the job
     * @param holdPoints where its hold points stand
     * @throws WorkbookNotWrittenException when the target cannot be replaced
     */
    public void write(Job job, List<Verdict> verdicts, List<HoldPointState> holdPoints, Shop shop, Path target)
            throws WorkbookNotWrittenException {
        Words words = new Words(JobRecordWorkbook.class, "record", Locale.ENGLISH);
        RecordContext context = new RecordContext(BlindCounts.covered(job), new VerdictIndex(verdicts), holdPoints, shop, zone, words,
                Seal.of(job));
        try (Book book = new Book(head(context), context.title())) {
            for (RecordSheet sheet : sheets()) {
                sheet.write(context, book);
            }
            new CopyMarks(job.number(), context.seal().fingerprint()).mark(book);
            book.writeTo(target);
        }
    }

    private List<RecordSheet> sheets() {
        List<RecordSheet> sheets = new ArrayList<>(List.of(new CoverSheet(), new BookingSheet(), new AsFoundSheet(),
                new FaultSheet()));
        for (WindingRole role : WindingRole.values()) {
            sheets.add(new WindingSheet(role));
            sheets.add(new DrawingSheet(role));
        }
        sheets.addAll(List.of(new RectifierSheet(), new CoreSheet(), new ProcessSheet(), new PlanSheet(),
                new RunUpSheet(), new ChartSheet(), new ComparisonSheet(),
                new SinceEarlierSheet(earlier),
                new VerdictSheet(), new SignOffSheet(), new InstrumentSheet(), new CautionSheet()));
        return sheets;
    }

    private Letterhead head(RecordContext context) {
        String foot = context.words().get("foot.times", zone.getId()) + "   "
                + context.words().get("foot.fingerprint", context.seal().shown());
        return new Letterhead(context.shop().workshop().name(), context.title(), context.words().raw("page.of"),
                context.demo() ? context.words().get("demo.short") + "   " + foot : foot);
    }
}
