package org.copperbook.desk.grid;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.theme.Look;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;

/**
 * How wide the columns of a grid are: they grow to what stands in them, within reason. One that gives way grows only as
 * far as the column that it keeps stays in sight. No column is made narrower than somebody made it.
 */
final class GridWidths {

    private static final int MEASURED_ROWS = 40;
    private static final int MOST_CHARS = 44;
    private static final int CELL_AIR = 14;

    private final Table table;
    private final GridModel model;
    private final int saying;
    /** What columns that give way were given last; at any other width somebody moved them. */
    private final Map<Integer, Integer> given = new HashMap<>();

    /** @param sayingChars width of the last column, which says what is judged in the row; average characters */
    GridWidths(Table table, GridModel model, int sayingChars) {
        this.table = table;
        this.model = model;
        this.saying = sayingChars;
        if (columns().stream().anyMatch(c -> c.keeps() != null)) {
            table.addListener(SWT.Resize, e -> fit());
        }
    }

    /** Sets all columns to what they were made for, which is also their least. */
    void begin() {
        for (int c = 0; c < columns().size(); c++) {
            table.getColumn(c).setWidth(least(c));
        }
        table.getColumn(columns().size()).setWidth(Look.of(table).chars(saying));
        given.clear();
        fit();
    }

    /** Widens columns to what stands in them now. */
    void fit() {
        GC gc = new GC(table);
        try {
            for (int c = 0; c < columns().size(); c++) {
                if (columns().get(c).keeps() == null) {
                    TableColumn column = table.getColumn(c);
                    column.setWidth(Math.max(column.getWidth(), wanted(gc, c)));
                }
            }
            for (int c = 0; c < columns().size(); c++) {
                if (columns().get(c).keeps() != null) {
                    giveWay(c, wanted(gc, c));
                }
            }
        } finally {
            gc.dispose();
        }
    }

    /** Whether the text of a cell is longer than its column shows. */
    boolean isCut(int row, int column) {
        GC gc = new GC(table);
        try {
            return gc.textExtent(model.text(row, column)).x + CELL_AIR > table.getColumn(column).getWidth();
        } finally {
            gc.dispose();
        }
    }

    private List<GridColumn> columns() {
        return model.columns();
    }

    private int least(int column) {
        GridColumn c = columns().get(column);
        return Math.max(Look.of(table).chars(c.chars()), Look.of(table).chars(c.titleChars()));
    }

    private int wanted(GC gc, int column) {
        int wide = column == 0 && model.grows() ? gc.textExtent(DeskWords.text("grid.newRow")).x : 0;
        for (int r = 0; r < Math.min(model.filled(), MEASURED_ROWS); r++) {
            wide = Math.max(wide, gc.textExtent(model.text(r, column)).x);
        }
        return Math.min(Look.of(table).chars(MOST_CHARS), wide + CELL_AIR);
    }

    private void giveWay(int column, int wanted) {
        TableColumn its = table.getColumn(column);
        if (its.getWidth() == given.getOrDefault(column, least(column))) {
            int room = table.getClientArea().width - others(column);
            its.setWidth(Math.max(least(column), Math.min(wanted, room)));
            given.put(column, its.getWidth());
        }
    }

    /** What the other columns take, up to the one that is to stay in sight. */
    private int others(int column) {
        int taken = 0;
        for (int c : table.getColumnOrder()) {
            taken += c == column ? 0 : table.getColumn(c).getWidth();
            if (c < columns().size() && columns().get(c).pointer().equals(columns().get(column).keeps())) {
                break;
            }
        }
        return taken;
    }
}
