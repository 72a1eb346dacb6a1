package org.copperbook.sheets;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.poi.ss.util.CellReference;
import org.copperbook.jobs.report.MonthEntry;
import org.copperbook.jobs.report.MonthFact;
import org.copperbook.jobs.report.MonthHours;
import org.copperbook.jobs.report.MonthReport;
import org.copperbook.jobs.report.MonthWords;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Letterhead;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.SheetPage;
import org.copperbook.sheets.page.Words;

/**
 * A month in figures as a workbook: the figures are formulas over a second sheet with the jobs behind them, so that one can
 * look behind each and go on computing.
 */
public final class MonthWorkbook {

    /** Columns of the list of jobs: number of the line, what, of, job, customer, machine, amount. */
    private static final int[] JOBS = {6, 40, 16, 13, 30, 30, 14};
    private static final int AMOUNT = JOBS.length - 1;
    private static final int[] FIGURES = {6, 42, 20, 13, 16};
    private static final int SUM = FIGURES.length - 1;
    private static final int AMOUNT_DECIMALS = 2;

    private final Words words = new Words(MonthWorkbook.class, "month", Locale.getDefault());

    /**
     * Writes a month over the target, as a whole or not at all.
     *
     * @param hours   of each trade
     * @param entries what is behind the report, as the store gives it
     * @throws WorkbookNotWrittenException when the target cannot be replaced
     */
    public void write(MonthReport report, MonthHours hours, List<MonthEntry> entries, Shop shop, Path target)
            throws WorkbookNotWrittenException {
        String title = words.get("month.title", report.month().toString());
        boolean demo = Boolean.TRUE.equals(shop.workshop().demo());
        try (Book book = new Book(new Letterhead(shop.workshop().name(), title, words.raw("page.of"),
                demo ? words.get("demo.short") : ""), title)) {
            SheetPage figures = book.portrait(report.month().toString(), FIGURES);
            SheetPage jobs = book.landscape(words.get("month.jobs"), JOBS);
            jobs(jobs, report, entries, title);
            figures.title(title);
            if (demo) {
                figures.warning(words.get("demo.long"));
            }
            figures.row(Look.TABLE_HEAD, head("month.line"), head("month.what"), head("month.of"),
                    head("month.count").right(), head("month.amount").right());
            List<String> amounts = new ArrayList<>();
            for (int i = 0; i < report.lines().size(); i++) {
                MonthReport.Line line = report.lines().get(i);
                amounts.add(new CellReference(figures.nextRow(), SUM).formatAsString());
                String number = new CellReference(figures.nextRow(), 0).formatAsString();
                figures.row(Look.TABLE_CELL, Entry.number(i + 1).left(), Entry.text(MonthWords.of(line.kind())), Entry.text(line.what()),
                        Entry.formula("COUNTIF(" + range(jobs, 0) + "," + number + ")", 0),
                        line.kind().adds() ? Entry.formula("SUMIF(" + range(jobs, 0) + "," + number + ","
                                + range(jobs, AMOUNT) + ")", AMOUNT_DECIMALS) : Entry.blank());
            }
            if (report.lines().isEmpty()) {
                figures.paragraph(words.get("month.nothing"));
            }
            hours(figures, report, hours, amounts);
            book.evaluate();
            book.writeTo(target);
        }
    }

    /** @param amounts where the sums of the lines stand */
    private void hours(SheetPage page, MonthReport report, MonthHours hours, List<String> amounts) {
        if (hours.rows().isEmpty()) {
            return;
        }
        page.gap();
        page.heading(words.get("month.hours"));
        page.row(Look.TABLE_HEAD, Entry.blank(), head("month.trade"), head("month.worked").right(),
                head("month.agreed").right(), head("month.capacity").right());
        for (MonthHours.Row r : hours.rows()) {
            page.row(Look.TABLE_CELL, Entry.blank(), Entry.text(r.trade()), sum(report, amounts, MonthFact.Kind.WORKED, r.trade()),
                    sum(report, amounts, MonthFact.Kind.HOURS, r.trade()), r.capacity() == null ? Entry.blank() : Entry.number(r.capacity(), 1));
        }
    }

    /** The figures above that are of a kind and a trade, added up. */
    private static Entry sum(MonthReport report, List<String> amounts, MonthFact.Kind kind, String trade) {
        String cells = IntStream.range(0, amounts.size()).filter(i -> report.lines().get(i).kind() == kind
                && report.lines().get(i).what().strip().equalsIgnoreCase(trade)).mapToObj(amounts::get)
                .collect(Collectors.joining("+"));
        return cells.isEmpty() ? Entry.number(BigDecimal.ZERO, 1) : Entry.formula(cells, 1);
    }

    private void jobs(SheetPage page, MonthReport report, List<MonthEntry> entries, String title) {
        page.row(Look.TITLE, Entry.text(title).over(page.columns()));
        page.row(Look.TABLE_HEAD, head("month.line"), head("month.what"), head("month.of"), head("month.job"),
                head("month.customer"), head("month.machine"), head("month.amount").right());
        page.repeat(1);
        page.freeze();
        for (MonthEntry e : entries) {
            page.row(Look.TABLE_CELL, Entry.number(line(report, e)).left(), Entry.text(MonthWords.of(e.kind())), Entry.text(e.what()),
                    Entry.text(e.number()), Entry.text(e.customer()), Entry.text(e.machine()),
                    e.kind().adds() ? Entry.number(e.amount(), AMOUNT_DECIMALS) : Entry.blank());
        }
    }

    private Entry head(String key) {
        return Entry.text(words.get(key));
    }

    private static int line(MonthReport report, MonthEntry entry) {
        for (int i = 0; i < report.lines().size(); i++) {
            if (entry.isOf(report.lines().get(i))) {
                return i + 1;
            }
        }
        throw new IllegalArgumentException("the report of " + report.month() + " has no line for " + entry);
    }

    /** A column of the list of jobs; a text too long for one row goes on in the next, so the last row is asked for. */
    private static String range(SheetPage jobs, int column) {
        int last = Math.max(jobs.nextRow() - 1, 2);
        return Book.reference(jobs, 2, column) + ":" + new CellReference(last, column, true, true).formatAsString();
    }
}
