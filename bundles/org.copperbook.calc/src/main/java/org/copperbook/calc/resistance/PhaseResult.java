package org.copperbook.calc.resistance;

import java.util.Set;

import org.copperbook.calc.uncertainty.Uncertain;

/**
 * What three terminal readings say about the three phases. In a star the phases are named U, V, W by their line
 * terminal; in a delta by the pair of terminals they lie between, and U stands for UV, V for VW, W for WU.
 */
public sealed interface PhaseResult {

    /** The phases by the order of {@link TerminalPair}: U or UV, V or VW, W or WU. */
    enum Phase {
        U, V, W
    }

    /** The classes a triple can belong to. */
    enum Finding {
        SOUND, OPEN_PHASE, SHORTED_PHASE, OPEN_LINE, INCONSISTENT
    }

    Finding finding();

    /**
     * Other classes that the readings allow within two standard uncertainties. Not empty means doubtful: a finer
     * reading is needed before the finding may be relied on.
     */
    Set<Finding> alsoPossible();

    /** All three phases conduct. Values in ohm; unbalance is judged apart. */
    record Sound(Uncertain u, Uncertain v, Uncertain w, Set<Finding> alsoPossible) implements PhaseResult {
        @Override
        public Finding finding() {
            return Finding.SOUND;
        }
    }

    /**
     * One phase does not conduct. In a star the open may lie in the phase or in its lead; in a delta the two other
     * phases are read directly.
     */
    record OpenPhase(Phase open, Set<Finding> alsoPossible) implements PhaseResult {
        @Override
        public Finding finding() {
            return Finding.OPEN_PHASE;
        }
    }

    /** One phase reads zero within its uncertainty while the others do not. */
    record ShortedPhase(Phase shorted, Set<Finding> alsoPossible) implements PhaseResult {
        @Override
        public Finding finding() {
            return Finding.SHORTED_PHASE;
        }
    }

    /**
     * No current reaches a line terminal: its lead, or in a delta both phases that meet there, are open.
     *
     * @param line the terminal, or null when no pair conducts and the terminal cannot be told
     */
    record OpenLine(Phase line, Set<Finding> alsoPossible) implements PhaseResult {
        @Override
        public Finding finding() {
            return Finding.OPEN_LINE;
        }
    }

    /**
     * No connection of three resistances can give these readings.
     *
     * @param repeat the reading to take again first
     * @param reason why the readings cannot belong together
     */
    record Inconsistent(TerminalPair repeat, Reason reason, Set<Finding> alsoPossible) implements PhaseResult {
        @Override
        public Finding finding() {
            return Finding.INCONSISTENT;
        }
    }

    /** Why readings cannot belong together. */
    enum Reason {
        /** One reading exceeds the sum of the two others by more than the uncertainty. */
        ONE_EXCEEDS_THE_OTHERS,
        /** One pair is open although the third terminal joins both of its ends. */
        OPEN_ACROSS_A_CLOSED_PATH,
        /** A reading lies below zero by more than its uncertainty. */
        BELOW_ZERO,
        /** Two or more pairs read zero within the uncertainty: the meter does not resolve this winding. */
        NOT_RESOLVED
    }
}
