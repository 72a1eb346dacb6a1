package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.tests.window.Desktop;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;

/** Real key presses, sent to the window system and coming back to whatever has the focus. */
final class Keyboard {

    private final Desktop desktop;
    private final Display display = Display.getCurrent();

    Keyboard(Desktop desktop) {
        this.desktop = desktop;
    }

    /** Goes to a field, replaces what stands there key by key, and leaves it with Enter. */
    void fill(String pointer, String words) {
        Control field = desktop.field(pointer);
        desktop.until(pointer + " has the cursor", () -> focused(field));
        marked(field);
        type(words, () -> text(field));
        press(SWT.CR);
        desktop.until("Enter leaves " + pointer, () -> field.isDisposed() || !field.isFocusControl());
    }

    /** Puts the cursor on a cell, types into it key by key and leaves it with Enter, downwards. */
    void fill(String list, int row, int column, String words) {
        RecordGrid grid = desktop.grid(list);
        goTo(grid, row, column);
        continueDown(list, words);
    }

    /** Types into the cell under the grid's cursor and leaves it with Enter: the cursor stands one row lower then. */
    void continueDown(String list, String words) {
        RecordGrid grid = desktop.grid(list);
        type(words, () -> open(grid) == null ? "" : open(grid).getText());
        leaveCell(grid);
    }

    /** Opens a cell with the first key, puts the rest at once and leaves it with Enter. */
    void cell(RecordGrid grid, int row, int column, String words) {
        goTo(grid, row, column);
        press(words.charAt(0), words.charAt(0));
        desktop.until("the key opens the cell", () -> open(grid) != null);
        open(grid).setText(words);
        leaveCell(grid);
    }

    private void goTo(RecordGrid grid, int row, int column) {
        desktop.until(grid.list() + " has the cursor", () -> focused(grid.table()));
        grid.moveTo(row, column);
        desktop.work();
    }

    private Text open(RecordGrid grid) {
        return display.getFocusControl() instanceof Text t && t.getParent() == grid.table() ? t : null;
    }

    private void leaveCell(RecordGrid grid) {
        press(SWT.CR);
        desktop.until("Enter closes the cell", () -> grid.table().isFocusControl());
        desktop.work();
    }

    /** Presses a key with Ctrl. */
    void control(char key) {
        post(SWT.KeyDown, SWT.CTRL, '\0');
        post(SWT.KeyDown, 0, key);
        post(SWT.KeyUp, 0, key);
        post(SWT.KeyUp, SWT.CTRL, '\0');
        desktop.work();
    }

    /** Presses a key without a character of its own, such as Enter. */
    void press(int keyCode) {
        press(keyCode, '\0');
    }

    private void press(int keyCode, char character) {
        post(SWT.KeyDown, keyCode, character);
        post(SWT.KeyUp, keyCode, character);
        desktop.work();
    }

    private void type(String words, java.util.function.Supplier<String> shown) {
        for (int i = 0; i < words.length(); i++) {
            post(SWT.KeyDown, 0, words.charAt(i));
            post(SWT.KeyUp, 0, words.charAt(i));
            String so = words.substring(0, i + 1);
            desktop.until("\"" + so + "\" stands in the field", () -> shown.get().equals(so));
        }
    }

    private void post(int type, int keyCode, char character) {
        Event e = new Event();
        e.type = type;
        e.keyCode = keyCode;
        e.character = character;
        assertTrue(display.post(e), "the window system takes the key");
    }

    private boolean focused(Control c) {
        return c.isFocusControl() || c.forceFocus();
    }

    private void marked(Control field) {
        if (field instanceof Text t) {
            t.selectAll();
        } else if (field instanceof Combo combo) {
            combo.setSelection(new org.eclipse.swt.graphics.Point(0, combo.getText().length()));
        }
    }

    private static String text(Control field) {
        return field instanceof Combo combo ? combo.getText() : ((Text) field).getText();
    }
}
