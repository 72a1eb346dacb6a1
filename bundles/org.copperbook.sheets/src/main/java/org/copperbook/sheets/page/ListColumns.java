package org.copperbook.sheets.page;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;

/**
 * The widths of the columns of a list that is printed on turned A4. A list is as wide as one page, in type of 8 points or
 * more where its texts can be wrapped between words for that, down to 7 where a text would become a tall column otherwise; one
 * that is wider even so goes over several pages with its first column on each. Sizes are for a base font of 10 points.
 */
public final class ListColumns {

    /** Room on a page in digits of the base font, with type of 10, 8 and 7 points. */
    private static final int ROOM = (int) (PrintedPage.TURNED_WIDE / PrintedPage.DIGIT);
    private static final int WISHED = ROOM * 10 / 8;
    private static final int MOST = ROOM * 10 / 7;

    /** Type of a list that is several pages wide, percent of the base font, and its room. */
    private static final int PERCENT = 80;
    private static final int EACH_PAGE = ROOM * 100 / PERCENT;

    private static final int MARGIN = 2;

    /** Room that keeps a number, which stands at the right, from the text of the next column. */
    private static final int MARGIN_OF_NUMBER = 4;
    private static final int WIDEST = 60;

    /** Lines of a cell from which on smaller type is the lesser evil. */
    private static final int TALL = 3;

    /** Longer words are broken. */
    private static final int LONGEST_WORD = 26;
    private static final float LINE = 13f;
    private static final float PADDING = 3.5f;
    private static final float HIGHEST = 409f;

    /** How the cells of a column are set. */
    public enum Cells {
        /** At the left, wrapped between words. */
        TEXT,
        /** At the left in one line: a date, a choice. */
        WORD,
        /** At the right in one line. */
        NUMBER
    }

    /**
     * What a column asks for, in digits: its longest word, the longest of its texts in one line, how wide it may become, and
     * what its cells and its head are set in by.
     */
    private record Asked(int least, double whole, int most, int indent) {
    }

    private final List<Asked> asked = new ArrayList<>();
    private int[] widths;

    /**
     * Adds a column.
     *
     * @param title its head, which may be wrapped
     * @param cells what stands in it, as shown
     */
    public void add(String title, Cells how, Iterable<String> cells) {
        double least = words(title);
        double whole = TextMeasure.width(title) * TextMeasure.BOLD;
        for (String cell : cells) {
            double line = cell.lines().mapToDouble(TextMeasure::width).max().orElse(0);
            whole = Math.max(whole, line);
            least = Math.max(least, how == Cells.TEXT ? Math.min(LONGEST_WORD, longestWord(cell)) : line);
        }
        int margin = how == Cells.NUMBER ? MARGIN_OF_NUMBER : MARGIN;
        int narrow = margin + (int) Math.ceil(Math.min(WIDEST, least));
        asked.add(new Asked(narrow, margin + whole, Math.max(narrow, margin + (int) Math.ceil(Math.min(WIDEST, whole))),
                margin - MARGIN));
        widths = null;
    }

    private static double words(String title) {
        return longestWord(title) * TextMeasure.BOLD;
    }

    private static double longestWord(String text) {
        double longest = 0;
        for (String word : text.split("\\s+")) {
            longest = Math.max(longest, TextMeasure.width(word));
        }
        return longest;
    }

    /** Widths of the columns in order, in digits of the base font. */
    public int[] widths() {
        if (widths == null) {
            int least = asked.stream().mapToInt(Asked::least).sum();
            int most = asked.stream().mapToInt(Asked::most).sum();
            widths = asked.stream().mapToInt(least > MOST ? Asked::most : Asked::least).toArray();
            int room = Math.min(most, MOST);
            for (int used = least; used < room; used++) {
                int next = mostLines();
                if (used >= WISHED && asked.get(next).whole() / widths[next] <= TALL) {
                    break;
                }
                widths[next]++;
            }
        }
        return widths.clone();
    }

    /** The column whose longest text takes the most lines, of those that may still become wider. */
    private int mostLines() {
        int found = 0;
        double lines = 0;
        for (int i = 0; i < widths.length; i++) {
            double here = asked.get(i).whole() / widths[i];
            if (widths[i] < asked.get(i).most() && here > lines) {
                found = i;
                lines = here;
            }
        }
        return found;
    }

    /** Gives a sheet its columns, and its pages as many of them as are needed. */
    public void set(Sheet sheet) {
        int[] wide = widths();
        int sum = 0;
        for (int i = 0; i < wide.length; i++) {
            sheet.setColumnWidth(i, wide[i] * 256);
            sum += wide[i];
        }
        if (sum <= MOST) {
            PrintedPage.fitWidth(sheet);
            return;
        }
        sheet.getPrintSetup().setScale((short) PERCENT);
        sheet.setRepeatingColumns(CellRangeAddress.valueOf("A:A"));
        int used = wide[0];
        for (int i = 1; i < wide.length; i++) {
            if (used + wide[i] > EACH_PAGE) {
                sheet.setColumnBreak(i - 1);
                used = wide[0];
            }
            used += wide[i];
        }
    }

    /**
     * Height of a row whose cells are wrapped, points, at most what a spreadsheet allows.
     *
     * @param cells what stands in it, a text for each column
     * @param bold  whether they are bold
     */
    public float height(List<String> cells, boolean bold) {
        int[] wide = widths();
        int lines = 1;
        for (int i = 0; i < cells.size(); i++) {
            if (!cells.get(i).isEmpty()) {
                lines = Math.max(lines, TextMeasure.lines(cells.get(i), wide[i] - asked.get(i).indent(), bold).size());
            }
        }
        return Math.min(HIGHEST, lines * LINE + PADDING);
    }
}
