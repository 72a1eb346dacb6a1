package org.copperbook.jobs.report;

import java.time.YearMonth;

/**
 * Something that happened to a job in a month, to be counted or added up.
 *
 * @param month       when
 * @param kind        what sort of thing
 * @param what        of which currency, trade or test; empty where there is but one sort
 * @param thousandths amount in thousandths of the currency's unit or of an hour; 0 where there is nothing to add
 */
public record MonthFact(YearMonth month, Kind kind, String what, long thousandths) {

    /** Sorts of things, in the order of the report. */
    public enum Kind {
        /** Booked in. */
        BOOKED(false),
        /** Booked in as a return from an earlier job. */
        RETURNED(false),
        /** Released, and not taken back since. */
        RELEASED(false),
        /** Released after the day promised. */
        LATE(false),
        /** Promised for this month, and neither released nor closed yet. */
        OPEN(false),
        /** Newest quote, net, by currency. */
        QUOTED(true),
        /** Agreed to, net, by currency. */
        APPROVED(true),
        /** Hours in what was agreed to, by trade. */
        HOURS(true),
        /** Hours worked, by trade. */
        WORKED(true),
        /** A test of the run-up that failed, by test. */
        FAILED(false);

        private final boolean adds;

        Kind(boolean adds) {
            this.adds = adds;
        }

        /** Whether amounts are added up rather than things counted. */
        public boolean adds() {
            return adds;
        }
    }
}
