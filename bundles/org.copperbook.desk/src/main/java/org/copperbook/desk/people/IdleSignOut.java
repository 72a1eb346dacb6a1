package org.copperbook.desk.people;

import java.time.Duration;
import java.util.function.LongSupplier;
import org.copperbook.desk.Desk;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.DeskWords;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/**
 * Signs out whoever has left a shared bench: after the minutes of the preferences without a key, a click or a turn of the
 * wheel. What was typed and not saved stays with who typed it. Where the workshop has no secrets nothing happens.
 */
public final class IdleSignOut {

    /** Preference: minutes without work after which somebody is signed out; 0 for never. */
    public static final String MINUTES = "signOut.minutes";
    /** Common practice, no source. */
    public static final int STANDARD_MINUTES = 20;

    private static final int[] WORK = {SWT.KeyDown, SWT.MouseDown, SWT.MouseWheel};
    private static final int LOOK_EVERY_MILLIS = 5_000;

    private final Display display;
    private final DeskSession session;
    private final LongSupplier nanos;
    private final Listener working = this::worked;
    private final Runnable look = this::look;
    private long lastWork;

    /** @param nanos a clock that never goes back, as {@link System#nanoTime()} */
    public IdleSignOut(Display display, DeskSession session, LongSupplier nanos) {
        this.display = display;
        this.session = session;
        this.nanos = nanos;
    }

    /** Begins to watch; for the window's thread. */
    public void begin() {
        lastWork = nanos.getAsLong();
        for (int type : WORK) {
            display.addFilter(type, working);
        }
        display.timerExec(LOOK_EVERY_MILLIS, look);
    }

    /** Watches no more. */
    public void end() {
        if (!display.isDisposed()) {
            display.timerExec(-1, look);
            for (int type : WORK) {
                display.removeFilter(type, working);
            }
        }
    }

    /** Signs out if nobody has worked for long enough. */
    public void check() {
        int minutes = minutes();
        Duration idle = Duration.ofNanos(nanos.getAsLong() - lastWork);
        // Without the server nobody could sign in again.
        if (minutes > 0 && session.store().unreachable().isEmpty() && session.hasSecrets() && idle.compareTo(Duration.ofMinutes(minutes)) >= 0
                && session.store().accounts().signedIn().isPresent()) {
            SignOutHandler.signOut(session);
            session.say(DeskWords.text("signOut.idle", minutes));
        }
    }

    static int minutes() {
        return Math.max(0, InstanceScope.INSTANCE.getNode(Desk.BUNDLE).getInt(MINUTES, STANDARD_MINUTES));
    }

    private void worked(Event event) {
        lastWork = nanos.getAsLong();
    }

    private void look() {
        display.timerExec(LOOK_EVERY_MILLIS, look);
        check();
    }
}
