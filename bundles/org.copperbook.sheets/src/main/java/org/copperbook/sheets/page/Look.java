package org.copperbook.sheets.page;

/** How a cell looks. Black on white throughout; weight and rules carry the structure. */
public enum Look {
    TITLE, HEADING, TEXT, LABEL, STRONG, TABLE_HEAD, TABLE_CELL, TABLE_STRONG, TOTAL, NOTE, WRITE_HERE, WARNING
}
