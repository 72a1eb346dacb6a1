package org.copperbook.inspection.before;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.editor.JobInput;
import org.copperbook.desk.form.PushButton;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Days;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Grown;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Rows;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.store.JobStore;
import org.copperbook.store.RegisterColumn;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.RegisterRow;
import org.copperbook.store.RegisterSlice;
import org.copperbook.store.RegisterSort;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;

/**
 * Earlier jobs that may be of this machine, found as somebody types: by what stands in the field here, else by the serial
 * number of the plate, else by the customer. One of them fills the booking and the plate. The store is asked outside the
 * window's thread.
 */
public final class HereBefore {

    private static final String[] COLUMNS =
            {"before.job", "before.serial", "before.machine", "before.customer", "before.stage", "before.changed"};
    /** More than these are not read through by anybody; another word in the field finds the right one. */
    private static final int MOST_ROWS = 8;
    private static final int LEAST_CHARS = 2;
    private static final int PAUSE = 150;

    private final PageSite site;
    private final Words words;
    private final TakenFromEarlier taken;
    private final Runnable goOn;
    private final Composite area;
    private final Text wanted;
    private final Label said;
    private final Table table;
    private final FittedColumns widths;
    private final Composite actions;
    private final Button take;
    private final Button returns;
    private String asked = "";
    /** One and the same, so that asking again puts it off. */
    private final Runnable whenQuiet = this::ask;

    /**
     * Builds the area.
     *
     * @param goOn puts the cursor on what is typed next once an earlier job is taken over
     */
    public HereBefore(Composite area, PageSite site, Words words, Runnable goOn) {
        this.goOn = goOn;
        this.area = area;
        this.site = site;
        this.words = words;
        taken = new TakenFromEarlier(site.document(), site.json());
        Look look = Look.of(area);
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(area);
        Composite line = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(line);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        wanted = look.as(Look.Role.TEXT, new Text(line, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL));
        wanted.setMessage(words.text("before.wanted"));
        wanted.setData(Desk.ID, "before.wanted");
        SpokenName.give(wanted, words.text("before.wanted"));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(wanted);
        wanted.addListener(SWT.Modify, e -> soon());
        wanted.addListener(SWT.KeyDown, this::intoTheList);
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        said.setData(Desk.ID, "before.said");
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
        table = look.as(Look.Role.TEXT, new Table(area, SWT.FULL_SELECTION | SWT.SINGLE | SWT.BORDER));
        table.setHeaderVisible(true);
        table.setData(Desk.ID, "before.jobs");
        SpokenName.give(table, words.text("before.title"));
        for (String column : COLUMNS) {
            new TableColumn(table, SWT.NONE).setText(words.text(column));
        }
        widths = new FittedColumns(table, new int[COLUMNS.length]);
        Rows.dress(table, column -> false);
        table.addListener(SWT.Selection, e -> enable());
        table.addListener(SWT.DefaultSelection, e -> chosen().ifPresent(this::take));
        actions = new Composite(area, SWT.NONE);
        RowLayoutFactory.fillDefaults().wrap(true).spacing(8).applyTo(actions);
        take = button("before.take", this::take);
        returns = button("before.returns", row -> taken.returnsFrom(row.number()));
        button("before.open", this::open);
        show(new RegisterSlice(0, List.of()));
        follow();
    }

    /** The arrow downwards goes from the search field into what it found. */
    private void intoTheList(Event e) {
        if (e.keyCode == SWT.ARROW_DOWN && table.getVisible() && table.getItemCount() > 0) {
            e.doit = false;
            table.setSelection(0);
            enable();
            table.setFocus();
        }
    }

    private Button button(String key, Consumer<RegisterRow> does) {
        return PushButton.in(actions, words, key, () -> chosen().ifPresent(does));
    }

    /** Looks again when what the job says has changed. */
    public void follow() {
        if (!text().equals(asked)) {
            soon();
        }
        enable();
    }

    private void soon() {
        area.getDisplay().timerExec(PAUSE, whenQuiet);
    }

    /** What to look for; empty while nothing useful has been typed. */
    private String text() {
        String typed = wanted.getText().strip();
        if (typed.isEmpty()) {
            typed = site.document().part(PartKey.of(PartKind.NAMEPLATE), Nameplate.class).map(Nameplate::serial)
                    .map(String::strip).filter(s -> !s.isEmpty())
                    .or(() -> site.document().part(PartKey.of(PartKind.BOOKING), Booking.class).map(Booking::customer)
                            .map(String::strip))
                    .orElse("");
        }
        return typed.length() < LEAST_CHARS ? "" : typed;
    }

    private void ask() {
        if (area.isDisposed()) {
            return;
        }
        String text = text();
        if (text.equals(asked)) {
            return;
        }
        asked = text;
        if (text.isEmpty()) {
            answered(text, new RegisterSlice(0, List.of()));
            return;
        }
        JobStore store = site.store();
        Display display = area.getDisplay();
        // One row more than is shown: this job itself may be among them.
        RegisterQuery query = new RegisterQuery(text, 0, MOST_ROWS + 1, new RegisterSort(RegisterColumn.NUMBER, false));
        new DeskJob(words.text("before.looking"), monitor -> {
            RegisterSlice slice = store.register(query);
            display.asyncExec(() -> answered(text, slice));
        }).schedule();
    }

    private void answered(String text, RegisterSlice slice) {
        if (!area.isDisposed() && text.equals(asked)) {
            show(slice);
            Grown.tell(area);
        }
    }

    /** Does not lay out: asked for while the page is built, a layout would hold back the page's own. */
    private void show(RegisterSlice slice) {
        String here = site.document().id();
        boolean itself = slice.rows().stream().anyMatch(r -> r.jobId().equals(here));
        List<RegisterRow> rows = slice.rows().stream().filter(r -> !r.jobId().equals(here)).limit(MOST_ROWS).toList();
        int total = slice.total() - (itself ? 1 : 0);
        table.removeAll();
        for (RegisterRow row : rows) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(new String[] {row.number(), row.serial(), row.machine(), row.customer(), row.stage(),
                    Days.ofLocale().day(LocalDate.ofInstant(row.changedAt(), ZoneId.systemDefault()))});
            item.setData(row);
        }
        said.setText(asked.isEmpty() ? words.text("before.hint") : total == 0 ? words.text("before.none", asked)
                : total > rows.size() ? words.text("before.more", asked, rows.size(), total)
                : words.text("before.some", asked, total));
        shown(table, !rows.isEmpty());
        shown(actions, !rows.isEmpty());
        if (!rows.isEmpty()) {
            widths.fit();
            ((GridData) table.getLayoutData()).heightHint =
                    table.getHeaderHeight() + table.getItemHeight() * (rows.size() + 1);
        }
        enable();
    }

    private static void shown(Composite what, boolean now) {
        what.setVisible(now);
        GridDataFactory.fillDefaults().grab(true, false).exclude(!now).applyTo(what);
    }

    private void enable() {
        boolean row = chosen().isPresent();
        for (var button : actions.getChildren()) {
            button.setEnabled(row);
        }
        take.setEnabled(row && site.blocked().isEmpty());
        returns.setEnabled(row && site.blocked().isEmpty());
    }

    private Optional<RegisterRow> chosen() {
        TableItem[] s = table.getSelection();
        return s.length == 1 ? Optional.of((RegisterRow) s[0].getData()) : Optional.empty();
    }

    private void take(RegisterRow row) {
        if (!take.isEnabled()) {
            return;
        }
        JobStore store = site.store();
        Display display = area.getDisplay();
        new DeskJob(words.text("before.looking"), monitor -> {
            Job earlier = store.load(row.jobId());
            display.asyncExec(() -> {
                if (!area.isDisposed()) {
                    said.setText(taken(earlier));
                    said.requestLayout();
                    goOn.run();
                }
            });
        }).schedule();
    }

    /** Takes an earlier job over and says what was left as typed. */
    private String taken(Job earlier) {
        Set<String> left = taken.take(earlier);
        return left.isEmpty() ? words.text("before.taken", earlier.number()) : words.text("before.takenBut", earlier.number(),
                left.stream().map(words::text).collect(Collectors.joining(", ")));
    }

    private void open(RegisterRow row) {
        new JobInput(row.jobId(), row.number())
                .openIn(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage());
    }
}
