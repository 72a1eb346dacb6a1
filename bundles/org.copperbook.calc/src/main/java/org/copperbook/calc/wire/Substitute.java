package org.copperbook.calc.wire;

import java.util.List;
import java.util.stream.Collectors;

/**
 * One way to make up the copper area.
 *
 * @param parts strands by stocked wire, at most three
 * @param strands strands in hand together
 * @param areaError area over the original less one
 * @param squareSum sum of squared overall diameters in m2
 * @param leastStockLeft smallest remaining mass of the wires used in kg; mass on hand when no length was given
 */
public record Substitute(List<Part> parts, int strands, double areaError, double squareSum, double leastStockLeft) {
    public Substitute {
        parts = List.copyOf(parts);
    }

    /**
     * Strands of one wire.
     *
     * @param count strands
     * @param wire stocked wire
     * @param kilograms mass this takes for the winding in kg; 0 when no length was given
     */
    public record Part(int count, StockedWire wire, double kilograms) {
    }

    /**
     * @return whether there is less copper than in the original (ANSI/EASA AR100: conductor area not less than
     * original)
     */
    public boolean underOriginal() {
        return areaError < -1e-9;
    }

    /** @return what a winder writes on the card */
    public String label() {
        return parts.stream().map(p -> p.count() + " x " + p.wire().size().label()).collect(Collectors.joining(" + "));
    }
}
