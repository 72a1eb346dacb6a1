package org.copperbook.sheets.winding;

import java.util.List;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.WindingModel;
import org.copperbook.sheets.picture.ScenePalette;

/**
 * The phases that a winding's groups name, in the order of their marks.
 *
 * @param names the marks as captured; "" stands for groups without a phase
 */
record Phases(List<String> names) {

    static Phases of(List<CoilGroup> groups) {
        return new Phases(groups.stream().map(Phases::name).distinct().sorted().toList());
    }

    static String name(CoilGroup group) {
        return group.phase() == null ? "" : group.phase().strip();
    }

    /** Style of a phase: its own line pattern and colour. */
    String style(String phase) {
        return phase.isEmpty() && names.size() > 1 ? ScenePalette.TEXT : ScenePalette.series(Math.max(0, names.indexOf(phase)));
    }

    String style(CoilGroup group) {
        return style(name(group));
    }

    /** The letter of a phase in terminal marks (IEC 60034-8). */
    static String letter(String phase) {
        int number = WindingModel.phase(phase);
        return number == 0 ? phase : "UVW".substring(number - 1, number);
    }

    /** How a group's sense is written: "+U", or "−U" when it is connected against the first. */
    static String signed(CoilGroup group) {
        return (Boolean.TRUE.equals(group.reversed()) ? "\u2212" : "+") + name(group);
    }
}
