package org.copperbook.desk.theme;

import java.util.function.IntPredicate;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/**
 * Draws the headings, the chosen row and the coloured texts of a table so that they can be read in every theme. Where the row's
 * ground is drawn by hand, the toolkit on GTK writes every text in the table's own colour; so what is to have another is
 * written here.
 */
public final class Rows {

    /** By how much GTK begins a text before what it gives as the text's place, pixels; seen on the screen, no source. */
    private static final int BEFORE = "gtk".equals(SWT.getPlatform()) ? 2 : 0;

    private final Table table;
    private final IntPredicate plain;

    /** The colour in which the text of the cell being drawn is still to be written; null when the toolkit has written it. */
    private Color pending;

    private Rows(Table table, IntPredicate plain) {
        this.table = table;
        this.plain = plain;
    }

    /**
     * Looks after a table as long as it lives. Who draws whole cells takes the foreground from what the toolkit draws, in a
     * listener added before this call.
     *
     * @param plain columns that keep their own background in the chosen row, since what is drawn there has colours of
     *              its own
     */
    public static void dress(Table table, IntPredicate plain) {
        Rows rows = new Rows(table, plain);
        table.addListener(SWT.MeasureItem, e -> e.height = Math.max(e.height, Look.of(table).rowHeight()));
        table.addListener(SWT.EraseItem, rows::erase);
        table.addListener(SWT.PaintItem, rows::write);
        rows.colours();
        Look.of(table).onResize(table, rows::colours);
    }

    private void colours() {
        Palette palette = Look.of(table).palette();
        table.setForeground(palette.text());
        table.setBackground(palette.paper());
        table.setHeaderForeground(palette.muted());
        table.setHeaderBackground(palette.paper());
    }

    private void erase(Event e) {
        boolean chosen = (e.detail & SWT.SELECTED) != 0;
        Palette palette = Look.of(table).palette();
        pending = null;
        if (chosen) {
            e.gc.setBackground(plain.test(e.index) ? palette.paper() : palette.chosen());
            e.gc.setForeground(plain.test(e.index) ? palette.text() : palette.chosenText());
            e.gc.fillRectangle(new Rectangle(e.x, e.y, e.width, e.height));
        }
        if (!plain.test(e.index)) {
            Color own = chosen ? palette.chosenText() : ((TableItem) e.item).getForeground(e.index);
            if ((e.detail & SWT.FOREGROUND) != 0 && !own.equals(table.getForeground())) {
                pending = own;
                e.detail &= ~SWT.FOREGROUND;
            }
        }
        e.detail &= ~SWT.SELECTED;
    }

    private void write(Event e) {
        if (pending == null) {
            return;
        }
        TableItem item = (TableItem) e.item;
        String text = item.getText(e.index);
        e.gc.setFont(item.getFont(e.index));
        e.gc.setForeground(pending);
        Rectangle room = item.getTextBounds(e.index);
        Point size = e.gc.textExtent(text);
        int left = switch (table.getColumnCount() == 0 ? SWT.LEFT : table.getColumn(e.index).getAlignment()) {
            case SWT.RIGHT -> room.width - size.x;
            case SWT.CENTER -> (room.width - size.x) / 2;
            default -> 0;
        };
        e.gc.drawText(text, room.x - BEFORE + left, room.y + (room.height - size.y) / 2, true);
        pending = null;
    }
}
