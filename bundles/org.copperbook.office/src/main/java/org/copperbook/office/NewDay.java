package org.copperbook.office;

import java.time.LocalDate;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/** Tells a page that was left open overnight that it shows yesterday; looks once a minute until the page is gone. */
public final class NewDay {

    private static final int MINUTE = 60_000;

    private final Control page;
    private final Runnable then;
    private LocalDate day = LocalDate.now();

    /**
     * @param page looked after until it is disposed
     * @param then done in the window's thread when a new day has begun
     */
    public NewDay(Control page, Runnable then) {
        this.page = page;
        this.then = then;
        page.getDisplay().timerExec(MINUTE, this::look);
    }

    private void look() {
        if (page.isDisposed()) {
            return;
        }
        if (!LocalDate.now().equals(day)) {
            day = LocalDate.now();
            then.run();
        }
        Display display = page.getDisplay();
        display.timerExec(MINUTE, this::look);
    }
}
