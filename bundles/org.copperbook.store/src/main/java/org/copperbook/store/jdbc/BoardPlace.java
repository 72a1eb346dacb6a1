package org.copperbook.store.jdbc;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.check.Stage;
import org.copperbook.jobs.report.AgreedQuote;
import org.copperbook.jobs.report.BoardStep;
import org.copperbook.jobs.report.Workload;
import org.copperbook.store.StageOf;
import org.copperbook.store.StageOf.Standpoint;

/**
 * Where a job stands on the board, as it is kept in its row of the register.
 *
 * @param step          its column
 * @param bookedAt      when it was booked in; empty when nobody wrote it down
 * @param waitingFor    what it waits for; empty when it does not, {@link #UNSAID} when nobody said
 * @param waitingSince  since when; empty when nobody said
 * @param waitingReason why, may be empty
 */
record BoardPlace(BoardStep step, String bookedAt, String waitingFor, String waitingSince, String waitingReason) {

    static final String UNSAID = "?";
    /** Stands for a day that was not promised, after all that were. */
    static final String NO_DAY = "9999-12-31";

    private static final int LAST_YEAR = 9999;

    /**
     * The place of a job.
     *
     * @param told its place in a job's life; empty when that cannot be told
     */
    static BoardPlace of(Job job, Optional<Standpoint> told) {
        String booked = text(job.booking().map(Booking::bookedAt).orElse(null));
        Standing.Waiting w = job.standing().filter(s -> !s.isClosed()).map(Standing::waiting).orElse(null);
        return w == null ? new BoardPlace(step(told), booked, "", "", "")
                : new BoardPlace(step(told), booked, w.waitingFor() == null ? UNSAID : w.waitingFor().name(),
                        text(w.since()), w.reason() == null ? "" : w.reason().strip());
    }

    /** The hours ahead of a job; none when they cannot be told, for saving must not fail for them. */
    static List<Workload.Due> workAhead(Job job, StageOf stageOf) {
        try {
            List<Workload.Due> ahead = new ArrayList<>();
            if (step(Optional.of(stageOf.stageOf(job))).workAhead()) {
                AgreedQuote.hoursLeft(job).forEach((trade, hours) -> ahead.add(
                        new Workload.Due(trade, job.booking().map(Booking::promised).orElse(null), hours)));
            }
            return ahead;
        } catch (RuntimeException e) {
            System.getLogger(BoardPlace.class.getName()).log(System.Logger.Level.ERROR,
                    "the hours ahead of job " + job.number() + " cannot be told", e);
            return List.of();
        }
    }

    /** A day as the board sorts it. A year of five digits is a slip and sorts as if there were no day. */
    static String due(LocalDate promised) {
        if (promised == null || promised.getYear() > LAST_YEAR) {
            return NO_DAY;
        }
        return promised.getYear() < 0 ? "0000-01-01" : promised.toString();
    }

    private static BoardStep step(Optional<Standpoint> told) {
        return told.map(Standpoint::order).filter(o -> o < Stage.At.values().length)
                .map(o -> BoardStep.of(Stage.At.values()[o])).orElse(BoardStep.UNKNOWN);
    }

    private static String text(Instant at) {
        return at == null ? "" : at.toString();
    }
}
