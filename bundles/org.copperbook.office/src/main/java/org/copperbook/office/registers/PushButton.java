package org.copperbook.office.registers;

import org.copperbook.desk.Desk;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** Buttons of the registers' windows, named by the key of their text. */
final class PushButton {

    private PushButton() {
    }

    static Button in(Composite place, Words words, String key, Runnable does) {
        Button b = Look.of(place).as(Look.Role.TEXT, new Button(place, SWT.PUSH));
        b.setText(words.text(key));
        b.setData(Desk.ID, key);
        b.addListener(SWT.Selection, e -> does.run());
        return b;
    }
}
