package org.copperbook.desk.verdict;

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
        String shown = number(v.value(), v.unit());
        return v.expandedU() == null || v.expandedU() == 0 ? shown
                : DeskWords.text("verdict.withU", shown, number(v.expandedU(), v.unit()));
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
