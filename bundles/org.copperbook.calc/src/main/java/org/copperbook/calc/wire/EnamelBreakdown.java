package org.copperbook.calc.wire;

import java.util.List;
import java.util.OptionalDouble;
import org.copperbook.calc.Tables;

/** Least breakdown voltage of enamelled wire, for the sizes whose value was read in an open dataset. */
public final class EnamelBreakdown {
    private static final List<List<String>> ROWS = Tables.rows(EnamelBreakdown.class, "enamel-breakdown.csv");

    private EnamelBreakdown() {
    }

    /**
     * @param bareDiameter nominal conductor diameter in m
     * @param grade enamel build
     * @return V r.m.s.; empty for sizes that are not tabulated and for bare wire
     */
    public static OptionalDouble of(double bareDiameter, InsulationGrade grade) {
        if (grade == InsulationGrade.BARE) {
            return OptionalDouble.empty();
        }
        return ROWS.stream().filter(row -> Math.abs(Double.parseDouble(row.get(0)) * 1e-3 - bareDiameter) < 0.4e-6)
                .mapToDouble(row -> Double.parseDouble(row.get(grade.ordinal()))).findFirst();
    }
}
