package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.desk.tests.window.Desktop;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;

/** Real keys that are counted: every key pressed that is not a digit counts as one, a modifier held down too. */
final class CountedKeys {

    private final Desktop desktop;
    private final Display display = Display.getCurrent();
    private int besideDigits;
    private int digits;

    CountedKeys(Desktop desktop) {
        this.desktop = desktop;
    }

    /** Keys pressed so far that are not digits. */
    int besideDigits() {
        return besideDigits;
    }

    /** Digits typed so far. */
    int digits() {
        return digits;
    }

    /** Types characters, each a key of its own, to whatever has the focus. */
    void type(String text) {
        for (char c : text.toCharArray()) {
            send(0, c);
        }
        desktop.work();
    }

    /** Presses a key without a character: Enter, Tab, an arrow. */
    void press(int keyCode) {
        send(keyCode, '\0');
        desktop.work();
    }

    /** Presses a key while Ctrl is held: two keys. */
    void control(char key) {
        post(SWT.KeyDown, SWT.CTRL, '\0');
        besideDigits++;
        send(0, key);
        post(SWT.KeyUp, SWT.CTRL, '\0');
        desktop.work();
    }

    /** Presses a key while another is held: two keys. */
    void hold(int modifier, int keyCode) {
        post(SWT.KeyDown, modifier, '\0');
        besideDigits++;
        send(keyCode, '\0');
        post(SWT.KeyUp, modifier, '\0');
        desktop.work();
    }

    private void send(int keyCode, char character) {
        if (Character.isDigit(character)) {
            digits++;
        } else {
            besideDigits++;
        }
        post(SWT.KeyDown, keyCode, character);
        post(SWT.KeyUp, keyCode, character);
    }

    private void post(int type, int keyCode, char character) {
        Event e = new Event();
        e.type = type;
        e.keyCode = keyCode;
        e.character = character;
        assertTrue(display.post(e), "the window system takes the key");
    }
}
