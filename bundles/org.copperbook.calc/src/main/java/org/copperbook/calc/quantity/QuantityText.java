package org.copperbook.calc.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.copperbook.calc.Require;
import org.copperbook.calc.quantity.Parsed.Problem;

/** Reads quantities from text and shows them. Both decimal marks are read; what is ambiguous is reported, never guessed. */
public final class QuantityText {

    private static final Pattern SHAPE = Pattern.compile(
            "([+\\-\u2212]?)\\s*([0-9.,'\u2019][0-9.,'\u2019 \u00a0\u202f\u2009]*?)((?:[eE][+\\-\u2212]?\\d+)?)\\s*"
                    + "((?<=\\s)1/.*|[^0-9.,'\u2019 \u00a0\u202f\u2009].*)?");

    private static final String[] PREFIX = {"p", "n", "\u00b5", "m", "", "k", "M", "G"};
    private static final int NO_PREFIX = 4;

    private QuantityText() {
    }

    /** Reads with the dot as the locale's mark and a bare number in the SI unit. */
    public static Parsed parse(String text, Dimension asked) {
        return parse(text, asked, asked.unit(), DecimalMark.DOT);
    }

    /**
     * Reads a quantity of the dimension asked.
     *
     * @param impliedUnit the unit of a bare number
     * @param mark the mark of the reader's locale, which decides "1.234" and "1,234" when it is the mark used there; the
     *        other mark in that shape is ambiguous
     */
    public static Parsed parse(String text, Dimension asked, String impliedUnit, DecimalMark mark) {
        String s = text == null ? "" : text.strip();
        if (s.isEmpty()) {
            return new Parsed.Wrong(Problem.EMPTY, "", "nothing was typed");
        }
        Matcher m = SHAPE.matcher(s);
        if (!m.matches()) {
            return new Parsed.Wrong(Problem.NO_NUMBER, s, "\"" + s + "\" does not begin with a number");
        }
        String name = m.group(4) == null ? "" : m.group(4).strip();
        Optional<Unit> unit = unit(name, asked, impliedUnit);
        if (unit.isEmpty()) {
            return wrongUnit(name, asked);
        }
        List<String> numbers = NumberText.readings(m.group(2), mark);
        if (numbers.isEmpty()) {
            return new Parsed.Wrong(Problem.BAD_GROUPING, m.group(2).strip(), "\"" + m.group(2).strip()
                    + "\" is not a number: digits are grouped in threes and there is one decimal mark");
        }
        String sign = m.group(1).isEmpty() || m.group(1).equals("+") ? "" : "-";
        String exponent = m.group(3).replace('\u2212', '-');
        List<Parsed.Value> values = new ArrayList<>();
        for (String number : numbers) {
            values.add(value(sign + number + exponent, unit.get(), mark));
        }
        return values.size() == 1 ? values.get(0) : new Parsed.Ambiguous(List.copyOf(values));
    }

    private static Optional<Unit> unit(String name, Dimension asked, String impliedUnit) {
        if (name.isEmpty()) {
            return Optional.of(UnitTable.unit(asked, impliedUnit));
        }
        Optional<Unit> named = UnitTable.find(asked, name);
        return named.isPresent() ? named : UnitTable.barePrefix(asked, name);
    }

    private static Parsed.Wrong wrongUnit(String name, Dimension asked) {
        String known = String.join(", ", UnitTable.names(asked));
        return UnitTable.dimensionOf(name)
                .map(other -> new Parsed.Wrong(Problem.OTHER_QUANTITY, name, "\"" + name + "\" measures "
                        + words(other) + ", not " + words(asked) + "; use " + known))
                .orElseGet(() -> new Parsed.Wrong(Problem.UNKNOWN_UNIT, name,
                        "\"" + name + "\" is not a unit of " + words(asked) + "; use " + known));
    }

    private static String words(Dimension d) {
        return d.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static Parsed.Value value(String number, Unit unit, DecimalMark mark) {
        BigDecimal typed = new BigDecimal(number);
        double si = unit.offset() == 0
                ? scaled(typed, unit.factor())
                : unit.toSi(typed.doubleValue());
        String echo = typed.toPlainString().replace('.', mark.sign());
        String shown = unit.symbol().isEmpty() ? echo : echo + " " + unit.symbol();
        return new Parsed.Value(Quantity.of(unit.dimension(), si), shown);
    }

    /** Powers of ten are applied in decimal, so that "0.42 mohm" is the double nearest to 0.00042. */
    private static double scaled(BigDecimal typed, double factor) {
        return typed.multiply(new BigDecimal(Double.toString(factor))).doubleValue();
    }

    /** Shows with up to four significant digits and the dot. */
    public static String format(Quantity quantity) {
        return format(quantity, 4, DecimalMark.DOT);
    }

    /**
     * Shows a quantity with an engineering prefix where its dimension takes one: 0.00042 ohm as "0.42 mΩ", 0.42 ohm as
     * "0.42 Ω", 1200 ohm as "1.2 kΩ".
     *
     * @param significant greatest number of significant digits, 1 to 15; trailing zeros are dropped
     */
    public static String format(Quantity quantity, int significant, DecimalMark mark) {
        Require.between("significant digits", significant, 1, 15, "a double holds no more");
        if (!Double.isFinite(quantity.si())) {
            return "\u2013";
        }
        BigDecimal value = new BigDecimal(quantity.si()).round(new MathContext(significant, RoundingMode.HALF_UP));
        int prefix = prefix(value, quantity.dimension().scale());
        String unit = PREFIX[prefix] + quantity.dimension().unit();
        return text(value.movePointLeft(3 * (prefix - NO_PREFIX)), unit, mark);
    }

    /** Shows a quantity in a unit chosen by the caller. */
    public static String formatIn(Quantity quantity, String unit, int significant, DecimalMark mark) {
        Unit in = UnitTable.unit(quantity.dimension(), unit);
        if (!Double.isFinite(quantity.si())) {
            return "\u2013";
        }
        BigDecimal value = new BigDecimal(in.fromSi(quantity.si())).round(
                new MathContext(significant, RoundingMode.HALF_UP));
        return text(value, in.symbol(), mark);
    }

    private static String text(BigDecimal value, String unit, DecimalMark mark) {
        BigDecimal bare = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
        String number = bare.toPlainString().replace('.', mark.sign());
        return unit.isEmpty() ? number : number + " " + unit;
    }

    /** From one up, steps of a thousand; below one, the first prefix that leaves at least 0.1. */
    private static int prefix(BigDecimal value, Dimension.Scale scale) {
        double size = Math.abs(value.doubleValue());
        if (scale == Dimension.Scale.PLAIN || size == 0) {
            return NO_PREFIX;
        }
        int prefix = NO_PREFIX;
        if (size >= 1) {
            while (scale == Dimension.Scale.ENGINEERING && size >= 1000 && prefix < PREFIX.length - 1) {
                size /= 1000;
                prefix++;
            }
            return prefix;
        }
        double least = 0.1 - 1e-12;
        while (size < least && prefix > 0) {
            size *= 1000;
            prefix--;
        }
        return prefix;
    }
}
