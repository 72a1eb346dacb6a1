package org.copperbook.desk.grid;

import java.util.function.Consumer;
import org.copperbook.desk.Desk;
import org.copperbook.desk.theme.Look;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.TableEditor;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;

/** The line that opens over a cell while it is typed into. Every key that leaves it says where to go next. */
final class CellEditorText {

    /** How the line was left. */
    enum Leaving { DOWN, UP, RIGHT, LEFT, STAY, RESTORED }

    private final Table table;
    private final TableEditor editor;
    private Text text;
    private boolean leaving;
    private Consumer<Leaving> told;

    CellEditorText(Table table) {
        this.table = table;
        this.editor = new TableEditor(table);
        editor.grabHorizontal = true;
        editor.grabVertical = true;
    }

    boolean isOpen() {
        return text != null && !text.isDisposed();
    }

    /** Leaves the line, if it is open. */
    void close(Leaving how) {
        if (isOpen()) {
            leave(how, told);
        }
    }

    /** What is typed so far. */
    String now() {
        return text.getText();
    }

    /**
     * Opens over a cell.
     *
     * @param begin text to begin with; all of it is selected when {@code select}
     * @param typed is told after every key, so that nothing typed is lost
     * @param left  is told once how the line was left
     */
    void open(int row, int column, String pointer, String begin, boolean select, boolean right, Consumer<String> typed,
            Consumer<Leaving> left) {
        Look look = Look.of(table);
        leaving = false;
        told = left;
        text = look.as(Look.Role.TEXT, new Text(table, SWT.SINGLE | SWT.BORDER | (right ? SWT.RIGHT : SWT.LEFT)));
        text.setData(Desk.ID, pointer);
        text.setText(begin);
        if (select) {
            text.selectAll();
        } else {
            text.setSelection(begin.length());
        }
        text.addListener(SWT.Modify, e -> typed.accept(text.getText()));
        text.addListener(SWT.Traverse, e -> traverse(e, left));
        text.addListener(SWT.KeyDown, e -> key(e, left));
        text.addListener(SWT.FocusOut, e -> leave(Leaving.STAY, left));
        editor.setEditor(text, table.getItem(row), column);
        text.setFocus();
        if (!select) {
            text.setSelection(begin.length());
        }
    }

    private void key(Event e, Consumer<Leaving> left) {
        if (e.keyCode == SWT.ARROW_DOWN) {
            e.doit = false;
            leave(Leaving.DOWN, left);
        } else if (e.keyCode == SWT.ARROW_UP) {
            e.doit = false;
            leave(Leaving.UP, left);
        }
    }

    private void traverse(Event e, Consumer<Leaving> left) {
        Leaving how = switch (e.detail) {
            case SWT.TRAVERSE_RETURN -> (e.stateMask & SWT.SHIFT) != 0 ? Leaving.UP : Leaving.DOWN;
            case SWT.TRAVERSE_TAB_NEXT -> Leaving.RIGHT;
            case SWT.TRAVERSE_TAB_PREVIOUS -> Leaving.LEFT;
            case SWT.TRAVERSE_ESCAPE -> Leaving.RESTORED;
            default -> null;
        };
        if (how != null) {
            e.doit = false;
            leave(how, left);
        }
    }

    private void leave(Leaving how, Consumer<Leaving> left) {
        if (leaving) {
            return;
        }
        leaving = true;
        left.accept(how);
        Text closing = text;
        text = null;
        boolean refocus = how != Leaving.STAY;
        editor.setEditor(null);
        if (!closing.isDisposed()) {
            closing.dispose();
        }
        if (refocus && !table.isDisposed()) {
            table.setFocus();
        }
    }

    void dispose() {
        editor.dispose();
    }
}
