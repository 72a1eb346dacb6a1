package org.copperbook.desk.theme;

import java.util.HashSet;
import java.util.Set;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/**
 * Columns as wide as their headings and what stands in their first rows, until somebody moves a heading's edge. Long
 * sentences are cut at a width that still leaves room for the other columns.
 */
public final class FittedColumns {

    /** Measuring a row of a virtual table makes it, thumbnail and all; so not many more than are in sight. */
    private static final int MEASURED_ROWS = 40;
    private static final int WIDEST_CHARS = 48;
    private static final int CELL_AIR = 16;

    private final Table table;
    private final int[] leastChars;
    private final Set<Integer> moved = new HashSet<>();
    private boolean fitting;

    /**
     * Looks after the columns that a table has now, also when the size of the text changes.
     *
     * @param leastChars least width of each column, average characters; a drawn column needs it, for others 0 will do
     */
    public FittedColumns(Table table, int... leastChars) {
        this.table = table;
        this.leastChars = leastChars.clone();
        for (int i = 0; i < leastChars.length; i++) {
            int column = i;
            table.getColumn(i).addListener(SWT.Resize, e -> {
                if (!fitting && !isStretched(column)) {
                    moved.add(column);
                }
            });
        }
        fit();
        Look.of(table).onResize(table, () -> {
            moved.clear();
            fit();
        });
    }

    /** GTK gives the last column all the room that is left, and tells of it as if somebody had moved its edge. */
    private boolean isStretched(int column) {
        int[] order = table.getColumnOrder();
        return column == order[order.length - 1] && "gtk".equals(SWT.getPlatform());
    }

    /** Measures again; call it when other rows are shown. */
    public void fit() {
        fitting = true;
        Look look = Look.of(table);
        GC gc = new GC(table);
        try {
            int most = look.chars(WIDEST_CHARS);
            for (int i = 0; i < leastChars.length; i++) {
                if (!moved.contains(i)) {
                    int wide = Math.max(look.chars(leastChars[i]), Math.min(most, needed(gc, i) + CELL_AIR));
                    TableColumn column = table.getColumn(i);
                    if (column.getWidth() != wide) {
                        column.setWidth(wide);
                    }
                }
            }
        } finally {
            gc.dispose();
            fitting = false;
        }
    }

    private int needed(GC gc, int column) {
        int box = column == 0 && (table.getStyle() & SWT.CHECK) != 0 ? Look.of(table).rowHeight() : 0;
        gc.setFont(Look.of(table).font(Look.Role.TEXT));
        int wide = gc.textExtent(table.getColumn(column).getText()).x;
        int rows = Math.min(MEASURED_ROWS, table.getItemCount());
        for (int row = 0; row < rows; row++) {
            TableItem item = table.getItem(row);
            String text = item.getText(column); // Makes the row of a virtual table, with the fonts of its cells.
            gc.setFont(item.getFont(column));
            wide = Math.max(wide, gc.textExtent(text).x);
        }
        return wide + box;
    }
}
