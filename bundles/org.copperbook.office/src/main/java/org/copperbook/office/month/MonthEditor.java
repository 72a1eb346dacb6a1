package org.copperbook.office.month;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import org.copperbook.desk.Desk;
import org.copperbook.desk.command.WorkbookFolder;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.editor.JobInput;
import org.copperbook.desk.form.PushButton;
import org.copperbook.desk.grid.CopiedBlock;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.desk.theme.Rows;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.report.MonthDetail;
import org.copperbook.jobs.report.MonthEntry;
import org.copperbook.jobs.report.MonthHours;
import org.copperbook.jobs.report.MonthReport;
import org.copperbook.jobs.report.MonthWords;
import org.copperbook.jobs.shop.Capacities;
import org.copperbook.office.Quotes;
import org.copperbook.office.SinglePageEditor;
import org.copperbook.sheets.MonthWorkbook;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/**
 * A month in figures: the figures above, below them the hours of each trade and the jobs behind the one marked. Enter on a job opens it, Ctrl+C copies a
 * table, the whole goes into a workbook.
 */
public final class MonthEditor extends SinglePageEditor {

    public static final String ID = "org.copperbook.office.editor.month-in-figures";

    private static final String[] FIGURES = {"month.what", "month.of", "month.count", "month.amount"};
    private static final String[] HOURS = {"month.trade", "month.worked", "month.agreed", "month.capacity", "month.share"};
    private static final int HOURS_ROWS = 5;
    private static final List<String> NUMBERS = List.of("month.count", "month.amount", "month.worked", "month.agreed",
            "month.capacity", "month.share");
    private static final String[] JOBS = {"month.job", "month.customer", "month.machine", "month.amount"};
    private static final PartKey CAPACITIES = PartKey.of(PartKind.CAPACITIES);
    /** Narrowest width it asks for; what is wider is wrapped or scrolled. */
    private static final int NARROW = 20;
    private static final int MONTH_CHARS = 10;
    /** Label, two buttons with the month between them, and the button for the workbook. */
    private static final int TOP = 5;

    private final Words words = Words.of(Quotes.class);
    private Text month;
    private Table figures;
    private Table hours;
    private FittedColumns hourWidths;
    private Table jobs;
    private FittedColumns figureWidths;
    private FittedColumns jobWidths;
    private Label said;
    private Button workbook;
    private MonthReport report;
    private MonthHours byTrade;
    private List<MonthEntry> entries = List.of();
    private int asked;

    @Override
    public void createPartControl(Composite parent) {
        Look look = Look.of(parent);
        Composite box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(8, 8).applyTo(box);
        Composite top = new Composite(box, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(TOP).spacing(6, 0).applyTo(top);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(top);
        Label label = look.as(Look.Role.TEXT, new Label(top, SWT.NONE));
        label.setText(words.text("month.month"));
        PushButton.in(top, words, "month.before", () -> turn(-1));
        month = look.as(Look.Role.TEXT, new Text(top, SWT.BORDER));
        month.setData(Desk.ID, "month.month");
        month.setText(YearMonth.now().toString());
        SpokenName.give(month, words.text("month.month"));
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).hint(look.chars(MONTH_CHARS), SWT.DEFAULT).applyTo(month);
        month.addListener(SWT.DefaultSelection, e -> show());
        month.addListener(SWT.KeyDown, this::turnByKey);
        PushButton.in(top, words, "month.after", () -> turn(1));
        workbook = PushButton.in(top, words, "month.workbook", this::write);
        figures = table(box, "month.figures", FIGURES);
        figureWidths = new FittedColumns(figures, new int[FIGURES.length]);
        figures.addListener(SWT.Selection, e -> showJobs());
        hours = table(box, "month.hours", HOURS);
        hourWidths = new FittedColumns(hours, new int[HOURS.length]);
        shown(hours, 0);
        Label behind = look.as(Look.Role.STRONG, new Label(box, SWT.WRAP));
        behind.setText(words.text("month.behind"));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(NARROW), SWT.DEFAULT).applyTo(behind);
        jobs = table(box, "month.jobs", JOBS);
        jobWidths = new FittedColumns(jobs, new int[JOBS.length]);
        jobs.addListener(SWT.DefaultSelection, e -> open());
        said = look.as(Look.Role.TEXT, new Label(box, SWT.WRAP));
        said.setData(Desk.ID, "month.said");
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(NARROW), SWT.DEFAULT).applyTo(said);
        Reach.ensure(box);
        show();
    }

    private Table table(Composite box, String id, String[] heads) {
        Table t = Look.of(box).as(Look.Role.TEXT, new Table(box, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE));
        t.setData(Desk.ID, id);
        t.setHeaderVisible(true);
        SpokenName.give(t, words.text(id));
        for (int i = 0; i < heads.length; i++) {
            new TableColumn(t, NUMBERS.contains(heads[i]) ? SWT.RIGHT : SWT.LEFT).setText(words.text(heads[i]));
        }
        // GTK gives the room left over to the last column; numbers in it would stand far from what they are of.
        new TableColumn(t, SWT.LEFT).setWidth(Look.of(box).chars(1));
        Rows.dress(t, column -> false);
        GridDataFactory.fillDefaults().grab(true, true).hint(Look.of(box).chars(NARROW), SWT.DEFAULT).applyTo(t);
        t.addListener(SWT.KeyDown, e -> {
            if (e.keyCode == 'c' && (e.stateMask & SWT.MOD1) != 0) {
                copy(t);
                e.doit = false;
            }
        });
        return t;
    }

    @Override
    public void setFocus() {
        month.setFocus();
    }

    private void turnByKey(Event e) {
        if (e.keyCode == SWT.ARROW_UP || e.keyCode == SWT.ARROW_DOWN) {
            turn(e.keyCode == SWT.ARROW_UP ? -1 : 1);
            e.doit = false;
        }
    }

    private void turn(int by) {
        YearMonth now = typed();
        if (now != null) {
            month.setText(now.plusMonths(by).toString());
            show();
        }
    }

    /** The month typed; null after having said what is wrong. */
    private YearMonth typed() {
        try {
            return YearMonth.parse(month.getText().strip());
        } catch (DateTimeException e) {
            said.setText(words.text("month.bad", month.getText().strip()));
            said.requestLayout();
            return null;
        }
    }

    private void show() {
        YearMonth wanted = typed();
        if (wanted == null) {
            return;
        }
        int mine = ++asked;
        JobStore store = DeskSession.ofWorkbench().store();
        new DeskJob(words.text("month.adding"), monitor -> {
            try {
                MonthDetail found = store.monthDetail(wanted);
                Capacities capacities = store.current(JobStore.SHOP, CAPACITIES).map(s -> (Capacities) s.part())
                        .orElseGet(() -> new Capacities(Capacities.SCHEMA, List.of(), Map.of()));
                later(mine, () -> show(found.report(), MonthHours.of(found.report(), capacities), found.entries()));
            } catch (StoreException e) {
                later(mine, () -> say(e.getMessage()));
            }
        }).schedule();
    }

    private void later(int mine, Runnable then) {
        figures.getDisplay().asyncExec(() -> {
            if (!figures.isDisposed() && mine == asked) {
                then.run();
            }
        });
    }

    private void show(MonthReport found, MonthHours ofTrades, List<MonthEntry> behind) {
        report = found;
        byTrade = ofTrades;
        entries = behind;
        figures.removeAll();
        for (MonthReport.Line line : found.lines()) {
            TableItem item = new TableItem(figures, SWT.NONE);
            item.setData(line);
            item.setText(new String[] {MonthWords.of(line.kind()), line.what(), Long.toString(line.count()),
                    line.kind().adds() ? line.amount().stripTrailingZeros().toPlainString() : ""});
        }
        figureWidths.fit();
        showHours();
        say(words.text(found.lines().isEmpty() ? "month.nothing" : "month.shown", found.month().toString()));
        if (!found.lines().isEmpty()) {
            figures.setSelection(0);
        }
        showJobs();
    }

    private void showHours() {
        hours.removeAll();
        for (MonthHours.Row row : byTrade.rows()) {
            new TableItem(hours, SWT.NONE).setText(new String[] {
                row.trade().isEmpty() ? words.text("month.noTrade") : row.trade(), plain(row.worked()), plain(row.agreed()),
                row.capacity() == null ? "" : plain(row.capacity()),
                row.percent().map(p -> words.text("month.percent", plain(p))).orElse("")});
        }
        shown(hours, byTrade.rows().size());
        hourWidths.fit();
        hours.getParent().layout(true, true);
    }

    private static String plain(BigDecimal hours) {
        return hours.stripTrailingZeros().toPlainString();
    }

    /** A table as high as its rows, away when it has none. */
    private static void shown(Table t, int rows) {
        t.setVisible(rows > 0);
        Look look = Look.of(t);
        GridDataFactory.fillDefaults().grab(true, false).exclude(rows == 0).hint(look.chars(NARROW), t.getHeaderHeight()
                + Math.min(HOURS_ROWS, rows) * Math.max(t.getItemHeight(), look.rowHeight()) + look.rowHeight() / 2).applyTo(t);
    }

    private void showJobs() {
        jobs.removeAll();
        if (figures.getSelectionCount() == 1) {
            MonthReport.Line line = (MonthReport.Line) figures.getSelection()[0].getData();
            for (MonthEntry e : entries) {
                if (e.isOf(line)) {
                    TableItem item = new TableItem(jobs, SWT.NONE);
                    item.setData(e);
                    item.setText(new String[] {e.number(), e.customer(), e.machine(),
                            e.kind().adds() ? e.amount().stripTrailingZeros().toPlainString() : ""});
                }
            }
        }
        jobWidths.fit();
    }

    private void open() {
        if (jobs.getSelectionCount() == 1) {
            MonthEntry e = (MonthEntry) jobs.getSelection()[0].getData();
            new JobInput(e.jobId(), e.number()).openIn(getSite().getPage());
        }
    }

    private void copy(Table t) {
        CopiedBlock.of(t).toClipboard(t.getDisplay());
        say(words.text("month.copied"));
    }

    private void write() {
        if (report == null) {
            return;
        }
        MonthReport now = report;
        MonthHours ofTrades = byTrade;
        List<MonthEntry> behind = entries;
        DeskSession session = DeskSession.ofWorkbench();
        Path folder = WorkbookFolder.current();
        Path target = folder.resolve(words.text("month.file", now.month().toString()));
        workbook.setEnabled(false);
        DeskJob job = new DeskJob(words.text("month.writing"), monitor -> {
            String outcome;
            try {
                Files.createDirectories(folder);
                new MonthWorkbook().write(now, ofTrades, behind, session.shop(), target);
                outcome = words.text("month.written", target);
            } catch (WorkbookNotWrittenException e) {
                outcome = e.getMessage();
            } catch (IOException e) {
                outcome = words.text("month.noFolder", folder, String.valueOf(e.getMessage()));
            }
            String told = outcome;
            workbook.getDisplay().asyncExec(() -> {
                if (!workbook.isDisposed()) {
                    workbook.setEnabled(true);
                    say(told);
                }
            });
        });
        job.setUser(true);
        job.schedule();
    }

    private void say(String text) {
        said.setText(text);
        said.requestLayout();
    }
}
