package org.copperbook.calc.winding.design;

import java.util.List;
import org.copperbook.calc.wire.WireSize;

/**
 * A winding proposed for a bare core.
 *
 * @param span coil span in slots
 * @param circuits parallel circuits per phase
 * @param turnsPerCoil turns per coil, two coil sides in a slot
 * @param windingFactor winding factor of the working wave
 * @param strands strands in hand
 * @param wire size of the strands
 * @param densities peak flux densities at the rated voltage
 * @param currentDensity current density at the rating in A/m2
 * @param linearLoading ampere-conductors along the bore in A/m
 * @param squareCellFill fill reached
 * @param remarks what leaves the usual, in plain words
 */
public record FirstWinding(int span, int circuits, int turnsPerCoil, double windingFactor, int strands, WireSize wire,
        CoreGeometry.FluxDensities densities, double currentDensity, double linearLoading, double squareCellFill,
        List<String> remarks) {
    public FirstWinding {
        remarks = List.copyOf(remarks);
    }
}
