package org.copperbook.sheets.registers;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.sheets.page.AtomicFile;
import org.copperbook.sheets.page.CellText;

/** A register as a plain workbook that can be taken in again: titles, one row each, texts as texts, dates as dates. */
public final class RegisterWorkbook {

    private static final int KEPT_ROWS = 100;
    private static final int WIDEST = 60;
    private static final int MARGIN = 3;
    private static final int DIGIT = 256;

    private final RegisterShape shape;

    public RegisterWorkbook(RegisterShape shape) {
        this.shape = shape;
    }

    /**
     * Writes rows over the target, as a whole or not at all.
     *
     * @param rows values by the keys of the columns, as {@link RegisterRow#values} has them
     * @throws WorkbookNotWrittenException when the target cannot be replaced
     */
    public void write(List<Map<String, Object>> rows, Path target) throws WorkbookNotWrittenException {
        new AtomicFile(target).write(out -> {
            try (SXSSFWorkbook book = new SXSSFWorkbook(KEPT_ROWS)) {
                fill(book, rows);
                book.write(out);
            }
        });
    }

    private void fill(SXSSFWorkbook book, List<Map<String, Object>> rows) {
        Sheet sheet = book.createSheet(WorkbookUtil.createSafeSheetName(CellText.storable(shape.name())));
        CellStyle bold = book.createCellStyle();
        Font font = book.createFont();
        font.setBold(true);
        bold.setFont(font);
        CellStyle date = book.createCellStyle();
        date.setDataFormat(book.createDataFormat().getFormat("yyyy-mm-dd"));
        CellStyle text = book.createCellStyle();
        text.setQuotePrefixed(true);
        sheet.createFreezePane(0, 1);
        sheet.setRepeatingRows(CellRangeAddress.valueOf("1:1"));
        sheet.getPrintSetup().setLandscape(true);
        sheet.getPrintSetup().setPaperSize(org.apache.poi.ss.usermodel.PrintSetup.A4_PAPERSIZE);
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setFitHeight((short) 0);
        Row head = sheet.createRow(0);
        for (int i = 0; i < shape.fields().size(); i++) {
            RegisterField field = shape.fields().get(i);
            Cell cell = head.createCell(i);
            cell.setCellValue(CellText.storable(field.label()));
            cell.setCellStyle(bold);
            int widest = rows.stream().mapToInt(r -> shown(field, r.get(field.key())).length()).max().orElse(0);
            sheet.setColumnWidth(i, DIGIT * (MARGIN + Math.min(WIDEST, Math.max(widest, field.label().length()))));
        }
        int at = 1;
        for (Map<String, Object> values : rows) {
            Row row = sheet.createRow(at++);
            for (int i = 0; i < shape.fields().size(); i++) {
                RegisterField field = shape.fields().get(i);
                put(row, i, field, values.get(field.key()), date, text);
            }
        }
    }

    private static void put(Row row, int column, RegisterField field, Object value, CellStyle date, CellStyle text) {
        if (value instanceof BigDecimal n) {
            row.createCell(column).setCellValue(n.doubleValue());
        } else if (value instanceof LocalDate d) {
            Cell cell = row.createCell(column);
            cell.setCellValue(d);
            cell.setCellStyle(date);
        } else if (value != null) {
            String shown = CellText.storable(shown(field, value));
            Cell cell = row.createCell(column);
            cell.setCellValue(shown);
            if (!CellText.neutral(shown).equals(shown)) {
                cell.setCellStyle(text);
            }
        }
    }

    /** What people read in the cell: of a choice its first word. */
    private static String shown(RegisterField field, Object value) {
        if (value == null) {
            return "";
        }
        return field.kind() != RegisterField.Kind.CHOICE ? value.toString() : field.choices().entrySet().stream()
                .filter(e -> e.getValue().equals(value)).map(Map.Entry::getKey).findFirst().orElse(value.toString());
    }
}
