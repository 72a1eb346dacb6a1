package org.copperbook.desk.theme;

import java.util.function.IntPredicate;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;

/** Draws the headings and the chosen row of a table so that they can be read in every theme. */
public final class Rows {

    private Rows() {
    }

    /**
     * Looks after a table as long as it lives.
     *
     * @param plain columns that keep their own background in the chosen row, since what is drawn there has colours of
     *              its own
     */
    public static void dress(Table table, IntPredicate plain) {
        table.addListener(SWT.MeasureItem, e -> e.height = Math.max(e.height, Look.of(table).rowHeight()));
        table.addListener(SWT.EraseItem, e -> erase(table, e, plain));
        colours(table);
        Look.of(table).onResize(table, () -> colours(table));
    }

    private static void colours(Table table) {
        Palette palette = Look.of(table).palette();
        table.setForeground(palette.text());
        table.setBackground(palette.paper());
        table.setHeaderForeground(palette.muted());
        table.setHeaderBackground(palette.paper());
    }

    private static void erase(Table table, Event e, IntPredicate plain) {
        if ((e.detail & SWT.SELECTED) == 0) {
            return;
        }
        Palette palette = Look.of(table).palette();
        e.detail &= ~SWT.SELECTED;
        if (!plain.test(e.index)) {
            e.gc.setBackground(palette.chosen());
            e.gc.setForeground(palette.chosenText());
            e.gc.fillRectangle(new Rectangle(e.x, e.y, e.width, e.height));
        }
    }
}
