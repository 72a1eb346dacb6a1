package org.copperbook.sheets.record;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.copperbook.calc.quantity.DecimalMark;
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
            case "1" -> number(new BigDecimal(value * 100).setScale(4, RoundingMode.HALF_UP).doubleValue(), 4) + " %";
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
        if (!"ohm".equals(v.unit())) {
            return withUncertainty(v);
        }
        return value + " ± " + QuantityText.format(new Resistance(v.expandedU()), 2, DecimalMark.DOT);
    }

    /** Value and uncertainty to the same decimal, which is the second figure of the uncertainty. */
    private String withUncertainty(Verdict v) {
        boolean percent = "1".equals(v.unit());
        double scale = percent ? 100 : 1;
        String unit = percent ? " %" : v.unit() == null || v.unit().isEmpty() ? "" : "degC".equals(v.unit()) ? " °C" : " " + v.unit();
        BigDecimal u = new BigDecimal(v.expandedU() * scale).round(new MathContext(2, RoundingMode.HALF_UP));
        if (u.signum() == 0) {
            return in(v.value(), v.unit());
        }
        int decimals = Math.max(0, u.scale());
        return plain(new BigDecimal(v.value() * scale), decimals) + unit + " ± " + plain(u, decimals) + unit;
    }

    private static String plain(BigDecimal value, int decimals) {
        return value.setScale(decimals, RoundingMode.HALF_UP).toPlainString();
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
