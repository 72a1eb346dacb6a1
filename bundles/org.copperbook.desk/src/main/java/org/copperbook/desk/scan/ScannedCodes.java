package org.copperbook.desk.scan;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/**
 * Hears the code of a tag, scanned wherever the cursor is. Keys that may belong to a code wait a moment before they reach
 * what has the focus, so that nothing of a code is ever typed anywhere and there is nothing to take back; all else is let
 * go in its order.
 */
public final class ScannedCodes {

    /** After so long without a key what is held is let go, milliseconds. */
    private static final int WAIT_MILLIS = CodeKeys.LONGEST_GAP + 10;
    private static final int[] KEYS = {SWT.KeyDown, SWT.KeyUp, SWT.Traverse, SWT.DefaultSelection};
    private static final int[] LEAVING = {SWT.MouseDown, SWT.FocusOut, SWT.Deactivate};

    private final Display display;
    private final ScannedJob job;
    private final CodeKeys keys = new CodeKeys();
    private final Listener onKey = this::key;
    private final Listener onLeaving = e -> letGo();
    private final Runnable whenQuiet = this::quiet;
    private Control at;
    private boolean lettingGo;
    private int count;
    private int swallowedKey;
    private boolean entered;
    private final KeyClock clock = new KeyClock(System::nanoTime);

    /** @param job is told the numbers that were scanned */
    public ScannedCodes(Display display, ScannedJob job) {
        this.display = display;
        this.job = job;
    }

    /** Begins to listen; for the window's thread. */
    public void begin() {
        for (int type : KEYS) {
            display.addFilter(type, onKey);
        }
        for (int type : LEAVING) {
            display.addFilter(type, onLeaving);
        }
    }

    /** Listens no more. */
    public void end() {
        if (!display.isDisposed()) {
            letGo();
            display.timerExec(-1, whenQuiet);
            for (int type : KEYS) {
                display.removeFilter(type, onKey);
            }
            for (int type : LEAVING) {
                display.removeFilter(type, onLeaving);
            }
        }
    }

    private void key(Event e) {
        if (lettingGo) {
            return;
        }
        switch (e.type) {
            case SWT.Traverse -> traverse(e);
            case SWT.KeyUp -> {
                swallowedKey = 0;
                entered = false;
            }
            case SWT.DefaultSelection -> {
                // A table answers Enter before anybody is asked about the key.
                if (entered || keys.ends(clock.peek(e.time))) {
                    swallow(e);
                }
            }
            default -> pressed(e);
        }
    }

    private void pressed(Event e) {
        // The toolkit offers a press that nobody took a second time, without letting go of the key in between.
        if (swallowedKey != 0 && e.keyCode == swallowedKey || entered && CodeKeys.isEnter(e.character)) {
            swallow(e);
            return;
        }
        if (e.character == 0 && (e.keyCode & SWT.MODIFIER_MASK) != 0) {
            return;
        }
        boolean plain = (e.stateMask & (SWT.CTRL | SWT.ALT | SWT.COMMAND)) == 0;
        Control here = display.getFocusControl();
        if (at != here) {
            letGo();
        }
        swallowedKey = 0;
        entered = false;
        CodeKeys.Answer answer = keys.key(plain ? e.character : 0, clock.millis(e.time));
        count++;
        if (answer instanceof CodeKeys.Answer.Scanned s) {
            scanned(s.number(), e);
        } else if (answer instanceof CodeKeys.Answer.Held h) {
            give(h.letGo());
            at = display.getFocusControl();
            swallowedKey = e.keyCode;
            swallow(e);
            display.timerExec(WAIT_MILLIS, whenQuiet);
        } else if (answer instanceof CodeKeys.Answer.Typed t) {
            give(t.letGo());
            follow(here, e);
        }
    }

    /** What was let go may have moved the focus, as the first letter in a grid opens the cell; the key goes along. */
    private void follow(Control before, Event e) {
        Control now = display.getFocusControl();
        if (now != before && now != null && e.character >= ' ' && e.character != SWT.DEL) {
            swallow(e);
            at = now;
            give(String.valueOf(e.character));
        }
    }

    /** Enter comes here before it comes as a key, and a letter where a label may have a key of its own. */
    private void traverse(Event e) {
        if (e.detail == SWT.TRAVERSE_RETURN && (entered || keys.ends(clock.peek(e.time)))) {
            if (!entered && keys.key('\r', clock.millis(e.time)) instanceof CodeKeys.Answer.Scanned s) {
                scanned(s.number(), e);
            }
            e.detail = SWT.TRAVERSE_NONE;
            e.doit = true;
            e.type = SWT.None;
        } else if (e.detail == SWT.TRAVERSE_MNEMONIC) {
            if (!keys.isEmpty() && (e.stateMask & SWT.ALT) == 0) {
                swallow(e);
            }
        } else if (e.detail != SWT.TRAVERSE_NONE) {
            letGo();
        }
    }

    private void scanned(String number, Event e) {
        display.timerExec(-1, whenQuiet);
        entered = true;
        swallow(e);
        at = null;
        job.scanned(number);
    }

    private static void swallow(Event e) {
        e.doit = false;
        e.type = SWT.None;
    }

    /** Looks once more after the keys that have come meanwhile and were not looked at yet. */
    private void quiet() {
        int before = count;
        display.asyncExec(() -> {
            if (before == count) {
                letGo();
            }
        });
    }

    private void letGo() {
        if (!lettingGo && !keys.isEmpty()) {
            give(keys.letGo());
        }
    }

    /** Gives what was held to where it was typed, as if it were typed now. */
    private void give(String text) {
        Control to = at;
        at = null;
        if (text.isEmpty() || to == null || to.isDisposed()) {
            return;
        }
        lettingGo = true;
        try {
            new HeldKeys(to).give(text);
        } finally {
            lettingGo = false;
        }
    }
}
