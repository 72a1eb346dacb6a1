package org.copperbook.store;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The store's messages for people, from its message file. */
public final class StoreText {

    private StoreText() {
    }

    /** The message under a key with its placeholders filled; numbers are written plain, unless the message says how. */
    public static String of(String key, Object... values) {
        String pattern = ResourceBundle.getBundle("org.copperbook.store.messages", Locale.getDefault(),
                StoreText.class.getClassLoader()).getString(key);
        Object[] plain = new Object[values.length];
        for (int i = 0; i < values.length; i++) {
            plain[i] = pattern.contains("{" + i + ",") ? values[i] : String.valueOf(values[i]);
        }
        return new MessageFormat(pattern, Locale.ROOT).format(plain);
    }
}
