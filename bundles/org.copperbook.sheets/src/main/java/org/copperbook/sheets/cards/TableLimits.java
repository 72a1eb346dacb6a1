package org.copperbook.sheets.cards;

/** Bounds beyond which a file is refused, so that no file, made with whatever intent, takes the program's memory. */
final class TableLimits {

    /** Rows read from one sheet or file. */
    static final int ROWS = 50_000;
    /** Columns read; what stands further right is refused. */
    static final int COLUMNS = 256;
    /** Longest text of a cell, that of a spreadsheet. */
    static final int CELL = 32_767;
    /** Longest file. */
    static final long FILE_BYTES = 200L << 20;
    /** Most that one entry of a workbook may unpack to. */
    static final long ENTRY_BYTES = 512L << 20;
    /** Most that the shared texts of a workbook may unpack to. */
    static final long TEXT_BYTES = 64L << 20;

    private TableLimits() {
    }
}
