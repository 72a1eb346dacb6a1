package org.copperbook.sheets.cards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.copperbook.calc.quantity.DecimalMark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables of any making are read as they are or refused with a clear line. */
class CardTableTest {

    @TempDir
    Path folder;

    private Path text(String name, String content, Charset charset) throws IOException {
        return Files.write(folder.resolve(name), content.getBytes(charset));
    }

    private Path book(XSSFWorkbook book) throws IOException {
        Path file = folder.resolve("book.xlsx");
        try (OutputStream out = Files.newOutputStream(file); book) {
            book.write(out);
        }
        return file;
    }

    private static List<TableRow> rows(Path file) throws UnreadableTableException {
        CardTable table = CardTable.open(file);
        List<TableRow> rows = new ArrayList<>();
        table.read(table.detected(), rows::add);
        return rows;
    }

    private static List<String> texts(TableRow row) {
        return row.cells().stream().map(TableCell::text).toList();
    }

    private String refusal(Path file) {
        return assertThrows(UnreadableTableException.class, () -> rows(file)).getMessage();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '!', value = {"UTF-8!;", "windows-1252!;", "UTF-8!,", "windows-1252!\t", "UTF-16LE!;",
        "UTF-16BE!|"})
    void encodingAndSeparatorAreFound(String encoding, String sign) throws Exception {
        String sep = sign == null ? "\t" : sign;
        String content = String.join(sep, "Nr", "Gr\u00f6\u00dfe", "Nuten") + "\r\n"
                + String.join(sep, "1", "M\u00fcller", "48") + "\r\n" + String.join(sep, "2", "x", "36") + "\r\n";
        Path file = text("t.csv", content, Charset.forName(encoding));
        TableFormat format = CardTable.open(file).detected();
        assertEquals(encoding, format.encoding());
        assertEquals(sep, String.valueOf(format.separator()));
        assertEquals(List.of("Nr", "Gr\u00f6\u00dfe", "Nuten"), texts(rows(file).get(0)));
    }

    @Test
    void aByteOrderMarkIsNoPartOfTheFirstTitle() throws Exception {
        assertEquals("Slots", rows(text("t.csv", "\uFEFFSlots;Poles\n48;4\n", StandardCharsets.UTF_8)).get(0).cell(0)
                .text());
    }

    @Test
    void theDecimalMarkIsFoundFromTheNumbers() throws Exception {
        assertEquals(DecimalMark.COMMA, CardTable.open(text("a.csv", "Slots;Bore\n48;250,5\n36;180,25\n",
                StandardCharsets.UTF_8)).detected().decimal());
        assertEquals(DecimalMark.DOT, CardTable.open(text("b.csv", "Slots,Bore\n48,250.5\n36,180.25\n",
                StandardCharsets.UTF_8)).detected().decimal());
    }

    @Test
    void quotedCellsHoldSeparatorsQuotationMarksAndLineEnds() throws Exception {
        List<TableRow> rows = rows(text("t.csv", "a;\"b;\"\"c\"\"\nd\";e\r\n\r\nx;y;z", StandardCharsets.UTF_8));
        assertEquals(List.of("a", "b;\"c\"\nd", "e"), texts(rows.get(0)));
        assertEquals(4, rows.get(1).number(), "as an editor counts the lines");
    }

    @Test
    void aQuotationMarkNeverClosedIsSaidWithItsLine() throws Exception {
        String message = refusal(text("t.csv", "a;b\nc;\"d\n" + "e;f\n".repeat(20_000), StandardCharsets.UTF_8));
        assertTrue(message.contains("line 2"), message);
    }

    @Test
    void aWrongEncodingIsSaidAndNotTurnedIntoQuestionMarks() throws Exception {
        Path file = text("t.csv", "Gr\u00f6\u00dfe;b\n", Charset.forName("windows-1252"));
        CardTable table = CardTable.open(file);
        String message = assertThrows(UnreadableTableException.class,
                () -> table.read(table.detected().withEncoding("UTF-8"), r -> true)).getMessage();
        assertTrue(message.contains("not written in UTF-8"), message);
    }

    @Test
    void whatIsNoTableIsRefusedByWhatItHolds() throws Exception {
        assertTrue(refusal(text("a.xlsx", "<html><table></table></html>", StandardCharsets.UTF_8)).contains("web page"));
        assertTrue(refusal(Files.write(folder.resolve("b.xlsx"), new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11,
            (byte) 0xE0, 1, 2, 3, 4})).contains("password"));
        assertTrue(refusal(Files.write(folder.resolve("c.csv"), new byte[] {1, 0, 0, 7, 0, 0, 0, 1, 1, 1})).contains("neither"));
        assertTrue(refusal(Files.createFile(folder.resolve("d.csv"))).contains("empty"));
        assertTrue(refusal(folder.resolve("none.csv")).contains("not there"));
    }

    @Test
    void aCutWorkbookIsSaidToBeDamaged() throws Exception {
        XSSFWorkbook book = new XSSFWorkbook();
        book.createSheet("s").createRow(0).createCell(0).setCellValue("x");
        byte[] bytes = Files.readAllBytes(book(book));
        Path cut = Files.write(folder.resolve("cut.xlsx"), java.util.Arrays.copyOf(bytes, bytes.length / 2));
        assertTrue(refusal(cut).contains("not a sound workbook"));
    }

    @Test
    void cellsOfAWorkbookComeAsTheyAreKept() throws Exception {
        XSSFWorkbook book = new XSSFWorkbook();
        XSSFSheet sheet = book.createSheet("Cards");
        XSSFRow row = sheet.createRow(1);
        XSSFCellStyle date = book.createCellStyle();
        date.setDataFormat(book.createDataFormat().getFormat("d-mmm"));
        XSSFCellStyle round = book.createCellStyle();
        round.setDataFormat(book.createDataFormat().getFormat("0"));
        row.createCell(0).setCellValue("1-9");
        row.createCell(2).setCellValue(0.1 + 0.2);
        row.getCell(2).setCellStyle(round);
        row.createCell(3).setCellValue(LocalDate.of(2021, 9, 1));
        row.getCell(3).setCellStyle(date);
        row.createCell(4).setCellFormula("6*8");
        book.getCreationHelper().createFormulaEvaluator().evaluateAll();
        row.createCell(5).setCellFormula("1/0");
        book.getCreationHelper().createFormulaEvaluator().evaluateFormulaCell(row.getCell(5));
        row.createCell(6).setCellFormula("A1");
        row.createCell(7).setCellValue(true);
        sheet.addMergedRegion(new CellRangeAddress(2, 3, 0, 1));
        CardTable table = CardTable.open(book(book));
        List<TableRow> rows = new ArrayList<>();
        List<String> remarks = table.read(table.detected(), rows::add);
        assertEquals(List.of("Cards"), table.sheets());
        TableRow read = rows.get(0);
        assertEquals(2, read.number());
        assertEquals(List.of("1-9", "", "0.3", "2021-09-01", "48"), texts(read).subList(0, 5));
        assertEquals(TableCell.Kind.DATE, read.cell(3).kind());
        assertEquals(TableCell.Kind.NUMBER, read.cell(4).kind());
        assertEquals(TableCell.Kind.BROKEN, read.cell(5).kind());
        assertTrue(read.cell(5).text().contains("#DIV/0!"));
        assertEquals("true", read.cell(7).text());
        assertTrue(remarks.get(0).contains("3 cells hold formulas"), remarks.toString());
        assertTrue(remarks.get(1).contains("merged area"), remarks.toString());
    }

    @Test
    void aSheetThatUnpacksBeyondReasonIsRefused() throws Exception {
        XSSFWorkbook book = new XSSFWorkbook();
        book.createSheet("s").createRow(0).createCell(0).setCellValue(1);
        Path plain = book(book);
        Path bomb = folder.resolve("bomb.xlsx");
        byte[] row = "<row><c><v>1</v></c></row>".getBytes(StandardCharsets.US_ASCII);
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(bomb));
                java.util.zip.ZipFile in = new java.util.zip.ZipFile(plain.toFile())) {
            for (ZipEntry e : in.stream().toList()) {
                out.putNextEntry(new ZipEntry(e.getName()));
                if (e.getName().endsWith("sheet1.xml")) {
                    out.write(("<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">"
                            + "<sheetData><row r=\"1\"><c t=\"inlineStr\"><is><t>").getBytes(StandardCharsets.US_ASCII));
                    byte[] blanks = new byte[1 << 16];
                    java.util.Arrays.fill(blanks, (byte) ' ');
                    for (int i = 0; i < 2000; i++) {
                        out.write(blanks);
                    }
                    out.write("</t></is></c></row>".getBytes(StandardCharsets.US_ASCII));
                    out.write(row);
                    out.write("</sheetData></worksheet>".getBytes(StandardCharsets.US_ASCII));
                } else {
                    in.getInputStream(e).transferTo(out);
                }
            }
        }
        assertTrue(Files.size(bomb) < 1 << 20);
        String message = refusal(bomb);
        assertTrue(message.contains("refused") || message.contains("characters"), message);
    }

    @Test
    void aTableOfAMillionRowsIsRefusedEarlyAndPlainly() throws Exception {
        Path file = folder.resolve("many.xlsx");
        try (SXSSFWorkbook book = new SXSSFWorkbook(50); OutputStream out = Files.newOutputStream(file)) {
            SXSSFSheet sheet = book.createSheet("s");
            for (int i = 0; i < 1_000_000; i++) {
                sheet.createRow(i).createCell(0).setCellValue(i % 60);
            }
            book.write(out);
        }
        String message = refusal(file);
        assertTrue(message.contains("50,000 rows"), message);
    }

    @Test
    void readingStopsWhenNoMoreIsWanted() throws Exception {
        XSSFWorkbook book = new XSSFWorkbook();
        XSSFSheet sheet = book.createSheet("s");
        for (int i = 0; i < 100; i++) {
            sheet.createRow(i).createCell(0).setCellValue(i + 1);
        }
        CardTable table = CardTable.open(book(book));
        List<TableRow> rows = new ArrayList<>();
        table.read(table.detected(), r -> {
            rows.add(r);
            return rows.size() < 3;
        });
        assertEquals(3, rows.size());
    }

    @Test
    void aWorkbookOfMacrosIsRefused() throws Exception {
        XSSFWorkbook book = new XSSFWorkbook(org.apache.poi.xssf.usermodel.XSSFWorkbookType.XLSM);
        book.createSheet("s").createRow(0).createCell(0).setCellValue(1);
        assertTrue(refusal(book(book)).contains("macros"));
    }
}
