package org.copperbook.calc.winding.design;

import java.util.List;
import java.util.Locale;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.Tables;

/**
 * Where a design figure usually lies: a guide and not a limit.
 *
 * @param quantity figure
 * @param low lower end in SI
 * @param high upper end in SI
 * @param source where the range comes from
 */
public record UsualRange(DesignQuantity quantity, double low, double high, String source) {

    private static final List<List<String>> ROWS = Tables.rows(UsualRange.class, "usual-ranges.csv");

    /** Where a value lies. */
    public enum Place {
        /** Below the usual range. */
        BELOW,
        /** Inside. */
        INSIDE,
        /** Above. */
        ABOVE
    }

    /**
     * @param machine kind of machine
     * @param quantity figure
     * @return its usual range
     */
    public static UsualRange of(MachineType machine, DesignQuantity quantity) {
        String type = word(machine);
        String name = word(quantity);
        for (List<String> row : ROWS) {
            if (row.get(1).equals(name) && (row.get(0).equals(type) || row.get(0).equals("any"))) {
                return new UsualRange(quantity, Double.parseDouble(row.get(2)), Double.parseDouble(row.get(3)),
                        row.get(4));
            }
        }
        throw new OutOfRange("usual range", type + " " + name, "the ranges of the table", "none is known");
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * @param value figure in SI
     * @return where it lies
     */
    public Place place(double value) {
        if (value < low) {
            return Place.BELOW;
        }
        return value > high ? Place.ABOVE : Place.INSIDE;
    }
}
