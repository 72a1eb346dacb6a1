package org.copperbook.desk.tests.look;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;

/** What is pressed or touched must be hit with a glove at bench size: at least 9 mm high and wide. */
final class Targets {

    private static final double LEAST_MM = 9;
    private static final double MM_PER_INCH = 25.4;

    private Targets() {
    }

    static List<Flaw> below(Control root) {
        int least = (int) Math.floor(LEAST_MM * root.getDisplay().getDPI().y / MM_PER_INCH);
        List<Flaw> flaws = new ArrayList<>();
        for (Control c : Controls.below(root)) {
            boolean hit = c instanceof Button || c instanceof Combo
                    || c instanceof Text t && (t.getStyle() & SWT.READ_ONLY) == 0;
            Point size = c.getSize();
            if (hit && (size.x < least || size.y < least)) {
                flaws.add(new Flaw(Controls.place(c), "target of " + size.x + " x " + size.y + " pixels, 9 mm are "
                        + least));
            } else if (c instanceof Table t && t.getItemCount() > 1 && pitch(t) < least) {
                flaws.add(new Flaw(Controls.place(c), "rows of " + pitch(t) + " pixels, 9 mm are " + least));
            }
        }
        return flaws;
    }

    /** From one row to the next: the height that can be hit, with the air that the bounds of an item leave out. */
    private static int pitch(Table t) {
        return t.getItem(1).getBounds(0).y - t.getItem(0).getBounds(0).y;
    }
}
