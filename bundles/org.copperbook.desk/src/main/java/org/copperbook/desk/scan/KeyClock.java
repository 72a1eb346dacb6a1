package org.copperbook.desk.scan;

import java.util.function.LongSupplier;

/**
 * When keys went down, milliseconds from any beginning. The window system gives each key the time of its press, which a
 * busy window cannot spoil; keys made by a program carry the time of the last real one, so for them it is the time at
 * which they are looked at.
 */
final class KeyClock {

    private static final long NANOS = 1_000_000;

    private final LongSupplier nanos;
    private int now;
    private int lastTime;
    private long lastSeen;

    /** @param nanos a clock that never goes back, as {@link System#nanoTime()} */
    KeyClock(LongSupplier nanos) {
        this.nanos = nanos;
        this.lastSeen = nanos.getAsLong();
    }

    /** The time of a key that carries a time; later keys count from it. */
    int millis(int time) {
        now = peek(time);
        lastTime = time;
        lastSeen = nanos.getAsLong();
        return now;
    }

    /** The same without taking note of the key. */
    int peek(int time) {
        int since = time != lastTime ? time - lastTime : (int) ((nanos.getAsLong() - lastSeen) / NANOS);
        return now + since;
    }
}
