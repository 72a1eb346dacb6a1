package org.copperbook.sheets.cards;

import java.util.List;
import org.copperbook.calc.quantity.DecimalMark;

/**
 * How a file is to be read.
 *
 * @param sheet     name of the sheet of a workbook; empty for a text file
 * @param encoding  name of the character set of a text file; empty for a workbook
 * @param separator character between the columns of a text file
 * @param decimal   decimal mark of numbers written as text
 * @param headerRow row of the column titles, from 1; 0 when the table has none
 */
public record TableFormat(String sheet, String encoding, char separator, DecimalMark decimal, int headerRow) {

    /** Character sets offered for text files. */
    public static final List<String> ENCODINGS = List.of("UTF-8", "windows-1252", "ISO-8859-15", "windows-1250",
            "IBM850", "UTF-16LE", "UTF-16BE");

    /** Separators offered for text files. */
    public static final List<Character> SEPARATORS = List.of(';', ',', '\t', '|');

    public TableFormat withHeaderRow(int row) {
        return new TableFormat(sheet, encoding, separator, decimal, row);
    }

    public TableFormat withDecimal(DecimalMark mark) {
        return new TableFormat(sheet, encoding, separator, mark, headerRow);
    }

    public TableFormat withSheet(String name) {
        return new TableFormat(name, encoding, separator, decimal, headerRow);
    }

    public TableFormat withEncoding(String name) {
        return new TableFormat(sheet, name, separator, decimal, headerRow);
    }

    public TableFormat withSeparator(char sign) {
        return new TableFormat(sheet, encoding, sign, decimal, headerRow);
    }
}
