package org.copperbook.sheets;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.copperbook.calc.money.QuoteTotals;
import org.copperbook.calc.money.RoundingRule;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuoteLine;
import org.copperbook.jobs.quote.QuotePrices;
import org.copperbook.jobs.seal.QuoteSeal;
import org.copperbook.sheets.copy.QuoteCopy;
import org.copperbook.sheets.copy.QuoteCopyCheck;
import org.copperbook.sheets.template.QuoteTemplate;
import org.copperbook.sheets.template.UnusableTemplate;
import org.copperbook.sheets.template.UnusableTemplate.Why;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class QuoteTemplateTest {

    private static final byte[] PICTURE = java.util.Base64.getDecoder().decode(
            "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");

    @TempDir
    Path folder;

    private static void name(XSSFWorkbook book, String name, String place) {
        XSSFName n = book.createName();
        n.setNameName(name);
        n.setRefersToFormula(place);
    }

    /** A template as a workshop makes it: row 6 is the line, row 7 empty, row 8 adds up, then a picture. */
    private static XSSFWorkbook template() {
        XSSFWorkbook book = new XSSFWorkbook();
        XSSFSheet sheet = book.createSheet("Offer");
        sheet.createRow(0).createCell(0).setCellValue("Dear customer");
        sheet.createRow(1).createCell(1);
        sheet.createRow(4).createCell(0).setCellValue("What we do");
        sheet.createRow(5).createCell(0);
        XSSFCellStyle red = book.createCellStyle();
        red.setFillForegroundColor(org.apache.poi.ss.usermodel.IndexedColors.RED.getIndex());
        sheet.getRow(5).createCell(1).setCellStyle(red);
        sheet.getRow(5).createCell(2);
        sheet.getRow(5).createCell(3).setCellFormula("B6*C6");
        sheet.createRow(7).createCell(3).setCellFormula("SUM(D6:D7)");
        sheet.addMergedRegion(new CellRangeAddress(8, 8, 0, 3));
        sheet.createRow(8).createCell(0).setCellValue("With kind regards");
        sheet.getPrintSetup().setLandscape(true);
        sheet.createDrawingPatriarch().createPicture(new XSSFClientAnchor(0, 0, 0, 0, 0, 9, 2, 12),
                book.addPicture(PICTURE, Workbook.PICTURE_TYPE_PNG));
        XSSFSheet other = book.createSheet("Ours");
        other.createRow(0).createCell(0).setCellValue("house rules");
        other.createRow(1).createCell(0).setCellFormula("1+2");
        name(book, "Customer", "Offer!$B$2");
        name(book, "job_number", "Offer!$A$3");
        name(book, "lines", "Offer!$A$6:$D$6");
        name(book, "line_text", "Offer!$A$6");
        name(book, "line_quantity", "Offer!$B$6");
        name(book, "line_price", "Offer!$C$6");
        name(book, "total_gross", "Offer!$D$11");
        name(book, "total_gross_2", "Offer!$D$12");
        name(book, "something_of_ours", "Ours!$A$1");
        return book;
    }

    private Path saved(XSSFWorkbook book) throws Exception {
        Path file = folder.resolve("own.xlsx");
        try (OutputStream out = Files.newOutputStream(file); book) {
            book.write(out);
        }
        return file;
    }

    private Path filled(Path template, Quote quote) throws Exception {
        Path target = folder.resolve("quote.xlsx");
        QuoteTemplate.of(template).write(SampleQuote.job(quote), quote, SampleShop.shop(), target);
        return target;
    }

    @Test
    void namedCellsAreFilledAndEverythingElseIsLeftAlone() throws Exception {
        Quote quote = SampleQuote.rich("en");
        Path target = filled(saved(template()), quote);
        QuotePrices prices = new QuotePrices(quote);
        QuoteTotals first = prices.totals(quote.alternatives().get(0));
        try (InputStream in = Files.newInputStream(target); XSSFWorkbook book = new XSSFWorkbook(in)) {
            XSSFSheet sheet = book.getSheet("Offer");
            assertEquals("Northquay Ice Works", sheet.getRow(1).getCell(1).getStringCellValue());
            assertEquals("2026-0042", sheet.getRow(2).getCell(0).getStringCellValue());
            assertEquals("Dear customer", sheet.getRow(0).getCell(0).getStringCellValue());
            List<String> texts = new ArrayList<>();
            for (int r = 5; r < 8; r++) {
                texts.add(sheet.getRow(r).getCell(0).getStringCellValue());
                assertEquals(org.apache.poi.ss.usermodel.IndexedColors.RED.getIndex(),
                        sheet.getRow(r).getCell(1).getCellStyle().getFillForegroundColor());
                assertEquals("B" + (r + 1) + "*C" + (r + 1), sheet.getRow(r).getCell(3).getCellFormula());
            }
            assertEquals(quote.alternatives().get(0).lines().stream().map(QuoteLine::text).toList(), texts);
            Cell sum = sheet.getRow(9).getCell(3);
            assertEquals("SUM(D6:D9)", sum.getCellFormula(), "a sum that reaches one row further reaches over all lines");
            double expected = 0;
            for (QuoteLine l : quote.alternatives().get(0).lines()) {
                expected += l.quantity().multiply(prices.unitPrice(quote.alternatives().get(0), l)).doubleValue();
            }
            assertEquals(expected, sum.getNumericCellValue(), 1e-9);
            assertEquals("With kind regards", sheet.getRow(10).getCell(0).getStringCellValue());
            assertEquals(List.of(new CellRangeAddress(10, 10, 0, 3)), sheet.getMergedRegions());
            assertTrue(sheet.getPrintSetup().getLandscape());
            XSSFPicture picture = (XSSFPicture) sheet.getDrawingPatriarch().getShapes().get(0);
            assertEquals(11, picture.getClientAnchor().getRow1(), "the picture moves down with what it stands by");
            assertArrayEquals(PICTURE, picture.getPictureData().getData());
            assertEquals(first.gross().doubleValue(), sheet.getRow(12).getCell(3).getNumericCellValue());
            assertEquals(prices.totals(quote.alternatives().get(1)).gross().doubleValue(),
                    sheet.getRow(13).getCell(3).getNumericCellValue());
            assertEquals("house rules", book.getSheet("Ours").getRow(0).getCell(0).getStringCellValue());
            assertEquals("1+2", book.getSheet("Ours").getRow(1).getCell(0).getCellFormula());
        }
        QuoteCopy copy = QuoteCopy.read(target).orElseThrow();
        assertEquals(QuoteSeal.of("2026-0042", quote), copy.fingerprint());
        assertEquals(QuoteCopyCheck.Result.MARKED,
                QuoteCopyCheck.of(SampleQuote.job(quote), SampleShop.shop(), List.of(quote), copy).result());
    }

    @Test
    void textsThatLookLikeFormulasStayTextAndAThousandLinesFit() throws Exception {
        List<QuoteLine> lines = new ArrayList<>();
        for (int i = 0; i < 1000; i++) {
            lines.add(SampleQuote.line(QuoteLine.Kind.MATERIAL, "=cmd|' /C calc'!A" + i, null, "1", "pc", "2.00", null, null));
        }
        Quote quote = SampleQuote.quote("EUR", RoundingRule.LINES, "en",
                SampleQuote.alternative("One", null, null, null, lines));
        try (InputStream in = Files.newInputStream(filled(saved(template()), quote)); XSSFWorkbook book = new XSSFWorkbook(in)) {
            XSSFSheet sheet = book.getSheet("Offer");
            assertEquals(CellType.STRING, sheet.getRow(1004).getCell(0).getCellType());
            assertEquals("=cmd|' /C calc'!A999", sheet.getRow(1004).getCell(0).getStringCellValue());
            assertTrue(sheet.getRow(1004).getCell(0).getCellStyle().getQuotePrefixed(), "it stays text when it is edited");
            assertEquals(2000.0, sheet.getRow(1006).getCell(3).getNumericCellValue());
        }
    }

    /** A template as some programs write it: texts stand in their cells, and the sheet says nothing of heights. */
    private Path bare(String rowMore) throws Exception {
        Path file = folder.resolve("bare.xlsx");
        String head = "<?xml version=\"1.0\"?>";
        String types = "http://schemas.openxmlformats.org/package/2006/content-types";
        String relations = "http://schemas.openxmlformats.org/package/2006/relationships";
        String office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
        String main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
        String kind = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            entry(zip, "[Content_Types].xml", head + "<Types xmlns=\"" + types + "\"><Default Extension=\"rels\" ContentType=\""
                    + "application/vnd.openxmlformats-package.relationships+xml\"/><Override PartName=\"/xl/workbook.xml\" "
                    + "ContentType=\"" + kind + "sheet.main+xml\"/><Override PartName=\"/xl/worksheets/sheet1.xml\" ContentType=\""
                    + kind + "worksheet+xml\"/></Types>");
            entry(zip, "_rels/.rels", head + "<Relationships xmlns=\"" + relations + "\"><Relationship Id=\"r1\" Type=\"" + office
                    + "/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
            entry(zip, "xl/_rels/workbook.xml.rels", head + "<Relationships xmlns=\"" + relations + "\"><Relationship Id=\"r1\" "
                    + "Type=\"" + office + "/worksheet\" Target=\"worksheets/sheet1.xml\"/></Relationships>");
            entry(zip, "xl/workbook.xml", head + "<workbook xmlns=\"" + main + "\" xmlns:r=\"" + office + "\"><sheets><sheet "
                    + "name=\"Mine\" sheetId=\"1\" r:id=\"r1\"/></sheets><definedNames>"
                    + "<definedName name=\"customer\">Mine!$A$1</definedName>"
                    + "<definedName name=\"total_gross\">Mine!$B$1</definedName>"
                    + "<definedName name=\"lines\">Mine!$A$3:$C$3</definedName>"
                    + "<definedName name=\"line_text\">Mine!$A$3</definedName>"
                    + "<definedName name=\"line_amount\">Mine!$B$3</definedName></definedNames></workbook>");
            entry(zip, "xl/worksheets/sheet1.xml", head + "<worksheet xmlns=\"" + main + "\"><sheetData><row r=\"1\">"
                    + inline("A1", "old customer") + inline("B1", "old total") + "</row><row r=\"3\"" + rowMore + ">"
                    + inline("A3", "old text") + inline("B3", "old amount") + inline("C3", "of ours") + "</row></sheetData></worksheet>");
        }
        return file;
    }

    private static void entry(ZipOutputStream zip, String name, String text) throws Exception {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(text.getBytes(StandardCharsets.UTF_8));
    }

    private static String inline(String place, String text) {
        return "<c r=\"" + place + "\" t=\"inlineStr\"><is><t>" + text + "</t></is></c>";
    }

    @Test
    void aTextKeptInItsCellGivesWayToWhatIsPutIn() throws Exception {
        Quote quote = SampleQuote.rich("en");
        try (InputStream in = Files.newInputStream(filled(bare(""), quote)); XSSFWorkbook book = new XSSFWorkbook(in)) {
            XSSFSheet sheet = book.getSheet("Mine");
            QuoteTotals totals = new QuotePrices(quote).totals(quote.alternatives().get(0));
            assertEquals("Northquay Ice Works", sheet.getRow(0).getCell(0).getStringCellValue());
            assertEquals(totals.gross().doubleValue(), sheet.getRow(0).getCell(1).getNumericCellValue());
            for (int i = 0; i < totals.lines().size(); i++) {
                assertEquals(quote.alternatives().get(0).lines().get(i).text(), sheet.getRow(2 + i).getCell(0).getStringCellValue());
                assertEquals(totals.lines().get(i).doubleValue(), sheet.getRow(2 + i).getCell(1).getNumericCellValue());
                assertEquals("of ours", sheet.getRow(2 + i).getCell(2).getStringCellValue());
                for (int column = 0; column < 2; column++) {
                    assertFalse(sheet.getRow(2 + i).getCell(column).getCTCell().isSetIs(), "a spreadsheet would show this instead");
                }
            }
            assertFalse(sheet.getRow(0).getCell(0).getCTCell().isSetIs());
            assertFalse(sheet.getRow(0).getCell(1).getCTCell().isSetIs());
        }
    }

    @Test
    void repeatedRowsHaveTheHeightThatWasGivenAndNoneWhereNoneWas() throws Exception {
        Quote quote = SampleQuote.rich("en");
        int lines = quote.alternatives().get(0).lines().size();
        assertTrue(lines > 1, "there is something to repeat");
        for (String none : List.of("", " ht=\"0\" customHeight=\"1\"")) {
            try (InputStream in = Files.newInputStream(filled(bare(none), quote)); XSSFWorkbook book = new XSSFWorkbook(in)) {
                for (int i = 1; i < lines; i++) {
                    assertFalse(book.getSheet("Mine").getRow(2 + i).getCTRow().isSetHt(), "a spreadsheet would hide it");
                    assertFalse(book.getSheet("Mine").getRow(2 + i).getCTRow().getCustomHeight());
                }
            }
        }
        try (InputStream in = Files.newInputStream(filled(bare(" ht=\"31.5\" customHeight=\"1\""), quote));
                XSSFWorkbook book = new XSSFWorkbook(in)) {
            for (int i = 0; i < lines; i++) {
                assertEquals(31.5, book.getSheet("Mine").getRow(2 + i).getHeightInPoints(), 0.05);
            }
        }
    }

    @Test
    void namesThatAreLikeOursButNoneAreSaidAndThoseOfTheWorkshopAreNot() throws Exception {
        assertEquals(List.of(), QuoteTemplate.of(saved(template())).check());
        XSSFWorkbook book = template();
        for (String name : List.of("Line_Sum", "total_brutto", "customer2", "dates", "Offers", "linear", "total_gross_3")) {
            name(book, name, "Ours!$A$1");
        }
        assertEquals(List.of("Line_Sum", "total_brutto", "customer2", "dates"), QuoteTemplate.of(saved(book)).check());
    }

    @Test
    void aQuoteWithoutAnyAlternativeOrThatCannotBeAddedUpIsRefusedWithWhatToDo() throws Exception {
        QuoteTemplate template = QuoteTemplate.of(saved(template()));
        Path target = folder.resolve("refused.xlsx");
        Quote none = SampleQuote.quote("EUR", RoundingRule.LINES, "en");
        String said = assertThrows(WorkbookNotWrittenException.class,
                () -> template.write(SampleQuote.job(none), none, SampleShop.shop(), target)).getMessage();
        assertTrue(said.startsWith("The quote of job 2026-0042") && said.contains("no alternative. Add one"), said);
        Quote taxed = SampleQuote.quote("EUR", RoundingRule.LINES, "en", SampleQuote.alternative("One", null, null, null,
                List.of(SampleQuote.line(QuoteLine.Kind.LABOUR, "x", null, "1", "h", "2", null, "unknown"))));
        said = assertThrows(WorkbookNotWrittenException.class,
                () -> template.write(SampleQuote.job(taxed), taxed, SampleShop.shop(), target)).getMessage();
        assertTrue(said.startsWith("The quote of job 2026-0042 was not written: ") && said.contains("unknown"), said);
        assertFalse(Files.exists(target), "nothing is written");
    }

    private Why refused(Path template) {
        Quote quote = SampleQuote.rich("en");
        Path target = folder.resolve("refused.xlsx");
        UnusableTemplate whenChosen = assertThrows(UnusableTemplate.class, () -> QuoteTemplate.of(template).check());
        UnusableTemplate e = assertThrows(UnusableTemplate.class,
                () -> QuoteTemplate.of(template).write(SampleQuote.job(quote), quote, SampleShop.shop(), target));
        assertFalse(Files.exists(target), "nothing is written");
        assertFalse(e.getMessage().isBlank());
        assertEquals(e.getMessage(), whenChosen.getMessage(), "and it was told when it was chosen");
        return e.why();
    }

    private Why refused(Consumer<XSSFWorkbook> spoil) throws Exception {
        XSSFWorkbook book = template();
        spoil.accept(book);
        return refused(saved(book));
    }

    private Path bytes(byte[] content) throws Exception {
        return Files.write(folder.resolve("bad.xlsx"), content);
    }

    @Test
    void whatCannotBeUsedIsRefusedWithTheReason() throws Exception {
        assertEquals(Why.MISSING, refused(folder.resolve("not there.xlsx")));
        assertEquals(Why.NO_WORKBOOK, refused(bytes("no workbook".getBytes(StandardCharsets.UTF_8))));
        assertEquals(Why.NO_WORKBOOK, refused(bytes(new byte[0])));
        byte[] sound = Files.readAllBytes(saved(template()));
        assertEquals(Why.NO_WORKBOOK, refused(bytes(java.util.Arrays.copyOf(sound, sound.length / 2))));
        assertEquals(Why.PASSWORD, refused(bytes(new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0, 0, 0, 0})));
        assertEquals(Why.NO_NAMES, refused(b -> new ArrayList<>(b.getAllNames()).forEach(b::removeName)));
        assertEquals(Why.BROKEN_NAME, refused(b -> b.getName("Customer").setRefersToFormula("Offer!#REF!")));
        assertEquals(Why.FORMULA, refused(b -> b.getName("Customer").setRefersToFormula("Ours!$A$2")));
        assertEquals(Why.NOT_ONE_ROW, refused(b -> b.getName("lines").setRefersToFormula("Offer!$A$6:$D$7")));
        assertEquals(Why.NOT_IN_ROW, refused(b -> b.getName("line_text").setRefersToFormula("Offer!$A$4")));
        assertEquals(Why.EXTERNAL, refused(b -> b.getSheetAt(0).getPackagePart().addExternalRelationship(
                "http://127.0.0.1:9/other.xlsx", "http://schemas.openxmlformats.org/officeDocument/2006/relationships/externalLinkPath")));
        XSSFWorkbook macros = template();
        macros.setWorkbookType(org.apache.poi.xssf.usermodel.XSSFWorkbookType.XLSM);
        assertEquals(Why.MACROS, refused(saved(macros)));
    }

    @Test
    void aFileThatUnpacksToFarMoreThanItIsIsRefused() throws Exception {
        Path bomb = folder.resolve("bomb.xlsx");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(bomb))) {
            zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
            byte[] zeros = new byte[1 << 20];
            for (int i = 0; i < 101; i++) {
                zip.write(zeros);
            }
        }
        assertTrue(Files.size(bomb) < 1 << 20);
        assertEquals(Why.BOMB, refused(bomb));
    }
}
