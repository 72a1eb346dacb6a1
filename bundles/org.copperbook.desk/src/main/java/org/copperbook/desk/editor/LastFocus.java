package org.copperbook.desk.editor;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;

/**
 * Remembers which control of an editor had the keyboard and what was selected in it, so that whoever comes back from
 * another page, or makes the window larger, goes on where the cursor was.
 */
final class LastFocus {

    private final Composite within;
    private Control last;
    private Point selection;
    private long at = System.nanoTime();

    LastFocus(Composite within) {
        this.within = within;
        Display display = within.getDisplay();
        Listener came = this::came;
        Listener left = this::left;
        display.addFilter(SWT.FocusIn, came);
        display.addFilter(SWT.FocusOut, left);
        within.addDisposeListener(e -> {
            display.removeFilter(SWT.FocusIn, came);
            display.removeFilter(SWT.FocusOut, left);
        });
    }

    /** When the keyboard came here last, by {@link System#nanoTime}. */
    long at() {
        return at;
    }

    /** Forgets it: another page is shown. */
    void forget() {
        last = null;
    }

    /**
     * Gives the keyboard back with the selection as it was.
     *
     * @return whether there was something to go back to
     */
    boolean restore() {
        if (last == null || last.isDisposed() || !last.isVisible() || !last.isEnabled()) {
            return false;
        }
        Point selected = selection;
        if (!last.isFocusControl() && !last.setFocus()) {
            return false;
        }
        if (selected != null) {
            select(last, selected);
        }
        return true;
    }

    private void came(Event e) {
        if (e.widget instanceof Control c && holds(c)) {
            // The line that opens over a cell goes when it is left; its grid stays.
            last = c.getParent() instanceof Table grid ? grid : c;
            selection = null;
            at = System.nanoTime();
        }
    }

    private void left(Event e) {
        if (e.widget == last) {
            selection = e.widget instanceof Text t ? t.getSelection() : e.widget instanceof Combo c ? c.getSelection() : null;
        }
    }

    private boolean holds(Control c) {
        for (Control at = c; at != null; at = at.getParent()) {
            if (at == within) {
                return true;
            }
        }
        return false;
    }

    private static void select(Control c, Point selected) {
        if (c instanceof Text t) {
            t.setSelection(selected);
        } else if (c instanceof Combo combo) {
            combo.setSelection(selected);
        }
    }
}
