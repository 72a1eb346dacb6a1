package org.copperbook.store.jdbc;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which rows of the register hold every word of a filter. Words of three characters and more are looked up in the list
 * of texts where the engine keeps one; shorter ones are looked for in the rows, and so is one that is in a name of a
 * customer who has others: that finds the jobs under all of them.
 *
 * @param words   the folded words
 * @param listed  those of them that the list of texts finds
 * @param aliased keys of the customers that a word finds by another name
 */
record RegisterFilter(List<String> words, List<String> listed, Map<String, List<String>> aliased) {

    /** Shortest word in the list of texts. */
    private static final int LISTED = 3;
    /** With more rows than this the first of them in any order are found sooner by looking at the rows in that order. */
    private static final int MANY = 3_000;
    /** Far below what the engines take of question marks, and more than anybody looks through. */
    private static final int MOST_KEYS = 500;

    static RegisterFilter of(String text, boolean textList, List<CustomerAliases.Family> families) {
        List<String> words = SearchText.words(text);
        Map<String, List<String>> aliased = new HashMap<>();
        for (String w : words) {
            List<String> keys = !isLong(w) ? List.of() : families.stream().filter(f -> f.has(w))
                    .flatMap(f -> f.keys().stream()).distinct().limit(MOST_KEYS).toList();
            if (!keys.isEmpty()) {
                aliased.put(w, keys);
            }
        }
        return new RegisterFilter(words, textList ? words.stream().filter(w -> isLong(w) && !aliased.containsKey(w)).toList()
                : List.of(), aliased);
    }

    private static boolean isLong(String word) {
        return word.codePointCount(0, word.length()) >= LISTED;
    }

    /**
     * Rows to choose from.
     *
     * @param from   tables
     * @param where  conditions, all of which hold
     * @param values for the question marks of the conditions
     */
    record Found(String from, List<String> where, List<String> values) {

        /** Those of the rows for which another condition holds; all of them when it is empty. */
        Found and(String condition) {
            return condition.isEmpty() ? this
                    : new Found(from, Stream.concat(where.stream(), Stream.of(condition)).toList(), values);
        }

        String sql() {
            return " FROM " + from + (where.isEmpty() ? "" : " WHERE " + String.join(" AND ", where));
        }
    }

    /** The rows to be counted. */
    Found counting() {
        return !listed.isEmpty() && listed.size() == words.size()
                ? new Found("register_text", List.of("register_text MATCH ?"), List.of(phrases())) : fromList();
    }

    /** The rows to be shown, the way that finds the first of so many soonest. */
    Found rows(int total) {
        return total > MANY ? looking("register", List.of(), List.of(), words) : fromList();
    }

    private Found fromList() {
        return listed.isEmpty() ? looking("register", List.of(), List.of(), words)
                // The engine is not to turn this round: it takes the list for the slower of the two.
                : looking("register_text CROSS JOIN register ON register.id = register_text.rowid",
                        List.of("register_text MATCH ?"), List.of(phrases()),
                        words.stream().filter(w -> !listed.contains(w)).toList());
    }

    private Found looking(String from, List<String> where, List<String> values, List<String> words) {
        List<String> all = new ArrayList<>(where);
        List<String> with = new ArrayList<>(values);
        for (String word : words) {
            List<String> keys = aliased.getOrDefault(word, List.of());
            all.add("(register.search LIKE ? ESCAPE '\\'" + (keys.isEmpty() ? "" : " OR register.customer_key IN ("
                    + String.join(", ", Collections.nCopies(keys.size(), "?")) + ")") + ")");
            with.add(SearchText.anywhere(word));
            with.addAll(keys);
        }
        return new Found(from, all, with);
    }

    private String phrases() {
        return listed.stream().map(w -> '"' + w.replace("\"", "\"\"") + '"').collect(Collectors.joining(" AND "));
    }
}
