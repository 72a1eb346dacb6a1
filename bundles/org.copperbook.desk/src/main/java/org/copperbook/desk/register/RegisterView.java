package org.copperbook.desk.register;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.JobInput;
import org.copperbook.desk.shell.DemoBand;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.shell.ReachBand;
import org.copperbook.desk.shell.ReadingBand;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.desk.theme.Rows;
import org.copperbook.store.JobStore;
import org.copperbook.store.RegisterRow;
import org.copperbook.store.RegisterSort;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.ViewPart;

/**
 * The register of jobs: filters as you type, sorts by its headings, opens a job with Enter. A job number typed or
 * scanned into the filter opens that job at once with Enter.
 */
public final class RegisterView extends ViewPart {

    private static final int PAUSE = 150;

    private final List<RegisterColumnContribution> columns =
            RegisterColumnContribution.read(Platform.getExtensionRegistry());
    private final ExecutorService background = Executors.newSingleThreadExecutor(r -> {
        Thread t = new Thread(r, "copperbook-register");
        t.setDaemon(true);
        return t;
    });
    private IMemento memento;
    private DeskSession session;
    private Text filter;
    private Label count;
    private Table table;
    private RegisterWidths widths;
    private RegisterRows rows;
    private JobStore.Listening listening;
    /** One and the same, so that asking again puts it off. */
    private final Runnable whenQuiet = this::filterNow;

    @Override
    public void init(IViewSite site, IMemento saved) throws PartInitException {
        super.init(site, saved);
        memento = saved;
    }

    @Override
    public void createPartControl(Composite parent) {
        session = DeskSession.ofWorkbench();
        Display display = parent.getDisplay();
        Look look = Look.of(display);
        Composite box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(box);
        DemoBand.addTo(box, session);
        ReadingBand.addTo(box, session);
        ReachBand.addTo(box, session);
        Composite top = new Composite(box, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(6, 4).applyTo(top);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(top);
        filter = look.as(Look.Role.TEXT, new Text(top, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL));
        filter.setMessage(DeskWords.text("register.filter"));
        filter.setData(Desk.ID, "register/filter");
        SpokenName.give(filter, DeskWords.text("register.filter"));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
        count = look.as(Look.Role.TEXT, new Label(top, SWT.RIGHT));
        GridDataFactory.fillDefaults().align(SWT.END, SWT.CENTER).hint(look.chars(12), SWT.DEFAULT).applyTo(count);
        table = look.as(Look.Role.TEXT, new Table(box, SWT.VIRTUAL | SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL
                | SWT.H_SCROLL));
        table.setHeaderVisible(true);
        table.setData(Desk.ID, "register/jobs");
        SpokenName.give(table, DeskWords.text("register.name"));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table);
        Reach.ensure(top);
        columns.forEach(this::addColumn);
        widths = new RegisterWidths(table, columns.stream().map(RegisterColumnContribution::id).toList(), memento);
        Rows.dress(table, column -> false);
        table.addListener(SWT.SetData, this::fill);
        table.addListener(SWT.DefaultSelection, e -> openSelected());
        look.onResize(table, () -> {
            look.dress(box);
            Reach.ensure(top);
            table.clearAll();
            widths.resized();
            box.layout(true, true);
        });
        filter.addListener(SWT.Modify, e -> filterSoon());
        filter.addListener(SWT.KeyDown, this::filterKey);
        filter.addListener(SWT.DefaultSelection, e -> openTyped());
        rows = new RegisterRows(session.store()::register, background, display::asyncExec, this::rowsChanged);
        listening = session.store().onChange(change -> display.asyncExec(() -> {
            if (!table.isDisposed()) {
                rows.reload();
            }
        }));
        rows.reload();
    }

    /** The filter, for whoever drives the window in tests. */
    public Text filter() {
        return filter;
    }

    /** The table, for whoever drives the window in tests. */
    public Table table() {
        return table;
    }

    @Override
    public void setFocus() {
        filter.setFocus();
        filter.selectAll();
    }

    @Override
    public void saveState(IMemento into) {
        widths.save(into);
    }

    @Override
    public void dispose() {
        if (listening != null) {
            listening.close();
        }
        background.shutdownNow();
        super.dispose();
    }

    private void addColumn(RegisterColumnContribution c) {
        Look look = Look.of(table);
        TableColumn tc = new TableColumn(table, SWT.LEFT);
        tc.setText(c.name());
        tc.setMoveable(true);
        tc.setWidth(look.chars(c.chars()));
        if (c.sort() != null) {
            tc.addListener(SWT.Selection, e -> sortBy(tc, c));
        }
    }

    private void sortBy(TableColumn column, RegisterColumnContribution c) {
        boolean again = rows.sort().column() == c.sort();
        RegisterSort sort = new RegisterSort(c.sort(), !again || !rows.sort().ascending());
        table.setSortColumn(column);
        table.setSortDirection(sort.ascending() ? SWT.UP : SWT.DOWN);
        rows.query(filter.getText(), sort);
    }

    private void filterSoon() {
        filter.getDisplay().timerExec(PAUSE, whenQuiet);
    }

    private void filterNow() {
        if (!filter.isDisposed()) {
            rows.query(filter.getText(), rows.sort());
        }
    }

    private void filterKey(Event e) {
        if (e.keyCode == SWT.ARROW_DOWN && table.getItemCount() > 0) {
            e.doit = false;
            table.setFocus();
            table.setSelection(Math.max(0, table.getSelectionIndex()));
        } else if (e.keyCode == SWT.ESC && !filter.getText().isEmpty()) {
            e.doit = false;
            filter.setText("");
        }
    }

    private void rowsChanged(Optional<RuntimeException> failure) {
        if (table.isDisposed()) {
            return;
        }
        if (failure.isPresent()) {
            ILog.of(RegisterView.class).error("the register could not be read", failure.get());
            count.setText(DeskWords.text("register.failed"));
            count.setToolTipText(failure.get().getMessage());
            return;
        }
        String selected = selected().map(RegisterRow::jobId).orElse(null);
        table.setItemCount(rows.total());
        table.clearAll();
        for (int i = 0; selected != null && i < Math.min(rows.total(), RegisterRows.PAGE); i++) {
            if (rows.row(i).map(RegisterRow::jobId).filter(selected::equals).isPresent()) {
                table.setSelection(i);
            }
        }
        widths.fit();
        count.setToolTipText(null);
        count.setText(DeskWords.text("register.count", rows.total()));
    }

    private void fill(Event e) {
        TableItem item = (TableItem) e.item;
        Optional<RegisterRow> row = rows.row(table.indexOf(item));
        item.setData(row.orElse(null));
        for (int i = 0; i < columns.size(); i++) {
            RegisterCell cell = columns.get(i).cell();
            item.setText(i, row.map(cell::text).orElse(i == 0 ? "\u2026" : ""));
        }
        item.setForeground(row.map(RegisterRow::voided).orElse(false) ? Look.of(table).palette().muted() : null);
    }

    private Optional<RegisterRow> selected() {
        TableItem[] s = table.getSelection();
        return s.length == 1 && s[0].getData() instanceof RegisterRow r ? Optional.of(r) : Optional.empty();
    }

    private void openSelected() {
        selected().ifPresent(r -> open(r.jobId(), r.number()));
    }

    /** Enter in the filter: a number opens its job; else the first row that fits gets the cursor. */
    private void openTyped() {
        String typed = filter.getText().strip();
        background.execute(() -> {
            Optional<String> id = typed.isEmpty() ? Optional.empty() : session.store().idOf(typed);
            table.getDisplay().asyncExec(() -> {
                if (table.isDisposed()) {
                    return;
                }
                if (id.isPresent()) {
                    open(id.get(), typed);
                    filter.selectAll();
                } else if (rows.total() == 1 && rows.row(0).isPresent()) {
                    open(rows.row(0).get().jobId(), rows.row(0).get().number());
                } else if (table.getItemCount() > 0) {
                    table.setFocus();
                    table.setSelection(0);
                }
            });
        });
    }

    private void open(String jobId, String number) {
        new JobInput(jobId, number).openIn(getSite().getPage());
    }
}
