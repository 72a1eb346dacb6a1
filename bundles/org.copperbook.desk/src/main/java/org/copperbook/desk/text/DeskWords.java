package org.copperbook.desk.text;

import org.copperbook.desk.Desk;

/** The texts of the desk itself. */
public final class DeskWords {

    private DeskWords() {
    }

    /** The desk's texts in the locale's language. */
    public static Words get() {
        return Words.of(Desk.class);
    }

    /** One text of the desk. */
    public static String text(String key, Object... args) {
        return get().text(key, args);
    }
}
