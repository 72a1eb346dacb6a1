package org.copperbook.desk.editor;

import org.copperbook.desk.grid.RecordGrid;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Table;

/** The cell of a grid that is open for typing when a command comes. */
final class TypingUnderHand {

    private TypingUnderHand() {
    }

    /** Puts what has been typed, as Enter would. */
    static void commit(Display display) {
        RecordGrid grid = grid(display);
        if (grid != null) {
            grid.commitTyping();
        }
    }

    /** Gives up what has been typed, as Esc would. */
    static void giveUp(Display display) {
        RecordGrid grid = grid(display);
        if (grid != null) {
            grid.giveUpTyping();
        }
    }

    private static RecordGrid grid(Display display) {
        Control focus = display.getFocusControl();
        return focus != null && focus.getParent() instanceof Table t ? RecordGrid.of(t) : null;
    }
}
