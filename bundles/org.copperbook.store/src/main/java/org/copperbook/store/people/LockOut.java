package org.copperbook.store.people;

import java.time.Duration;
import java.time.Instant;

/**
 * How long somebody has to wait after wrong secrets: nothing for the first few, then a minute, and twice as long after
 * each further one. Common practice, no source.
 *
 * <p>A clock that was set back neither ends a wait nor stretches it: what is left is then the whole wait, counted from the
 * clock as it is now.
 *
 * @param failures wrong secrets in a row
 * @param failedAt when the latest was given, or null
 */
public record LockOut(int failures, Instant failedAt) {

    /** Wrong secrets in a row that cost no wait. */
    public static final int FREE = 4;

    private static final Duration FIRST = Duration.ofMinutes(1);
    private static final Duration LONGEST = Duration.ofHours(1);
    private static final int DOUBLINGS = 6;

    /** The wait that follows the latest wrong secret. */
    static Duration wait(int wrong) {
        if (wrong <= FREE) {
            return Duration.ZERO;
        }
        Duration wait = FIRST.multipliedBy(1L << Math.min(wrong - FREE - 1, DOUBLINGS));
        return wait.compareTo(LONGEST) > 0 ? LONGEST : wait;
    }

    /** What is left of the wait; nothing when there is none. */
    public Duration left(Instant now) {
        Duration whole = wait(failures);
        if (failedAt == null || clockSetBack(now)) {
            return whole;
        }
        Duration left = whole.minus(Duration.between(failedAt, now));
        return left.isNegative() ? Duration.ZERO : left;
    }

    /** Whether the clock is earlier than at the latest wrong secret. */
    public boolean clockSetBack(Instant now) {
        return failedAt != null && now.isBefore(failedAt);
    }
}
