package org.copperbook.desk.grid;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.sheets.page.CellText;

/**
 * Cells as they come from a spreadsheet's clipboard: lines of texts parted by tabs, a text in double quotes may hold
 * tabs, line ends and doubled quotes.
 *
 * @param rows rows of cells; rows may differ in length
 */
public record PastedBlock(List<List<String>> rows) {

    public PastedBlock {
        rows = rows.stream().map(r -> r.stream().map(CellText::plain).toList()).toList();
    }

    /** Reads clipboard text. A line end at the very end is not a row. */
    public static PastedBlock parse(String text) {
        List<List<String>> rows = new ArrayList<>();
        List<String> row = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        int i = 0;
        boolean any = false;
        while (i < text.length()) {
            char c = text.charAt(i);
            if (c == '"' && cell.isEmpty() && closes(text, i)) {
                i = quoted(text, i, cell);
                any = true;
                continue;
            }
            if (c == '\t') {
                row.add(cell.toString());
                cell.setLength(0);
                any = true;
            } else if (c == '\n' || c == '\r') {
                if (c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n') {
                    i++;
                }
                row.add(cell.toString());
                cell.setLength(0);
                rows.add(row);
                row = new ArrayList<>();
                any = false;
            } else {
                cell.append(c);
                any = true;
            }
            i++;
        }
        if (any) {
            row.add(cell.toString());
            rows.add(row);
        }
        return new PastedBlock(rows);
    }

    /** A quote opens a quoted cell only when its partner ends the cell; an inch mark at the front does not. */
    private static boolean closes(String text, int open) {
        int i = open + 1;
        while (i < text.length()) {
            if (text.charAt(i) == '"') {
                if (i + 1 < text.length() && text.charAt(i + 1) == '"') {
                    i += 2;
                    continue;
                }
                return i + 1 == text.length() || "\t\r\n".indexOf(text.charAt(i + 1)) >= 0;
            }
            i++;
        }
        return false;
    }

    private static int quoted(String text, int open, StringBuilder cell) {
        int i = open + 1;
        while (i < text.length()) {
            char c = text.charAt(i);
            if (c == '"') {
                if (i + 1 < text.length() && text.charAt(i + 1) == '"') {
                    cell.append('"');
                    i += 2;
                    continue;
                }
                return i + 1;
            }
            cell.append(c);
            i++;
        }
        return i;
    }
}
