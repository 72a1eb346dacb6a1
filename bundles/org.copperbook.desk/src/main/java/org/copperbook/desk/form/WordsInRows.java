package org.copperbook.desk.form;

import org.copperbook.desk.theme.Look;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Layout;

/** Stands words to tick beside each other in as many rows as it takes; what is wider than a row wraps in it. */
final class WordsInRows extends Layout {

    private static final int ACROSS = 12;
    private static final int DOWN = 3;

    @Override
    protected Point computeSize(Composite words, int widthHint, int heightHint, boolean flushCache) {
        Point needed = place(words, widthHint == SWT.DEFAULT ? Integer.MAX_VALUE : widthHint, null);
        return new Point(widthHint == SWT.DEFAULT ? needed.x : widthHint, heightHint == SWT.DEFAULT ? needed.y : heightHint);
    }

    @Override
    protected void layout(Composite words, boolean flushCache) {
        Rectangle room = words.getClientArea();
        place(words, room.width, room);
    }

    /** Gives the size needed; sets the places where room is given. */
    private static Point place(Composite words, int width, Rectangle room) {
        int least = Look.of(words).target();
        int x = 0;
        int y = 0;
        int high = 0;
        int wide = 0;
        for (Control c : words.getChildren()) {
            Point size = c.computeSize(SWT.DEFAULT, SWT.DEFAULT);
            if (size.x > width) {
                size = new Point(width, c.computeSize(width, SWT.DEFAULT).y);
            }
            size.y = Math.max(size.y, least);
            if (x > 0 && x + size.x > width) {
                x = 0;
                y += high + DOWN;
                high = 0;
            }
            if (room != null) {
                c.setBounds(room.x + x, room.y + y, size.x, size.y);
            }
            wide = Math.max(wide, x + size.x);
            x += size.x + ACROSS;
            high = Math.max(high, size.y);
        }
        return new Point(wide, y + high);
    }

    @Override
    protected boolean flushCache(Control control) {
        return true;
    }
}
