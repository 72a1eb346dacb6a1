package org.copperbook.sheets.tag;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.sheets.picture.Mark;
import org.copperbook.sheets.picture.Point;
import org.copperbook.sheets.picture.ScenePalette;

/** Words put on lines no wider than a room; what does not go on the last line ends in dots. */
final class WrappedText {

    private static final String DOTS = "\u2026";

    private final double size;
    private final double room;
    private final int most;
    private final List<String> lines = new ArrayList<>();

    /**
     * @param size height of the font, in units of a scene
     * @param room width of the lines, in the same units
     * @param most largest number of lines, at least 1
     */
    WrappedText(String text, double size, double room, int most) {
        this.size = size;
        this.room = room;
        this.most = most;
        for (String paragraph : text.strip().split("\\R")) {
            paragraph(paragraph.strip());
        }
    }

    List<String> lines() {
        if (lines.size() <= most) {
            return List.copyOf(lines);
        }
        List<String> kept = new ArrayList<>(lines.subList(0, most));
        String last = kept.get(most - 1);
        while (!last.isEmpty() && !fits(last + DOTS)) {
            last = shorter(last);
        }
        kept.set(most - 1, last.stripTrailing() + DOTS);
        return kept;
    }

    private void paragraph(String words) {
        StringBuilder line = new StringBuilder();
        for (String word : words.split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!fits(longer) && !line.isEmpty()) {
                lines.add(line.toString());
                line.setLength(0);
                longer = word;
            }
            line.replace(0, line.length(), broken(longer));
        }
        if (!line.isEmpty()) {
            lines.add(line.toString());
        }
    }

    /** Puts full lines of a word that is wider than the room down; what is left of it. */
    private String broken(String word) {
        String rest = word;
        while (!fits(rest)) {
            String part = rest;
            while (part.codePointCount(0, part.length()) > 1 && !fits(part)) {
                part = shorter(part);
            }
            if (part.length() == rest.length()) {
                return rest;
            }
            lines.add(part);
            rest = rest.substring(part.length());
        }
        return rest;
    }

    private static String shorter(String text) {
        return text.substring(0, text.offsetByCodePoints(text.length(), -1));
    }

    private boolean fits(String text) {
        return new Mark.Text("", ScenePalette.TEXT, new Point(0, 0), Mark.Anchor.START, size, false, text).width() <= room;
    }
}
