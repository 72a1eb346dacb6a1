package org.copperbook.desk.scan;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;

/** Gives keys that were held back to the control that had the focus when they were pressed. */
final class HeldKeys {

    private final Control control;

    HeldKeys(Control control) {
        this.control = control;
    }

    void give(String text) {
        Control to = control;
        for (int i = 0; i < text.length() && !to.isDisposed(); i++) {
            String rest = text.substring(i);
            if (insert(to, rest)) {
                return;
            }
            press(to, text.charAt(i));
            // In a grid the first letter opens the cell, and the others belong into it.
            Control now = control.isDisposed() ? null : control.getDisplay().getFocusControl();
            to = now == null ? to : now;
        }
    }

    private static boolean insert(Control to, String text) {
        if (to instanceof Text t && t.getEditable()) {
            t.insert(text);
            return true;
        }
        if (to instanceof StyledText t && t.getEditable()) {
            t.insert(text);
            t.setCaretOffset(t.getCaretOffset() + text.length());
            return true;
        }
        if (to instanceof Combo c && (c.getStyle() & SWT.READ_ONLY) == 0) {
            Point chosen = c.getSelection();
            String before = c.getText().substring(0, chosen.x) + text;
            c.setText(before + c.getText().substring(chosen.y));
            c.setSelection(new Point(before.length(), before.length()));
            return true;
        }
        return false;
    }

    private static void press(Control to, char c) {
        Event key = new Event();
        key.character = c;
        key.keyCode = Character.toLowerCase(c);
        to.notifyListeners(SWT.KeyDown, key);
    }
}
