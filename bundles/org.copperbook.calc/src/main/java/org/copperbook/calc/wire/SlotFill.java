package org.copperbook.calc.wire;

import java.util.List;
import org.copperbook.calc.Require;

/**
 * Slot fill by its three usual definitions, each over the same area. The definitions differ by tens of percent, so the
 * one meant is always named.
 *
 * @param copper metal area over slot area
 * @param insulatedRound area of the insulated circles over slot area
 * @param squareCell area of the squares round the insulated wires over slot area
 */
public record SlotFill(double copper, double insulatedRound, double squareCell) {

    /**
     * Wires of one size in a slot.
     *
     * @param count number of wires in the slot, turns times strands times coil sides
     * @param size size
     * @param grade enamel; the largest overall diameter counts
     */
    public record Wires(double count, WireSize size, InsulationGrade grade) {
        public Wires {
            Require.notNegative("wires in a slot", count, "");
        }
    }

    /**
     * Geometry, no source needed.
     *
     * @param wires wires in the slot by size
     * @param slotArea area in m2; gross, or less liner, wedge and separator, as the user's own limit was found
     * @return fill by the three definitions
     */
    public static SlotFill of(List<Wires> wires, double slotArea) {
        Require.positive("slot area", slotArea, "m2");
        double copper = 0;
        double square = 0;
        for (Wires some : wires) {
            double overall = some.size().overallDiameter(some.grade()).maximum();
            if (some.grade() == InsulationGrade.BARE) {
                overall = some.size().bareDiameter();
            }
            copper += some.count() * some.size().area();
            square += some.count() * overall * overall;
        }
        return new SlotFill(copper / slotArea, Math.PI / 4 * square / slotArea, square / slotArea);
    }
}
