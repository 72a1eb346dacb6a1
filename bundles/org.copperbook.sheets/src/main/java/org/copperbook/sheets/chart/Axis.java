package org.copperbook.sheets.chart;

import java.util.List;

/**
 * One axis of a chart.
 *
 * @param title  what is measured along it
 * @param unit   unit of its numbers; empty for a plain number
 * @param from   least value that must be seen, or null to follow the points
 * @param to     greatest value that must be seen, or null to follow the points
 * @param places names of the places 1, 2, 3 ... along an axis that carries no numbers; empty for an axis of numbers
 */
public record Axis(String title, String unit, Double from, Double to, List<String> places) {

    public Axis {
        places = List.copyOf(places);
    }

    /** An axis of numbers that follows the points. */
    public static Axis of(String title, String unit) {
        return new Axis(title, unit, null, null, List.of());
    }

    /** An axis of numbers that begins at zero. */
    public static Axis fromZero(String title, String unit) {
        return new Axis(title, unit, 0.0, null, List.of());
    }

    /** An axis of named places. */
    public static Axis of(String title, List<String> places) {
        return new Axis(title, "", 0.5, places.size() + 0.5, places);
    }

    /** Title and unit as they stand beside the axis. */
    public String label() {
        return unit.isEmpty() ? title : title + " (" + unit + ")";
    }
}
