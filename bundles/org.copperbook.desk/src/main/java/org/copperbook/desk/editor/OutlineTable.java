package org.copperbook.desk.editor;

import java.util.List;
import java.util.function.Consumer;
import org.copperbook.desk.Desk;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Palette;
import org.copperbook.desk.theme.Rows;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** The outline at the left of a job: parts with their state in words, hold points between them, and what can be added. */
final class OutlineTable {

    private static final String GAP = "    ";
    private static final int AIR_CHARS = 3;

    private final Table table;
    private List<OutlineRow> rows = List.of();
    private Runnable wider = () -> { };
    private int labelWidth;
    private int stateWidth;

    /**
     * @param chosen told when another row is chosen
     * @param opened told when Enter is pressed on a row
     */
    OutlineTable(Composite parent, Consumer<OutlineRow> chosen, Consumer<OutlineRow> opened) {
        Look look = Look.of(parent);
        table = look.as(Look.Role.TEXT, new Table(parent, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL));
        table.setData(Desk.ID, "outline");
        new TableColumn(table, SWT.LEFT);
        new TableColumn(table, SWT.LEFT);
        Rows.dress(table, column -> false);
        table.addListener(SWT.Resize, e -> widths());
        // Walking over a row with the arrow keys must not begin a part or jump to where a hold point is signed, past
        // which no arrow would then lead: that takes Enter or a click.
        table.addListener(SWT.Selection, e -> selected(row -> {
            if (row instanceof OutlineRow.Page) {
                chosen.accept(row);
            }
        }));
        table.addListener(SWT.MouseUp, e -> selected(row -> {
            if (e.button == 1 && !(row instanceof OutlineRow.Page)) {
                chosen.accept(row);
            }
        }));
        table.addListener(SWT.DefaultSelection, e -> selected(opened));
        table.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = DeskWords.text("outline.name");
            }
        });
        look.onResize(table, () -> {
            table.setFont(look.font(Look.Role.TEXT));
            writeAll();
        });
    }

    Table table() {
        return table;
    }

    List<OutlineRow> rows() {
        return rows;
    }

    /** Shows rows; only what changed is written. */
    void show(List<OutlineRow> next) {
        if (next.equals(rows) || table.isDisposed()) {
            return;
        }
        rows = List.copyOf(next);
        writeAll();
    }

    /** Told when the rows need another width than before. */
    void onWidth(Runnable changed) {
        wider = changed;
    }

    /** Width that shows every row whole, pixels. */
    int wantedWidth() {
        return labelWidth + stateWidth + Look.of(table).chars(AIR_CHARS);
    }

    private void writeAll() {
        Palette palette = Look.of(table).palette();
        table.setRedraw(false);
        table.setItemCount(rows.size());
        for (int i = 0; i < rows.size(); i++) {
            write(table.getItem(i), rows.get(i), palette);
        }
        table.setRedraw(true);
        int before = wantedWidth();
        measure();
        widths();
        if (wantedWidth() != before) {
            wider.run();
        }
    }

    private void measure() {
        GC gc = new GC(table);
        int air = Look.of(table).chars(AIR_CHARS);
        try {
            labelWidth = 0;
            stateWidth = 0;
            for (TableItem item : table.getItems()) {
                gc.setFont(item.getFont(0));
                labelWidth = Math.max(labelWidth, gc.textExtent(item.getText(0)).x + air);
                gc.setFont(table.getFont());
                stateWidth = Math.max(stateWidth, gc.textExtent(item.getText(1)).x + air);
            }
        } finally {
            gc.dispose();
        }
    }

    /** Whether somebody rests on a row that is no page, on the way to another one or before pressing Enter. */
    boolean isUnderway() {
        int i = table.getSelectionIndex();
        return table.isFocusControl() && i >= 0 && i < rows.size() && !(rows.get(i) instanceof OutlineRow.Page);
    }

    void select(int index) {
        if (table.getSelectionIndex() != index) {
            table.setSelection(index);
        }
    }

    private void selected(Consumer<OutlineRow> then) {
        int i = table.getSelectionIndex();
        if (i >= 0 && i < rows.size()) {
            then.accept(rows.get(i));
        }
    }

    private void write(TableItem item, OutlineRow row, Palette palette) {
        Look look = Look.of(table);
        if (row instanceof OutlineRow.Page p) {
            item.setText(new String[] {(p.dirty() ? "*" : "") + p.label(), DeskWords.get().of(p.state())});
            item.setForeground(0, null);
            item.setForeground(1, palette.muted());
            item.setFont(0, look.font(Look.Role.TEXT));
        } else if (row instanceof OutlineRow.Point p) {
            item.setText(new String[] {DeskWords.text("outline.point", p.label()),
                    DeskWords.get().of(p.state().state())});
            item.setForeground(0, null);
            item.setForeground(1, palette.muted());
            item.setFont(0, look.font(Look.Role.STRONG));
        } else {
            item.setText(new String[] {GAP + row.label(), ""});
            item.setForeground(0, palette.accent());
            item.setFont(0, look.font(Look.Role.TEXT));
        }
    }

    private void widths() {
        int width = table.getClientArea().width;
        table.getColumn(0).setWidth(Math.max(labelWidth, width - stateWidth - 2));
        table.getColumn(1).setWidth(stateWidth);
    }
}
