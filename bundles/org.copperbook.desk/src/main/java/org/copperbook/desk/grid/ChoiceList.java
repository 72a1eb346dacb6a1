package org.copperbook.desk.grid;

import java.util.function.Consumer;
import org.copperbook.desk.Desk;
import org.copperbook.desk.theme.Look;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.List;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;

/**
 * The choices of a cell that was clicked, under the cell. A click, or Enter on one, takes it; Esc or a click elsewhere
 * takes none. A letter is not swallowed: it begins the text of the cell.
 */
final class ChoiceList {

    private static final int MOST_SHOWN = 12;

    private final Shell shell;
    private final List list;
    private final Consumer<String> taken;
    private final Consumer<String> typed;

    private ChoiceList(Table over, java.util.List<String> choices, String now, Consumer<String> taken,
            Consumer<String> typed) {
        this.taken = taken;
        this.typed = typed;
        shell = new Shell(over.getShell(), SWT.NO_TRIM | SWT.ON_TOP);
        shell.setLayout(new FillLayout());
        list = Look.of(over).as(Look.Role.TEXT, new List(shell, SWT.SINGLE | SWT.V_SCROLL | SWT.BORDER));
        list.setData(Desk.ID, "grid/choices");
        list.setItems(choices.toArray(String[]::new));
        list.select(Math.max(0, choices.indexOf(now)));
        list.addListener(SWT.KeyDown, this::key);
        list.addListener(SWT.Traverse, e -> {
            if (e.detail == SWT.TRAVERSE_ESCAPE || e.detail == SWT.TRAVERSE_RETURN) {
                e.doit = false;
            }
        });
        list.addListener(SWT.MouseUp, e -> take());
        shell.addListener(SWT.Deactivate, e -> close());
    }

    /**
     * Opens the list.
     *
     * @param cell  the cell, in the table's own coordinates
     * @param now   what the cell holds
     * @param taken told the choice that was taken
     * @param typed told the letter that was typed instead
     */
    static void open(Table over, Rectangle cell, java.util.List<String> choices, String now, Consumer<String> taken,
            Consumer<String> typed) {
        ChoiceList made = new ChoiceList(over, choices, now, taken, typed);
        Point size = made.shell.computeSize(SWT.DEFAULT, SWT.DEFAULT);
        int height = Math.min(size.y, MOST_SHOWN * Look.of(over).rowHeight());
        Point at = over.toDisplay(cell.x, cell.y + cell.height);
        Rectangle screen = over.getMonitor().getClientArea();
        int y = at.y + height <= screen.y + screen.height ? at.y : at.y - cell.height - height;
        made.shell.setBounds(at.x, y, Math.max(cell.width, size.x), height);
        made.shell.open();
        made.list.setFocus();
    }

    private void key(Event e) {
        if (e.keyCode == SWT.ESC) {
            close();
        } else if (e.keyCode == SWT.CR || e.keyCode == SWT.KEYPAD_CR) {
            take();
        } else if (e.character > ' ' && e.character != SWT.DEL && (e.stateMask & (SWT.CTRL | SWT.ALT)) == 0) {
            String letter = String.valueOf(e.character);
            close();
            typed.accept(letter);
        } else {
            return;
        }
        e.doit = false;
    }

    private void take() {
        int at = list.getSelectionIndex();
        if (at >= 0) {
            String choice = list.getItem(at);
            close();
            taken.accept(choice);
        }
    }

    private void close() {
        if (!shell.isDisposed()) {
            shell.dispose();
        }
    }
}
