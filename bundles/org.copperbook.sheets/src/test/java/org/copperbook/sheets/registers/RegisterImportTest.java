package org.copperbook.sheets.registers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CancellationException;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.copperbook.sheets.cards.UnreadableTableException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows of a table become rows of a register, or are refused with the cell and the reason. Expected: the tests' own inputs. */
class RegisterImportTest {

    private static final RegisterShape SHAPE = new RegisterShape("Shelf", List.of(
            RegisterField.text("code", "Code", "item|artikel|artikelnummer").needed(),
            RegisterField.number("price", "Price per unit", "price|preis", BigDecimal.ZERO, new BigDecimal("100000")),
            RegisterField.whole("count", "Pieces", "pcs|stueck|st\u00fcck", 0, 1000),
            RegisterField.date("bought", "Bought on", "date|datum|gekauft am"),
            RegisterField.choice("unit", "Unit", "einheit", units()),
            RegisterField.text("note", "Note", "remark|bemerkung")), List.of("code"));

    @TempDir
    Path folder;

    private static Map<String, String> units() {
        Map<String, String> units = new LinkedHashMap<>();
        units.put("piece", "PIECE");
        units.put("St\u00fcck", "PIECE");
        units.put("kilogram", "KILOGRAM");
        units.put("kg", "KILOGRAM");
        return units;
    }

    private RegisterImport text(String content) throws Exception {
        return text(content, StandardCharsets.UTF_8);
    }

    private RegisterImport text(String content, Charset charset) throws Exception {
        Path file = Files.write(folder.resolve("table.csv"), content.getBytes(charset));
        return RegisterImport.open(file, SHAPE);
    }

    private static RegisterReading<RegisterRow> read(RegisterImport from) throws UnreadableTableException {
        return from.read(row -> row, n -> true);
    }

    @Test
    void titlesInEitherLanguageGiveTheColumns() throws Exception {
        RegisterImport german = text("Liste vom Lager;;;;\n\nArtikelnummer;Preis;St\u00fcck;Gekauft am;Einheit\n"
                + "A 1;1,25;3;02.03.2026;St\u00fcck\n");
        assertEquals(List.of("code", "price", "count", "bought", "unit"), german.mapping().keys());
        RegisterRow row = read(german).values().get(0);
        assertEquals("A 1", row.text("code").orElseThrow());
        assertEquals(new BigDecimal("1.25"), row.number("price").orElseThrow());
        assertEquals(new BigDecimal("3"), row.number("count").orElseThrow());
        assertEquals(LocalDate.of(2026, 3, 2), row.date("bought").orElseThrow());
        assertEquals("PIECE", row.text("unit").orElseThrow());
        RegisterImport english = text("Item,Price (EUR),Pcs,Date,Unit\nA 1,1.25,3,2026-03-02,piece\n");
        assertEquals(row.values(), read(english).values().get(0).values());
    }

    @Test
    void anOldCharacterSetIsUnderstood() throws Exception {
        RegisterImport old = text("Artikel;St\u00fcck;Bemerkung\nA;2;gr\u00fcn\n", Charset.forName("windows-1252"));
        assertEquals("gr\u00fcn", read(old).values().get(0).text("note").orElseThrow());
    }

    @Test
    void aTitleThatIsAWordGoesBeforeOneThatOnlyContainsIt() throws Exception {
        RegisterImport t = text("Code of the maker,Code\nx,A 1\n");
        assertEquals(List.of("", "code"), t.mapping().keys());
        assertEquals("A 1", read(t).values().get(0).text("code").orElseThrow());
    }

    @Test
    void theMappingCanBeChanged() throws Exception {
        RegisterImport t = text("first,second\nA 1,seen\n");
        assertEquals(List.of("", ""), t.mapping().keys());
        assertEquals(2, t.mapping().problems(SHAPE).size(), "the code is missing, and nothing is given at all");
        assertThrows(IllegalStateException.class, () -> read(t));
        RegisterImport changed = t.with(t.mapping().with(0, "code").with(1, "note"));
        assertEquals(Map.of("code", "A 1", "note", "seen"), read(changed).values().get(0).values());
        RegisterMapping twice = changed.mapping().with(1, "code");
        assertEquals(1, twice.problems(SHAPE).size());
        assertTrue(twice.problems(SHAPE).get(0).contains("Code"));
    }

    @Test
    void everyCellThatIsNotUnderstoodIsNamedAndItsRowIsRefusedWhole() throws Exception {
        RegisterReading<RegisterRow> r = read(text("Code,Price,Pieces,Bought on,Unit\n"
                + "A,1.5,2,2026-01-31,kg\n"
                + ",1.5,2.5,2026-02-30,stone\n"
                + "C,-1,1,,\n"
                + "D,1.5,1001,,\n"));
        assertEquals(List.of(2), r.rows().stream().map(RegisterReading.Understood::row).toList());
        assertEquals(List.of("A3", "C3", "D3", "E3", "B4", "C5"), r.refused().stream().map(RefusedCell::cell).toList());
        assertEquals("2026-02-30", r.refused().get(2).text());
        assertEquals(3, r.refusedRows());
        assertTrue(r.refused().get(1).inWords().startsWith("C3, Pieces \"2.5\": "), r.refused().get(1).inWords());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"1,5|1.5", "1.5|1.5", "1.234.567,89|1234567.89", "0,5|0.5", "7|7"})
    void numbersHaveACommaOrAPoint(String written, String value) throws Exception {
        RegisterShape wide = new RegisterShape("n", List.of(RegisterField.number("n", "N", "", null, null)), List.of());
        Path file = Files.writeString(folder.resolve("n.csv"), "N;x\n" + written + ";\n");
        RegisterReading<RegisterRow> r = RegisterImport.open(file, wide).read(row -> row, n -> true);
        assertEquals(List.of(), r.refused());
        assertEquals(new BigDecimal(value), r.values().get(0).number("n").orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({"31/12/2026,2026-12-31", "12/31/2026,2026-12-31", "05/05/2026,2026-05-05", "2026-3-2,2026-03-02",
        "2.3.2026,2026-03-02", "03/02/2026,", "32.1.2026,", "soon,"})
    void datesThatCanBeTwoDaysAreNotGuessed(String written, String day) throws Exception {
        RegisterReading<RegisterRow> r = read(text("Code;Date\nA;" + written + "\n"));
        if (day == null) {
            assertEquals(List.of("B2"), r.refused().stream().map(RefusedCell::cell).toList());
        } else {
            assertEquals(LocalDate.parse(day), r.values().get(0).date("bought").orElseThrow());
        }
    }

    @Test
    void theSecondRowOfOneEntryIsRefusedAndNamesTheFirst() throws Exception {
        RegisterReading<RegisterRow> r = read(text("Code,Note\nA 1,one\nB,two\na 1,three\n"));
        assertEquals(2, r.rows().size());
        assertEquals(4, r.refused().get(0).row());
        assertTrue(r.refused().get(0).reason().contains("Row 2"), r.refused().get(0).reason());
    }

    @Test
    void whatTheRegisterRefusesNamesItsCell() throws Exception {
        RegisterReading<String> r = text("Note,Code\nfine,A\nbad,B\n").read(row -> {
            if (row.text("note").orElse("").equals("bad")) {
                throw new RowRefusedException("note", "is bad");
            }
            return row.text("code").orElseThrow();
        }, n -> true);
        assertEquals(List.of("A"), r.values());
        assertEquals("A3, Note \"bad\": is bad", r.refused().get(0).inWords());
    }

    @Test
    void readingCanBeStopped() throws Exception {
        RegisterImport t = text("Code\nA\nB\nC\n");
        assertThrows(CancellationException.class, () -> t.read(row -> row, n -> n < 1));
    }

    @Test
    void aNumberOfAWorkbookIsNoDateAndADateNoNumber() throws Exception {
        Path file = folder.resolve("t.xlsx");
        try (XSSFWorkbook book = new XSSFWorkbook(); var out = Files.newOutputStream(file)) {
            XSSFRow head = book.createSheet("s").createRow(0);
            head.createCell(0).setCellValue("Code");
            head.createCell(1).setCellValue("Date");
            head.createCell(2).setCellValue("Price");
            var style = book.createCellStyle();
            style.setDataFormat(book.createDataFormat().getFormat("yyyy-mm-dd"));
            XSSFRow row = book.getSheetAt(0).createRow(1);
            row.createCell(0).setCellValue("A");
            row.createCell(1).setCellValue(45000);
            row.createCell(2).setCellValue(LocalDate.of(2026, 1, 2));
            row.getCell(2).setCellStyle(style);
            XSSFRow formula = book.getSheetAt(0).createRow(2);
            formula.createCell(0).setCellFormula("1/0");
            book.write(out);
        }
        RegisterReading<RegisterRow> r = read(RegisterImport.open(file, SHAPE));
        assertEquals(List.of(), r.rows());
        assertEquals(List.of("B2", "C2", "A3"), r.refused().stream().map(RefusedCell::cell).toList());
    }

    /** Whatever is written comes back, texts that look like formulas too. */
    @Test
    void whatIsWrittenIsReadBackAsItWas() throws Exception {
        Random random = new Random(7);
        List<String> texts = List.of("=1+1", "-5", "+49 40 123", "@x", "'quoted", "a\"b;c,d", "\u4e2d\u6587", "\u05e9\u05dc",
                "line\nbreak", "_x0041_", "1-9", "007");
        List<Map<String, Object>> rows = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("code", texts.get(random.nextInt(texts.size())) + i);
            if (random.nextBoolean()) {
                row.put("price", BigDecimal.valueOf(random.nextInt(10_000_000), 2).stripTrailingZeros());
            }
            if (random.nextBoolean()) {
                row.put("count", BigDecimal.valueOf(random.nextInt(1001)));
            }
            if (random.nextBoolean()) {
                row.put("bought", LocalDate.of(1990, 1, 1).plusDays(random.nextInt(20_000)));
            }
            if (random.nextBoolean()) {
                row.put("unit", random.nextBoolean() ? "PIECE" : "KILOGRAM");
            }
            if (random.nextBoolean()) {
                row.put("note", texts.get(random.nextInt(texts.size())));
            }
            row.computeIfPresent("price", (k, v) -> plain((BigDecimal) v));
            rows.add(row);
        }
        Path file = folder.resolve("shelf.xlsx");
        new RegisterWorkbook(SHAPE, PrintedRegisterTest.WORKSHOP, LocalDate.of(2026, 3, 2)).write(rows, file);
        RegisterReading<RegisterRow> r = read(RegisterImport.open(file, SHAPE));
        assertEquals(List.of(), r.refused());
        assertEquals(rows, r.values().stream().map(RegisterRow::values).toList());
    }

    private static BigDecimal plain(BigDecimal n) {
        return n.scale() < 0 ? n.setScale(0) : n;
    }

    @Test
    void whatIsNoTableIsRefusedInWords() throws Exception {
        Path page = Files.writeString(folder.resolve("x.xlsx"), "<html><table></table></html>");
        assertThrows(UnreadableTableException.class, () -> RegisterImport.open(page, SHAPE));
        Path empty = Files.write(folder.resolve("e.csv"), new byte[0]);
        assertThrows(UnreadableTableException.class, () -> RegisterImport.open(empty, SHAPE));
    }
}
