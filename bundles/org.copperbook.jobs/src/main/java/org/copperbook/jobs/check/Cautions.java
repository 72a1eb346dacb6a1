package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * The cautions shown where a step that can hurt is taken. They are reminders; local codes and licensed practice come
 * first, and every list says so.
 */
public final class Cautions {

    private static final String BUNDLE = "org.copperbook.jobs.check.cautions";

    private Cautions() {
    }

    /** The cautions of a step, short and in the order in which they are met; the last one defers to local codes. */
    public static List<String> requiredFor(Hazardous step) {
        ResourceBundle texts = ResourceBundle.getBundle(BUNDLE, Locale.getDefault(), Cautions.class.getClassLoader());
        List<String> out = new ArrayList<>();
        for (int i = 1; texts.containsKey(step.word() + "." + i); i++) {
            out.add(texts.getString(step.word() + "." + i));
        }
        out.add(texts.getString("local-codes"));
        return List.copyOf(out);
    }

    /** The step in words, for headings. */
    public static String title(Hazardous step) {
        return ResourceBundle.getBundle(BUNDLE, Locale.getDefault(), Cautions.class.getClassLoader())
                .getString(step.word());
    }
}
