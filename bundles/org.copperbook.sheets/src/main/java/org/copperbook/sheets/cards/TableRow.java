package org.copperbook.sheets.cards;

import java.util.List;

/**
 * One row of a table as it stands in the file.
 *
 * @param number row number in the file, from 1, as a spreadsheet or an editor counts it
 * @param cells  its cells; empty cells at the end may be missing
 */
public record TableRow(int number, List<TableCell> cells) {

    public TableRow {
        cells = List.copyOf(cells);
    }

    /** The cell of a column from 0; an empty one when the row is shorter. */
    public TableCell cell(int column) {
        return column < cells.size() ? cells.get(column) : TableCell.EMPTY;
    }

    /** Whether no cell says anything. */
    public boolean isBlank() {
        return cells.stream().allMatch(c -> c.text().isBlank() && c.kind() != TableCell.Kind.BROKEN);
    }
}
