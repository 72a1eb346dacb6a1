package org.copperbook.calc.excitation;

import org.copperbook.calc.verdict.Outcome;

/**
 * What a diode reading says.
 *
 * @param state the class it may be called
 * @param suspected what the reading hints at when the class is doubtful; equals state otherwise
 * @param reason why
 */
public record DiodeFinding(State state, State suspected, Reason reason) {

    /** Classes of a diode. */
    public enum State {
        GOOD(Outcome.MEETS), SHORTED(Outcome.FAILS), OPEN(Outcome.FAILS), DOUBTFUL(Outcome.DOUBTFUL),
        NOT_MEASURED(Outcome.NOT_MEASURED);

        private final Outcome outcome;

        State(Outcome outcome) {
            this.outcome = outcome;
        }

        /** The verdict that belongs to the class. */
        public Outcome outcome() {
            return outcome;
        }
    }

    /** Why a diode is classed as it is; the text for people belongs to the caller. */
    public enum Reason {
        /** Conducts one way and blocks the other. */
        CONDUCTS_ONE_WAY,
        /** Low both ways. */
        LOW_BOTH_WAYS,
        /** Blocks both ways; often the soldered joint. */
        BLOCKS_BOTH_WAYS,
        /** Conducts the wrong way: probes swapped, or wrong base polarity for its plate. */
        CONDUCTS_BACKWARDS,
        /** Read in the closed bridge, where neighbours conduct in parallel: lift the lead and read again. */
        LIFT_THE_LEAD,
        /** Between conducting and blocking: leaking, dirty, or the range does not suit. */
        BETWEEN_THE_LIMITS,
        /** One or both directions missing. */
        NOT_READ
    }

    /** The verdict that belongs to the class. */
    public Outcome outcome() {
        return state.outcome();
    }
}
