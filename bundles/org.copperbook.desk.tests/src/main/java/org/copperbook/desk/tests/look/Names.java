package org.copperbook.desk.tests.look;

import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.Accessible;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;

/** What takes the cursor must have a name that a screen reader can say. */
final class Names {

    private Names() {
    }

    static List<Flaw> below(Control root) {
        List<Flaw> flaws = new ArrayList<>();
        for (Control c : Controls.below(root)) {
            boolean takesCursor = c instanceof Text || c instanceof Combo || c instanceof Button || c instanceof Table
                    || c.getClass() == Canvas.class && (c.getStyle() & SWT.NO_FOCUS) == 0;
            boolean namesItself = c instanceof Button b && !b.getText().isBlank();
            if (takesCursor && !namesItself && spoken(c).isBlank()) {
                flaws.add(new Flaw(Controls.place(c), "has no accessible name"));
            }
        }
        return flaws;
    }

    /** The name that the control's own listeners give, as the toolkit asks for it. */
    private static String spoken(Control c) {
        AccessibleEvent e = new AccessibleEvent(c);
        e.childID = ACC.CHILDID_SELF;
        for (AccessibleListener l : listeners(c.getAccessible())) {
            l.getName(e);
        }
        return e.result == null ? "" : e.result;
    }

    private static List<AccessibleListener> listeners(Accessible accessible) {
        try {
            Field field = Accessible.class.getDeclaredField("accessibleListeners");
            field.setAccessible(true);
            List<AccessibleListener> found = new ArrayList<>();
            if (field.get(accessible) instanceof List<?> list) {
                for (Object l : list) {
                    found.add((AccessibleListener) l);
                }
            }
            return found;
        } catch (ReflectiveOperationException e) {
            throw new AssertionError("the toolkit keeps its listeners elsewhere now", e);
        }
    }
}
