package org.copperbook.jobs.check;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.core.CoreTest;
import org.copperbook.jobs.impregnation.Impregnation;
import org.copperbook.jobs.inspection.Inspection;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.signoff.SignOffs;
import org.copperbook.jobs.winding.WindingRole;

/**
 * Where a job stands in its life, from its records alone, cheap enough for every row of a register. A signature that a
 * later reopening overtook does not count.
 *
 * @param at      the furthest point reached
 * @param waiting whether it waits for something
 * @param words   all of it in words
 */
public record Stage(At at, boolean waiting, String words) {

    /** Points in a job's life, in order; the last five are ways to end. */
    public enum At {
        BOOKED_IN, INSPECTED, QUOTE_BEGUN, QUOTED, AGREED, DECLINED, CAPTURED, STRIPPED, CORE_PROVED, WOUND,
        WINDING_PROVED, IMPREGNATED, RECTIFIER_COMPLETE, RUN_UP, RELEASED, COLLECTED, DECLINED_AND_RETURNED, SCRAPPED, CANCELLED, MERGED
    }

    /** Where the job stands. */
    public static Stage of(Job job) {
        Standing standing = job.standing().orElse(null);
        if (standing != null && standing.isClosed()) {
            Standing.Closure c = standing.closure();
            At at = closed(c.how());
            String words = Phrases.word("stage", at);
            if (standing.isVoid()) {
                words = Phrases.say("stage.void", words, c.into() == null ? c.reason()
                        : Phrases.say("stage.into", c.into(), c.reason()));
            }
            return new Stage(at, false, words);
        }
        At at = reached(job);
        String words = Phrases.word("stage", at);
        if (at != At.RELEASED && HoldPoints.signOffs(job).signatures().stream()
                .anyMatch(s -> s.point() == HoldPoint.RELEASE)) {
            words = Phrases.say("stage.release-void", words);
        }
        boolean waiting = standing != null && standing.waiting() != null;
        if (waiting) {
            Standing.Waiting w = standing.waiting();
            String since = w.since() == null ? "" : LocalDate.ofInstant(w.since(), ZoneId.systemDefault()).toString();
            words = Phrases.say("stage.waiting", words,
                    w.waitingFor() == null ? "" : Phrases.word("waiting", w.waitingFor()), since,
                    w.reason() == null ? "" : w.reason());
        }
        return new Stage(at, waiting, words.strip());
    }

    private static At closed(Standing.How how) {
        return switch (how) {
            case COLLECTED -> At.COLLECTED;
            case DECLINED -> At.DECLINED_AND_RETURNED;
            case SCRAPPED -> At.SCRAPPED;
            case CANCELLED -> At.CANCELLED;
            case MERGED -> At.MERGED;
        };
    }

    private static At reached(Job job) {
        if (signed(job, HoldPoint.RELEASE)) {
            return At.RELEASED;
        }
        if (job.runUp().map(r -> !r.points().isEmpty()).orElse(false)) {
            return At.RUN_UP;
        }
        if (signed(job, HoldPoint.RECTIFIER_COMPLETE)) {
            return At.RECTIFIER_COMPLETE;
        }
        if (job.part(PartKind.IMPREGNATION, Impregnation.class).map(i -> i.treatments().stream()
                .anyMatch(t -> t.method() != Impregnation.Method.DRY_ONLY)).orElse(false)) {
            return At.IMPREGNATED;
        }
        if (signed(job, HoldPoint.WINDING_PROVED)) {
            return At.WINDING_PROVED;
        }
        for (WindingRole role : WindingRole.values()) {
            if (job.windingAsWound(role).isPresent()) {
                return At.WOUND;
            }
        }
        if (signed(job, HoldPoint.CORE_PROVED)) {
            return At.CORE_PROVED;
        }
        Optional<CoreTest> core = job.part(PartKind.CORE, CoreTest.class);
        if (core.map(c -> c.burnOutHours() != null || c.burnOutMaxCelsius() != null || c.runs().stream()
                .anyMatch(r -> r.stage() == CoreTest.Stage.AFTER_BURN_OUT)).orElse(false)) {
            return At.STRIPPED;
        }
        return signed(job, HoldPoint.CAPTURE_COMPLETE) ? At.CAPTURED : office(job);
    }

    private static At office(Job job) {
        List<Quote> quotes = job.quotes();
        if (quotes.stream().map(Quote::approval).anyMatch(a -> a != null && Boolean.TRUE.equals(a.agreed()))) {
            return At.AGREED;
        }
        // The newest offer stands for those before it; an answer that is being typed says who and how before it says yes or no.
        Optional<Quote> offer = quotes.stream().filter(Quote::wentOut).reduce((before, after) -> after);
        if (offer.isPresent()) {
            return offer.get().isAnswered() ? At.DECLINED : At.QUOTED;
        }
        if (!quotes.isEmpty()) {
            return At.QUOTE_BEGUN;
        }
        return job.inspection().map(Stage::begun).orElse(false) ? At.INSPECTED : At.BOOKED_IN;
    }

    private static boolean begun(Inspection i) {
        return !i.readings().isEmpty() || !i.excitationRuns().isEmpty() || !i.findings().isEmpty()
                || i.checklist().stream().anyMatch(c -> c.condition() != null);
    }

    private static boolean signed(Job job, HoldPoint point) {
        SignOffs s = HoldPoints.signOffs(job);
        Instant reopened = s.reopenings().stream().filter(r -> r.point() == point).map(SignOffs.Reopening::at)
                .filter(Objects::nonNull).max(Instant::compareTo).orElse(null);
        return SignRule.missing(point, SignRule.standing(job, s, point, reopened), s).isEmpty();
    }
}
