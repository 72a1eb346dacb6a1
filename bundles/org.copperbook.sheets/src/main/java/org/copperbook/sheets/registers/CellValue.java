package org.copperbook.sheets.registers;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.copperbook.calc.quantity.DecimalMark;
import org.copperbook.calc.quantity.Dimension;
import org.copperbook.calc.quantity.Parsed;
import org.copperbook.calc.quantity.QuantityText;
import org.copperbook.sheets.cards.HeaderGuess;
import org.copperbook.sheets.cards.TableCell;
import org.copperbook.sheets.page.CellText;

/** Reads one cell as what its column holds. What can be read in two ways is refused and never guessed. */
final class CellValue {

    /** The cell does not hold what its column should; the message says why. */
    static final class NotUnderstood extends Exception {

        private static final long serialVersionUID = 1L;

        NotUnderstood(String key, Object... args) {
            super(RegisterWords.say(key, args));
        }
    }

    private static final int LONGEST = 4_000;
    private static final int MOST_EXPONENT = 30;
    /** Digits that a number of a workbook is sure of (IEEE 754 double). */
    private static final MathContext SURE = new MathContext(15);
    private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})(?:[T ].*)?");
    private static final Pattern DOTS = Pattern.compile("(\\d{1,2})\\. ?(\\d{1,2})\\. ?(\\d{4})");
    private static final Pattern SLASHES = Pattern.compile("(\\d{1,2})[/-](\\d{1,2})[/-](\\d{4})");

    private final DecimalMark decimal;

    /** @param decimal decimal mark of numbers written as text */
    CellValue(DecimalMark decimal) {
        this.decimal = decimal;
    }

    /** What the cell says, as {@link RegisterRow#values} has it. */
    Object read(RegisterField field, TableCell cell) throws NotUnderstood {
        if (cell.kind() == TableCell.Kind.BROKEN) {
            throw new NotUnderstood("cell.broken", cell.text());
        }
        String text = CellText.plain(cell.text().strip());
        return switch (field.kind()) {
            case TEXT -> text(text);
            case NUMBER -> within(field, number(cell, text));
            case WHOLE -> whole(field, number(cell, text));
            case DATE -> date(cell, text);
            case CHOICE -> choice(field, text);
        };
    }

    private static String text(String text) throws NotUnderstood {
        if (text.length() > LONGEST) {
            throw new NotUnderstood("cell.long", text.length(), LONGEST);
        }
        return text;
    }

    private BigDecimal number(TableCell cell, String text) throws NotUnderstood {
        if (cell.kind() == TableCell.Kind.DATE) {
            throw new NotUnderstood("cell.date-number", text);
        }
        if (cell.kind() == TableCell.Kind.NUMBER) {
            return plain(new BigDecimal(text).round(SURE));
        }
        Parsed parsed = QuantityText.parse(text, Dimension.MONEY, "", decimal);
        if (parsed instanceof Parsed.Ambiguous a) {
            throw new NotUnderstood("cell.ambiguous", a.readings().get(0).normalised(), a.readings().get(1).normalised());
        }
        if (parsed instanceof Parsed.Value v) {
            return plain(new BigDecimal(v.normalised().replace(decimal.sign(), '.')));
        }
        throw new NotUnderstood("cell.number");
    }

    private static BigDecimal plain(BigDecimal n) throws NotUnderstood {
        if (Math.abs((long) n.precision() - n.scale()) > MOST_EXPONENT || n.scale() > MOST_EXPONENT) {
            throw new NotUnderstood("cell.number");
        }
        BigDecimal shortest = n.stripTrailingZeros();
        return shortest.scale() < 0 ? shortest.setScale(0) : shortest;
    }

    private static BigDecimal within(RegisterField field, BigDecimal n) throws NotUnderstood {
        boolean low = field.least() != null && n.compareTo(field.least()) < 0;
        boolean high = field.most() != null && n.compareTo(field.most()) > 0;
        if (low && field.most() == null) {
            throw new NotUnderstood("cell.low", field.least().toPlainString());
        }
        if (high && field.least() == null) {
            throw new NotUnderstood("cell.high", field.most().toPlainString());
        }
        if (low || high) {
            throw new NotUnderstood("cell.range", field.least().toPlainString(), field.most().toPlainString());
        }
        return n;
    }

    private static BigDecimal whole(RegisterField field, BigDecimal n) throws NotUnderstood {
        if (n.scale() > 0) {
            throw new NotUnderstood("cell.whole");
        }
        return within(field, n);
    }

    /** With dots the day stands first; with strokes it may be the month, so both are refused unless only one can be. */
    private static LocalDate date(TableCell cell, String text) throws NotUnderstood {
        if (cell.kind() == TableCell.Kind.NUMBER) {
            throw new NotUnderstood("cell.number-date", text);
        }
        Matcher iso = ISO.matcher(text);
        if (iso.matches()) {
            return day(iso.group(1), iso.group(2), iso.group(3));
        }
        Matcher dots = DOTS.matcher(text);
        if (dots.matches()) {
            return day(dots.group(3), dots.group(2), dots.group(1));
        }
        Matcher strokes = SLASHES.matcher(text);
        if (strokes.matches()) {
            int first = Integer.parseInt(strokes.group(1));
            int second = Integer.parseInt(strokes.group(2));
            if (first == second || first > 12) {
                return day(strokes.group(3), strokes.group(2), strokes.group(1));
            }
            if (second > 12) {
                return day(strokes.group(3), strokes.group(1), strokes.group(2));
            }
            throw new NotUnderstood("cell.two-dates", day(strokes.group(3), strokes.group(2), strokes.group(1)),
                    day(strokes.group(3), strokes.group(1), strokes.group(2)));
        }
        throw new NotUnderstood("cell.date");
    }

    private static LocalDate day(String year, String month, String day) throws NotUnderstood {
        try {
            return LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day));
        } catch (DateTimeException e) {
            throw new NotUnderstood("cell.no-day");
        }
    }

    private static String choice(RegisterField field, String text) throws NotUnderstood {
        String folded = HeaderGuess.folded(text);
        List<String> known = new ArrayList<>();
        for (Map.Entry<String, String> e : field.choices().entrySet()) {
            if (HeaderGuess.folded(e.getKey()).equals(folded) || e.getValue().equalsIgnoreCase(text)) {
                return e.getValue();
            }
            known.add(e.getKey());
        }
        throw new NotUnderstood("cell.word", String.join(", ", known));
    }
}
