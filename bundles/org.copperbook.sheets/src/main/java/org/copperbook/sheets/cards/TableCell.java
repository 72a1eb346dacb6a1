package org.copperbook.sheets.cards;

/**
 * One cell.
 *
 * @param text what it holds; a number with a dot, a date as year-month-day
 * @param kind what the file says it is
 */
public record TableCell(String text, Kind kind) {

    /** A cell that holds nothing. */
    public static final TableCell EMPTY = new TableCell("", Kind.TEXT);

    /** What the file says a cell is. */
    public enum Kind {
        /** Text, to be read as people write. */
        TEXT,
        /** A number of the workbook, always with a dot. */
        NUMBER,
        /** A number that the workbook shows as a date. */
        DATE,
        /** An error of a formula, or a formula without a kept result; the text says which. */
        BROKEN
    }

    static TableCell text(String text) {
        return text.isEmpty() ? EMPTY : new TableCell(text, Kind.TEXT);
    }
}
