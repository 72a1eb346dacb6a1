package org.copperbook.jobs.winding.stock;

import java.util.List;
import org.copperbook.jobs.winding.WireInHand;

/**
 * One way to make up the wire in hand from the shelf.
 *
 * @param wires      sizes with their strands, thickest first
 * @param label      as it is written on the card, "5 x 1.120 mm + 3 x 1.250 mm"
 * @param strands    strands in hand together
 * @param area       copper area of all strands, m2
 * @param areaChange area over the original less one
 * @param ohmsChange resistance over that of the original less one, mean turn unchanged
 * @param roomChange room in the slot over that of the original less one; null when that of the original is not known
 * @param fill       square-cell slot fill; null when the slot or the covering of the original is not known
 * @param needs      per size what the winding takes and what the shelf holds, in the order of the wires
 * @param warnings   what speaks against it
 */
public record WireProposal(List<WireInHand> wires, String label, int strands, double area, double areaChange,
        double ohmsChange, Double roomChange, Double fill, List<Need> needs, List<Warning> warnings) {

    public WireProposal {
        wires = List.copyOf(wires);
        needs = List.copyOf(needs);
        warnings = List.copyOf(warnings);
    }

    /** What speaks against a proposal. */
    public enum Warning {
        /** Less copper than the original; ANSI/EASA AR100 asks for no less. */
        LESS_COPPER,
        /** More than 3 percent off the original area. */
        AREA_OFF,
        /** More strands in hand than the original. */
        MORE_STRANDS,
        /** Takes more room in the slot than the original. */
        TIGHTER,
        /** Fill above the usual range. */
        FILL_HIGH,
        /** The shelf does not hold enough. */
        STOCK_SHORT,
        /** How much is needed cannot be said: turns or mean turn are missing. */
        NEED_UNKNOWN,
        /** Another grade of insulation than the original. */
        OTHER_GRADE,
        /** Mixed sizes in hand. */
        MIXED_SIZES
    }

    /**
     * Wire of one size for the whole winding.
     *
     * @param size   size as on the shelf
     * @param needKg what the winding takes with the allowance for ends and waste, kg; null when not known
     * @param heldKg what the shelf holds, kg
     */
    public record Need(String size, Double needKg, double heldKg) {

        /** What stays on the shelf, kg; null when the need is not known, below 0 when it does not suffice. */
        public Double leftKg() {
            return needKg == null ? null : heldKg - needKg;
        }
    }

    /** Whether it is the original itself, size for size. */
    public boolean isOriginal() {
        return Math.abs(areaChange) < 1e-9 && !warnings.contains(Warning.MORE_STRANDS)
                && !warnings.contains(Warning.MIXED_SIZES);
    }
}
