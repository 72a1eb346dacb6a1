package org.copperbook.calc.wire;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.copperbook.calc.Require;

/**
 * Size and grade of a wire from two measurements: over the bare conductor and over the covering.
 *
 * @param matches sizes and grades that both measurements allow, nearest first; none when none does
 */
public record TwoGaugings(List<Match> matches) {

    private static final double LEAST_MM = 0.1;
    private static final double MOST_MM = 6;
    private static final List<InsulationGrade> ENAMELLED = List.of(InsulationGrade.GRADE_1, InsulationGrade.GRADE_2);

    public TwoGaugings {
        matches = List.copyOf(matches);
    }

    /**
     * A size and grade that the measurements allow.
     *
     * @param size the size
     * @param grade the enamel build; bare where the covering was not measured and nothing is said of it
     * @param range overall diameter of that size and grade, with its source
     * @param distance how far the measurements lie from the middle of their ranges, in widths of the ranges; 0 is exact
     */
    public record Match(WireSize size, InsulationGrade grade, OverallDiameter range, double distance) {
    }

    /**
     * Compares two measurements with a list of sizes. The ranges are those of {@link WireGauging}.
     *
     * @param bare diameter over the bare conductor in m, 0.1 to 6 mm, or null when it was not measured
     * @param covered diameter over the covering in m, 0.1 to 6 mm, or null when it was not measured
     * @param expanded expanded uncertainty of each measurement in m (a micrometer: about 4 micrometres, common practice)
     * @param sizes sizes to compare with
     * @return what both allow
     * @throws org.copperbook.calc.OutOfRange when a diameter is no wire's or neither was measured
     */
    public static TwoGaugings of(Double bare, Double covered, double expanded, List<WireSize> sizes) {
        Require.that(bare != null || covered != null, "diameters measured", "none", "one or two",
                "nothing can be compared");
        Require.notNegative("expanded uncertainty of the diameter", expanded, "m");
        within("bare diameter", bare);
        within("diameter over the covering", covered);
        List<Match> matches = new ArrayList<>();
        for (WireSize size : sizes) {
            OverallDiameter conductor = size.overallDiameter(InsulationGrade.BARE);
            if (bare != null && !fits(bare, conductor, expanded)) {
                continue;
            }
            double off = bare == null ? 0 : off(bare, conductor);
            if (covered == null) {
                matches.add(new Match(size, InsulationGrade.BARE, conductor, off));
                continue;
            }
            for (InsulationGrade grade : ENAMELLED) {
                if (tabulated(size)) {
                    OverallDiameter range = size.overallDiameter(grade);
                    if (fits(covered, range, expanded)) {
                        matches.add(new Match(size, grade, range, off + off(covered, range)));
                    }
                }
            }
        }
        matches.sort(Comparator.comparingDouble(Match::distance));
        return new TwoGaugings(matches);
    }

    /** @return whether the measurements cannot decide between two sizes or two grades */
    public boolean ambiguous() {
        return matches.size() > 1;
    }

    private static void within(String what, Double diameter) {
        if (diameter != null) {
            Require.between(what, diameter * 1e3, LEAST_MM, MOST_MM, "mm", "winding wire is tabulated in this range");
        }
    }

    private static boolean tabulated(WireSize size) {
        List<WireSize> table = EnamelTable.standard().sizes();
        return size.bareDiameter() >= table.get(0).bareDiameter() * 0.999
                && size.bareDiameter() <= table.get(table.size() - 1).bareDiameter() * 1.001;
    }

    private static boolean fits(double measured, OverallDiameter range, double expanded) {
        return measured >= range.minimum() - expanded && measured <= range.maximum() + expanded;
    }

    private static double off(double measured, OverallDiameter range) {
        return Math.abs(measured - range.middle()) / (range.maximum() - range.minimum());
    }
}
