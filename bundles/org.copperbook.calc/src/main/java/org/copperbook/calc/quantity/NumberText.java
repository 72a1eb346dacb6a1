package org.copperbook.calc.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a number written with either decimal mark and any usual grouping. */
final class NumberText {

    private static final Pattern PLAIN = Pattern.compile("\\d+");
    private static final Pattern SPACED = Pattern.compile("\\d{1,3}( \\d{3})+");
    private static final Pattern ONE_MARK = Pattern.compile("(\\d*)[.,](\\d+)");

    private NumberText() {
    }

    /**
     * The numbers that the digits may mean: one when clear, two when grouping and decimal mark cannot be told apart, none
     * when they mean nothing. The sign and the exponent are the caller's.
     */
    static List<String> readings(String digits, DecimalMark mark) {
        String s = digits.replace('\u00a0', ' ').replace('\u202f', ' ').replace('\u2009', ' ').replace('\'', ' ')
                .replace('\u2019', ' ').trim();
        if (PLAIN.matcher(s).matches()) {
            return List.of(s);
        }
        boolean dots = s.indexOf('.') >= 0;
        boolean commas = s.indexOf(',') >= 0;
        if (dots && commas) {
            char decimal = s.lastIndexOf('.') > s.lastIndexOf(',') ? '.' : ',';
            return withDecimal(s, decimal, decimal == '.' ? ',' : '.');
        }
        if (!dots && !commas) {
            return SPACED.matcher(s).matches() ? List.of(s.replace(" ", "")) : List.of();
        }
        char sign = dots ? '.' : ',';
        if (s.indexOf(sign) != s.lastIndexOf(sign)) {
            return grouped(s, sign);
        }
        if (s.indexOf(' ') >= 0) {
            return withDecimal(s, sign, ' ');
        }
        Matcher m = ONE_MARK.matcher(s);
        if (!m.matches()) {
            return List.of();
        }
        String whole = m.group(1).isEmpty() ? "0" : m.group(1);
        String decimal = whole + "." + m.group(2);
        if (sign != mark.sign() && m.group(2).length() == 3 && !whole.startsWith("0") && whole.length() <= 3) {
            List<String> both = new ArrayList<>();
            both.add(decimal);
            both.add(whole + m.group(2));
            return both;
        }
        return List.of(decimal);
    }

    private static List<String> withDecimal(String s, char decimal, char group) {
        int at = s.lastIndexOf(decimal);
        String whole = s.substring(0, at);
        String rest = s.substring(at + 1);
        boolean plain = PLAIN.matcher(whole).matches();
        if (!PLAIN.matcher(rest).matches() || !plain && grouped(whole, group).isEmpty()) {
            return List.of();
        }
        return List.of(whole.replace(String.valueOf(group), "") + "." + rest);
    }

    private static List<String> grouped(String s, char sign) {
        String groups = s.replace(sign, ' ');
        return s.indexOf(' ') < 0 || sign == ' '
                ? SPACED.matcher(groups).matches() ? List.of(groups.replace(" ", "")) : List.of()
                : List.of();
    }
}
