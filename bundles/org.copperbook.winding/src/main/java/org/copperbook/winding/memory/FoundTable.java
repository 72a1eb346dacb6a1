package org.copperbook.winding.memory;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.copperbook.desk.Desk;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Rows;
import org.copperbook.store.memory.FoundWinding;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** The list of past windings that were found. */
final class FoundTable {

    private static final int MOST_ROWS_SHOWN = 8;
    private static final String[] TITLES = {"memory.column.nearness", "memory.column.from", "memory.column.machine",
        "memory.column.slots", "memory.column.span", "memory.column.turns", "memory.column.wire",
        "memory.column.circuits", "memory.column.connection", "memory.column.differs"};

    private final Table table;
    private final FoundText texts;
    private final FittedColumns widths;
    private List<FoundWinding> found = List.of();

    FoundTable(Composite area, FoundText texts, Words words) {
        this.texts = texts;
        Look look = Look.of(area);
        table = look.as(Look.Role.TEXT, new Table(area, SWT.VIRTUAL | SWT.FULL_SELECTION | SWT.SINGLE | SWT.BORDER));
        table.setHeaderVisible(true);
        table.setData(Desk.ID, "memory.list");
        table.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = words.text("memory.title");
            }
        });
        for (int i = 0; i < TITLES.length; i++) {
            TableColumn c = new TableColumn(table, SWT.LEFT);
            c.setText(words.text(TITLES[i]));
        }
        Rows.dress(table, column -> false);
        table.addListener(SWT.SetData, this::fill);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(table);
        widths = new FittedColumns(table, new int[TITLES.length]);
    }

    private void fill(Event e) {
        TableItem item = (TableItem) e.item;
        FoundWinding f = found.get(table.indexOf(item));
        var w = f.winding();
        item.setText(new String[] {texts.nearness(f), texts.from(w), texts.machine(w), texts.slots(w.figures()),
            w.span(), w.turns() == null ? "" : w.turns().toString(), w.wire(),
            w.circuits() == null ? "" : w.circuits().toString(), texts.connection(w), texts.differences(f)});
    }

    void onSelection(Consumer<Optional<FoundWinding>> listener) {
        table.addListener(SWT.Selection, e -> listener.accept(selected()));
    }

    void onOpen(Consumer<FoundWinding> listener) {
        table.addListener(SWT.DefaultSelection, e -> selected().ifPresent(listener));
    }

    Optional<FoundWinding> selected() {
        int at = table.getSelectionIndex();
        return at < 0 || at >= found.size() ? Optional.empty() : Optional.of(found.get(at));
    }

    void show(List<FoundWinding> now) {
        found = List.copyOf(now);
        table.deselectAll();
        table.setItemCount(found.size());
        table.clearAll();
        widths.fit();
        boolean any = !found.isEmpty();
        table.setVisible(any);
        GridData data = (GridData) table.getLayoutData();
        data.exclude = !any;
        int row = Math.max(table.getItemHeight(), Look.of(table).rowHeight());
        data.heightHint = table.getHeaderHeight() + row * (Math.min(MOST_ROWS_SHOWN, found.size()) + 1);
    }
}
