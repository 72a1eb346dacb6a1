package org.copperbook.calc.winding.memory;

import java.util.List;

/**
 * A past winding that resembles the machine asked for.
 *
 * @param row its row in the list given
 * @param distance scaled distance; 0 for the same figures
 * @param differences what differs, most telling first
 */
public record PastWinding(int row, double distance, List<Difference> differences) {
    public PastWinding {
        differences = List.copyOf(differences);
    }

    /**
     * One figure that differs.
     *
     * @param figure figure
     * @param asked value asked for in SI
     * @param found value of the past winding in SI; not a number when unknown
     * @param inWords the difference in plain words
     */
    public record Difference(Figure figure, double asked, double found, String inWords) {
    }
}
