package org.copperbook.store;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The store's messages for people, from its message file. */
public final class StoreText {

    private StoreText() {
    }

    /** The message under a key with its placeholders filled; numbers are written plain. */
    public static String of(String key, Object... values) {
        Object[] plain = new Object[values.length];
        for (int i = 0; i < values.length; i++) {
            plain[i] = String.valueOf(values[i]);
        }
        ResourceBundle messages = ResourceBundle.getBundle("org.copperbook.store.messages", Locale.getDefault(),
                StoreText.class.getClassLoader());
        return new MessageFormat(messages.getString(key), Locale.ROOT).format(plain);
    }
}
