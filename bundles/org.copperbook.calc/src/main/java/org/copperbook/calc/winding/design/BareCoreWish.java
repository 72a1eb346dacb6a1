package org.copperbook.calc.winding.design;

import org.copperbook.calc.Require;
import org.copperbook.calc.winding.PhaseJunction;
import org.copperbook.calc.wire.InsulationGrade;

/**
 * What a first winding in a bare core must meet.
 *
 * @param machine kind of machine, which decides the usual ranges
 * @param core core as measured
 * @param poles poles
 * @param hertz frequency
 * @param lineVolts line voltage in V
 * @param junction star or delta
 * @param rating apparent power in VA
 * @param targetGap peak flux density to aim at in the gap in T, 0.2 to 1.3
 * @param squareCellFill squares round the insulated wires over the slot area, 0.2 to 0.9
 * @param grade enamel
 * @param mostStrands most strands in hand, 1 to 60
 * @param thickestWire thickest wire that is to be wound, bare, in m
 */
public record BareCoreWish(MachineType machine, CoreGeometry core, int poles, double hertz, double lineVolts,
        PhaseJunction junction, double rating, double targetGap, double squareCellFill, InsulationGrade grade,
        int mostStrands,
        double thickestWire) {
    public BareCoreWish {
        Require.poles(poles);
        Require.positive("frequency", hertz, "Hz");
        Require.positive("line voltage", lineVolts, "V");
        Require.positive("rating", rating, "VA");
        Require.between("target gap flux density", targetGap, 0.2, 1.3, "T",
                "no machine of this trade is built outside it");
        Require.between("square-cell fill", squareCellFill, 0.2, 0.9, "",
                "outside it the slot is empty or cannot be filled");
        Require.between("strands in hand", mostStrands, 1, 60, "more strands cannot be wound together");
        Require.between("thickest wire", thickestWire * 1e3, 0.1, 5, "mm", "enamelled wire is tabulated in this range");
    }

    /** @return phase voltage in V */
    public double phaseVolts() {
        return junction == PhaseJunction.STAR ? lineVolts / Math.sqrt(3) : lineVolts;
    }
}
