package org.copperbook.sheets.cards;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The texts of this package, from a message bundle. */
final class CardWords {

    private static final String BUNDLE = "org.copperbook.sheets.cards.cards";

    private CardWords() {
    }

    static String say(String key, Object... args) {
        return new MessageFormat(text(key), Locale.getDefault()).format(args);
    }

    /** The text under a key as it stands. */
    static String text(String key) {
        return ResourceBundle.getBundle(BUNDLE, Locale.getDefault(), CardWords.class.getClassLoader()).getString(key);
    }
}
