package org.copperbook.desk.form;

import org.copperbook.desk.Desk;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** Buttons that do something at once. */
public final class PushButton {

    private PushButton() {
    }

    /** A button named by the key of its text. */
    public static Button in(Composite place, Words words, String key, Runnable does) {
        return in(place, key, words.text(key), does);
    }

    /** A button with a name for tests and screen readers, and its text. */
    public static Button in(Composite place, String id, String text, Runnable does) {
        Button b = Look.of(place).as(Look.Role.TEXT, new Button(place, SWT.PUSH));
        b.setText(text);
        b.setData(Desk.ID, id);
        b.addListener(SWT.Selection, e -> does.run());
        return b;
    }
}
