package org.copperbook.sheets;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The languages that the customer's papers are written in; a paper in any other is written in English. */
public final class ShippedLanguages {

    private static final List<Locale> ALL = List.of(Locale.ENGLISH, Locale.GERMAN);

    private ShippedLanguages() {
    }

    /** Whether there are texts in a language, in any country. */
    public static boolean has(Locale language) {
        return ALL.stream().anyMatch(l -> l.getLanguage().equals(language.getLanguage()));
    }

    /** Their names, each in itself, by language tag (BCP 47). */
    public static Map<String, String> names() {
        Map<String, String> names = new LinkedHashMap<>();
        ALL.forEach(l -> names.put(l.toLanguageTag(), l.getDisplayLanguage(l)));
        return names;
    }
}
