package org.copperbook.desk.grid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.copperbook.sheets.page.CellText;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.HTMLTransfer;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/**
 * Cells on their way to the clipboard. What a spreadsheet would take for a formula goes there as text.
 *
 * @param rows rows of texts
 */
public record CopiedBlock(List<List<String>> rows) {

    /** A table as it is shown, headings first, without a last column that has no heading and only takes room. */
    public static CopiedBlock of(Table table) {
        int all = table.getColumnCount();
        int columns = all > 0 && table.getColumn(all - 1).getText().isEmpty() ? all - 1 : all;
        List<List<String>> rows = new ArrayList<>();
        rows.add(Arrays.stream(table.getColumns()).limit(columns).map(TableColumn::getText).toList());
        for (TableItem item : table.getItems()) {
            rows.add(IntStream.range(0, columns).mapToObj(item::getText).toList());
        }
        return new CopiedBlock(rows);
    }

    /** Puts it on the clipboard in every form that programs may ask for. */
    public void toClipboard(Display display) {
        if (text().isEmpty()) {
            return;
        }
        Clipboard clipboard = new Clipboard(display);
        try {
            clipboard.setContents(new Object[] {text(), html(), csv()}, new Transfer[] {TextTransfer.getInstance(),
                    HTMLTransfer.getInstance(), CsvTransfer.getInstance()});
        } finally {
            clipboard.dispose();
        }
    }

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
