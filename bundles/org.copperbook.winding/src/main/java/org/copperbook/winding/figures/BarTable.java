package org.copperbook.winding.figures;

import java.util.List;
import java.util.stream.IntStream;
import org.copperbook.desk.Desk;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Palette;
import org.copperbook.desk.theme.Rows;
import org.copperbook.desk.verdict.IntervalBar;
import org.copperbook.jobs.check.Verdict;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** Rows of text of which one column draws the interval bar and the word of a verdict; shown only, copied by nobody. */
public final class BarTable {

    private static final int MOST_ROWS = 14;

    /**
     * A column.
     *
     * @param title title
     * @param chars least width in average characters; a column grows with what stands in it
     */
    public record Column(String title, int chars) {
    }

    /**
     * A row.
     *
     * @param cells   text of every column; that of the bar's column is spoken and not drawn
     * @param verdict what the bar shows, or null
     */
    public record Row(List<String> cells, Verdict verdict) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    private final Table table;
    private final int bar;
    private final FittedColumns widths;
    private List<Row> rows = List.of();

    /**
     * @param id    id under which the table is found
     * @param named accessible name
     * @param bar   index of the column that draws the bar
     */
    public BarTable(Composite parent, String id, String named, List<Column> columns, int bar) {
        this.bar = bar;
        Look look = Look.of(parent);
        table = look.as(Look.Role.TEXT, new Table(parent, SWT.VIRTUAL | SWT.SINGLE | SWT.FULL_SELECTION | SWT.BORDER
                | SWT.V_SCROLL | SWT.H_SCROLL));
        table.setData(Desk.ID, id);
        table.setHeaderVisible(true);
        for (Column c : columns) {
            TableColumn column = new TableColumn(table, SWT.LEFT);
            column.setText(c.title());
        }
        Rows.dress(table, column -> column == bar);
        table.addListener(SWT.SetData, this::fill);
        table.addListener(SWT.EraseItem, e -> {
            if (e.index == bar) {
                e.detail &= ~SWT.FOREGROUND;
            }
        });
        table.addListener(SWT.PaintItem, this::paint);
        table.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = named;
            }
        });
        widths = new FittedColumns(table, columns.stream().mapToInt(Column::chars).toArray());
        height();
    }

    public Table table() {
        return table;
    }

    /** The row under the cursor, or null. */
    public Row chosen() {
        int i = table.getSelectionIndex();
        return i >= 0 && i < rows.size() ? rows.get(i) : null;
    }

    /** Shows other rows; true when their number changed, so that the form has to be laid out anew. */
    public boolean show(List<Row> next) {
        if (table.isDisposed() || next.equals(rows)) {
            return false;
        }
        boolean otherCount = next.size() != rows.size();
        List<Row> before = rows;
        rows = List.copyOf(next);
        if (otherCount) {
            table.setItemCount(rows.size());
            table.clearAll();
        } else {
            IntStream.range(0, rows.size()).filter(i -> !rows.get(i).equals(before.get(i))).forEach(table::clear);
        }
        if (otherCount || wider(before)) {
            widths.fit();
        }
        if (otherCount) {
            height();
        }
        return otherCount;
    }

    /** Whether a column holds a longer text than before; measuring every cell each time takes longer than filling it. */
    private boolean wider(List<Row> before) {
        return IntStream.range(0, table.getColumnCount()).anyMatch(column -> longest(rows, column) > longest(before, column));
    }

    private static int longest(List<Row> of, int column) {
        return of.stream().mapToInt(r -> r.cells().get(column).length()).max().orElse(0);
    }

    private void height() {
        int lines = Math.max(1, Math.min(MOST_ROWS, rows.size()));
        int scroll = table.getHorizontalBar() == null ? 0 : table.getHorizontalBar().getSize().y;
        GridDataFactory.fillDefaults().grab(true, false).hint(Look.of(table).chars(40), table.getHeaderHeight()
                + scroll + lines * Math.max(table.getItemHeight(), Look.of(table).rowHeight())).applyTo(table);
    }

    private void fill(Event e) {
        TableItem item = (TableItem) e.item;
        int row = table.indexOf(item);
        if (row >= 0 && row < rows.size()) {
            item.setText(rows.get(row).cells().toArray(String[]::new));
        }
    }

    private void paint(Event e) {
        int row = table.indexOf((TableItem) e.item);
        if (e.index != bar || row < 0 || row >= rows.size() || rows.get(row).verdict() == null) {
            return;
        }
        Look look = Look.of(table);
        Palette palette = look.palette();
        Rectangle cell = ((TableItem) e.item).getBounds(bar);
        if ((e.detail & SWT.SELECTED) != 0) {
            // The colours of the outcomes are chosen against the table's own background, not the selection's.
            e.gc.setBackground(table.getBackground());
            e.gc.fillRectangle(cell);
        }
        IntervalBar.paint(e.gc, cell, rows.get(row).verdict(), look, palette);
    }
}
