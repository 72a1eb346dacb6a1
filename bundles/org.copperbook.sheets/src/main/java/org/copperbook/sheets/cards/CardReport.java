package org.copperbook.sheets.cards;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.sheets.page.AtomicFile;
import org.copperbook.sheets.page.CellText;

/**
 * The rows of an import that are not in, with the reason for each, as a file: a workbook when the name ends in xlsx,
 * else text with commas.
 */
public final class CardReport {

    /**
     * One line.
     *
     * @param row    row of the table
     * @param column title of the column, may be empty
     * @param text   what stands there, may be empty
     * @param reason why the row is not in
     */
    public record Line(int row, String column, String text, String reason) {
    }

    private final List<Line> lines;

    public CardReport(List<Line> lines) {
        this.lines = List.copyOf(lines);
    }

    /** Writes it, whole or not at all. */
    public void write(Path file) throws WorkbookNotWrittenException {
        boolean workbook = file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".xlsx");
        new AtomicFile(file).write(workbook ? this::workbook : this::text);
    }

    private static List<String> titles() {
        return List.of(CardWords.text("report.row"), CardWords.text("report.column"), CardWords.text("report.text"),
                CardWords.text("report.reason"));
    }

    private void workbook(OutputStream out) throws IOException {
        try (SXSSFWorkbook book = new SXSSFWorkbook(100)) {
            SXSSFSheet sheet = book.createSheet(CardWords.text("report.sheet"));
            sheet.setColumnWidth(1, 24 * 256);
            sheet.setColumnWidth(2, 24 * 256);
            sheet.setColumnWidth(3, 90 * 256);
            sheet.createFreezePane(0, 1);
            Row head = sheet.createRow(0);
            for (int i = 0; i < titles().size(); i++) {
                head.createCell(i).setCellValue(titles().get(i));
            }
            int at = 1;
            for (Line line : lines) {
                Row row = sheet.createRow(at++);
                row.createCell(0).setCellValue(line.row());
                row.createCell(1).setCellValue(CellText.storable(line.column()));
                row.createCell(2).setCellValue(CellText.storable(line.text()));
                row.createCell(3).setCellValue(CellText.storable(line.reason()));
            }
            book.write(out);
        }
    }

    private void text(OutputStream out) throws IOException {
        Writer to = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        to.write('\uFEFF');
        to.write(String.join(",", titles().stream().map(CardReport::quoted).toList()) + "\r\n");
        for (Line line : lines) {
            to.write(line.row() + "," + quoted(line.column()) + "," + quoted(line.text()) + ","
                    + quoted(line.reason()) + "\r\n");
        }
        to.flush();
    }

    /** Quoted for any reader; what a spreadsheet would take for a formula gets a mark before it. */
    private static String quoted(String text) {
        String safe = text.matches("(?s)[=+@\\t\\r-].*") ? "'" + text : text;
        return "\"" + safe.replace("\"", "\"\"") + "\"";
    }
}
