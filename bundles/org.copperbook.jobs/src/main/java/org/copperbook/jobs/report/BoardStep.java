package org.copperbook.jobs.report;

import org.copperbook.jobs.check.Stage;

/** Columns of the board of jobs: the points in an open job's life in their order, and what has ended. */
public enum BoardStep {
    BOOKED_IN, INSPECTED, QUOTE_BEGUN, QUOTED, AGREED, DECLINED, CAPTURED, STRIPPED, CORE_PROVED, WOUND, WINDING_PROVED,
    IMPREGNATED, RECTIFIER_COMPLETE, RUN_UP, RELEASED,
    /** Collected, handed back unrepaired, scrapped, cancelled or merged. */
    ENDED,
    /** Jobs of which this version cannot tell where they stand; they are shown all the same. */
    UNKNOWN;

    /** The column of a point in a job's life. */
    public static BoardStep of(Stage.At at) {
        return switch (at) {
            case COLLECTED, DECLINED_AND_RETURNED, SCRAPPED, CANCELLED, MERGED -> ENDED;
            default -> valueOf(at.name());
        };
    }

    /** The column of a name as it is kept; {@link #UNKNOWN} for any other text. */
    public static BoardStep named(String name) {
        for (BoardStep s : values()) {
            if (s.name().equals(name)) {
                return s;
            }
        }
        return UNKNOWN;
    }

    /** Whether work is still owed to the customer, so that a date promised can be missed. */
    public boolean owed() {
        return this != RELEASED && this != ENDED;
    }

    /** Whether the hours agreed to are still ahead, at least in part. */
    public boolean workAhead() {
        return compareTo(AGREED) >= 0 && compareTo(RUN_UP) <= 0 && this != DECLINED;
    }
}
