package org.copperbook.jobs.check;

import java.util.List;
import java.util.Optional;
import org.copperbook.jobs.PartKey;

/**
 * One step of a test plan.
 *
 * @param id       stable id, e.g. "withstand.main-stator"
 * @param title    what is tested
 * @param level    at what level, in words with numbers; empty when there is none
 * @param source   where the level comes from
 * @param why      why it is asked, or when it may be left out
 * @param required true when the release waits for it
 * @param caution  the hazardous step whose cautions are acknowledged by name first; null when there is none
 * @param part     where its readings go
 * @param path     JSON pointer of the place
 * @param state    where it stands
 * @param verdicts ids of the verdicts on it
 */
public record PlannedStep(String id, String title, String level, String source, String why, boolean required,
        Hazardous caution, PartKey part, String path, State state, List<String> verdicts) {

    /** Where a step stands. */
    public enum State {
        /** Nothing recorded. */
        OPEN,
        /** Recorded, and not every verdict on it meets. */
        NOT_MET,
        /** Recorded, and nothing speaks against it. */
        DONE
    }

    public PlannedStep {
        verdicts = List.copyOf(verdicts);
    }

    /** The state in words. */
    public String stateWord() {
        return Phrases.word("plan.state", state);
    }

    /** The cautions to acknowledge by name before, as a title. */
    public Optional<String> cautionTitle() {
        return Optional.ofNullable(caution).map(Cautions::title);
    }
}
