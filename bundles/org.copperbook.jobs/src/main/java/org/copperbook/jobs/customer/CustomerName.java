package org.copperbook.jobs.customer;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * A name as it is compared: without letter case, accents, punctuation and legal forms.
 *
 * @param words its words in the order written; of a name that is all legal form, all of them
 */
public record CustomerName(List<String> words) {

    /** Words that say of what kind a firm is and not which; common practice, no source. */
    private static final Set<String> FORMS = Set.of("gmbh", "mbh", "ag", "kg", "ohg", "gbr", "ug", "ek", "ev", "eg", "se",
            "ltd", "limited", "llc", "llp", "plc", "inc", "incorporated", "corp", "corporation", "co", "company", "the",
            "und", "and", "et", "sa", "sas", "sarl", "srl", "spa", "bv", "nv", "oy", "oyj", "ab", "as", "aps", "sl", "pty");

    public CustomerName {
        words = List.copyOf(words);
    }

    /** Reads a name; null is one without words. */
    public static CustomerName of(String name) {
        String text = Normalizer.normalize(name == null ? "" : name.replace("\u00df", "ss"), Normalizer.Form.NFKD)
                .replaceAll("\\p{M}+", "").toLowerCase(Locale.ROOT);
        // "e.K." and "S.A." are one word each.
        String joined = text.replaceAll("(?<![\\p{L}\\p{N}])(\\p{L})\\.\\s?(\\p{L})\\.(?:\\s?(\\p{L})\\.)?", "$1$2$3");
        List<String> all = Arrays.stream(joined.split("[^\\p{L}\\p{N}]+")).filter(w -> !w.isEmpty()).toList();
        List<String> telling = all.stream().filter(w -> !FORMS.contains(w)).toList();
        return new CustomerName(telling.isEmpty() ? all : telling);
    }

    /** The words in order of the alphabet, so that their order does not matter. */
    public String sorted() {
        List<String> sorted = new ArrayList<>(words);
        sorted.sort(null);
        return String.join(" ", sorted);
    }

    /** The words as written, without blanks between. */
    public String run() {
        return String.join("", words);
    }
}
