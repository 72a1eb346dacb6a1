package org.copperbook.jobs.winding.stock;

/**
 * What a substitute for the wire in hand has to keep to.
 *
 * @param lowest      lowest copper area over the original less one; -0.01 is usual (common practice, no source)
 * @param highest     highest copper area over the original less one; 0.03 is usual (common practice, no source)
 * @param mostStrands most strands in hand together, 1 to 60
 * @param mostSizes   most sizes among them, 1 to 3
 * @param fillKept    whether it may take no more room in the slot than the original
 * @param stockOnly   whether the shelf must hold enough for the whole winding
 */
public record WireWish(double lowest, double highest, int mostStrands, int mostSizes, boolean fillKept,
        boolean stockOnly) {

    private static final double USUAL_LOWEST = -0.01;
    private static final double USUAL_HIGHEST = 0.03;
    private static final int MORE_STRANDS = 4;
    private static final int MOST_STRANDS = 60;
    private static final int USUAL_SIZES = 2;

    /** The usual wish beside an original of so many strands: four more in hand, two sizes, no tighter, from the shelf. */
    public static WireWish usual(int strands) {
        return new WireWish(USUAL_LOWEST, USUAL_HIGHEST, Math.min(MOST_STRANDS, strands + MORE_STRANDS), USUAL_SIZES, true,
                true);
    }
}
