package org.copperbook.desk.tests.look;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.desk.Desk;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;

/** The controls below one that are there to be seen. */
final class Controls {

    private Controls() {
    }

    /** All of them, parents before children. What stands inside a table or list is the widget's own affair. */
    static List<Control> below(Control root) {
        List<Control> all = new ArrayList<>();
        collect(root, all);
        return all;
    }

    private static void collect(Control at, List<Control> all) {
        if (!at.isVisible()) {
            return;
        }
        all.add(at);
        if (at instanceof Composite c && !(at instanceof Table) && !(at instanceof Tree) && !(at instanceof Combo)) {
            for (Control child : c.getChildren()) {
                collect(child, all);
            }
        }
    }

    /** The words that a control shows by itself; empty when it shows none. */
    static String words(Control c) {
        if (c instanceof Label l) {
            return (l.getStyle() & SWT.SEPARATOR) != 0 ? "" : l.getText();
        }
        if (c instanceof Button b) {
            return b.getText();
        }
        if (c instanceof Text t) {
            return t.getText();
        }
        if (c instanceof Combo b) {
            return b.getText();
        }
        if (c instanceof Link l) {
            return l.getText();
        }
        return c instanceof Group g ? g.getText() : "";
    }

    /** How a person would find a control. */
    static String place(Control c) {
        StringBuilder place = new StringBuilder();
        for (Control up = c; up != null && place.length() < 90; up = up.getParent()) {
            if (up.getData(Desk.ID) != null) {
                place.append(place.isEmpty() ? "" : " in ").append(up.getData(Desk.ID));
            }
        }
        String words = words(c).strip();
        String shown = words.isEmpty() ? "" : " \"" + words.substring(0, Math.min(40, words.length())) + "\"";
        return c.getClass().getSimpleName() + shown + (place.isEmpty() ? "" : " (" + place + ")");
    }

    /** The part of a control that is on the screen now, in coordinates of the display; empty when it is scrolled away. */
    static Rectangle onScreen(Control c) {
        Rectangle seen = c.getDisplay().map(c.getParent(), null, c.getBounds());
        for (Composite up = c.getParent(); up != null; up = up.getParent()) {
            seen.intersect(up.getDisplay().map(up, null, up.getClientArea()));
        }
        return seen;
    }

    /** Whether a control moves its content under a window of its own, so that the content may be larger. */
    static boolean scrolls(Composite c) {
        return c instanceof ScrolledComposite;
    }
}
