package org.copperbook.desk.tests.keys;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.copperbook.desk.Desk;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.tests.window.Desktop;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Widget;

/**
 * Somebody at the window without a mouse. Whatever is done goes out as real key presses to whatever has the focus; no
 * field is ever given the focus otherwise. Every press is waited for by what it changes.
 */
final class Walker {

    /** More stops than any page and its surroundings have. */
    private static final int MOST_STOPS = 400;

    private final Desktop desktop;
    private final Display display = Display.getCurrent();

    Walker(Desktop desktop) {
        this.desktop = desktop;
    }

    /** What has the focus now. */
    Control here() {
        return display.getFocusControl();
    }

    /** Name of what has the focus: the place of a field in the record, or the name of a control. */
    String at() {
        Control c = here();
        if (c == null) {
            return "nothing";
        }
        return c.getData(Desk.ID) == null ? c.getClass().getSimpleName() + " in " + c.getParent()
                : c.getData(Desk.ID).toString();
    }

    /** One step forward; inside a grid to its next cell. */
    void tab() {
        steps("Tab", () -> press(SWT.TAB));
    }

    /** One step back; inside a grid to the cell before. */
    void back() {
        steps("Shift+Tab", () -> with(SWT.SHIFT, SWT.TAB));
    }

    /** One stop forward, out of a grid at once. */
    void onward() {
        Control from = here();
        with(SWT.CTRL, SWT.TAB);
        desktop.until("Ctrl+Tab leaves " + at(), () -> here() != null && here() != from);
    }

    /** One stop back, out of a grid at once. */
    void backward() {
        Control from = here();
        post(SWT.KeyDown, SWT.CTRL, '\0');
        with(SWT.SHIFT, SWT.TAB);
        post(SWT.KeyUp, SWT.CTRL, '\0');
        desktop.until("Ctrl+Shift+Tab leaves " + at(), () -> here() != null && here() != from);
    }

    /** Goes on, stop by stop, to a control. */
    Walker to(String id) {
        List<String> passed = new ArrayList<>();
        while (!at().equals(id)) {
            passed.add(at());
            if (passed.size() > MOST_STOPS) {
                fail(id + " is not reached from " + passed.get(0) + " by going on; passed " + passed);
            }
            onward();
        }
        return this;
    }

    /** Goes back, stop by stop, to a control. */
    Walker backTo(String id) {
        List<String> passed = new ArrayList<>();
        while (!at().equals(id)) {
            passed.add(at());
            if (passed.size() > MOST_STOPS) {
                fail(id + " is not reached from " + passed.get(0) + " by going back; passed " + passed);
            }
            backward();
        }
        return this;
    }

    /** Goes to what stands on the page shown, the shorter way. */
    Walker go(Control target) {
        PageStops page = new PageStops(target);
        boolean above = page.holds(here()) && page.readAfter(here(), target);
        List<String> passed = new ArrayList<>();
        while (here() != target) {
            passed.add(at());
            if (passed.size() > MOST_STOPS) {
                fail(PageStops.name(target) + " is not reached from " + passed.get(0) + "; passed " + passed);
            }
            if (above) {
                backward();
            } else {
                onward();
            }
        }
        return this;
    }

    /** Types over what stands in the field and leaves it with Enter. */
    Walker types(String words) {
        Control field = here();
        letters(words, () -> textOf(field));
        press(SWT.CR);
        desktop.until("Enter leaves " + field.getData(Desk.ID), () -> field.isDisposed() || here() != field);
        return this;
    }

    /** Types into an empty field and stays there: one of several lines, where Enter begins a line, or a filter. */
    Walker writes(String words) {
        Control field = here();
        letters(words, () -> textOf(field));
        return this;
    }

    /** Goes to a cell of the grid that has the focus, with the arrow keys alone. */
    Walker cell(int row, String column) {
        RecordGrid grid = grid();
        int wanted = columnOf(grid, column);
        while (grid.column() != wanted) {
            int before = grid.column();
            press(before < wanted ? SWT.ARROW_RIGHT : SWT.ARROW_LEFT);
            desktop.until("the cursor moves along the row", () -> grid.column() != before);
        }
        while (grid.row() != row) {
            int before = grid.row();
            press(before < row ? SWT.ARROW_DOWN : SWT.ARROW_UP);
            desktop.until("the cursor moves along the column", () -> grid.row() != before);
        }
        return this;
    }

    /** Types into the cell under the cursor and leaves it with a key: Enter goes down, Tab to the right. */
    Walker cellTypes(String words, int leaveWith) {
        RecordGrid grid = grid();
        letters(words, () -> here() instanceof Text t && t.getParent() == grid.table() ? t.getText() : "");
        press(leaveWith);
        desktop.until("the cell is left", () -> grid.table().isFocusControl());
        return this;
    }

    /** Cells of a row one after the other, each left with Tab, the last with Enter. */
    Walker row(String... cells) {
        for (int i = 0; i < cells.length; i++) {
            if (cells[i].isEmpty()) {
                tab();
            } else {
                cellTypes(cells[i], i < cells.length - 1 ? SWT.TAB : SWT.CR);
            }
        }
        return this;
    }

    /** The grid that has the focus. */
    RecordGrid grid() {
        RecordGrid grid = here() instanceof Table t ? RecordGrid.of(t) : null;
        assertTrue(grid != null, "the cursor is in a grid, not at " + at());
        return grid;
    }

    /** Presses the button that has the focus, with the space bar. */
    Walker presses(String what, BooleanSupplier done) {
        assertTrue(here() instanceof Button, "the cursor is on a button, not at " + at());
        press(' ', ' ');
        desktop.until(what, done);
        return this;
    }

    /** Goes with the arrow keys through the list that has the focus until it shows a choice. */
    Walker chooses(String item) {
        Combo list = (Combo) here();
        int wanted = list.indexOf(item);
        assertTrue(wanted >= 0, item + " is offered: " + List.of(list.getItems()));
        while (list.getSelectionIndex() != wanted) {
            int before = list.getSelectionIndex();
            press(before < wanted ? SWT.ARROW_DOWN : SWT.ARROW_UP);
            desktop.until("the list moves on from " + before, () -> list.getSelectionIndex() != before);
        }
        return this;
    }

    /** Opens a menu with a key and goes with the arrows to an entry of it; Enter takes it. */
    Walker menu(Runnable opening, String entry, BooleanSupplier done) {
        List<Widget> shown = new ArrayList<>();
        MenuItem[] armed = new MenuItem[1];
        Listener follow = e -> armed[0] = (MenuItem) e.widget;
        Listener opens = e -> shown.add(e.widget);
        display.addFilter(SWT.Arm, follow);
        display.addFilter(SWT.Show, opens);
        try {
            opening.run();
            desktop.until("a menu opens", () -> shown.stream().anyMatch(Menu.class::isInstance));
            List<String> passed = new ArrayList<>();
            while (armed[0] == null || !armed[0].getText().replace("&", "").equals(entry)) {
                MenuItem before = armed[0];
                passed.add(before == null ? "nothing" : before.getText());
                if (passed.size() > MOST_STOPS) {
                    fail(entry + " is not in the menu: " + passed);
                }
                press(SWT.ARROW_DOWN);
                desktop.until("the menu goes on from " + passed, () -> armed[0] != before);
            }
        } finally {
            display.removeFilter(SWT.Arm, follow);
            display.removeFilter(SWT.Show, opens);
        }
        press(SWT.CR);
        desktop.until(entry + " is taken", done);
        return this;
    }

    /** Presses a key with no character of its own. */
    void press(int keyCode) {
        press(keyCode, '\0');
    }

    /** Presses a key while another is held, and waits for what it does. */
    void press(int modifier, int keyCode, BooleanSupplier done) {
        with(modifier, keyCode);
        desktop.until("the key has done its work, at " + at(), done);
    }

    /** Presses a letter or a key while Ctrl is held. */
    void control(int keyCode) {
        with(SWT.CTRL, keyCode, keyCode < SWT.KEYCODE_BIT ? (char) keyCode : '\0');
    }

    /** Presses a letter while Alt is held. */
    void alt(char letter) {
        with(SWT.ALT, letter, letter);
    }

    /** Presses a key while others are held. */
    void with(int modifier, int keyCode) {
        with(modifier, keyCode, '\0');
    }

    private void with(int modifier, int keyCode, char character) {
        post(SWT.KeyDown, modifier, '\0');
        press(keyCode, character);
        post(SWT.KeyUp, modifier, '\0');
        desktop.work();
    }

    private void press(int keyCode, char character) {
        post(SWT.KeyDown, keyCode, character);
        post(SWT.KeyUp, keyCode, character);
        desktop.work();
    }

    /** The first letter may open a cell and is waited for; the others follow as fast as a hand is. */
    private void letters(String words, Supplier<String> shown) {
        letter(words.charAt(0));
        desktop.until("\"" + words.charAt(0) + "\" stands at " + at(), () -> shown.get().equals(words.substring(0, 1)));
        for (int i = 1; i < words.length(); i++) {
            letter(words.charAt(i));
            desktop.work();
        }
        desktop.until("\"" + words + "\" stands at " + at(), () -> shown.get().equals(words));
    }

    private void letter(char letter) {
        post(SWT.KeyDown, 0, letter);
        post(SWT.KeyUp, 0, letter);
    }

    private void steps(String key, Runnable press) {
        Control from = here();
        RecordGrid grid = from instanceof Table t ? RecordGrid.of(t) : null;
        int column = grid == null ? 0 : grid.column();
        press.run();
        desktop.until(key + " goes on from " + at(), () -> here() != null
                && (here() != from || grid != null && grid.column() != column));
    }

    private void post(int type, int keyCode, char character) {
        Event e = new Event();
        e.type = type;
        e.keyCode = keyCode;
        e.character = character;
        assertTrue(display.post(e), "the window system takes the key");
    }

    private static int columnOf(RecordGrid grid, String pointer) {
        for (int c = 0; c < grid.model().columns().size(); c++) {
            if (grid.model().columns().get(c).pointer().equals(pointer)) {
                return c;
            }
        }
        throw new AssertionError(grid.list() + " has no column " + pointer);
    }

    private static String textOf(Control field) {
        return field instanceof Combo combo ? combo.getText() : ((Text) field).getText();
    }
}
