package org.copperbook.sheets.chart;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The numbers along an axis: round steps of 1, 2 or 5 times a power of ten, and ends that hold every value.
 *
 * @param from  lower end
 * @param to    upper end, above the lower
 * @param step  distance of the ticks; 0 on an axis of named places
 */
public record Scale(double from, double to, double step) {

    private static final int ABOUT = 6;

    /** The scale for an axis over some values; an axis of named places keeps its ends. */
    static Scale over(Axis axis, double[] values, boolean withZero) {
        if (!axis.places().isEmpty()) {
            return new Scale(axis.from(), axis.to(), 0);
        }
        double low = Arrays.stream(values).min().orElse(0);
        double high = Arrays.stream(values).max().orElse(1);
        low = axis.from() == null ? low : Math.min(low, axis.from());
        high = axis.to() == null ? high : Math.max(high, axis.to());
        low = withZero ? Math.min(0, low) : low;
        high = withZero ? Math.max(0, high) : high;
        if (high - low <= 1e-9 * Math.max(Math.abs(low), Math.abs(high))) {
            double room = high == 0 ? 1 : Math.abs(high) * 0.1;
            low -= low == 0 ? 0 : room;
            high += room;
        }
        double step = roundStep((high - low) / ABOUT);
        return new Scale(Math.floor(low / step + 1e-9) * step, Math.ceil(high / step - 1e-9) * step, step);
    }

    private static double roundStep(double raw) {
        double power = Math.pow(10, Math.floor(Math.log10(raw)));
        double mantissa = raw / power;
        return power * (mantissa <= 1 ? 1 : mantissa <= 2 ? 2 : mantissa <= 5 ? 5 : 10);
    }

    /** The ticks from end to end; none on an axis of named places. */
    public List<Double> ticks() {
        List<Double> ticks = new ArrayList<>();
        if (step > 0) {
            long count = Math.round((to - from) / step);
            for (long i = 0; i <= count; i++) {
                double v = from + i * step;
                ticks.add(Math.abs(v) < step * 1e-9 ? 0 : v);
            }
        }
        return ticks;
    }

    /** A tick in words: as many decimals as its step needs; the decimal mark is a point. */
    public String text(double tick) {
        int decimals = step <= 0 ? 0 : Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9));
        return new BigDecimal(tick).setScale(decimals, java.math.RoundingMode.HALF_EVEN).toPlainString();
    }

    /** Where a value lies between the ends: 0 at the lower, 1 at the upper. */
    public double share(double value) {
        return (value - from) / (to - from);
    }

    /** The value at a share of the way between the ends. */
    public double value(double share) {
        return from + share * (to - from);
    }
}
