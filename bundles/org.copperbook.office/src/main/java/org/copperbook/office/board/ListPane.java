package org.copperbook.office.board;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.copperbook.desk.Desk;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.desk.theme.Rows;
import org.copperbook.jobs.report.BoardStep;
import org.copperbook.store.BoardQuery;
import org.copperbook.store.BoardQuery.Order;
import org.copperbook.store.BoardQuery.Which;
import org.copperbook.store.BoardRow;
import org.copperbook.store.JobStore;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** The same jobs as a list: which of them, at which step, in which order; what is late says why. */
final class ListPane {

    private static final List<String> COLUMNS = List.of("list.number", "list.whose", "list.due", "list.why",
            "list.step", "list.waiting", "list.age", "list.untouched");
    private static final int DUE = COLUMNS.indexOf("list.due");

    private final Words words;
    private final Composite box;
    private final Combo which;
    private final Combo step;
    private final Combo order;
    private final Label count;
    private final Table table;
    private final FittedColumns fitted;
    private final BoardRows rows;
    private LocalDate today = LocalDate.now();

    ListPane(Composite parent, Words words, JobStore store, Executor background, Consumer<BoardRow> open,
            Consumer<Optional<RuntimeException>> told) {
        this.words = words;
        Look look = Look.of(parent);
        box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 6).spacing(0, 6).applyTo(box);
        Composite top = new Composite(box, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(4).spacing(8, 0).applyTo(top);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(top);
        which = choice(top, look, "list.which");
        for (Which w : Which.values()) {
            which.add(words.of(w));
        }
        which.select(Which.OPEN.ordinal());
        step = choice(top, look, "list.atStep");
        step.add(words.text("list.everyStep"));
        for (BoardStep s : BoardStep.values()) {
            step.add(words.of(s));
        }
        step.select(0);
        order = choice(top, look, "list.order");
        for (Order o : Order.values()) {
            order.add(words.of(o));
        }
        order.select(0);
        count = look.as(Look.Role.TEXT, new Label(top, SWT.RIGHT));
        GridDataFactory.fillDefaults().align(SWT.END, SWT.CENTER).grab(true, false).hint(look.chars(14), SWT.DEFAULT)
                .applyTo(count);
        table = look.as(Look.Role.TEXT, new Table(box, SWT.VIRTUAL | SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL
                | SWT.H_SCROLL | SWT.BORDER));
        table.setHeaderVisible(true);
        table.setData(Desk.ID, "board.list");
        SpokenName.give(table, words.text("list.name"));
        GridDataFactory.fillDefaults().grab(true, true).hint(look.chars(40), look.lineHeight() * 8).applyTo(table);
        for (String column : COLUMNS) {
            TableColumn c = new TableColumn(table, SWT.LEFT);
            c.setText(words.text(column));
            c.setMoveable(true);
        }
        fitted = new FittedColumns(table, new int[COLUMNS.size()]);
        Rows.dress(table, column -> false);
        table.addListener(SWT.SetData, this::fill);
        table.addListener(SWT.DefaultSelection, e -> {
            if (e.item != null && e.item.getData() instanceof BoardRow r) {
                open.accept(r);
            }
        });
        rows = new BoardRows(store::board, background, table.getDisplay()::asyncExec, failure -> {
            if (!table.isDisposed()) {
                table.setItemCount(rows().total());
                table.clearAll();
                fitted.fit();
                count.setText(words.text("list.count", rows().total()));
                told.accept(failure);
            }
        });
        Reach.ensure(top);
    }

    Table table() {
        return table;
    }

    Composite control() {
        return box;
    }

    void show(LocalDate day) {
        today = day;
        ask();
    }

    void fit() {
        fitted.fit();
        box.layout(true, true);
    }

    void setFocus() {
        which.setFocus();
    }

    private BoardRows rows() {
        return rows;
    }

    private Combo choice(Composite parent, Look look, String key) {
        Combo c = look.as(Look.Role.TEXT, new Combo(parent, SWT.READ_ONLY));
        c.setData(Desk.ID, key);
        SpokenName.give(c, words.text(key));
        c.setToolTipText(words.text(key));
        c.addListener(SWT.Selection, e -> ask());
        return c;
    }

    private void ask() {
        rows.query(new BoardQuery(step.getSelectionIndex() <= 0 ? Optional.empty()
                : Optional.of(BoardStep.values()[step.getSelectionIndex() - 1]), Which.values()[which.getSelectionIndex()],
                Order.values()[order.getSelectionIndex()], today, 0, BoardRows.PAGE));
    }

    private void fill(Event e) {
        TableItem item = (TableItem) e.item;
        Optional<BoardRow> row = rows.row(table.indexOf(item));
        item.setData(row.orElse(null));
        BoardWords said = new BoardWords(words, today, ZoneId.systemDefault());
        item.setText(row.map(r -> new String[] {r.job().number(), said.whose(r), said.due(r), said.why(r),
                said.step(r), said.waiting(r), said.age(r), said.untouched(r)}).orElse(new String[] {"\u2026"}));
        item.setForeground(row.filter(r -> r.job().voided()).isPresent() ? Look.of(table).palette().muted() : null);
        item.setForeground(DUE, row.filter(said::late).isPresent() ? Look.of(table).palette().problem() : null);
    }
}
