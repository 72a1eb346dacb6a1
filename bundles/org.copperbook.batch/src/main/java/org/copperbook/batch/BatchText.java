package org.copperbook.batch;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The messages of the commands, from their message file. */
final class BatchText {

    private static final String FILE = "org.copperbook.batch.messages";

    private BatchText() {
    }

    /** The message under a key with its placeholders filled; numbers are written plain, unless the message says how. */
    static String of(String key, Object... values) {
        String pattern = bundle().getString(key);
        Object[] plain = new Object[values.length];
        for (int i = 0; i < values.length; i++) {
            plain[i] = pattern.contains("{" + i + ",") ? values[i] : String.valueOf(values[i]);
        }
        return new MessageFormat(pattern, Locale.ROOT).format(plain);
    }

    static ResourceBundle bundle() {
        return ResourceBundle.getBundle(FILE, Locale.getDefault(), BatchText.class.getClassLoader());
    }
}
