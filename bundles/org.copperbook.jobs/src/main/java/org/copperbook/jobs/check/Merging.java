package org.copperbook.jobs.check;

import java.util.Optional;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.booking.Standing.How;

/** Whether a machine booked twice may be merged: the one job becomes void, the other goes on. */
public final class Merging {

    private Merging() {
    }

    /**
     * Why a job may not be merged into another; empty when it may. A job that is void takes none in, so jobs can never
     * lead round in a circle.
     *
     * @param from   the job that becomes void
     * @param number number of the other, as typed
     * @param into   the other job, if there is one of this number
     */
    public static Optional<String> refused(Job from, String number, Optional<Job> into) {
        if (number == null || number.isBlank()) {
            return Optional.of(Phrases.say("merge.no-number"));
        }
        if (into.isEmpty()) {
            return Optional.of(Phrases.say("merge.unknown", number.strip()));
        }
        Job other = into.get();
        if (other.id().equals(from.id())) {
            return Optional.of(Phrases.say("merge.itself", other.number()));
        }
        if (Stage.of(from).at() == Stage.At.RELEASED) {
            return Optional.of(Phrases.say("merge.this-released", from.number()));
        }
        if (from.standing().map(Standing::isClosed).orElse(false)) {
            return Optional.of(Phrases.say("merge.this-ended", from.number(), Stage.of(from).words()));
        }
        if (other.standing().map(Standing::isVoid).orElse(false)) {
            Standing.Closure c = other.standing().orElseThrow().closure();
            return Optional.of(c.how() == How.MERGED && c.into() != null
                    ? Phrases.say("merge.merged", other.number(), c.into())
                    : Phrases.say("merge.void", other.number()));
        }
        if (other.standing().map(Standing::closure).isPresent() || Stage.of(other).at() == Stage.At.RELEASED) {
            return Optional.of(Phrases.say("merge.ended", other.number(), Stage.of(other).words()));
        }
        return Optional.empty();
    }
}
