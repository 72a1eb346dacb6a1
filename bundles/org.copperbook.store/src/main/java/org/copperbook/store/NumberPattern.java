package org.copperbook.store;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a job number is written: text with {@code {n}} or {@code {n:4}} (the running number, with at least so many
 * digits) once, and {@code {year}} where the series starts again each year.
 */
public final class NumberPattern {

    private static final Pattern SLOT = Pattern.compile("\\{([^{}]*)\\}");
    private static final Pattern RUNNING = Pattern.compile("n(?::([1-9]))?");

    private final String text;
    private final boolean yearly;

    /**
     * Reads a pattern.
     *
     * @throws StoreException BAD_NUMBER_SERIES when it has no running number, two, an unknown slot or control characters
     */
    public NumberPattern(String text) {
        this.text = text;
        int running = 0;
        boolean year = false;
        Matcher slots = SLOT.matcher(text);
        while (slots.find()) {
            String slot = slots.group(1);
            if (RUNNING.matcher(slot).matches()) {
                running++;
            } else if (slot.equals("year")) {
                year = true;
            } else {
                throw bad();
            }
        }
        String rest = SLOT.matcher(text).replaceAll("");
        if (running != 1 || rest.matches(".*[{}\\p{Cntrl}].*") || !text.equals(text.strip()) || text.length() > 60) {
            throw bad();
        }
        yearly = year;
    }

    /** The number in words of this pattern. */
    public String format(int year, long n) {
        Matcher slots = SLOT.matcher(text);
        StringBuilder out = new StringBuilder();
        while (slots.find()) {
            Matcher running = RUNNING.matcher(slots.group(1));
            String filled = String.valueOf(year);
            if (running.matches()) {
                int digits = running.group(1) == null ? 1 : Integer.parseInt(running.group(1));
                String plain = Long.toString(n);
                filled = "0".repeat(Math.max(0, digits - plain.length())) + plain;
            }
            slots.appendReplacement(out, Matcher.quoteReplacement(filled));
        }
        return slots.appendTail(out).toString();
    }

    /** The year under which the series counts: 0 when it runs on through the years. */
    public int seriesYear(int year) {
        return yearly ? year : 0;
    }

    public String text() {
        return text;
    }

    private StoreException bad() {
        return new StoreException(StoreException.Kind.BAD_NUMBER_SERIES, StoreText.of("badNumberSeries", text));
    }
}
