package org.copperbook.desk.tests.look;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.desk.Desk;
import org.copperbook.desk.grid.RecordGrid;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/** Text that needs more room than it was given: labels and buttons, lines of fields, headings and cells of tables. */
final class Clipping {

    /** Rounding of the toolkit. */
    private static final int SLACK = 1;
    /** Free text longer than this may be cut short in a cell: the widest column a grid makes for itself. */
    private static final int LONG_CHARS = 40;
    private static final int ROWS_LOOKED_AT = 40;
    private static final String VERDICTS = "verdicts";

    private Clipping() {
    }

    static List<Flaw> below(Control root) {
        List<Flaw> flaws = new ArrayList<>();
        for (Control c : Controls.below(root)) {
            if (c instanceof Label || c instanceof Button || c instanceof Link) {
                words(c, flaws);
            } else if (c instanceof Combo || c instanceof Text t && (t.getStyle() & SWT.SINGLE) != 0) {
                line(c, flaws);
            } else if (c instanceof Table t) {
                table(t, flaws);
            }
            if (c != root) {
                outside(c, flaws);
            }
        }
        return flaws;
    }

    private static void words(Control c, List<Flaw> flaws) {
        if (Controls.words(c).isBlank()) {
            return;
        }
        Point given = c.getSize();
        boolean wraps = (c.getStyle() & SWT.WRAP) != 0 || c instanceof Link;
        Point needed = c.computeSize(wraps ? given.x : SWT.DEFAULT, SWT.DEFAULT);
        if (needed.y > given.y + SLACK || needed.x > given.x + SLACK) {
            flaws.add(new Flaw(Controls.place(c), "needs " + needed.x + " x " + needed.y + ", has " + given.x + " x "
                    + given.y));
        }
    }

    private static void line(Control c, List<Flaw> flaws) {
        int needed = c.computeSize(SWT.DEFAULT, SWT.DEFAULT).y;
        if (needed > c.getSize().y + SLACK) {
            flaws.add(new Flaw(Controls.place(c), "a line needs " + needed + " pixels of height, has " + c.getSize().y));
        }
        // What is typed moves with the cursor; what nobody types must be seen whole.
        if (c instanceof Text t && (t.getStyle() & SWT.READ_ONLY) != 0 && width(t) > t.getClientArea().width + SLACK) {
            flaws.add(new Flaw(Controls.place(c), "a line needs " + width(t) + " pixels of width, has "
                    + t.getClientArea().width));
        }
    }

    private static int width(Text t) {
        GC gc = new GC(t);
        try {
            return gc.textExtent(t.getText()).x;
        } finally {
            gc.dispose();
        }
    }

    /** A control that reaches out of what holds it is cut off there. */
    private static void outside(Control c, List<Flaw> flaws) {
        Composite parent = c.getParent();
        Rectangle b = c.getBounds();
        if (Controls.scrolls(parent) || b.isEmpty()) {
            return;
        }
        Rectangle room = parent.getClientArea();
        if (b.x < room.x - SLACK || b.y < room.y - SLACK || b.x + b.width > room.x + room.width + SLACK
                || b.y + b.height > room.y + room.height + SLACK) {
            flaws.add(new Flaw(Controls.place(c), "reaches out of its parent: " + b + " in " + room));
        }
    }

    private static void table(Table t, List<Flaw> flaws) {
        GC gc = new GC(t);
        try {
            TableColumn[] columns = t.getColumns();
            for (int i = 0; i < columns.length; i++) {
                gc.setFont(t.getFont());
                int width = columns[i].getWidth();
                int heading = gc.textExtent(columns[i].getText()).x;
                if (t.getHeaderVisible() && heading > width) {
                    flaws.add(new Flaw(Controls.place(t), "heading \"" + columns[i].getText() + "\" needs " + heading
                            + ", has " + width));
                }
                cells(t, i, width, gc, flaws);
            }
        } finally {
            gc.dispose();
        }
    }

    /** The list of verdicts draws a title on several lines and its bar on one more. */
    private static int linesOfTitle(Table t, GC gc) {
        return t.getItemCount() == 0 ? 1 : t.getItem(0).getBounds().height / gc.getFontMetrics().getHeight() - 1;
    }

    /** What such a column cuts short is said in full below the grid. */
    private static boolean givesWay(Table t, int column) {
        RecordGrid grid = RecordGrid.of(t);
        return grid != null && column < grid.model().columns().size()
                && grid.model().columns().get(column).keeps() != null;
    }

    private static void cells(Table t, int column, int width, GC gc, List<Flaw> flaws) {
        int lines = VERDICTS.equals(t.getData(Desk.ID)) ? linesOfTitle(t, gc) : 1;
        for (int row = 0; row < Math.min(ROWS_LOOKED_AT, t.getItemCount()); row++) {
            TableItem item = t.getItem(row);
            String text = item.getText(column);
            gc.setFont(item.getFont(column));
            int needed = gc.textExtent(text).x;
            if (text.length() <= LONG_CHARS && needed > width * lines && !givesWay(t, column)) {
                flaws.add(new Flaw(Controls.place(t), "cell \"" + text + "\" needs " + needed + ", has " + width));
            }
        }
    }
}
