package org.copperbook.sheets.log;

import java.util.Locale;
import org.copperbook.sheets.page.Words;

/** The texts of log reading. */
final class LogWords {

    private static final Words WORDS = new Words(LogWords.class, "log", Locale.ENGLISH);

    private LogWords() {
    }

    static String say(String key, Object... filled) {
        return WORDS.get(key, filled);
    }

    static String of(Enum<?> member) {
        return WORDS.of(member);
    }
}
