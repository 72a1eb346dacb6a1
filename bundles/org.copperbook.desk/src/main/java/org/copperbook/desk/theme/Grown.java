package org.copperbook.desk.theme;

import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** Lets a control tell the scrolling form round it that it needs another size, without knowing the form. */
public final class Grown {

    private static final String KEY = "org.copperbook.relayout";

    private Grown() {
    }

    /** Makes a form hear of what has grown inside it. */
    public static void heardBy(Composite form, Runnable relayout) {
        form.setData(KEY, relayout);
    }

    /** Has the form round a control laid out anew; where there is none, what stands round the control. */
    public static void tell(Control control) {
        for (Composite up = control.getParent(); up != null; up = up.getParent()) {
            if (up.getData(KEY) instanceof Runnable relayout) {
                relayout.run();
                return;
            }
        }
        control.requestLayout();
    }

    /** The same, and scrolls the form until the control is seen: for words that answer what was just pressed. */
    public static void show(Control control) {
        tell(control);
        // Behind the layout, which is done after the current event.
        control.getDisplay().asyncExec(() -> {
            for (Composite up = control.isDisposed() ? null : control.getParent(); up != null; up = up.getParent()) {
                if (up instanceof ScrolledComposite scroll) {
                    scroll.showControl(control);
                    return;
                }
            }
        });
    }
}
