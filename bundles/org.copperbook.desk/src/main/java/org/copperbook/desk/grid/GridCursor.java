package org.copperbook.desk.grid;

/**
 * Where the cursor of a grid stands and which block of cells is marked: the block spans from the anchor to the cursor.
 *
 * @param row          row of the cursor
 * @param column       column of the cursor
 * @param anchorRow    row where marking began
 * @param anchorColumn column where marking began
 */
record GridCursor(int row, int column, int anchorRow, int anchorColumn) {

    static GridCursor at(int row, int column) {
        return new GridCursor(row, column, row, column);
    }

    /** The cursor moved inside a grid; with {@code mark} the anchor stays. */
    GridCursor moved(int rows, int columns, boolean mark, int rowCount, int columnCount) {
        int r = Math.max(0, Math.min(rowCount - 1, row + rows));
        int c = Math.max(0, Math.min(columnCount - 1, column + columns));
        return mark ? new GridCursor(r, c, anchorRow, anchorColumn) : at(r, c);
    }

    int top() {
        return Math.min(row, anchorRow);
    }

    int bottom() {
        return Math.max(row, anchorRow);
    }

    int left() {
        return Math.min(column, anchorColumn);
    }

    int right() {
        return Math.max(column, anchorColumn);
    }

    boolean marks(int r, int c) {
        return r >= top() && r <= bottom() && c >= left() && c <= right();
    }

    boolean isBlock() {
        return row != anchorRow || column != anchorColumn;
    }
}
