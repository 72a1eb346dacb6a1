package org.copperbook.winding.figures;

import java.util.List;
import org.copperbook.desk.Desk;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Palette;
import org.copperbook.desk.verdict.IntervalBar;
import org.copperbook.desk.verdict.VerdictWords;
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

/** Figures one below the other: what it is, its value, its interval bar and word, its limit, why, and the source. */
final class VerdictRows {

    private static final int MOST_ROWS = 14;
    private static final int BAR = 2;
    private static final int[] CHARS = {38, 17, 30, 26, 60, 60};

    private final Table table;
    private List<Verdict> rows = List.of();

    /**
     * @param id     id under which the table is found
     * @param named  accessible name
     * @param titles titles of the six columns
     */
    VerdictRows(Composite parent, String id, String named, List<String> titles) {
        Look look = Look.of(parent);
        table = look.as(Look.Role.TEXT, new Table(parent, SWT.VIRTUAL | SWT.SINGLE | SWT.FULL_SELECTION | SWT.BORDER
                | SWT.V_SCROLL | SWT.H_SCROLL));
        table.setData(Desk.ID, id);
        table.setHeaderVisible(true);
        for (int i = 0; i < CHARS.length; i++) {
            TableColumn column = new TableColumn(table, SWT.LEFT);
            column.setText(titles.get(i));
            column.setWidth(look.chars(CHARS[i]));
        }
        table.addListener(SWT.MeasureItem, e -> e.height = Math.max(e.height, look.rowHeight()));
        table.addListener(SWT.SetData, this::fill);
        table.addListener(SWT.PaintItem, this::paint);
        table.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = named;
            }
        });
        height();
    }

    Table table() {
        return table;
    }

    /** The verdict under the cursor, or null. */
    Verdict chosen() {
        int i = table.getSelectionIndex();
        return i >= 0 && i < rows.size() ? rows.get(i) : null;
    }

    /** Shows other rows; true when their number changed, so that the form has to be laid out anew. */
    boolean show(List<Verdict> next) {
        if (table.isDisposed() || next.equals(rows)) {
            return false;
        }
        boolean otherCount = next.size() != rows.size();
        rows = List.copyOf(next);
        table.setItemCount(rows.size());
        table.clearAll();
        if (otherCount) {
            height();
        }
        return otherCount;
    }

    private void height() {
        int lines = Math.max(1, Math.min(MOST_ROWS, rows.size()));
        int bar = table.getHorizontalBar() == null ? 0 : table.getHorizontalBar().getSize().y;
        GridDataFactory.fillDefaults().grab(true, false).hint(Look.of(table).chars(40), table.getHeaderHeight()
                + bar + lines * Math.max(table.getItemHeight(), Look.of(table).rowHeight())).applyTo(table);
    }

    private void fill(Event e) {
        TableItem item = (TableItem) e.item;
        int row = table.indexOf(item);
        if (row < rows.size()) {
            Verdict v = rows.get(row);
            item.setText(new String[] {what(v), VerdictWords.value(v), "", said(v.limitText()), v.reason(),
                    said(v.source())});
        }
    }

    private static String said(String text) {
        return text == null ? "" : text;
    }

    /** The title without the winding, which the page names already. */
    private static String what(Verdict v) {
        int colon = v.title().indexOf(": ");
        int comma = v.title().indexOf(", ");
        int cut = comma >= 0 && (colon < 0 || comma < colon) ? comma : colon;
        if (cut < 0) {
            return v.title();
        }
        String rest = v.title().substring(cut + 2);
        return rest.substring(0, 1).toUpperCase(java.util.Locale.getDefault()) + rest.substring(1);
    }

    private void paint(Event e) {
        int row = table.indexOf((TableItem) e.item);
        if (e.index != BAR || row >= rows.size()) {
            return;
        }
        Look look = Look.of(table);
        Palette palette = look.palette();
        Rectangle cell = ((TableItem) e.item).getBounds(BAR);
        if ((e.detail & SWT.SELECTED) != 0) {
            // The colours of the outcomes are chosen against the table's own background, not the selection's.
            e.gc.setBackground(table.getBackground());
            e.gc.fillRectangle(cell);
        }
        IntervalBar.paint(e.gc, cell, rows.get(row), look, palette);
    }
}
