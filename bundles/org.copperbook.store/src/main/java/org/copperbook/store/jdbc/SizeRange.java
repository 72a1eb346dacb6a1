package org.copperbook.store.jdbc;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.copperbook.calc.winding.memory.Figure;
import org.copperbook.calc.winding.memory.MachineFigures;

/**
 * Past windings whose size lies in a range. A search that begins at the size asked for and goes on with the rings around
 * it may end when the next ring is, by this size alone, farther off than what it has.
 *
 * @param column    column of the size
 * @param from      lower end, inclusive; not a number for those of unknown size
 * @param below     upper end, exclusive
 * @param farthest  no winding inside this distance of the size asked for lies beyond this range and those before it
 */
record SizeRange(String column, double from, double below, double farthest) {

    private static final double FIRST = 0.005;
    /** Sizes farther off than by this factor all lie in the last ring. */
    private static final double LAST = Math.log(100);

    boolean unknown() {
        return Double.isNaN(from);
    }

    /** The ranges to be searched one after the other; none when no size is asked for by which the list is kept in order. */
    static List<SizeRange> around(MachineFigures asked) {
        OptionalDouble bore = known(asked.bore());
        return bore.isPresent() ? around("bore", bore.getAsDouble(), Figure.BORE.weight())
                : known(asked.rating()).isPresent() ? around("rating", asked.rating(), Figure.RATING.weight()) : List.of();
    }

    /**
     * Every winding whose size alone is no farther off than this, and those of unknown size; none when no size is asked
     * for by which the list is kept in order.
     */
    static List<SizeRange> within(MachineFigures asked, double distance) {
        OptionalDouble bore = known(asked.bore());
        return bore.isPresent() ? within("bore", bore.getAsDouble(), distance / Figure.BORE.weight())
                : known(asked.rating()).isPresent()
                        ? within("rating", asked.rating(), distance / Figure.RATING.weight()) : List.of();
    }

    private static List<SizeRange> within(String column, double size, double width) {
        return List.of(new SizeRange(column, Double.NaN, Double.NaN, 0),
                new SizeRange(column, size * Math.exp(-width), size * Math.exp(width), 0));
    }

    private static OptionalDouble known(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private static List<SizeRange> around(String column, double size, double weight) {
        List<SizeRange> ranges = new ArrayList<>();
        ranges.add(new SizeRange(column, Double.NaN, Double.NaN, 0));
        double low = size;
        double high = size;
        for (double width = FIRST; width < LAST; width *= 2) {
            double lower = size * Math.exp(-width);
            double higher = size * Math.exp(width);
            ranges.add(new SizeRange(column, lower, low, 0));
            ranges.add(new SizeRange(column, high, higher, weight * width));
            low = lower;
            high = higher;
        }
        ranges.add(new SizeRange(column, 0, low, 0));
        ranges.add(new SizeRange(column, high, Double.MAX_VALUE, 0));
        return ranges;
    }
}
