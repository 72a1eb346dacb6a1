package org.copperbook.calc.catalogue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Where a calculation writes its results. */
public final class Results {

    private final Map<String, Object> values = new LinkedHashMap<>();
    private final List<String> warnings = new ArrayList<>();

    Results() {
    }

    /** A number in SI. */
    public Results put(String name, double si) {
        values.put(name, si);
        return this;
    }

    /** A word or a sentence. */
    public Results put(String name, String word) {
        values.put(name, word);
        return this;
    }

    /** A constant as a word. */
    public Results put(String name, Enum<?> constant) {
        return put(name, CalculationBuilder.word(constant));
    }

    /** Something the reader should know before relying on the result. */
    public Results warn(String text) {
        warnings.add(text);
        return this;
    }

    Map<String, Object> values() {
        return values;
    }

    List<String> warnings() {
        return warnings;
    }
}
