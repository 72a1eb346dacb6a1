package org.copperbook.desk.form;

import org.copperbook.desk.theme.Look;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.List;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.ScrollBar;
import org.eclipse.swt.widgets.Scrollable;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Widget;

/**
 * Keeps the mouse wheel for what it is turned for: to move the page. A choice that the pointer happens to pass over would
 * otherwise take the next value, unseen: another instrument behind the readings, another phase. A list that has rows out
 * of sight moves first, and the page when it is at its end.
 */
final class WheelOnThePage {

    private static final int ROWS_A_NOTCH = 1;

    private final ScrolledComposite page;

    private WheelOnThePage(ScrolledComposite page) {
        this.page = page;
    }

    /** Holds as long as the page is there. */
    static void on(ScrolledComposite page) {
        Listener turned = new WheelOnThePage(page)::turned;
        Display display = page.getDisplay();
        // A filter, because the platform's own answer to the wheel comes before the listeners of what stands round it.
        display.addFilter(SWT.MouseVerticalWheel, turned);
        page.addListener(SWT.Dispose, e -> display.removeFilter(SWT.MouseVerticalWheel, turned));
    }

    private void turned(Event e) {
        if (e.count != 0 && isOnPage(e.widget) && (isChoice(e.widget) || isListAtItsEnd(e.widget, e.count > 0))) {
            e.doit = false;
            Point at = page.getOrigin();
            page.setOrigin(at.x, Math.max(0, at.y - e.count * ROWS_A_NOTCH * Look.of(page).rowHeight()));
        }
    }

    private boolean isOnPage(Widget widget) {
        if (!(widget instanceof Control control)) {
            return false;
        }
        for (Composite up = control.getParent(); up != null; up = up.getParent()) {
            if (up == page) {
                return true;
            }
        }
        return false;
    }

    private static boolean isChoice(Widget widget) {
        return widget instanceof Combo || widget instanceof CCombo || widget instanceof Spinner
                || widget instanceof Control c && c.getParent() instanceof CCombo;
    }

    private static boolean isListAtItsEnd(Widget widget, boolean up) {
        if (!(widget instanceof Table || widget instanceof List || widget instanceof Text)) {
            return false;
        }
        ScrollBar bar = ((Scrollable) widget).getVerticalBar();
        if (bar == null || !bar.isVisible() || !bar.isEnabled()) {
            return true;
        }
        return up ? bar.getSelection() <= bar.getMinimum()
                : bar.getSelection() + bar.getThumb() >= bar.getMaximum();
    }
}
