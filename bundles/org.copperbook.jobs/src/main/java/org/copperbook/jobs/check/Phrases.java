package org.copperbook.jobs.check;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The texts of verdicts, hold points and stages, from a message bundle. Numbers come in as text already shaped. */
final class Phrases {

    private static final String BUNDLE = "org.copperbook.jobs.check.verdicts";

    private Phrases() {
    }

    /** The phrase under a key with its arguments filled in. */
    static String say(String key, Object... args) {
        String pattern = ResourceBundle.getBundle(BUNDLE, Locale.getDefault(), Phrases.class.getClassLoader())
                .getString(key);
        return new MessageFormat(pattern, Locale.getDefault()).format(args);
    }

    /** The word for a constant of an enumeration: key is the prefix, a dot and the constant in lower case. */
    static String word(String prefix, Enum<?> constant) {
        return say(prefix + "." + constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
