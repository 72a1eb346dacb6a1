package org.copperbook.store.jdbc;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Text made alike for searching and sorting, in Java, because the engines disagree about letter case. */
final class SearchText {

    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern DIGITS = Pattern.compile("\\d+");
    private static final int WIDTH = 12;

    private SearchText() {
    }

    /** Upper case without accents, empty for null: "Müller" and "MULLER" are the same. */
    static String fold(String text) {
        if (text == null) {
            return "";
        }
        String apart = Normalizer.normalize(text, Normalizer.Form.NFKD);
        return MARKS.matcher(apart).replaceAll("").toUpperCase(Locale.ROOT);
    }

    /** Folded, with every run of digits as wide as the next, so that "9" sorts before "10". */
    static String natural(String text) {
        return DIGITS.matcher(fold(text)).replaceAll(m -> Matcher.quoteReplacement(
                "0".repeat(Math.max(0, WIDTH - m.group().length())) + m.group()));
    }

    /** A pattern for LIKE with backslash as escape that finds the word anywhere. */
    static String anywhere(String foldedWord) {
        return "%" + foldedWord.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_") + "%";
    }
}
