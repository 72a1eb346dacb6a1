package org.copperbook.sheets.picture;

import java.util.List;
import java.util.Map;

/**
 * The colours and line patterns of the styles. Each of the six series (or phases) has a pattern of its own, so that
 * they are told apart without colour, by eye or in grey print.
 *
 * @param paper   colour of the paper, 0xRRGGBB
 * @param colours colour of each style, 0xRRGGBB
 */
public record ScenePalette(int paper, Map<String, Integer> colours) {

    /** Words and their lines. */
    public static final String TEXT = "text";
    /** Less important words. */
    public static final String MUTED = "muted";
    /** Frames, grids, slots. */
    public static final String FAINT = "faint";
    /** The paper itself, to cover what lies below. */
    public static final String PAPER = "paper";
    /** A band between limits, or ground behind something. */
    public static final String BAND = "band";
    /** A limit. */
    public static final String LIMIT = "limit";
    /** Something is within its limits; shape and word say it too. */
    public static final String GOOD = "good";
    /** It is not sure whether it is. */
    public static final String DOUBTFUL = "doubtful";
    /** Something is outside its limits. */
    public static final String BAD = "bad";
    /** What is selected. */
    public static final String HIGHLIGHT = "highlight";
    /** Number of series that are told apart. */
    public static final int SERIES = 6;

    private static final List<List<Double>> PATTERNS = List.of(List.of(), List.of(9.0, 4.0), List.of(10.0, 3.0, 2.0, 3.0),
            List.of(2.0, 3.0), List.of(14.0, 3.0, 2.0, 3.0, 2.0, 3.0), List.of(5.0, 2.0));

    /** For light themes, SVG and PNG. */
    public static final ScenePalette LIGHT = new ScenePalette(0xFFFFFF, colours(0x1E1E1E, 0x555555, 0x8C8C8C, 0xFFFFFF,
            0xE8EDE4, 0xB01414, 0x146E32, 0x855800, 0xB01414, 0x9C4A14, 0xA01C1C, 0x0B5A2A, 0x1B3F9C, 0x6A2C8A, 0x7A4B00,
            0x006070));

    /** For dark themes. */
    public static final ScenePalette DARK = new ScenePalette(0x2D2D2D, colours(0xF0F0F0, 0xBEBEBE, 0x8C8C8C, 0x2D2D2D,
            0x3C443A, 0xFF968C, 0x78D28C, 0xF0C85A, 0xFF968C, 0xFFA56E, 0xFF9A8F, 0x84DD98, 0x9DB8FF, 0xD9A6F2, 0xF0C077,
            0x7FD6E6));

    /** For paper: black and greys only. */
    public static final ScenePalette PRINT = new ScenePalette(0xFFFFFF, colours(0x000000, 0x404040, 0x909090, 0xFFFFFF,
            0xE6E6E6, 0x000000, 0x000000, 0x000000, 0x000000, 0x000000, 0x000000, 0x000000, 0x000000, 0x303030, 0x303030,
            0x303030));

    public ScenePalette {
        colours = Map.copyOf(colours);
    }

    /**
     * The style of a series or phase.
     *
     * @param index from 0; more than {@link #SERIES} begin again
     */
    public static String series(int index) {
        return "series-" + (Math.floorMod(index, SERIES) + 1);
    }

    /** Colour of a style, 0xRRGGBB; that of words for a style not known. */
    public int colour(String style) {
        return colours.getOrDefault(style, colours.get(TEXT));
    }

    /** Lengths of strokes and gaps of a style's lines, in units of the scene; empty for a solid line. */
    public static List<Double> pattern(String style) {
        if (style.equals(LIMIT)) {
            return List.of(6.0, 3.0);
        }
        return style.startsWith("series-") ? PATTERNS.get(Integer.parseInt(style.substring(7)) - 1) : List.of();
    }

    private static Map<String, Integer> colours(int text, int muted, int faint, int paper, int band, int limit, int good,
            int doubtful, int bad, int highlight, int one, int two, int three, int four, int five, int six) {
        return Map.ofEntries(Map.entry(TEXT, text), Map.entry(MUTED, muted), Map.entry(FAINT, faint),
                Map.entry(PAPER, paper), Map.entry(BAND, band), Map.entry(LIMIT, limit), Map.entry(GOOD, good),
                Map.entry(DOUBTFUL, doubtful), Map.entry(BAD, bad), Map.entry(HIGHLIGHT, highlight),
                Map.entry(series(0), one), Map.entry(series(1), two), Map.entry(series(2), three),
                Map.entry(series(3), four), Map.entry(series(4), five), Map.entry(series(5), six));
    }
}
