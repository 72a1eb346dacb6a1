package org.copperbook.desk.form;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;

/** Enter in a line that a page holds outside its fields goes on to the next control, as it does in a field. */
public final class EnterMovesOn {

    private EnterMovesOn() {
    }

    /** Lets Enter leave a line. */
    public static <T extends Text> T from(T line) {
        line.addListener(SWT.Traverse, e -> leave(line, e));
        return line;
    }

    private static void leave(Text line, Event e) {
        if (e.detail == SWT.TRAVERSE_RETURN) {
            e.doit = false;
            line.traverse(SWT.TRAVERSE_TAB_NEXT);
        }
    }
}
