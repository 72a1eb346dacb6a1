package org.copperbook.sheets.record;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import org.copperbook.calc.quantity.QuantityText;
import org.copperbook.calc.quantity.Resistance;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.reading.Observed;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.sheets.page.Words;

/** Values as they stand in a record: "46.19 mΩ", "above range (2 GΩ)", "1.09 %". */
final class Amounts {

    private static final int DIGITS = 5;
    private static final Map<Character, Double> PREFIXES = Map.of('p', 1e-12, 'n', 1e-9, '\u00b5', 1e-6, 'm', 1e-3, 'k', 1e3,
            'M', 1e6, 'G', 1e9);

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

    /** The value of a verdict with its expanded uncertainty, both to the second figure of the uncertainty. */
    String valueOf(Verdict v) {
        String value = in(v.value(), v.unit());
        if (value.isEmpty() || v.expandedU() == null || !Double.isFinite(v.expandedU())) {
            return value;
        }
        Shown shown = shown(v);
        BigDecimal u = new BigDecimal(v.expandedU() / shown.size()).round(new MathContext(2, RoundingMode.HALF_UP));
        if (u.signum() == 0) {
            return value;
        }
        int decimals = Math.max(0, u.scale());
        return plain(new BigDecimal(v.value() / shown.size()), decimals) + " ± " + plain(u, decimals) + shown.unit();
    }

    /** The unit in which a value is shown, with its size in the unit held. */
    private record Shown(String unit, double size) {
    }

    private static Shown shown(Verdict v) {
        String unit = v.unit() == null ? "" : v.unit();
        return switch (unit) {
            case "1" -> new Shown(" %", 0.01);
            case "" -> new Shown("", 1);
            case "degC" -> new Shown(" °C", 1);
            case "ohm" -> {
                String text = QuantityText.format(new Resistance(v.value()));
                String prefixed = text.substring(text.indexOf(' '));
                yield new Shown(prefixed, prefixed.length() == 2 ? 1 : PREFIXES.get(prefixed.charAt(1)));
            }
            default -> new Shown(" " + unit, 1);
        };
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
