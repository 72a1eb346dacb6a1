package org.copperbook.desk.grid;

import java.util.List;
import org.copperbook.desk.form.Note;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Palette;
import org.copperbook.desk.theme.Rows;
import org.copperbook.desk.verdict.IntervalBar;
import org.copperbook.desk.verdict.VerdictWords;
import org.copperbook.jobs.check.Verdict;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** Draws over the cells of a grid: the cursor's frame, the line under a text not understood, and the verdict column. */
final class GridPainter {

    /** What the painter asks of its grid. */
    interface Source {
        GridCursor cursor();

        Note note(int row, int column);

        /** The note of a row to be said in the last column, or null. */
        String rowNote(int row);

        List<Verdict> verdicts(int row);

        int columns();

        /** Whether typing goes to the grid now, so that its cursor is shown. */
        boolean active();
    }

    private final Table table;
    private final Source source;

    GridPainter(Table table, Source source) {
        this.table = table;
        this.source = source;
        Rows.dress(table, column -> column == source.columns());
        table.addListener(SWT.PaintItem, this::paint);
    }

    private void paint(Event e) {
        TableItem item = (TableItem) e.item;
        int row = table.indexOf(item);
        Look look = Look.of(table);
        Palette palette = look.palette();
        Rectangle cell = item.getBounds(e.index);
        if (e.index == source.columns()) {
            saying(e.gc, cell, row, look, palette);
            return;
        }
        Note note = source.note(row, e.index);
        if (note instanceof Note.Problem || note instanceof Note.Question) {
            e.gc.setForeground(palette.problem());
            e.gc.setLineWidth(2);
            e.gc.drawLine(cell.x + 2, cell.y + cell.height - 2, cell.x + cell.width - 3, cell.y + cell.height - 2);
        }
        GridCursor at = source.cursor();
        if (!source.active()) {
            return;
        }
        if (at.row() == row && at.column() == e.index) {
            e.gc.setForeground(palette.accent());
            e.gc.setLineWidth(2);
            e.gc.drawRectangle(cell.x + 1, cell.y + 1, cell.width - 3, cell.height - 3);
        } else if (at.isBlock() && at.marks(row, e.index)) {
            e.gc.setForeground(palette.accent());
            e.gc.setLineWidth(1);
            e.gc.setLineStyle(SWT.LINE_DOT);
            e.gc.drawRectangle(cell.x + 1, cell.y + 1, cell.width - 3, cell.height - 3);
            e.gc.setLineStyle(SWT.LINE_SOLID);
        }
    }

    private void saying(GC gc, Rectangle cell, int row, Look look, Palette palette) {
        String problem = source.rowNote(row);
        if (problem != null) {
            gc.setFont(look.font(Look.Role.TEXT));
            gc.setForeground(palette.problem());
            gc.drawText(problem, cell.x + 4, cell.y + (cell.height - gc.textExtent(problem).y) / 2, true);
            return;
        }
        List<Verdict> here = VerdictWords.byWeight(source.verdicts(row));
        if (!here.isEmpty()) {
            IntervalBar.paint(gc, cell, here.get(0), look, palette);
        }
    }
}
