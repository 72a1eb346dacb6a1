package org.copperbook.jobs.report;

import java.util.Locale;
import java.util.ResourceBundle;

/** The kinds of figures of a month in words. */
public final class MonthWords {

    private MonthWords() {
    }

    /** A kind as the report calls it. */
    public static String of(MonthFact.Kind kind) {
        return ResourceBundle.getBundle("org.copperbook.jobs.report.month", Locale.getDefault(),
                MonthWords.class.getClassLoader()).getString(kind.name());
    }
}
