package org.copperbook.store.jdbc;

import java.time.Instant;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.store.RegisterRow;
import org.copperbook.store.StageOf;
import org.copperbook.store.StageOf.Standpoint;
import org.copperbook.store.StoreText;

/**
 * A register row with the text by which it is found.
 *
 * @param row      what is shown
 * @param stageKey sorts by the place in a job's life
 * @param board    where it stands on the board
 * @param search   folded text of everything a person may look for
 */
record RegisterEntry(RegisterRow row, String stageKey, BoardPlace board, String search) {

    /** Raised whenever rows are derived differently, so that stores make their register anew. */
    static final int EDITION = 8;

    private static final System.Logger LOG = System.getLogger(RegisterEntry.class.getName());

    /** Derives the entry of a job. */
    static RegisterEntry of(Job job, Instant changedAt, StageOf stageOf) {
        Optional<Booking> booking = job.booking();
        Optional<Nameplate> plate = job.nameplate();
        Optional<Standpoint> told = stage(job, stageOf);
        Standpoint stage = told.orElseGet(() -> new Standpoint(0, StoreText.of("stage.unknown")));
        RegisterRow row = new RegisterRow(job.id(), job.number(), text(booking.map(Booking::customer)),
                text(booking.map(Booking::machine)), text(plate.map(Nameplate::serial)),
                stage.words(), booking.map(Booking::promised).orElse(null),
                changedAt, job.standing().map(Standing::isVoid).orElse(false));
        String search = Stream.of(row.number(), row.customer(), row.machine(), row.serial(), row.stage(),
                row.promised() == null ? "" : row.promised().toString(), text(plate.map(Nameplate::maker)),
                text(plate.map(Nameplate::type)), text(booking.map(Booking::orderNo)), text(booking.map(Booking::tag)))
                .filter(s -> !s.isBlank()).map(SearchText::fold).collect(Collectors.joining("\n"));
        return new RegisterEntry(row, "%04d".formatted(stage.order()) + SearchText.natural(stage.words()),
                BoardPlace.of(job, told), search);
    }

    /** A job whose stage cannot be told is saved all the same: the register is derived and can be made anew. */
    private static Optional<Standpoint> stage(Job job, StageOf stageOf) {
        try {
            return Optional.of(stageOf.stageOf(job));
        } catch (RuntimeException e) {
            LOG.log(System.Logger.Level.ERROR, "the stage of job " + job.number() + " cannot be told", e);
            return Optional.empty();
        }
    }

    private static String text(Optional<String> value) {
        return value.map(String::strip).orElse("");
    }
}
