package org.copperbook.desk.grid;

import org.copperbook.desk.text.DeskWords;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;

/** What the keys do in a grid while no cell is open. */
final class GridKeys {

    private final RecordGrid grid;
    private final Table table;

    GridKeys(RecordGrid grid, Table table) {
        this.grid = grid;
        this.table = table;
        table.addListener(SWT.KeyDown, this::key);
        table.addListener(SWT.Traverse, this::traverse);
    }

    private void traverse(Event e) {
        switch (e.detail) {
            case SWT.TRAVERSE_TAB_NEXT -> e.doit = !walk(e, 1);
            case SWT.TRAVERSE_TAB_PREVIOUS -> e.doit = !walk(e, -1);
            case SWT.TRAVERSE_RETURN, SWT.TRAVERSE_ARROW_NEXT, SWT.TRAVERSE_ARROW_PREVIOUS, SWT.TRAVERSE_PAGE_NEXT,
                    SWT.TRAVERSE_PAGE_PREVIOUS -> e.doit = false;
            default -> {
            }
        }
    }

    /**
     * Tab goes from cell to cell where there are cells, and past those that nobody can type into; with Ctrl it leaves the
     * grid at once.
     *
     * @return whether there was a cell to go to
     */
    private boolean walk(Event e, int way) {
        int column = grid.model().typedBeside(grid.column(), way);
        boolean inside = column >= 0 && grid.model().rows() > 0 && (e.stateMask & SWT.CTRL) == 0;
        if (inside) {
            grid.moveTo(grid.row(), column);
        }
        return inside;
    }

    private void key(Event e) {
        boolean ctrl = (e.stateMask & SWT.MOD1) != 0;
        boolean shift = (e.stateMask & SWT.SHIFT) != 0;
        boolean alt = (e.stateMask & SWT.ALT) != 0;
        boolean used = true;
        if (alt && e.keyCode == SWT.ARROW_DOWN) {
            grid.offer();
        } else if (ctrl) {
            used = withControl(e, shift);
        } else {
            used = plain(e, shift);
        }
        if (used) {
            e.doit = false;
        }
    }

    private boolean withControl(Event e, boolean shift) {
        switch (e.keyCode) {
            case 'd' -> fillDown();
            case 'c' -> {
                if (shift) {
                    grid.model().copyAll().toClipboard(table.getDisplay());
                } else {
                    copy();
                }
            }
            case 'x' -> {
                copy();
                clear();
            }
            case 'v' -> paste();
            case 'a' -> grid.move(new GridCursor(Math.max(0, grid.model().filled() - 1),
                    grid.model().columns().size() - 1, 0, 0));
            case SWT.DEL -> grid.removeRow();
            case SWT.HOME -> grid.moveTo(0, 0);
            case SWT.END -> grid.moveTo(Math.max(0, grid.model().filled() - 1), grid.column());
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean plain(Event e, boolean shift) {
        switch (e.keyCode) {
            case SWT.ARROW_LEFT -> move(0, -1, shift);
            case SWT.ARROW_RIGHT -> move(0, 1, shift);
            case SWT.ARROW_UP -> move(-1, 0, shift);
            case SWT.ARROW_DOWN -> move(1, 0, shift);
            case SWT.PAGE_UP -> move(-page(), 0, shift);
            case SWT.PAGE_DOWN -> move(page(), 0, shift);
            case SWT.HOME -> move(0, -grid.column(), shift);
            case SWT.END -> move(0, grid.model().columns().size(), shift);
            case SWT.CR, SWT.KEYPAD_CR -> move(shift ? -1 : 1, 0, false);
            case SWT.F2 -> grid.edit(grid.model().text(grid.row(), grid.column()), true);
            case SWT.DEL, SWT.BS -> clear();
            case SWT.INSERT -> grid.addRow();
            case SWT.TAB -> {
                // It has been gone along already; the toolkit's list would scroll back to its first column.
            }
            default -> {
                if (e.character == ' ' && grid.offer()) {
                    return true;
                }
                if (e.character < ' ' || e.character == SWT.DEL) {
                    return false;
                }
                grid.edit(String.valueOf(e.character), false);
            }
        }
        return true;
    }

    private void move(int rows, int columns, boolean mark) {
        grid.move(grid.cursor().moved(rows, columns, mark, grid.model().rows(), grid.model().columns().size()));
    }

    private int page() {
        int row = Math.max(1, table.getItemHeight());
        return Math.max(1, (table.getClientArea().height - table.getHeaderHeight()) / row - 1);
    }

    /** One marked row takes the cell above it; a marked block takes its own first row. */
    private void fillDown() {
        if (!grid.isEditable()) {
            return;
        }
        GridCursor at = grid.cursor();
        int from = at.top() == at.bottom() ? at.top() - 1 : at.top();
        if (from >= 0) {
            grid.model().fillDown(from, at.bottom(), at.left(), at.right());
            grid.refresh();
        }
    }

    private void clear() {
        if (grid.isEditable()) {
            GridCursor at = grid.cursor();
            grid.model().clear(at.top(), at.bottom(), at.left(), at.right());
            grid.refresh();
        }
    }

    private void copy() {
        GridCursor at = grid.cursor();
        grid.model().copy(at.top(), at.bottom(), at.left(), at.right()).toClipboard(table.getDisplay());
    }

    private void paste() {
        if (!grid.isEditable()) {
            return;
        }
        Clipboard clipboard = new Clipboard(table.getDisplay());
        try {
            if (clipboard.getContents(TextTransfer.getInstance()) instanceof String text && !text.isEmpty()) {
                PastedBlock block = PastedBlock.parse(text);
                GridCursor at = grid.cursor();
                int misfits = grid.model().paste(at.top(), at.left(), block);
                grid.refresh();
                grid.say(misfits == 0 ? DeskWords.text("grid.pasted", block.rows().size())
                        : DeskWords.text("grid.pastedWithMisfits", block.rows().size(), misfits));
            }
        } finally {
            clipboard.dispose();
        }
    }
}
