package org.copperbook.desk.scan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class KeyClockTest {

    private long nanos = 5;
    private final KeyClock clock = new KeyClock(() -> nanos);

    private int after(int time, long millis) {
        nanos += millis * 1_000_000;
        return clock.millis(time);
    }

    @Test
    void aKeyCountsFromItsPressAlsoWhenItIsLookedAtLate() {
        int begin = after(1_000, 0);
        assertEquals(4, after(1_004, 700) - begin);
        assertEquals(8, after(1_008, 0) - begin);
    }

    @Test
    void theClockOfTheWindowSystemMayOverflow() {
        int begin = after(Integer.MAX_VALUE - 1, 0);
        assertEquals(5, after(Integer.MIN_VALUE + 3, 0) - begin);
    }

    @Test
    void aKeyWithoutATimeOfItsOwnCountsFromWhenItIsSeen() {
        int begin = after(1_000, 0);
        assertEquals(60, after(1_000, 60) - begin);
        assertEquals(75, clock.peek(1_000) - begin + 15);
        assertEquals(61, after(1_000, 1) - begin);
    }
}
