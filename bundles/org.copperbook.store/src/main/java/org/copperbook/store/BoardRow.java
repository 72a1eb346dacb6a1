package org.copperbook.store;

import java.time.Instant;
import java.util.Optional;
import org.copperbook.jobs.booking.Standing.WaitingFor;
import org.copperbook.jobs.report.BoardStep;

/**
 * One job on the board. Every value is derived from the job's parts.
 *
 * @param job      its row of the register
 * @param step     column in which it stands
 * @param bookedAt when it was booked in, or null when nobody wrote it down
 * @param waiting  what it waits for; empty when it does not wait
 */
public record BoardRow(RegisterRow job, BoardStep step, Instant bookedAt, Optional<Wait> waiting) {

    /**
     * A job that waits.
     *
     * @param what   what for; empty when nobody said
     * @param since  since when, or null
     * @param reason why, may be empty
     */
    public record Wait(Optional<WaitingFor> what, Instant since, String reason) {
    }
}
