package org.copperbook.sheets.plates;

import java.util.List;
import org.copperbook.calc.verdict.Outcome;

/**
 * What the picture of the rectifier plates shows, in words already chosen.
 *
 * @param title      heading
 * @param positive   name of the positive plate
 * @param negative   name of the negative plate; empty for a half-wave rectifier, which has one plate
 * @param studs      the diodes in the order of their positions
 * @param suppressor the surge suppressor; null when none is fitted or nothing is recorded
 */
public record PlatesView(String title, String positive, String negative, List<Stud> studs, Box suppressor) {

    /** On which plate a diode sits. */
    public enum Side { POSITIVE, NEGATIVE, NOT_STATED }

    public PlatesView {
        studs = List.copyOf(studs);
    }

    /**
     * One diode.
     *
     * @param id          what is picked, e.g. "positions/0"
     * @param side        its plate
     * @param name        its mark and lead
     * @param cathodeBase true with the cathode on the base, false with the anode; null when not stated
     * @param wrongBase   whether the base is wrong for the plate
     * @param outcome     the verdict of its newest readings; null when there are none
     * @param lines       what is written beside it
     */
    public record Stud(String id, Side side, String name, Boolean cathodeBase, boolean wrongBase, Outcome outcome,
            List<String> lines) {
        public Stud {
            lines = List.copyOf(lines);
        }
    }

    /**
     * The surge suppressor between the plates.
     *
     * @param id      what is picked
     * @param name    what it is
     * @param outcome the verdict of its newest reading; null when there is none
     * @param lines   what is written beside it
     */
    public record Box(String id, String name, Outcome outcome, List<String> lines) {
        public Box {
            lines = List.copyOf(lines);
        }
    }
}
