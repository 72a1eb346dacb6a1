package org.copperbook.batch;

import org.copperbook.calc.quantity.DecimalMark;
import org.copperbook.calc.quantity.QuantityText;
import org.copperbook.calc.quantity.Resistance;
import org.copperbook.jobs.check.Verdict;

/** The value of a verdict with its uncertainty, as it stands in plain output. */
final class VerdictFigure {

    private VerdictFigure() {
    }

    /** "53.74 mohm +/- 0.21 mohm", or nothing when there is no value. */
    static String of(Verdict v) {
        if (v.value() == null) {
            return "";
        }
        String value = shown(v.value(), v.unit(), 4);
        return v.expandedU() == null ? value : BatchText.of("verdicts.plus-minus", value, shown(v.expandedU(), v.unit(), 2));
    }

    private static String shown(double value, String unit, int digits) {
        return switch (unit) {
            case "ohm" -> QuantityText.format(new Resistance(value), digits, DecimalMark.DOT);
            case "1" -> Figure.plain(value * 100, digits) + " %";
            case "degC" -> Figure.plain(value, digits) + " \u00b0C";
            case "" -> Figure.plain(value, digits);
            default -> Figure.plain(value, digits) + " " + unit;
        };
    }
}
