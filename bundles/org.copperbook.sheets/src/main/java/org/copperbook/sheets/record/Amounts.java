package org.copperbook.sheets.record;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.copperbook.calc.quantity.QuantityText;
import org.copperbook.calc.quantity.Resistance;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.reading.Observed;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.sheets.page.Words;

/** Values as they stand in a record: "46.19 mΩ", "above range (2 GΩ)", "1.09 %". */
final class Amounts {

    private static final int DIGITS = 5;

    private final Words words;

    Amounts(Words words) {
        this.words = words;
    }

    /** A value in the unit that verdicts name; "1" is a fraction, shown in per cent. */
    String in(Double value, String unit) {
        if (value == null || !Double.isFinite(value)) {
            return "";
        }
        return switch (unit == null ? "" : unit) {
            case "ohm" -> QuantityText.format(new Resistance(value));
            case "1" -> number(value * 100, 4) + " %";
            case "degC" -> number(value, DIGITS) + " °C";
            case "" -> number(value, DIGITS);
            default -> number(value, DIGITS) + " " + unit;
        };
    }

    /** The value of a verdict with its expanded uncertainty. */
    String valueOf(Verdict v) {
        String value = in(v.value(), v.unit());
        if (value.isEmpty() || v.expandedU() == null || !Double.isFinite(v.expandedU())) {
            return value;
        }
        String uncertainty = "ohm".equals(v.unit()) ? QuantityText.format(new Resistance(v.expandedU()), 2,
                org.copperbook.calc.quantity.DecimalMark.DOT) : in(rounded(v.expandedU(), 2), v.unit());
        return value + " ± " + uncertainty;
    }

    /** What an instrument showed. */
    String observed(Observed seen, ReadingQuantity quantity) {
        if (seen == null) {
            return words.get("observed.none");
        }
        String unit = quantity == ReadingQuantity.VOLTAGE || quantity == ReadingQuantity.DIODE_VOLTS ? "V" : "ohm";
        String value = in(seen.value(), unit);
        return seen.isValue() ? value : RecordContext.joined(" ", words.of(seen.kind()), value.isEmpty() ? "" : "(" + value + ")");
    }

    String ohms(Double value) {
        return in(value, "ohm");
    }

    /** A length held in metres, in millimetres. */
    String millimetres(Double metres) {
        return metres == null ? "" : number(metres * 1000, DIGITS) + " mm";
    }

    String with(Double value, String unit) {
        return value == null ? "" : number(value, 6) + " " + unit;
    }

    String with(Double value, double per, String unit) {
        return value == null ? "" : number(value / per, 6) + " " + unit;
    }

    String count(Integer value) {
        return value == null ? "" : value.toString();
    }

    static String number(double value, int digits) {
        BigDecimal d = BigDecimal.valueOf(rounded(value, digits)).stripTrailingZeros();
        return d.signum() == 0 ? "0" : d.toPlainString();
    }

    private static double rounded(double value, int digits) {
        return new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_UP)).doubleValue();
    }
}
