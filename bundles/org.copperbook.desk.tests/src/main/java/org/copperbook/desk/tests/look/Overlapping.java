package org.copperbook.desk.tests.look;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;

/** Neighbours that lie on each other. */
final class Overlapping {

    private static final int SLACK = 1;

    private Overlapping() {
    }

    static List<Flaw> below(Control root) {
        List<Flaw> flaws = new ArrayList<>();
        for (Control c : Controls.below(root)) {
            if (c instanceof Composite parent && !(c instanceof Table)) {
                neighbours(parent, flaws);
            }
        }
        return flaws;
    }

    private static void neighbours(Composite parent, List<Flaw> flaws) {
        List<Control> seen = new ArrayList<>();
        for (Control child : parent.getChildren()) {
            if (!child.isVisible() || child.getBounds().isEmpty()) {
                continue;
            }
            for (Control other : seen) {
                Rectangle both = child.getBounds().intersection(other.getBounds());
                if (both.width > SLACK && both.height > SLACK) {
                    flaws.add(new Flaw(Controls.place(child), "lies on " + Controls.place(other) + " by " + both.width
                            + " x " + both.height));
                }
            }
            seen.add(child);
        }
    }
}
