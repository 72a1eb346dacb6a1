package org.copperbook.store;

import java.time.LocalDate;
import java.util.Optional;
import org.copperbook.jobs.report.BoardStep;

/**
 * Which jobs of the board, in which order.
 *
 * @param step   one column; empty for all of them
 * @param which  which of their jobs
 * @param order  in which order
 * @param today  the day before which a date promised has passed
 * @param offset rows to skip, 0 or more
 * @param limit  rows wanted, 0 or more
 */
public record BoardQuery(Optional<BoardStep> step, Which which, Order order, LocalDate today, int offset, int limit) {

    /** Which jobs. */
    public enum Which {
        ALL,
        /** What has not ended. */
        OPEN,
        /** Promised for an earlier day, and neither released nor ended. */
        LATE,
        /** What waits for something. */
        WAITING,
        /** Open, with no day promised. */
        NO_DATE
    }

    /** In which order; jobs alike in it stand by their numbers. */
    public enum Order {
        /** The day promised, those without one last. */
        DUE,
        /** The one untouched longest first. */
        UNTOUCHED
    }

    public BoardQuery {
        if (offset < 0 || limit < 0) {
            throw new IllegalArgumentException("offset and limit must not be negative: " + offset + ", " + limit);
        }
    }
}
