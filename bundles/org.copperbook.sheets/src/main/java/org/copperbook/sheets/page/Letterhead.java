package org.copperbook.sheets.page;

/**
 * What stands at the top and foot of every printed page.
 *
 * @param workshop   name of the workshop
 * @param job        job number with its word ("Job 2026-0042")
 * @param pageOf     page of pages, with {0} and {1} for the numbers
 * @param foot       left foot of the page ("Times in Europe/Berlin", a demo mark)
 */
public record Letterhead(String workshop, String job, String pageOf, String foot) {

    /** A header may hold 255 characters with all its codes. */
    private static final int PER_FIELD = 70;

    String pageCode() {
        return escaped(pageOf).replace("{0}", "&P").replace("{1}", "&N");
    }

    /** Text as a header takes it: an ampersand would start a code. */
    static String escaped(String text) {
        String line = text == null ? "" : CellText.storable(text).replace('\n', ' ').strip();
        int end = line.codePointCount(0, line.length()) <= PER_FIELD ? line.length()
                : line.offsetByCodePoints(0, PER_FIELD);
        return line.substring(0, end).replace("&", "&&");
    }
}
