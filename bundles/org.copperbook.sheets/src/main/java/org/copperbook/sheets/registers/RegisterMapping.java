package org.copperbook.sheets.registers;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.copperbook.sheets.cards.HeaderGuess;

/**
 * Which column of a table is which column of the register.
 *
 * @param titles titles of the table's columns in order
 * @param keys   for each the key of the register's column, or an empty text to leave it out
 */
public record RegisterMapping(List<String> titles, List<String> keys) {

    public RegisterMapping {
        titles = List.copyOf(titles);
        keys = List.copyOf(keys);
        if (titles.size() != keys.size()) {
            throw new IllegalArgumentException(titles.size() + " titles, but " + keys.size() + " keys");
        }
    }

    /**
     * Guessed by the words in the titles. A title that is a word of a column goes before one that only contains it, and
     * each column is given once.
     */
    public static RegisterMapping guess(List<String> titles, RegisterShape shape) {
        List<String> keys = new ArrayList<>(Collections.nCopies(titles.size(), ""));
        Set<String> given = new HashSet<>();
        for (boolean whole : new boolean[] {true, false}) {
            for (int i = 0; i < titles.size(); i++) {
                if (keys.get(i).isEmpty()) {
                    Optional<RegisterField> f = field(titles.get(i), shape, whole);
                    if (f.isPresent() && given.add(f.get().key())) {
                        keys.set(i, f.get().key());
                    }
                }
            }
        }
        return new RegisterMapping(titles, keys);
    }

    /** The register's column that a title names: by a word that is the title, or by the longest that it contains. */
    static Optional<RegisterField> field(String title, RegisterShape shape, boolean whole) {
        String folded = " " + HeaderGuess.folded(title) + " ";
        RegisterField best = null;
        int longest = 0;
        for (RegisterField field : shape.fields()) {
            List<String> words = new ArrayList<>(field.titles());
            words.add(field.label());
            for (String word : words) {
                String w = " " + HeaderGuess.folded(word) + " ";
                if (w.length() > longest && !w.isBlank() && (whole ? folded.equals(w) : folded.contains(w))) {
                    best = field;
                    longest = w.length();
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** This mapping with one column of the table meant otherwise; an empty key leaves it out. */
    public RegisterMapping with(int column, String key) {
        List<String> next = new ArrayList<>(keys);
        next.set(column, key);
        return new RegisterMapping(titles, next);
    }

    /** What keeps the mapping from being used, in words; empty when nothing does. */
    public List<String> problems(RegisterShape shape) {
        List<String> problems = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String key : keys) {
            if (!key.isEmpty() && !seen.add(key)) {
                problems.add(RegisterWords.say("mapping.twice", shape.field(key).map(RegisterField::label).orElse(key)));
            }
        }
        for (RegisterField f : shape.fields()) {
            if (f.required() && !seen.contains(f.key())) {
                problems.add(RegisterWords.say("mapping.missing", f.label()));
            }
        }
        if (seen.isEmpty()) {
            problems.add(RegisterWords.say("mapping.nothing"));
        }
        return problems;
    }
}
