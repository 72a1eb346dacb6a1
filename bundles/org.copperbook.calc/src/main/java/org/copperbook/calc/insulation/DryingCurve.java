package org.copperbook.calc.insulation;

import java.util.Arrays;
import java.util.List;

import org.copperbook.calc.Require;

/**
 * Insulation resistance during a bake. It falls while the winding warms and moisture spreads, turns, rises, and levels when
 * dry. Readings are compared at 40 degrees so that the falling oven does not pass for drying. Common practice, no source;
 * the correction is IEEE 43-2013, 6.3.
 *
 * @param lowest position of the lowest corrected reading
 * @param turned whether the last readings rise clearly above the lowest
 * @param levelled whether it has turned and no longer changes
 * @param at40 corrected readings in ohm, in the order given
 * @param lastChangePerHour relative change per hour over the levelling window, or not a number when the window is not filled
 */
public record DryingCurve(int lowest, boolean turned, boolean levelled, List<Double> at40, double lastChangePerHour) {

    /**
     * A reading in the oven.
     *
     * @param hours time since the bake began
     * @param ohms one-minute insulation resistance
     * @param celsius winding temperature
     */
    public record Reading(double hours, double ohms, double celsius) {
    }

    /**
     * When the curve counts as turned and levelled.
     *
     * @param riseFraction rise over the lowest value that proves the turn (0.2)
     * @param windowHours how long it must stay level (4 h)
     * @param changePerHour greatest relative change per hour when level (0.05)
     */
    public record Criterion(double riseFraction, double windowHours, double changePerHour) {

        /** Common practice, no source. */
        public static final Criterion DEFAULT = new Criterion(0.2, 4, 0.05);
    }

    /** Reads three or more readings in order of time. */
    public static DryingCurve of(List<Reading> readings, InsulationSystem system, Criterion criterion) {
        Require.between("number of readings", readings.size(), 3, 100_000, "a curve needs three points to turn");
        double[] at40 = new double[readings.size()];
        int lowest = 0;
        for (int i = 0; i < at40.length; i++) {
            Reading r = readings.get(i);
            if (i > 0) {
                Require.that(r.hours() > readings.get(i - 1).hours(), "time", r.hours() + " h",
                        "times after " + readings.get(i - 1).hours() + " h", "readings come in order of time");
            }
            at40[i] = Require.positive("insulation resistance", r.ohms(), "ohm")
                    * InsulationTemperature.factor(system, r.celsius());
            if (at40[i] < at40[lowest]) {
                lowest = i;
            }
        }
        int last = at40.length - 1;
        // two readings in a row above the lowest, so that one stray reading is not a turn
        boolean turned = last - lowest >= 2 && at40[last] >= at40[lowest] * (1 + criterion.riseFraction())
                && at40[last - 1] > at40[lowest];
        double change = changePerHour(readings, at40, criterion.windowHours());
        boolean levelled = turned && !Double.isNaN(change) && Math.abs(change) <= criterion.changePerHour();
        return new DryingCurve(lowest, turned, levelled,
                Arrays.stream(at40).boxed().toList(), change);
    }

    /** The largest relative change per hour from any reading of the window to the last one. */
    private static double changePerHour(List<Reading> readings, double[] at40, double window) {
        int last = at40.length - 1;
        double end = readings.get(last).hours();
        double worst = Double.NaN;
        boolean filled = false;
        for (int i = last - 1; i >= 0; i--) {
            double span = end - readings.get(i).hours();
            double change = (at40[last] / at40[i] - 1) / span;
            if (Double.isNaN(worst) || Math.abs(change) > Math.abs(worst)) {
                worst = change;
            }
            if (span >= window) {
                filled = true;
                break;
            }
        }
        return filled ? worst : Double.NaN;
    }
}
