package org.copperbook.desk.verdict;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import org.copperbook.calc.quantity.DecimalMark;
import org.copperbook.calc.quantity.Dimension;
import org.copperbook.calc.quantity.Quantity;
import org.copperbook.calc.quantity.QuantityText;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.desk.entry.Marks;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.check.Verdict;

/** Verdicts in words and in order of weight. */
public final class VerdictWords {

    private static final int DIGITS = 4;
    private static final int DIGITS_OF_U = 2;

    private VerdictWords() {
    }

    /** The word for an outcome. */
    public static String of(Outcome outcome) {
        return DeskWords.get().of(outcome);
    }

    /** The value judged with its uncertainty, or empty when there is none. */
    public static String value(Verdict v) {
        if (v.value() == null) {
            return "";
        }
        if (v.expandedU() == null || v.expandedU() == 0 || !Double.isFinite(v.expandedU()) || !Double.isFinite(v.value())) {
            return number(v.value(), v.unit());
        }
        // Figures behind the second one of the uncertainty say nothing.
        BigDecimal u = new BigDecimal(v.expandedU()).round(new MathContext(DIGITS_OF_U, RoundingMode.HALF_UP));
        double value = new BigDecimal(v.value()).setScale(u.scale(), RoundingMode.HALF_UP).doubleValue();
        return DeskWords.text("verdict.withU", number(value, v.unit()), number(u.doubleValue(), v.unit()));
    }

    /**
     * Verdicts with the heaviest first: what a hold point waits for before what only informs; fails, doubtful, no limit
     * set, not measured, meets; earlier attempts last.
     */
    public static List<Verdict> byWeight(List<Verdict> verdicts) {
        return verdicts.stream().sorted(Comparator.comparing((Verdict v) -> !v.current())
                .thenComparing(v -> !v.blocks())
                .thenComparing(v -> weight(v.outcome()))).toList();
    }

    static int weight(Outcome outcome) {
        return switch (outcome) {
            case FAILS -> 0;
            case DOUBTFUL -> 1;
            case NO_LIMIT_SET -> 2;
            case NOT_MEASURED -> 3;
            case MEETS -> 4;
        };
    }

    private static String number(double value, String unit) {
        DecimalMark mark = Marks.ofLocale();
        return switch (unit) {
            case "ohm" -> QuantityText.format(Quantity.of(Dimension.RESISTANCE, value), DIGITS, mark);
            case "V" -> QuantityText.format(Quantity.of(Dimension.VOLTAGE, value), DIGITS, mark);
            case "A" -> QuantityText.format(Quantity.of(Dimension.CURRENT, value), DIGITS, mark);
            case "K" -> QuantityText.format(Quantity.of(Dimension.TEMPERATURE_RISE, value), DIGITS, mark);
            case "1" -> QuantityText.formatIn(Quantity.of(Dimension.RATIO, value), "%", DIGITS, mark);
            default -> QuantityText.format(Quantity.of(Dimension.RATIO, value), DIGITS, mark)
                    + (unit.isEmpty() ? "" : " " + unit);
        };
    }
}
