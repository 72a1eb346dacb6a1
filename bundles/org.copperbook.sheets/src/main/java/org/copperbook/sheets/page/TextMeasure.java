package org.copperbook.sheets.page;

import java.util.ArrayList;
import java.util.List;

/**
 * How many lines a text takes in a cell. Spreadsheets do not set the height of merged cells by themselves, and the
 * fonts of the machine that writes say nothing about the one that prints, so widths are those of a common sans-serif
 * face, rounded up, in digits.
 */
final class TextMeasure {

    /** How much wider bold text is. */
    static final double BOLD = 1.09;

    private TextMeasure() {
    }

    /**
     * Breaks a text as a spreadsheet would.
     *
     * @param width width of the cell in digits
     * @param bold  whether the text is bold
     */
    static List<String> lines(String text, double width, boolean bold) {
        double room = Math.max(1, width - 1.2) / (bold ? BOLD : 1.0);
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.split("\n", -1)) {
            breakParagraph(paragraph, room, lines);
        }
        return lines;
    }

    private static void breakParagraph(String paragraph, double room, List<String> lines) {
        StringBuilder line = new StringBuilder();
        double used = 0;
        for (String word : paragraph.split("(?<=[ \\-\u3000])|(?=[\u2E80-\uFFEF])")) {
            double wide = width(word.stripTrailing());
            if (used > 0 && used + wide > room) {
                lines.add(line.toString());
                line.setLength(0);
                used = 0;
            }
            if (wide > room) {
                used = breakWord(word, room, line, lines);
            } else {
                line.append(word);
                used += width(word);
            }
        }
        lines.add(line.toString());
    }

    private static double breakWord(String word, double room, StringBuilder line, List<String> lines) {
        double used = 0;
        for (int c : word.codePoints().toArray()) {
            double wide = width(c);
            if (used + wide > room && used > 0) {
                lines.add(line.toString());
                line.setLength(0);
                used = 0;
            }
            line.appendCodePoint(c);
            used += wide;
        }
        return used;
    }

    /** Width of a text in digits. */
    static double width(String text) {
        return text.codePoints().mapToDouble(TextMeasure::width).sum();
    }

    private static double width(int c) {
        if (c >= 0x2E80) {
            return 1.9;
        }
        if ("ijl'|".indexOf(c) >= 0) {
            return 0.45;
        }
        if (" ft.,:;!I[]/".indexOf(c) >= 0) {
            return 0.54;
        }
        if ("r()-".indexOf(c) >= 0) {
            return 0.64;
        }
        if (c >= 0x2010 && c <= 0x2015) {
            return 1.02;
        }
        if ("mwMW@%".indexOf(c) >= 0) {
            return 1.55;
        }
        if ("cksvxyz".indexOf(c) >= 0) {
            return 0.95;
        }
        return Character.isUpperCase(c) || c > 0x2000 ? 1.28 : 1.02;
    }
}
