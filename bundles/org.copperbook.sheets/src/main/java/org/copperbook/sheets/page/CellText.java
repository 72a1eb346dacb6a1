package org.copperbook.sheets.page;

import java.util.regex.Pattern;

/**
 * Text on its way into a cell. Whatever it begins with, it stays text: it is stored as a string, never parsed, and
 * where it begins like a formula the cell also carries the mark that keeps it text when somebody edits it.
 */
public final class CellText {

    /** Longest text that a cell takes. */
    static final int LONGEST = 32_000;

    private static final Pattern ESCAPE_LOOKALIKE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

    private static final Pattern SIGNED_NUMBER = Pattern.compile("[+-][0-9.,]+[^=+\\-@|!()\\t\\r\\n]*");

    private CellText() {
    }

    /** Whether a spreadsheet could take the text for a formula when it is typed again. */
    public static boolean looksLikeFormula(String text) {
        return !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0;
    }

    /** Whether a text is read from right to left: its first letter with a direction, as Arabic or Hebrew, says so. */
    public static boolean isFromTheRight(String text) {
        return text.codePoints().mapToObj(Character::getDirectionality)
                .filter(d -> d == Character.DIRECTIONALITY_LEFT_TO_RIGHT || d == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                        || d == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC)
                .findFirst().filter(d -> d != Character.DIRECTIONALITY_LEFT_TO_RIGHT).isPresent();
    }

    /**
     * The text for a file or a clipboard without cell types (CSV, tabs): where a spreadsheet would take it for a formula an
     * apostrophe stands before it. Signed numbers, with or without a unit, stay as they are.
     */
    public static String neutral(String text) {
        // A text that begins with apostrophes of its own gets one more, so that taking one off gives it back.
        String bare = text.replaceFirst("^'+", "");
        return looksLikeFormula(bare) && !SIGNED_NUMBER.matcher(bare).matches() ? "'" + text : text;
    }

    /** Takes the apostrophe of {@link #neutral} off again; other text stays. */
    public static String plain(String text) {
        boolean marked = text.startsWith("'") && neutral(text.substring(1)).equals(text);
        return marked ? text.substring(1) : text;
    }

    /** The text without characters that the file format cannot hold; the replacement character takes their place; null is empty. */
    public static String storable(String text) {
        if (text == null) {
            return "";
        }
        StringBuilder kept = new StringBuilder(text.length());
        text.replace("\r\n", "\n").replace('\r', '\n').codePoints()
                .map(c -> allowed(c) ? c : 0xFFFD).forEach(kept::appendCodePoint);
        return ESCAPE_LOOKALIKE.matcher(kept).replaceAll("_x005F_");
    }

    private static boolean allowed(int c) {
        return c == '\t' || c == '\n' || c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD || c >= 0x10000;
    }
}
