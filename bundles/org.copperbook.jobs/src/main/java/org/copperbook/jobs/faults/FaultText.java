package org.copperbook.jobs.faults;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The sentences of the fault finder, in the language of the locale. */
final class FaultText {

    private static final String BUNDLE = "org.copperbook.jobs.faults.faults";

    private FaultText() {
    }

    static String say(String key, Object... args) {
        String pattern = ResourceBundle.getBundle(BUNDLE, Locale.getDefault(), FaultText.class.getClassLoader())
                .getString(key);
        return new MessageFormat(pattern, Locale.getDefault()).format(args);
    }
}
