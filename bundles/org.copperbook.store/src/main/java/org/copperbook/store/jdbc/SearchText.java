package org.copperbook.store.jdbc;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Text made alike for searching and sorting, in Java, because the engines disagree about letter case. */
final class SearchText {

    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern DIGITS = Pattern.compile("\\d+");
    private static final Pattern SPACE = Pattern.compile("[\\p{Z}\\s]+");
    private static final int WIDTH = 12;
    private static final int LONGEST = 2_000;
    private static final int MOST_WORDS = 50;
    private static final int LONGEST_KEY = 200;

    private SearchText() {
    }

    /** Upper case without accents, empty for null: "Müller" and "MULLER" are the same. */
    static String fold(String text) {
        if (text == null) {
            return "";
        }
        // Not every engine can compare with U+0000 in it.
        String apart = Normalizer.normalize(text.replace("\0", ""), Normalizer.Form.NFKD);
        return MARKS.matcher(apart).replaceAll("").toUpperCase(Locale.ROOT);
    }

    /** Folded, with every run of digits as wide as the next, so that "9" sorts before "10". */
    static String natural(String text) {
        return DIGITS.matcher(fold(text)).replaceAll(m -> Matcher.quoteReplacement(
                "0".repeat(Math.max(0, WIDTH - m.group().length())) + m.group()));
    }

    /** As natural, cut where an index would refuse it: what is the same for so long is ordered by number. */
    static String key(String text) {
        return cut(natural(text));
    }

    /** The first {@value #LONGEST_KEY} characters. */
    static String cut(String text) {
        return text.codePointCount(0, text.length()) <= LONGEST_KEY ? text
                : text.substring(0, text.offsetByCodePoints(0, LONGEST_KEY));
    }

    /**
     * The different folded words of a filter. Of more than {@value #MOST_WORDS} the rest is left out and so is what
     * lies beyond {@value #LONGEST} characters: a whole page pasted into the field would exceed what the engines take.
     */
    static List<String> words(String text) {
        String cut = text.length() > LONGEST ? text.substring(0, LONGEST) : text;
        return Arrays.stream(SPACE.split(fold(cut))).filter(w -> !w.isEmpty()).distinct().limit(MOST_WORDS).toList();
    }

    /** A pattern for LIKE with backslash as escape that finds the word anywhere. */
    static String anywhere(String foldedWord) {
        return "%" + foldedWord.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_") + "%";
    }
}
