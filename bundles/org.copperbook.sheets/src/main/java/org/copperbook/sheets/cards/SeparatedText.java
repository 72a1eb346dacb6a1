package org.copperbook.sheets.cards;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;

/**
 * Splits text into rows and cells by RFC 4180. Our own few lines because the libraries put no bound on a cell, so that
 * one forgotten quotation mark makes them read the rest of a file into memory.
 */
final class SeparatedText {

    private static final int END = -1;

    private final Reader in;
    private final char separator;
    private final StringBuilder cell = new StringBuilder();
    private int line = 1;

    SeparatedText(Reader in, char separator) {
        this.in = in;
        this.separator = separator;
    }

    void rows(CardTable.Rows to) throws IOException, UnreadableTableException {
        List<TableCell> cells = new ArrayList<>();
        int seen = 0;
        int first = line;
        int c = next();
        if (c == 0xFEFF) {
            c = next();
        }
        while (c != END) {
            first = line;
            c = row(c, cells);
            TableRow row = new TableRow(first, cells);
            cells.clear();
            if (!row.isBlank()) {
                if (++seen > TableLimits.ROWS) {
                    throw new UnreadableTableException(CardWords.say("file.rows", TableLimits.ROWS));
                }
                if (!to.take(row)) {
                    return;
                }
            }
        }
    }

    /** Reads a row whose first character is given; returns the first one of the next. */
    private int row(int start, List<TableCell> cells) throws IOException, UnreadableTableException {
        int c = start;
        while (true) {
            cell.setLength(0);
            c = c == '"' ? quoted() : c;
            while (c != END && c != separator && c != '\n' && c != '\r') {
                add(c);
                c = next();
            }
            if (cells.size() >= TableLimits.COLUMNS) {
                throw new UnreadableTableException(CardWords.say("file.columns", line, TableLimits.COLUMNS));
            }
            cells.add(TableCell.text(cell.toString().strip()));
            if (c == END) {
                return END;
            }
            if (c != separator) {
                int after = next();
                if (c == '\r' && after == '\n') {
                    after = next();
                }
                line++;
                return after;
            }
            c = next();
        }
    }

    /** Reads to the closing mark; returns the character after it. */
    private int quoted() throws IOException, UnreadableTableException {
        int opened = line;
        while (true) {
            int c = next();
            if (c == END) {
                throw new UnreadableTableException(CardWords.say("text.quote", opened));
            }
            if (c == '"') {
                int after = next();
                if (after != '"') {
                    return after;
                }
            }
            if (c == '\n') {
                line++;
            }
            if (cell.length() >= TableLimits.CELL) {
                throw new UnreadableTableException(CardWords.say("text.quote", opened));
            }
            cell.append((char) c);
        }
    }

    private void add(int c) throws UnreadableTableException {
        if (cell.length() >= TableLimits.CELL) {
            throw new UnreadableTableException(CardWords.say("file.cell", line, TableLimits.CELL));
        }
        cell.append((char) c);
    }

    private int next() throws IOException {
        return in.read();
    }
}
