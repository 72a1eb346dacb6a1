package org.copperbook.store.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class LockOutTest {

    private static final Instant AT = Instant.parse("2026-03-03T09:00:00Z");

    private static long seconds(int failures, long later) {
        return new LockOut(failures, AT).left(AT.plusSeconds(later)).toSeconds();
    }

    @Test
    void theFirstFourCostNothingThenEachWaitIsTwiceTheOneBeforeUpToAnHour() {
        assertEquals(0, seconds(0, 0));
        assertEquals(0, seconds(4, 0));
        assertEquals(60, seconds(5, 0));
        assertEquals(120, seconds(6, 0));
        assertEquals(1920, seconds(10, 0));
        assertEquals(3600, seconds(11, 0));
        assertEquals(3600, seconds(100_000, 0));
    }

    @Test
    void theWaitRunsOut() {
        assertEquals(1, seconds(5, 59));
        assertEquals(0, seconds(5, 60));
        assertEquals(0, seconds(5, 1_000_000));
    }

    @Test
    void aClockSetBackNeitherEndsTheWaitNorStretchesIt() {
        LockOut lock = new LockOut(5, AT);
        assertTrue(lock.clockSetBack(AT.minus(Duration.ofDays(400))));
        assertEquals(60, seconds(5, -86_400L * 400));
        assertEquals(60, seconds(5, -1));
    }

    @Test
    void aTimeThatCannotBeReadLetsNobodyInSooner() {
        assertEquals(Duration.ofMinutes(1), new LockOut(5, null).left(AT));
    }
}
