package org.copperbook.desk.form;

import java.util.List;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Control;

/** Part of a form that can be taken off the screen and put back, with its titles. */
public final class Block {

    private final List<Control> controls;
    private final Runnable relayout;
    private boolean shown = true;

    Block(List<Control> controls, Runnable relayout) {
        this.controls = List.copyOf(controls);
        this.relayout = relayout;
    }

    /** What stands first in it. */
    Control first() {
        return controls.get(0);
    }

    /** Whether it is on the screen. */
    public boolean isShown() {
        return shown;
    }

    /** Puts it on the screen or takes it off; what is off the screen takes no keys. */
    public void show(boolean now) {
        if (now == shown) {
            return;
        }
        shown = now;
        for (Control c : controls) {
            if (!c.isDisposed()) {
                c.setVisible(now);
                if (c.getLayoutData() instanceof GridData data) {
                    data.exclude = !now;
                } else {
                    GridData data = new GridData();
                    data.exclude = !now;
                    c.setLayoutData(data);
                }
            }
        }
        relayout.run();
    }
}
