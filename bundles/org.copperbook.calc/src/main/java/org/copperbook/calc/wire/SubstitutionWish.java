package org.copperbook.calc.wire;

import org.copperbook.calc.Require;

/**
 * What a substitute for the original strands must keep to.
 *
 * @param area copper area of the original strands together in m2
 * @param lowest lowest accepted area over the original less one, default -0.01
 * @param highest highest accepted area over the original less one, default +0.03
 * @param mostStrands most strands in hand together, 1 to 60
 * @param mostSizes most different sizes, 1 to 3
 * @param length wire length that each strand needs for the whole winding in m; 0 when stock does not matter
 * @param largestSquareSum largest sum over the strands of the squared overall diameter in m2, which is what the
 *     square-cell fill and the insulated round fill both grow with; infinite when fill does not matter
 * @param areaStep differences of area smaller than this share of the original rank as equal, so that fewer strands win;
 *     0 ranks by area alone. Default 0.005, a quarter of what the wire's own diameter tolerance does to its area
 */
public record SubstitutionWish(double area, double lowest, double highest, int mostStrands, int mostSizes,
        double length,
        double largestSquareSum, double areaStep) {
    public SubstitutionWish {
        Require.positive("original copper area", area, "m2");
        Require.between("lowest area", lowest, -0.5, 0.5, "", "a substitute is near the original");
        Require.between("highest area", highest, lowest, 1, "", "the band reaches upward from its lower end");
        Require.between("strands in hand", mostStrands, 1, 60, "more strands cannot be wound together");
        Require.between("different sizes", mostSizes, 1, 3, "up to three sizes are combined");
        Require.notNegative("length of a strand", length, "m");
        Require.that(largestSquareSum > 0, "largest sum of squared diameters", Double.toString(largestSquareSum),
                "values above 0 m2",
                "a strand needs room");
        Require.between("area step", areaStep, 0, 0.1, "", "coarser steps would hide the area");
    }

    /**
     * The usual wish: -1 to +3 percent of area, three sizes, no fill or stock limit.
     *
     * @param area copper area of the original strands in m2
     * @param mostStrands most strands in hand
     * @return the wish
     */
    public static SubstitutionWish of(double area, int mostStrands) {
        return new SubstitutionWish(area, -0.01, 0.03, mostStrands, 3, 0, Double.POSITIVE_INFINITY, 0.005);
    }

    /**
     * @param lowest lowest area over the original less one
     * @param highest highest area over the original less one
     * @return the wish with this band
     */
    public SubstitutionWish withBand(double lowest, double highest) {
        return new SubstitutionWish(area, lowest, highest, mostStrands, mostSizes, length, largestSquareSum, areaStep);
    }

    /**
     * @param mostSizes most different sizes
     * @return the wish with this limit
     */
    public SubstitutionWish withSizes(int mostSizes) {
        return new SubstitutionWish(area, lowest, highest, mostStrands, mostSizes, length, largestSquareSum, areaStep);
    }

    /**
     * @param length length of each strand in m
     * @return the wish with the stock limit that follows from this length
     */
    public SubstitutionWish withLength(double length) {
        return new SubstitutionWish(area, lowest, highest, mostStrands, mostSizes, length, largestSquareSum, areaStep);
    }

    /**
     * @param largest largest sum over the strands of the squared overall diameter in m2
     * @return the wish with this fill limit
     */
    public SubstitutionWish withSquareSum(double largest) {
        return new SubstitutionWish(area, lowest, highest, mostStrands, mostSizes, length, largest, areaStep);
    }

    /**
     * @param step share of the area that ranks as equal
     * @return the wish with this step
     */
    public SubstitutionWish withAreaStep(double step) {
        return new SubstitutionWish(area, lowest, highest, mostStrands, mostSizes, length, largestSquareSum, step);
    }
}
