package org.copperbook.batch;

/** Text of files and records, made safe to stand on one line of a terminal. */
final class OneLine {

    private static final int LONGEST = 400;

    private OneLine() {
    }

    /** The text with line ends and control characters as blanks, shortened when very long. */
    static String of(String text) {
        StringBuilder line = new StringBuilder();
        text.codePoints().limit(LONGEST + 1L).forEach(c -> line.appendCodePoint(visible(c) ? c : ' '));
        if (line.codePointCount(0, line.length()) > LONGEST) {
            line.setLength(line.offsetByCodePoints(0, LONGEST));
            line.append(" ...");
        }
        return line.toString().strip();
    }

    /** Not a control, format (direction marks among them) or separator character, nor half of a pair. */
    private static boolean visible(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL, Character.FORMAT, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE -> false;
            default -> true;
        };
    }
}
