package org.copperbook.office.board;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.JobInput;
import org.copperbook.desk.form.PushButton;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.report.BoardStep;
import org.copperbook.jobs.report.Workload;
import org.copperbook.jobs.shop.Capacities;
import org.copperbook.office.AfterChanges;
import org.copperbook.office.Behind;
import org.copperbook.office.NewDay;
import org.copperbook.office.Quotes;
import org.copperbook.office.SinglePageEditor;
import org.copperbook.store.BoardRow;
import org.copperbook.store.JobStore;
import org.copperbook.store.Saved;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;

/** Where every job stands: as a board, as a list, and as hours ahead of each trade. Kept up with every save. */
public final class BoardEditor extends SinglePageEditor {

    public static final String ID = "org.copperbook.office.editor.where-jobs-stand";

    private static final int PAUSE = 300;
    private static final int NARROW = 30;
    private static final PartKey STANDING = PartKey.of(PartKind.STANDING);
    private static final PartKey CAPACITIES = PartKey.of(PartKind.CAPACITIES);

    private final Words words = Words.of(Quotes.class);
    private DeskSession session;
    private JobStore.Listening listening;
    private Composite box;
    private Behind behind;
    private CTabFolder tabs;
    private Label said;
    private Table last;
    private ColumnsPane columns;
    private ListPane list;
    private WorkloadPane load;
    private boolean shown;

    @Override
    public void createPartControl(Composite parent) {
        session = DeskSession.ofWorkbench();
        Display display = parent.getDisplay();
        Look look = Look.of(display);
        box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(box);
        behind = new Behind("copperbook-board", box, e -> {
            load.say(e.getMessage());
            told(Optional.of(e));
        });
        Composite top = new Composite(box, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).extendedMargins(6, 6, 4, 0).spacing(8, 0).applyTo(top);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(top);
        said = look.as(Look.Role.TEXT, new Label(top, SWT.WRAP));
        said.setData(Desk.ID, "board.said");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(look.chars(NARROW), SWT.DEFAULT)
                .applyTo(said);
        PushButton.in(top, words, "board.setWaiting", this::askWaiting);
        tabs = look.as(Look.Role.TEXT, new CTabFolder(box, SWT.TOP | SWT.FLAT));
        tabs.setData(Desk.ID, "board.tabs");
        GridDataFactory.fillDefaults().grab(true, true).applyTo(tabs);
        tabs.setTabHeight(look.rowHeight());
        columns = new ColumnsPane(tabs, words, session.store(), behind.thread(), this::open, this::told);
        columns.tables().forEach(this::follow);
        list = new ListPane(tabs, words, session.store(), behind.thread(), this::open, this::told);
        follow(list.table());
        load = new WorkloadPane(tabs, words, this::keep);
        tab("board.board", columns.control());
        tab("board.list", list.control());
        tab("board.load", load.control());
        tabs.setSelection(0);
        look.onResize(box, () -> {
            look.dress(box);
            tabs.setTabHeight(look.rowHeight());
            Reach.ensure(box);
            columns.fit();
            list.fit();
            load.fit();
            box.layout(true, true);
        });
        AfterChanges again = new AfterChanges(box, PAUSE, this::reload);
        listening = session.store().onChange(change -> display.asyncExec(again::changed));
        new NewDay(box, this::reload);
        reload();
    }

    @Override
    public void setFocus() {
        switch (tabs.getSelectionIndex()) {
            case 1 -> list.setFocus();
            case 2 -> load.setFocus();
            default -> columns.setFocus();
        }
    }

    @Override
    public void dispose() {
        if (listening != null) {
            listening.close();
        }
        if (behind != null) {
            behind.close();
        }
        super.dispose();
    }

    private record Read(Map<BoardStep, Integer> counts, int late, int waiting, int undated, Workload load) {
    }

    private void reload() {
        if (box.isDisposed()) {
            return;
        }
        LocalDate today = LocalDate.now();
        behind.run(() -> {
            JobStore store = session.store();
            Read read = new Read(store.boardCounts(), BoardTotals.late(store, today), BoardTotals.waiting(store, today),
                    BoardTotals.undated(store, today), Workload.of(store.workAhead(), capacities(), today,
                            WorkloadPane.WEEKS));
            behind.later(() -> show(read, today));
        });
    }

    private void show(Read read, LocalDate today) {
        int all = read.counts().values().stream().mapToInt(n -> n).sum();
        said.setText(words.text("board.total", all, all - read.counts().getOrDefault(BoardStep.ENDED, 0), read.late(),
                read.waiting(), read.undated()));
        boolean first = !shown;
        shown = true;
        columns.show(read.counts(), today);
        list.show(today);
        load.show(read.load());
        box.layout(true, true);
        if (first && getSite().getPage().getActivePart() == this) {
            setFocus();
        }
    }

    private void told(Optional<RuntimeException> failure) {
        failure.ifPresent(e -> {
            ILog.of(BoardEditor.class).error("the board could not be read", e);
            said.setText(words.text("board.failed", e.getMessage()));
            box.layout(true, true);
        });
    }

    /** Keeps in mind where a job was chosen last; W asks what it waits for. */
    private void follow(Table jobs) {
        jobs.addListener(SWT.Selection, e -> last = jobs);
        jobs.addListener(SWT.FocusIn, e -> last = jobs);
        jobs.addListener(SWT.KeyDown, e -> {
            if ((e.keyCode == 'w' || e.keyCode == 'W') && e.stateMask == 0) {
                e.doit = false;
                askWaiting();
            }
        });
    }

    private Optional<BoardRow> chosen() {
        return last != null && last.getSelectionCount() == 1 && last.getSelection()[0].getData() instanceof BoardRow r
                ? Optional.of(r) : Optional.empty();
    }

    private void askWaiting() {
        if (chosen().isEmpty()) {
            say(words.text("board.chooseFirst"));
            return;
        }
        BoardRow row = chosen().get();
        if (row.step() == BoardStep.ENDED) {
            say(words.text("board.hasEnded", row.job().number()));
        } else if (session.who().isEmpty()) {
            say(words.text("load.whoFirst"));
        } else {
            new WaitingDialog(getSite().getShell(), words, row, LocalDate.now(),
                    answer -> keepWaiting(row, answer, session.who().orElseThrow())).open();
        }
    }

    private void keepWaiting(BoardRow row, WaitingAnswer answer, String who) {
        behind.run(() -> {
            JobStore store = session.store();
            Optional<Saved> was = store.current(row.job().jobId(), STANDING);
            Standing before = was.map(s -> (Standing) s.part()).orElseGet(() -> new Standing(Standing.SCHEMA, null, null, null));
            Standing next = answer.in(before, Instant.now(), ZoneId.systemDefault());
            if (!next.equals(before)) {
                store.save(row.job().jobId(), STANDING, next, was.map(Saved::number).orElse(0), who, "");
            }
        });
    }

    private void say(String text) {
        said.setText(text);
        box.layout(true, true);
    }

    private void open(BoardRow row) {
        new JobInput(row.job().jobId(), row.job().number()).openIn(getSite().getPage());
    }

    private Capacities capacities() {
        return session.store().current(JobStore.SHOP, CAPACITIES).map(s -> (Capacities) s.part())
                .orElseGet(() -> new Capacities(Capacities.SCHEMA, List.of(), Map.of()));
    }

    private void keep(String trade, BigDecimal hours) {
        Optional<String> who = session.who();
        if (who.isEmpty()) {
            load.say(words.text("load.whoFirst"));
            return;
        }
        behind.run(() -> {
            int revision = session.store().current(JobStore.SHOP, CAPACITIES).map(Saved::number).orElse(0);
            session.store().saveShopPart(CAPACITIES, capacities().with(trade, hours), revision, who.get(), "");
            behind.later(() -> load.say(words.text("load.kept", trade, hours)));
        });
    }

    private void tab(String key, Control control) {
        CTabItem item = new CTabItem(tabs, SWT.NONE);
        item.setText(words.text(key));
        item.setControl(control);
    }
}
