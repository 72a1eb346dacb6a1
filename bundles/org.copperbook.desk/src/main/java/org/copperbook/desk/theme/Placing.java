package org.copperbook.desk.theme;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;

/** Where a window of its own comes up: over the one that it was asked for in, and never larger than the screen. */
public final class Placing {

    private Placing() {
    }

    /** Sizes a window that is not open yet and puts it over the middle of the one that it belongs to. */
    public static void over(Shell window, Point wanted) {
        Rectangle screen = window.getMonitor().getClientArea();
        Composite parent = window.getParent();
        Rectangle around = parent == null ? screen : parent.getBounds();
        Rectangle bounds = within(screen, around, wanted);
        window.setBounds(bounds);
    }

    /** The size wanted over the middle of a rectangle, as far as the screen holds it. */
    static Rectangle within(Rectangle screen, Rectangle around, Point wanted) {
        int width = Math.min(wanted.x, screen.width);
        int height = Math.min(wanted.y, screen.height);
        int x = around.x + (around.width - width) / 2;
        int y = around.y + (around.height - height) / 2;
        return new Rectangle(Math.max(screen.x, Math.min(x, screen.x + screen.width - width)),
                Math.max(screen.y, Math.min(y, screen.y + screen.height - height)), width, height);
    }
}
