package org.copperbook.office;

import org.eclipse.swt.widgets.Control;

/**
 * Does something a moment after changes. The moment is counted from the first of several, so that a busy shop does not put it
 * off for ever.
 */
public final class AfterChanges {

    private final Control page;
    private final int millis;
    private final Runnable does;
    private boolean due;

    /** @param page nothing is done once it is disposed */
    public AfterChanges(Control page, int millis, Runnable does) {
        this.page = page;
        this.millis = millis;
        this.does = does;
    }

    /** Notes a change; in the window's thread. */
    public void changed() {
        if (page.isDisposed() || due) {
            return;
        }
        due = true;
        page.getDisplay().timerExec(millis, () -> {
            due = false;
            if (!page.isDisposed()) {
                does.run();
            }
        });
    }
}
