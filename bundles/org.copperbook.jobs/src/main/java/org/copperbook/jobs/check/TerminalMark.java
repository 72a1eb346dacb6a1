package org.copperbook.jobs.check;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.copperbook.calc.resistance.TerminalPair;

/**
 * The two terminals of a reading, in the marks of IEC 60034-8 ("U1-U2", "U-V") or in T-numbers ("T1-T4", "T1-T2").
 *
 * @param first  first terminal, upper case
 * @param second second terminal, upper case
 * @param phase  the phase (0, 1, 2) when both ends belong to one; null for a pair of lines or other terminals
 * @param pair   the pair of lines; null when both ends belong to one phase, or when they are no phase terminals
 */
record TerminalMark(String first, String second, Integer phase, TerminalPair pair) {

    private static final Pattern TWO = Pattern.compile("([A-Z]+\\d*|\\d+)\\s*(?:-|–|/|\\s)\\s*([A-Z]+\\d*|\\d+)");
    private static final Pattern PHASE_LETTER = Pattern.compile("([UVW])(\\d*)");
    private static final Pattern T_NUMBER = Pattern.compile("T?(\\d+)");

    private static final String NEUTRAL = "N";

    /** Reads a mark; empty when it names no two terminals. */
    static Optional<TerminalMark> parse(String mark) {
        Matcher m = TWO.matcher(mark.strip().toUpperCase(Locale.ROOT));
        if (!m.matches()) {
            return Optional.empty();
        }
        Integer a = phaseOf(m.group(1));
        Integer b = phaseOf(m.group(2));
        if (m.group(2).equals(NEUTRAL) && a != null || m.group(1).equals(NEUTRAL) && b != null) {
            return Optional.of(new TerminalMark(m.group(1), m.group(2), a == null ? b : a, null));
        }
        if (a == null || b == null) {
            return Optional.of(new TerminalMark(m.group(1), m.group(2), null, null));
        }
        if (a.equals(b)) {
            return Optional.of(new TerminalMark(m.group(1), m.group(2), a, null));
        }
        // pairs in the order U-V, V-W, W-U: the pair after the phase that it leaves out
        int leftOut = 3 - a - b;
        return Optional.of(new TerminalMark(m.group(1), m.group(2), null, TerminalPair.values()[(leftOut + 1) % 3]));
    }

    /** U, V, W are 0, 1, 2; T1, T4, T7, T10 belong to the first phase, T2, T5 ... to the second, T3, T6 ... to the third. */
    private static Integer phaseOf(String terminal) {
        Matcher letter = PHASE_LETTER.matcher(terminal);
        if (letter.matches()) {
            return "UVW".indexOf(letter.group(1));
        }
        Matcher number = T_NUMBER.matcher(terminal);
        if (number.matches()) {
            int n = Integer.parseInt(number.group(1));
            return n >= 1 && n <= 12 ? (n - 1) % 3 : null;
        }
        return null;
    }

    /** Stable key: the pair of lines ("u-v"), or both terminals in order ("u1-u2") whichever way round they were typed. */
    String key() {
        if (pair != null) {
            return pair.name().substring(0, 1).toLowerCase(Locale.ROOT) + "-"
                    + pair.name().substring(1).toLowerCase(Locale.ROOT);
        }
        String a = first.toLowerCase(Locale.ROOT);
        String b = second.toLowerCase(Locale.ROOT);
        boolean ordered = a.length() < b.length() || (a.length() == b.length() && a.compareTo(b) <= 0);
        return ordered ? a + "-" + b : b + "-" + a;
    }

    /**
     * Whether the pair spans one section of a phase (U1-U2, U5-U6, T1-T4, T7-T10), several in series, or the phase with its
     * neutral.
     */
    Like like() {
        if (first.equals(NEUTRAL) || second.equals(NEUTRAL)) {
            return Like.PHASE;
        }
        int a = number(first);
        int b = number(second);
        boolean lettered = PHASE_LETTER.matcher(first).matches();
        boolean section = lettered ? Math.abs(a - b) == 1 && Math.min(a, b) % 2 == 1 : Math.abs(a - b) == 3;
        return section ? Like.SECTION : Like.THROUGH;
    }

    private static int number(String terminal) {
        String digits = terminal.replaceAll("\\D", "");
        return digits.isEmpty() ? 0 : Integer.parseInt(digits);
    }

    /** Both terminals as they were typed. */
    String label() {
        return first + "-" + second;
    }
}
