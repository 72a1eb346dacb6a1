package org.copperbook.sheets.registers;

/**
 * Why a row is not taken in.
 *
 * @param row    row in the file, from 1
 * @param cell   the cell as spreadsheets name it ("C5"); empty for the row as a whole
 * @param column title of the column; empty for the row as a whole
 * @param text   what stands there, may be empty
 * @param reason what is wrong and what would be right, in words
 */
public record RefusedCell(int row, String cell, String column, String text, String reason) {

    /** All of it in one line. */
    public String inWords() {
        if (cell.isEmpty()) {
            return RegisterWords.say("refused.row", Integer.toString(row), reason);
        }
        return text.isEmpty() ? RegisterWords.say("refused.empty", cell, column, reason)
                : RegisterWords.say("refused.cell", cell, column, text, reason);
    }
}
