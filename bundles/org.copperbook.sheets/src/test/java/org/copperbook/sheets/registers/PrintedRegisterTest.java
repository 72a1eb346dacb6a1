package org.copperbook.sheets.registers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.ReadingOrder;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.copperbook.jobs.shop.Workshop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A register on paper. A4 is 297 mm wide (ISO 216) and an inch 25.4 mm; a column is as wide as its digits of the base font, 7
 * pixels of 1/96 inch each in Arial 10 (common practice of spreadsheets, no source).
 */
class PrintedRegisterTest {

    static final Workshop WORKSHOP = new Workshop(1, "Tidewater Rewinds & Sons", "", "EUR", null, 20.0, 235.0, 1.0, null, true,
            null, Map.of());

    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final double PAPER_INCHES = 297 / 25.4;
    private static final double POINTS = 10;

    @TempDir
    Path folder;

    private XSSFSheet written(RegisterShape shape, List<Map<String, Object>> rows) throws Exception {
        Path file = folder.resolve("list.xlsx");
        new RegisterWorkbook(shape, WORKSHOP, DAY).write(rows, file);
        try (XSSFWorkbook book = new XSSFWorkbook(file.toString())) {
            return book.getSheetAt(0);
        }
    }

    private static RegisterShape texts(int columns) {
        return new RegisterShape("Shelf", IntStream.range(0, columns)
                .mapToObj(i -> RegisterField.text("c" + i, "Column " + i, "")).toList(), List.of());
    }

    private static Map<String, Object> row(int columns, String text) {
        Map<String, Object> row = new LinkedHashMap<>();
        IntStream.range(0, columns).forEach(i -> row.put("c" + i, text));
        return row;
    }

    private static double inches(XSSFSheet sheet, int from, int to) {
        return IntStream.range(from, to).mapToDouble(i -> sheet.getColumnWidth(i) / 256.0 * 7 / 96).sum();
    }

    private static double room(XSSFSheet sheet) {
        return PAPER_INCHES - sheet.getMargin(org.apache.poi.ss.usermodel.PageMargin.LEFT)
                - sheet.getMargin(org.apache.poi.ss.usermodel.PageMargin.RIGHT);
    }

    @Test
    void aListOfManyLongTextsIsOnePageWideInReadableType() throws Exception {
        int columns = 14;
        XSSFSheet sheet = written(texts(columns), List.of(row(columns, "the spare bridge for the test bay, on loan until spring")));
        assertEquals(PrintSetup.A4_PAPERSIZE, sheet.getPrintSetup().getPaperSize());
        assertTrue(sheet.getPrintSetup().getLandscape());
        assertTrue(sheet.getFitToPage());
        assertEquals(1, sheet.getPrintSetup().getFitWidth());
        assertEquals(0, sheet.getPrintSetup().getFitHeight(), "as many pages high as it takes");
        double scale = Math.min(1, room(sheet) / inches(sheet, 0, columns));
        assertTrue(scale * POINTS >= 7, "type of " + scale * POINTS + " points");
        XSSFCell cell = sheet.getRow(1).getCell(3);
        assertTrue(cell.getCellStyle().getWrapText());
        // 55 characters in a column of under 20 take three lines or more, of 10 points each
        assertTrue(sheet.getColumnWidth(3) / 256 < 20);
        assertTrue(sheet.getColumnWidth(3) / 256 > "Column 3".length());
        assertTrue(sheet.getRow(1).getHeightInPoints() > 3 * POINTS, "the row is high enough for its lines");
        assertEquals(10, cell.getCellStyle().getFont().getFontHeightInPoints());
    }

    @Test
    void namesInArabicAndHebrewAreMarkedAsReadFromTheRightAndNothingElseIs() throws Exception {
        String arabic = "\u0645\u062d\u0645\u0644 6312.";
        String hebrew = "-\u05de\u05e0\u05d5\u05e2";
        XSSFSheet sheet = written(texts(1), List.of(row(1, arabic), row(1, hebrew), row(1, "bearing 6312."), row(1, "-x"),
                row(1, null)));
        assertEquals(ReadingOrder.RIGHT_TO_LEFT, sheet.getRow(1).getCell(0).getCellStyle().getReadingOrder());
        assertEquals(ReadingOrder.RIGHT_TO_LEFT, sheet.getRow(2).getCell(0).getCellStyle().getReadingOrder());
        assertTrue(sheet.getRow(2).getCell(0).getCellStyle().getQuotePrefixed(), "and stays a text as well");
        for (int row : new int[] {0, 3, 4, 5}) {
            assertEquals(ReadingOrder.CONTEXT, sheet.getRow(row).getCell(0).getCellStyle().getReadingOrder(), "row " + row);
        }
        assertFalse(sheet.getRow(1).getCell(0).getCellStyle().getQuotePrefixed());
        assertEquals(arabic, sheet.getRow(1).getCell(0).getStringCellValue(), "no mark is put into the text itself");
    }

    @Test
    void aListTooWideForThatGoesOverPagesWithItsFirstColumnOnEach() throws Exception {
        int columns = 30;
        XSSFSheet sheet = written(texts(columns), List.of(row(columns, "unbreakable-as-a-word")));
        assertFalse(sheet.getFitToPage());
        double scale = sheet.getPrintSetup().getScale() / 100.0;
        assertTrue(scale * POINTS >= 7, "type of " + scale * POINTS + " points");
        assertEquals("A:A", sheet.getRepeatingColumns().formatAsString());
        int from = 0;
        List<Integer> ends = new ArrayList<>(IntStream.of(sheet.getColumnBreaks()).boxed().toList());
        ends.add(columns - 1);
        assertTrue(ends.size() > 1);
        for (int end : ends) {
            double wide = inches(sheet, from, end + 1) + (from == 0 ? 0 : inches(sheet, 0, 1));
            assertTrue(wide * scale <= room(sheet), "columns " + from + " to " + end + " are " + wide * scale + " inches wide");
            from = end + 1;
        }
    }

    @Test
    void numbersAndDatesAreNeverCutOffHoweverNarrowTheListBecomes() throws Exception {
        List<RegisterField> fields = new ArrayList<>(texts(12).fields());
        fields.add(RegisterField.number("n", "N", "", null, null));
        fields.add(RegisterField.date("d", "D", ""));
        Map<String, Object> row = row(12, "words that can be wrapped between one another as often as needed");
        row.put("n", new BigDecimal("123456789.125"));
        row.put("d", DAY);
        XSSFSheet sheet = written(new RegisterShape("Shelf", fields, List.of()), List.of(row));
        assertTrue(sheet.getColumnWidth(12) / 256 > "123456789.125".length());
        assertEquals(HorizontalAlignment.RIGHT, sheet.getRow(0).getCell(12).getCellStyle().getAlignment(),
                "the title stands over its numbers");
        assertTrue(sheet.getColumnWidth(13) / 256 > "2026-03-02".length());
    }

    /** LibreOffice sets this head, indented as its numbers are, on four lines; one of Arial is 1.15 of its size high (from memory). */
    @Test
    void theHeadOfANumberColumnIsSeenWholeBesideTheIndentThatItsNumbersHave() throws Exception {
        List<RegisterField> fields = new ArrayList<>(texts(3).fields());
        Map<String, Object> row = row(2, "separate-excitation");
        row.put("c2", "With a battery on the exciter field, what is the output? within 10 %, phases equal");
        for (String title : List.of("main stator", "main rotor", "exciter stator", "exciter rotor", "rotating rectifier",
                "surge suppressor", "regulator or its supply", "lost residual field", "wiring and sensing",
                "speed of the prime mover")) {
            fields.add(RegisterField.number(title, title, "", null, null));
            row.put(title, BigDecimal.ONE);
        }
        XSSFSheet sheet = written(new RegisterShape("Shelf", fields, List.of()), List.of(row));
        assertEquals(1, sheet.getRow(0).getCell(12).getCellStyle().getIndention());
        assertTrue(sheet.getRow(0).getHeightInPoints() > 4 * 1.15 * POINTS, "head of " + sheet.getRow(0).getHeightInPoints());
    }

    @Test
    void everyPageSaysWhoseListItIsAndOfWhichDayAndHasTheTitles() throws Exception {
        XSSFSheet sheet = written(texts(3), List.of(row(3, "x")));
        assertEquals("Tidewater Rewinds && Sons", sheet.getHeader().getLeft());
        assertEquals("Shelf, as of 2026-03-02", sheet.getHeader().getRight());
        assertEquals("Page &P of &N", sheet.getFooter().getRight());
        assertEquals("DEMO: invented data", sheet.getFooter().getLeft());
        assertEquals("$1:$1", "$" + sheet.getRepeatingRows().formatAsString().replace(":", ":$"));
        assertEquals(1, sheet.getPaneInformation().getHorizontalSplitPosition());
        assertEquals(1, sheet.getPaneInformation().getVerticalSplitPosition());
    }

    @Test
    void aWarningStandsOutInWordAndInPrintAndIsNotTakenIn() throws Exception {
        RegisterShape in = new RegisterShape("Shelf", List.of(RegisterField.text("c0", "Id", ""),
                RegisterField.date("due", "Runs out on", "calibration due")), List.of());
        List<RegisterField> fields = new ArrayList<>(in.fields());
        fields.add(RegisterField.text("state", "Calibration", ""));
        Map<String, Object> row = row(1, "B1");
        row.put("due", LocalDate.of(2026, 1, 5));
        row.put("state", new RegisterWorkbook.Warning("overdue since 2026-01-05"));
        XSSFSheet sheet = written(new RegisterShape("Shelf", fields, List.of()), List.of(row));
        XSSFCell cell = sheet.getRow(1).getCell(2);
        assertEquals("overdue since 2026-01-05", cell.getStringCellValue());
        assertTrue(cell.getCellStyle().getFont().getBold(), "seen without colour too");
        assertEquals("FFB01414", cell.getCellStyle().getFont().getXSSFColor().getARGBHex());
        RegisterReading<RegisterRow> back = RegisterImport.open(folder.resolve("list.xlsx"), in).read(r -> r, n -> true);
        assertEquals(List.of(), back.refused());
        assertEquals(List.of(Map.of("c0", "B1", "due", LocalDate.of(2026, 1, 5))),
                back.values().stream().map(RegisterRow::values).toList());
    }
}
