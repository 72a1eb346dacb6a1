package org.copperbook.jobs.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.copperbook.calc.quantity.DecimalMark;
import org.copperbook.calc.quantity.Quantity;
import org.copperbook.calc.quantity.QuantityText;
import org.copperbook.calc.quantity.Resistance;
import org.copperbook.calc.verdict.Bounds;

/** Values as they stand in sentences: "46.19 mΩ", "1.09 %", "76 °C". */
final class Figures {

    private static final int DIGITS = 4;
    private static final double SMALLEST_PERCENT = 0.01;

    private Figures() {
    }

    /** A value in the unit that verdicts and limits name; "1" is a fraction and shown in per cent. */
    static String show(double value, String unit) {
        return show(value, unit, DIGITS);
    }

    /** A value with its expanded uncertainty where it is known. */
    static String show(double value, Double expandedU, String unit) {
        return expandedU == null ? show(value, unit) : Phrases.say("figure.plus-minus", show(value, unit),
                show(expandedU, unit, 2));
    }

    private static String show(double value, String unit, int digits) {
        return switch (unit) {
            case "ohm" -> quantity(new Resistance(value), digits);
            case "1" -> percent(value * 100, Math.min(digits, 3)) + " %";
            case "1/h" -> percent(value * 100, Math.min(digits, 3)) + " %/h";
            case "degC" -> number(value, digits) + " °C";
            case "" -> number(value, digits);
            default -> number(value, digits) + " " + unit;
        };
    }

    /** The limit in words: "at most 2 %", "40 mΩ to 54 mΩ". */
    static String bounds(Bounds bounds, String unit) {
        if (bounds == null || bounds.isEmpty()) {
            return Phrases.say("limit.none");
        }
        if (bounds.lower() == null) {
            return Phrases.say("limit.at-most", show(bounds.upper(), unit));
        }
        if (bounds.upper() == null) {
            return Phrases.say("limit.at-least", show(bounds.lower(), unit));
        }
        if (bounds.lower() == -bounds.upper()) {
            return Phrases.say("limit.within", show(bounds.upper(), unit));
        }
        return Phrases.say("limit.between", show(bounds.lower(), unit), show(bounds.upper(), unit));
    }

    /** Per cent to so many significant digits, and to the hundredth at most. */
    private static String percent(double value, int digits) {
        if (value != 0 && Math.abs(value) < SMALLEST_PERCENT) {
            return Phrases.say("figure.below", number(SMALLEST_PERCENT, 1));
        }
        BigDecimal d = new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
        return number(d.scale() > 2 ? d.setScale(2, RoundingMode.HALF_EVEN).doubleValue() : d.doubleValue(), digits);
    }

    /** A plain number with so many significant digits, no trailing zeros, the decimal mark of the locale. */
    static String number(double value, int digits) {
        BigDecimal d = new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
        String plain = (d.signum() == 0 ? BigDecimal.ZERO : d.stripTrailingZeros()).toPlainString();
        return plain.replace('.', mark().sign());
    }

    private static String quantity(Quantity q, int digits) {
        return QuantityText.format(q, digits, mark());
    }

    private static DecimalMark mark() {
        char sign = DecimalFormatSymbols.getInstance(Locale.getDefault(Locale.Category.FORMAT)).getDecimalSeparator();
        return sign == ',' ? DecimalMark.COMMA : DecimalMark.DOT;
    }
}
