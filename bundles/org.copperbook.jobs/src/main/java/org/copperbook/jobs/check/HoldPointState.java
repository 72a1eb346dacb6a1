package org.copperbook.jobs.check;

import java.util.List;
import org.copperbook.jobs.signoff.HoldPoint;

/**
 * Where a hold point stands.
 *
 * @param point    the hold point
 * @param state    not reached, open, ready, signed or reopened
 * @param blockers what keeps it from being signed, in words; empty when ready or signed
 * @param toSign   who still has to sign, in words; empty when signed
 * @param applies  false when this job does not pass this point (an overhaul winds nothing)
 * @param changed  for a release: what was changed after it was signed, in words; usually empty
 */
public record HoldPointState(HoldPoint point, State state, List<String> blockers, List<String> toSign,
        boolean applies, List<String> changed) {

    /** States of a hold point. */
    public enum State {
        /** Does not apply, or nothing that belongs to it has been recorded yet. */
        NOT_REACHED,
        /** Work on it has begun and something still blocks it. */
        OPEN,
        /** Nothing blocks it; signatures are missing. */
        READY,
        /** Signed by everybody who has to. */
        SIGNED,
        /** Was signed; a failure, a change or a person with a reason opened it again. */
        REOPENED
    }

    public HoldPointState {
        blockers = List.copyOf(blockers);
        toSign = List.copyOf(toSign);
        changed = List.copyOf(changed);
    }

    /** A state after which nothing was changed. */
    public HoldPointState(HoldPoint point, State state, List<String> blockers, List<String> toSign, boolean applies) {
        this(point, state, blockers, toSign, applies, List.of());
    }

    /** Whether work behind this point may go on. */
    public boolean passed() {
        return !applies || state == State.SIGNED;
    }
}
