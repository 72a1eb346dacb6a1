package org.copperbook.desk.tests.keys;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.desk.Desk;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;

/** What can have the focus on the page that is shown, and where it stands. */
final class PageStops {

    private final ScrolledComposite page;

    /** The scrolling page that a control stands on. */
    static java.util.Optional<Control> around(Control inside) {
        Control at = inside;
        while (at != null && !(at instanceof ScrolledComposite)) {
            at = at.getParent();
        }
        return java.util.Optional.ofNullable(at);
    }

    /** The page around a control. */
    PageStops(Control inside) {
        Control at = around(inside).orElseThrow(() -> new AssertionError(inside + " is not on a page"));
        page = (ScrolledComposite) at;
    }

    /** Whether a control stands on the page. */
    boolean holds(Control c) {
        for (Control at = c; at != null; at = at.getParent()) {
            if (at == page) {
                return true;
            }
        }
        return false;
    }

    /** Everything on the page that is typed into, chosen from or pressed, and can be now. */
    List<Control> all() {
        List<Control> found = new ArrayList<>();
        collect(page.getContent(), found);
        return found;
    }

    /** Where a control stands on the page, whatever part of it is scrolled into sight. */
    Point place(Control c) {
        return c.getDisplay().map(c, page.getContent(), 0, 0);
    }

    /** Whether one control is read after another: further down, or further right on the same line. */
    boolean readAfter(Control later, Control earlier) {
        Point a = place(earlier);
        Point b = place(later);
        int line = Math.min(earlier.getSize().y, later.getSize().y) / 2;
        return b.y > a.y + line || Math.abs(b.y - a.y) <= line && b.x > a.x;
    }

    static String name(Control c) {
        return c.getData(Desk.ID) == null ? c.toString() : c.getData(Desk.ID).toString();
    }

    private static void collect(Control at, List<Control> found) {
        if (!at.isVisible() || !at.isEnabled()) {
            return;
        }
        if (at instanceof Text || at instanceof Combo || at instanceof Table || at instanceof Button b && stops(b)) {
            found.add(at);
        } else if (at instanceof Composite c) {
            for (Control child : c.getChildren()) {
                collect(child, found);
            }
        }
    }

    private static boolean stops(Button b) {
        return (b.getStyle() & (SWT.PUSH | SWT.CHECK)) != 0;
    }
}
