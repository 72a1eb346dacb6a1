package org.copperbook.sheets.registers;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One column of a register: what may stand in it, and by which words a table names it.
 *
 * @param key      its name in the program
 * @param label    its name for people, the title of the column in workbooks written here
 * @param kind     what stands in it
 * @param required whether a row without it is refused
 * @param least    lowest number; null for any
 * @param most     highest number; null for any
 * @param choices  words that may stand there, in any language, with the value each means; empty unless a choice. The first
 *                 word of a value is the one written
 * @param titles   words by which titles of tables name it, in any language, beside the label
 */
public record RegisterField(String key, String label, Kind kind, boolean required, BigDecimal least, BigDecimal most,
        Map<String, String> choices, List<String> titles) {

    /** What stands in a column. */
    public enum Kind {
        TEXT,
        /** A decimal number, kept to the digit. */
        NUMBER,
        /** A number without decimals. */
        WHOLE,
        DATE,
        /** One of the words given. */
        CHOICE
    }

    public RegisterField {
        choices = Collections.unmodifiableMap(new LinkedHashMap<>(choices));
        titles = List.copyOf(titles);
    }

    /** A column of text. Titles are given as "word|other word". */
    public static RegisterField text(String key, String label, String titles) {
        return new RegisterField(key, label, Kind.TEXT, false, null, null, Map.of(), words(titles));
    }

    /** A column of decimal numbers from least to most, both included; null for no end. */
    public static RegisterField number(String key, String label, String titles, BigDecimal least, BigDecimal most) {
        return new RegisterField(key, label, Kind.NUMBER, false, least, most, Map.of(), words(titles));
    }

    /** A column of whole numbers from least to most, both included. */
    public static RegisterField whole(String key, String label, String titles, long least, long most) {
        return new RegisterField(key, label, Kind.WHOLE, false, BigDecimal.valueOf(least), BigDecimal.valueOf(most),
                Map.of(), words(titles));
    }

    /** A column of dates. */
    public static RegisterField date(String key, String label, String titles) {
        return new RegisterField(key, label, Kind.DATE, false, null, null, Map.of(), words(titles));
    }

    /** A column of which each cell is one of some words. */
    public static RegisterField choice(String key, String label, String titles, Map<String, String> choices) {
        return new RegisterField(key, label, Kind.CHOICE, false, null, null, choices, words(titles));
    }

    /** The same column, without which a row is refused. */
    public RegisterField needed() {
        return new RegisterField(key, label, kind, true, least, most, choices, titles);
    }

    private static List<String> words(String titles) {
        return titles.isBlank() ? List.of() : List.of(titles.split("\\|"));
    }
}
