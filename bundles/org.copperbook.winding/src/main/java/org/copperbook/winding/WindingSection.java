package org.copperbook.winding;

import java.util.List;
import org.copperbook.desk.form.Form;
import org.copperbook.jobs.check.Verdict;

/**
 * One section of the winding page. The page builds its sections in their order on the screen; {@link WindingPage} holds
 * the list.
 */
public interface WindingSection {

    /** Declares the fields, grids and areas of the section. */
    void build(Form here);

    /**
     * Whether the section is on the screen.
     *
     * @param covered true while two counts of the turns are blind to each other: then nothing may be shown that tells
     *                turns or strands in hand
     */
    default boolean shown(boolean covered) {
        return !covered;
    }

    /** Called after every change of the draft. */
    default void changed() {
    }

    /** Called with the new verdicts of the whole job. */
    default void judged(List<Verdict> ofJob) {
    }
}
