package org.copperbook.desk.register;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.copperbook.desk.theme.Look;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.ui.IMemento;

/**
 * Widths and order of the register's columns: as wide as what stands in them until somebody moves a heading's edge,
 * and then as wide as it was left, also at another size of text and at the next start.
 */
final class RegisterWidths {

    private static final String WIDTH = "width.tenthsOfChar.";
    private static final String ORDER = "order";
    private static final int TENTHS = 10;
    private static final int MEASURED_ROWS = 60;
    private static final int WIDEST_CHARS = 44;
    private static final int CELL_AIR = 16;

    private final Table table;
    private final List<String> ids;
    private final Set<Integer> moved = new HashSet<>();
    private int[] tenths;
    private boolean fitting;

    RegisterWidths(Table table, List<String> ids, IMemento memento) {
        this.table = table;
        this.ids = List.copyOf(ids);
        this.tenths = new int[ids.size()];
        for (int i = 0; i < ids.size(); i++) {
            int column = i;
            Integer kept = memento == null ? null : memento.getInteger(WIDTH + ids.get(i));
            if (kept != null && kept > 0) {
                moved.add(i);
                tenths[i] = kept;
                table.getColumn(i).setWidth(pixels(kept));
            }
            table.getColumn(i).addListener(SWT.Resize, e -> resizedByHand(column));
        }
        order(memento == null ? null : memento.getString(ORDER));
    }

    /** Widens the columns that nobody has moved to what stands in the rows. */
    void fit() {
        fitting = true;
        GC gc = new GC(table);
        try {
            int rows = Math.min(MEASURED_ROWS, table.getItemCount());
            for (int i = 0; i < ids.size(); i++) {
                if (!moved.contains(i)) {
                    TableColumn column = table.getColumn(i);
                    int wide = gc.textExtent(column.getText()).x;
                    for (int row = 0; row < rows; row++) {
                        wide = Math.max(wide, gc.textExtent(table.getItem(row).getText(i)).x);
                    }
                    int most = Look.of(table).chars(WIDEST_CHARS);
                    column.setWidth(Math.max(column.getWidth(), Math.min(most, wide + CELL_AIR)));
                }
            }
        } finally {
            gc.dispose();
            fitting = false;
        }
    }

    /** The text has another size: the columns that somebody moved keep their width in letters. */
    void resized() {
        fitting = true;
        for (int i = 0; i < ids.size(); i++) {
            table.getColumn(i).setWidth(moved.contains(i) ? pixels(tenths[i]) : 0);
        }
        fit();
    }

    void save(IMemento into) {
        for (int i : moved) {
            into.putInteger(WIDTH + ids.get(i), tenths[i]);
        }
        into.putString(ORDER, IntStream.of(table.getColumnOrder()).mapToObj(ids::get).collect(Collectors.joining(" ")));
    }

    /** Columns that were not there when the order was kept stay where they are. */
    private void order(String kept) {
        List<Integer> order = kept == null ? List.of()
                : Stream.of(kept.split(" ")).map(ids::indexOf).filter(i -> i >= 0).distinct().toList();
        if (order.size() == ids.size()) {
            table.setColumnOrder(order.stream().mapToInt(Integer::intValue).toArray());
        }
    }

    private void resizedByHand(int column) {
        if (!fitting && table.getColumn(column).getWidth() > 0) {
            moved.add(column);
            tenths[column] = (int) Math.round(table.getColumn(column).getWidth() * (double) TENTHS * TENTHS
                    / Look.of(table).chars(TENTHS));
        }
    }

    private int pixels(int tenthsOfChar) {
        return (int) Math.round(Look.of(table).chars(TENTHS) * (double) tenthsOfChar / (TENTHS * TENTHS));
    }
}
