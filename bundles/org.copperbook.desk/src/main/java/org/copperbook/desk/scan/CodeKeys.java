package org.copperbook.desk.scan;

import java.util.Locale;
import java.util.Optional;
import org.copperbook.jobs.booking.JobCode;

/**
 * Tells the keys of a code reader from those of a person. A reader that sends a code as key presses types its mark, the
 * job number and Enter with a few milliseconds between the keys; nobody types like that for a whole code, so a pause, a
 * pace that falls behind, or another key than the mark has shows that a person types. Times are those at which the keys
 * went down, not those at which a busy window came to look at them.
 *
 * <p>Keys that may belong to a code are to be held back; the answer to a later key says when they are to be let go.
 */
final class CodeKeys {

    /**
     * Mean time between the keys of a code, milliseconds. Readers on USB send a key in one to three turns of 8 ms at
     * most; 30 ms a key over a whole code is three times the speed of the fastest typists: common practice, no source.
     */
    static final int MEAN_GAP = 30;

    /** Longest time between two keys of one code, milliseconds: a busy machine hiccups, common practice, no source. */
    static final int LONGEST_GAP = 90;

    /** How far a code may fall behind the mean, milliseconds. */
    private static final int BEHIND = 60;

    private static final int MOST = 120;

    private final StringBuilder held = new StringBuilder();
    private int first;
    private int last;

    /** What a key means. */
    sealed interface Answer {

        /** The key is somebody's: first let go of what was held, then of the key. */
        record Typed(String letGo) implements Answer {
        }

        /** The key may belong to a code and is held; what was held before it is somebody's after all and is let go. */
        record Held(String letGo) implements Answer {
        }

        /** The key was the Enter after a whole code: nothing of it is to reach the field. */
        record Scanned(String number) implements Answer {
        }
    }

    /**
     * A key with a character.
     *
     * @param c      the character; carriage return for Enter, 0 for a key without one
     * @param millis when it went down, on any clock that only goes on, and may overflow
     */
    Answer key(char c, int millis) {
        boolean quick = isInTime(millis);
        last = millis;
        if (quick && isEnter(c)) {
            Optional<String> number = number();
            if (number.isPresent()) {
                held.setLength(0);
                return new Answer.Scanned(number.get());
            }
        }
        if (quick && c >= ' ' && held.length() < MOST && fits(c)) {
            held.append(c);
            return new Answer.Held("");
        }
        String letGo = letGo();
        if (c != 0 && (c == JobCode.PREFIX.charAt(0) || c == lower().charAt(0))) {
            held.append(c);
            first = millis;
            return new Answer.Held(letGo);
        }
        return new Answer.Typed(letGo);
    }

    /** Gives up what is held, because no further key came. */
    String letGo() {
        String text = held.toString();
        held.setLength(0);
        return text;
    }

    /** Whether nothing is held. */
    boolean isEmpty() {
        return held.isEmpty();
    }

    /** Whether Enter ends a code now, if it comes in time. */
    boolean ends(int millis) {
        return isInTime(millis) && number().isPresent();
    }

    private boolean isInTime(int millis) {
        int gap = millis - last;
        return !isEmpty() && gap >= 0 && gap <= LONGEST_GAP && millis - first <= held.length() * MEAN_GAP + BEHIND;
    }

    static boolean isEnter(char c) {
        return c == '\r' || c == '\n';
    }

    /** With the caps lock on a reader sends the other case of every letter. */
    private Optional<String> number() {
        String read = held.toString();
        return JobCode.number(read.startsWith(lower()) ? swapped(read) : read);
    }

    private boolean fits(char c) {
        int at = held.length();
        if (at >= JobCode.PREFIX.length()) {
            return true;
        }
        String mark = held.charAt(0) == JobCode.PREFIX.charAt(0) ? JobCode.PREFIX : lower();
        return c == mark.charAt(at);
    }

    private static String lower() {
        return JobCode.PREFIX.toLowerCase(Locale.ROOT);
    }

    private static String swapped(String text) {
        StringBuilder other = new StringBuilder();
        for (char c : text.toCharArray()) {
            other.append(Character.isUpperCase(c) ? Character.toLowerCase(c) : Character.toUpperCase(c));
        }
        return other.toString();
    }
}
