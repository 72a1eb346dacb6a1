package org.copperbook.sheets.page;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.apache.poi.ss.usermodel.HorizontalAlignment;

/**
 * What goes into one cell, or into several joined ones.
 *
 * @param content what it says
 * @param look    how it looks; null for the look of its row
 * @param span    columns it takes, from 1
 * @param align   where it stands in its cell
 */
public record Entry(Content content, Look look, int span, HorizontalAlignment align) {

    /** The kinds of content. */
    public sealed interface Content {
    }

    /** Nothing. */
    public record Blank() implements Content {
    }

    /** Text, kept text whatever it begins with. */
    public record Text(String text) implements Content {
    }

    /** A number with its format. */
    public record Number(double value, String format) implements Content {
    }

    /** A calendar day. */
    public record Day(LocalDate day) implements Content {
    }

    /** A live formula, without its equals sign, whose result is a number (or text, with an empty format). */
    public record Formula(String formula, String format) implements Content {
    }

    public static Entry blank() {
        return new Entry(new Blank(), null, 1, HorizontalAlignment.LEFT);
    }

    /** Text; null is blank. */
    public static Entry text(String text) {
        return text == null || text.isEmpty() ? blank()
                : new Entry(new Text(text), null, 1, HorizontalAlignment.LEFT);
    }

    /** A day; null is blank. */
    public static Entry day(LocalDate day) {
        return day == null ? blank() : new Entry(new Day(day), null, 1, HorizontalAlignment.LEFT);
    }

    /** A number with a fixed count of decimals; null is blank. */
    public static Entry number(BigDecimal value, int decimals) {
        return value == null ? blank()
                : new Entry(new Number(value.doubleValue(), format(decimals)), null, 1, HorizontalAlignment.RIGHT);
    }

    /** A number with a fixed count of decimals; null is blank. */
    public static Entry number(Double value, int decimals) {
        return value == null ? blank()
                : new Entry(new Number(value, format(decimals)), null, 1, HorizontalAlignment.RIGHT);
    }

    /** A whole number; null is blank. */
    public static Entry number(Integer value) {
        return value == null ? blank() : new Entry(new Number(value, "0"), null, 1, HorizontalAlignment.RIGHT);
    }

    /** A formula with a number for its result. */
    public static Entry formula(String formula, int decimals) {
        return new Entry(new Formula(formula, format(decimals)), null, 1, HorizontalAlignment.RIGHT);
    }

    /** A formula with text for its result. */
    public static Entry textFormula(String formula) {
        return new Entry(new Formula(formula, ""), null, 1, HorizontalAlignment.LEFT);
    }

    public Entry looks(Look other) {
        return new Entry(content, other, span, align);
    }

    public Entry over(int columns) {
        return new Entry(content, look, columns, align);
    }

    public Entry right() {
        return new Entry(content, look, span, HorizontalAlignment.RIGHT);
    }

    public Entry left() {
        return new Entry(content, look, span, HorizontalAlignment.LEFT);
    }

    public Entry centred() {
        return new Entry(content, look, span, HorizontalAlignment.CENTER);
    }

    private static String format(int decimals) {
        return decimals <= 0 ? "#,##0" : "#,##0." + "0".repeat(decimals);
    }
}
