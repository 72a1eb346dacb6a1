package org.copperbook.jobs.check;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The thread of a stud as the limit profile names it: "1/4-28" for "1/4-28 UNF-2A", "M8" for "m8x1.25". */
final class StudThread {

    private static final Pattern METRIC = Pattern.compile("\\bM\\s*(\\d+)");
    private static final Pattern INCH = Pattern.compile("(\\d+(?:/\\d+)?)\\s*\"?\\s*-\\s*(\\d+)");

    private StudThread() {
    }

    /** The thread; the text itself where it is neither metric nor inch, empty for null. */
    static String of(String stud) {
        if (stud == null) {
            return "";
        }
        String text = stud.strip().toUpperCase(Locale.ROOT);
        Matcher metric = METRIC.matcher(text);
        if (metric.find()) {
            return "M" + metric.group(1);
        }
        Matcher inch = INCH.matcher(text);
        return inch.find() ? inch.group(1) + "-" + inch.group(2) : text;
    }
}
