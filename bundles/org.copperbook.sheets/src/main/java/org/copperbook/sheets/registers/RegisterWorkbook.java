package org.copperbook.sheets.registers;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.copperbook.jobs.shop.Workshop;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.sheets.page.AtomicFile;
import org.copperbook.sheets.page.CellText;
import org.copperbook.sheets.page.Letterhead;
import org.copperbook.sheets.page.ListColumns;
import org.copperbook.sheets.page.PrintedPage;

/**
 * A register as a plain workbook that can be taken in again: titles, one row each, texts as texts, dates as dates. What says
 * whose list it is and of which day stands at the head of the printed pages, so that the titles stay the first row.
 */
public final class RegisterWorkbook {

    /**
     * A text to be seen first, in a column that is not taken in again.
     *
     * @param text the warning in words
     */
    public record Warning(String text) {

        @Override
        public String toString() {
            return text;
        }
    }

    private static final int KEPT_ROWS = 100;

    private final RegisterShape shape;
    private final Workshop workshop;
    private final LocalDate asOf;

    /**
     * @param workshop whose list it is
     * @param asOf     the day of which it is
     */
    public RegisterWorkbook(RegisterShape shape, Workshop workshop, LocalDate asOf) {
        this.shape = shape;
        this.workshop = workshop;
        this.asOf = asOf;
    }

    /**
     * Writes rows over the target, as a whole or not at all.
     *
     * @param rows values by the keys of the columns, as {@link RegisterRow#values} has them, or a {@link Warning}
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
        ListStyles styles = new ListStyles(book);
        Sheet sheet = book.createSheet(WorkbookUtil.createSafeSheetName(CellText.storable(shape.name())));
        sheet.createFreezePane(1, 1);
        sheet.setRepeatingRows(CellRangeAddress.valueOf("1:1"));
        boolean demo = Boolean.TRUE.equals(workshop.demo());
        PrintedPage.set(sheet, new Letterhead(workshop.name(), RegisterWords.say("page.asOf", shape.name(), asOf.toString()),
                RegisterWords.raw("page.of"), demo ? RegisterWords.say("page.demo") : ""), true);
        ListColumns columns = new ListColumns();
        for (RegisterField field : shape.fields()) {
            columns.add(field.label(), cells(field),
                    () -> rows.stream().map(r -> shown(field, r.get(field.key()))).iterator());
        }
        columns.set(sheet);
        Row head = sheet.createRow(0);
        List<String> titles = shape.fields().stream().map(RegisterField::label).toList();
        head.setHeightInPoints(columns.height(titles, true));
        for (int i = 0; i < titles.size(); i++) {
            put(head, i, CellText.storable(titles.get(i)), cells(shape.fields().get(i)) == ListColumns.Cells.NUMBER
                    ? styles.numberHead() : styles.head());
        }
        int at = 1;
        for (Map<String, Object> values : rows) {
            Row row = sheet.createRow(at++);
            row.setHeightInPoints(columns.height(shape.fields().stream().map(f -> shown(f, values.get(f.key()))).toList(),
                    false));
            for (int i = 0; i < shape.fields().size(); i++) {
                RegisterField field = shape.fields().get(i);
                put(row, i, field, values.get(field.key()), styles);
            }
        }
    }

    private static ListColumns.Cells cells(RegisterField field) {
        return switch (field.kind()) {
            case TEXT -> ListColumns.Cells.TEXT;
            case NUMBER, WHOLE -> ListColumns.Cells.NUMBER;
            case DATE, CHOICE -> ListColumns.Cells.WORD;
        };
    }

    private static void put(Row row, int column, RegisterField field, Object value, ListStyles styles) {
        if (value instanceof BigDecimal n) {
            Cell cell = row.createCell(column);
            cell.setCellValue(n.doubleValue());
            cell.setCellStyle(styles.number());
        } else if (value instanceof LocalDate d) {
            Cell cell = row.createCell(column);
            cell.setCellValue(d);
            cell.setCellStyle(styles.date());
        } else if (value instanceof Warning w) {
            put(row, column, CellText.storable(w.text()), styles.warning());
        } else if (value != null) {
            String shown = CellText.storable(shown(field, value));
            put(row, column, shown, styles.text(!CellText.neutral(shown).equals(shown), CellText.isFromTheRight(shown)));
        } else {
            row.createCell(column).setCellStyle(styles.text(false, false));
        }
    }

    private static void put(Row row, int column, String text, CellStyle style) {
        Cell cell = row.createCell(column);
        cell.setCellValue(text);
        cell.setCellStyle(style);
    }

    /** What people read in the cell: of a choice its first word. */
    private static String shown(RegisterField field, Object value) {
        if (value == null) {
            return "";
        }
        if (value instanceof BigDecimal n) {
            return n.toPlainString();
        }
        return field.kind() != RegisterField.Kind.CHOICE ? value.toString() : field.choices().entrySet().stream()
                .filter(e -> e.getValue().equals(value)).map(Map.Entry::getKey).findFirst().orElse(value.toString());
    }
}
