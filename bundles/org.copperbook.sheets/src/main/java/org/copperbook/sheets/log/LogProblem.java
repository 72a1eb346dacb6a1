package org.copperbook.sheets.log;

/**
 * Something wrong in a log: what, where, how often.
 *
 * @param kind  what is wrong
 * @param first first row of the file, from 1
 * @param last  last row of the same unbroken run
 * @param text  in words, with row numbers
 */
public record LogProblem(Kind kind, long first, long last, String text) {

    /** What can be wrong with a row. */
    public enum Kind {
        /** The clock stood still or went back. */
        CLOCK_BACK,
        /** Rows are missing, or the clock was set forward. */
        GAP,
        /** The same row once more. */
        DUPLICATE,
        /** Two different rows at one moment. */
        SAME_MOMENT,
        /** A moment that cannot be read. */
        NO_MOMENT,
        /** A cell that is no number. */
        NO_NUMBER,
        /** An empty cell. */
        EMPTY,
        /** A cell in another unit than its column. */
        OTHER_UNIT,
        /** Two columns change places. */
        SWAPPED,
        /** A value that no machine has. */
        IMPOSSIBLE,
        /** Too few or too many cells. */
        COLUMNS
    }
}
