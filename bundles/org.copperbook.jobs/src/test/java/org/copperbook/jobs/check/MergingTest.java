package org.copperbook.jobs.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.booking.Standing.Closure;
import org.copperbook.jobs.booking.Standing.How;
import org.junit.jupiter.api.Test;

class MergingTest {

    private static Job job(String number) {
        return new Job("id-" + number, number, Map.of());
    }

    private static Job ended(String number, How how, String into) {
        return job(number).with(PartKey.of(PartKind.STANDING), new Standing(1, null,
                new Closure(how, "booked twice", into, Instant.EPOCH, "ada", null), null));
    }

    private static String refused(Job into) {
        return Merging.refused(job("2026-0002"), into.number(), Optional.of(into)).orElse("");
    }

    @Test
    void aJobGoesIntoAnotherThatIsOpen() {
        assertEquals(Optional.empty(), Merging.refused(job("2026-0002"), "2026-0001", Optional.of(job("2026-0001"))));
    }

    @Test
    void theOtherJobHasToBeNamedAndToBeThere() {
        assertTrue(Merging.refused(job("2026-0002"), "  ", Optional.empty()).isPresent());
        assertTrue(Merging.refused(job("2026-0002"), "2026-0099", Optional.empty()).orElseThrow().contains("2026-0099"));
    }

    @Test
    void noJobGoesIntoItself() {
        assertTrue(refused(job("2026-0002")).contains("this job"));
    }

    @Test
    void aVoidJobTakesNoneInSoThatNothingLeadsRoundInACircle() {
        assertTrue(refused(ended("2026-0001", How.CANCELLED, null)).contains("void"));
        assertTrue(refused(ended("2026-0001", How.MERGED, "2026-0002")).contains("merged into 2026-0002"));
    }

    /** The set of the manual is released; its record is an input of the tests. */
    @Test
    void aReleasedJobIsNotMergedAwayAndItIsSaidWhatToDoInstead() {
        Job released = Bench.realInput();
        String said = Merging.refused(released, "2026-0001", Optional.of(job("2026-0001"))).orElseThrow();
        assertTrue(said.contains(released.number() + " is released") && said.contains("Merge the other job"), said);
    }

    @Test
    void aJobThatHasEndedIsNotMergedAwayEither() {
        String said = Merging.refused(ended("2026-0002", How.COLLECTED, null), "2026-0001",
                Optional.of(job("2026-0001"))).orElseThrow();
        assertTrue(said.contains("2026-0002 has ended"), said);
    }

    @Test
    void aReleasedJobTakesNoneIn() {
        Job released = Bench.realInput();
        assertTrue(Merging.refused(job("2026-0002"), released.number(), Optional.of(released)).orElseThrow()
                .contains("takes nothing in"));
    }

    @Test
    void aJobThatHasEndedTakesNoneIn() {
        assertTrue(refused(ended("2026-0001", How.COLLECTED, null)).contains("has ended"));
        assertTrue(refused(ended("2026-0001", How.SCRAPPED, null)).contains("has ended"));
    }
}
