package org.copperbook.desk.grid;

import java.util.List;
import java.util.stream.Collectors;
import org.copperbook.sheets.page.CellText;

/**
 * Cells on their way to the clipboard. What a spreadsheet would take for a formula goes there as text.
 *
 * @param rows rows of texts
 */
public record CopiedBlock(List<List<String>> rows) {

    /** Text with tabs, as spreadsheets take it. */
    public String text() {
        return rows.stream().map(r -> r.stream().map(CopiedBlock::tabbed).collect(Collectors.joining("\t")))
                .collect(Collectors.joining("\n"));
    }

    /** An HTML table, as word processors and mail take it. */
    public String html() {
        StringBuilder b = new StringBuilder("<table>");
        for (List<String> r : rows) {
            b.append("<tr>");
            for (String cell : r) {
                String c = CellText.neutral(cell);
                b.append("<td>").append(c.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;"))
                        .append("</td>");
            }
            b.append("</tr>");
        }
        return b.append("</table>").toString();
    }

    /** Comma-separated values (RFC 4180). */
    public String csv() {
        return rows.stream().map(r -> r.stream().map(CopiedBlock::quoted).collect(Collectors.joining(",")))
                .collect(Collectors.joining("\r\n"));
    }

    private static String tabbed(String text) {
        String cell = CellText.neutral(text);
        return cell.matches("(?s).*[\\t\\n\\r].*") ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell;
    }

    private static String quoted(String text) {
        String cell = CellText.neutral(text);
        return cell.matches("(?s).*[\",\\n\\r].*") ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell;
    }
}
