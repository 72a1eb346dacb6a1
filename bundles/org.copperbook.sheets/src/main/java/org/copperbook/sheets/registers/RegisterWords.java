package org.copperbook.sheets.registers;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The texts of this package, from a message bundle. */
final class RegisterWords {

    private static final String BUNDLE = "org.copperbook.sheets.registers.registers";

    private RegisterWords() {
    }

    static String say(String key, Object... args) {
        return new MessageFormat(raw(key), Locale.getDefault()).format(args);
    }

    /** The text as it stands, for patterns that are filled elsewhere. */
    static String raw(String key) {
        return ResourceBundle.getBundle(BUNDLE, Locale.getDefault(), RegisterWords.class.getClassLoader()).getString(key);
    }
}
