package org.copperbook.sheets;

import static org.copperbook.sheets.SampleQuote.alternative;
import static org.copperbook.sheets.SampleQuote.line;
import static org.copperbook.sheets.SampleQuote.quote;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.ReadingOrder;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.copperbook.calc.money.RoundingRule;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuoteLine;
import org.copperbook.jobs.quote.QuoteLine.Kind;
import org.copperbook.sheets.WorkbookNotWrittenException.Reason;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Expected amounts are decimal arithmetic by hand, written out beside each. */
class QuoteWorkbookTest {

    @TempDir
    Path folder;

    private ReadBack written(Quote quote, QuoteWorkbook.Copy copy) throws Exception {
        Path file = folder.resolve("quote.xlsx");
        new QuoteWorkbook().write(SampleQuote.job(quote), quote, SampleShop.shop(), copy, file);
        return new ReadBack(file);
    }

    private ReadBack written(Quote quote) throws Exception {
        return written(quote, QuoteWorkbook.Copy.CUSTOMER);
    }

    private static BigDecimal money(String text) {
        return new BigDecimal(text);
    }

    @Test
    void totalsComeToTheCentInACurrencyOfTwoDecimals() throws Exception {
        // 1.5 x 0.35 = 0.525 -> 0.53 (19 %); 2 x 18.95 = 37.90 (7 %); 3 x 9.99 = 29.97 less 2.5 % = 29.22075 -> 29.22 (none)
        // nets 0.53 + 37.90 + 29.22 = 67.65; discount 10 %: 0.053 -> 0.05, 3.79, 2.922 -> 2.92, together 6.76; net 60.89
        // tax: 19 % of 0.48 = 0.0912 -> 0.09; 7 % of 34.11 = 2.3877 -> 2.39; together 2.48; total 63.37
        Quote q = quote("EUR", RoundingRule.LINES, "en", alternative("One", null, "10", null, List.of(
                line(Kind.MATERIAL, "wire", null, "1.5", "kg", "0.35", null, "V19"),
                line(Kind.MATERIAL, "book", null, "2", "pc", "18.95", null, "V7"),
                line(Kind.LABOUR, "work", "winder", "3", "h", "9.99", "2.5", null))));
        try (ReadBack book = written(q)) {
            assertEquals(money("67.65"), book.money("before_discount_1", 2));
            assertEquals(money("-6.76"), book.money("discount_1", 2));
            assertEquals(money("60.89"), book.money("net_1", 2));
            assertEquals(money("2.48"), book.money("tax_1", 2));
            assertEquals(money("63.37"), book.money("total_1", 2));
        }
    }

    @Test
    void hoursOfEachTradeAndWindingWireAreLiveSums() throws Exception {
        // winder 3 + 4.25 = 7.25, fitter 1.5, together 8.75; wire 2.5 + 0.125 = 2.625; varnish in kilograms is no wire
        List<QuoteLine> lines = new ArrayList<>(List.of(
                line(Kind.LABOUR, "wind", "winder", "3", "h", "50", null, null),
                line(Kind.LABOUR, "strip", "fitter", "1.5", "h", "50", null, null),
                line(Kind.LABOUR, "connect", "winder", "4.25", "h", "50", null, null),
                line(Kind.LABOUR, "fixed", "winder", "1", "job", "50", null, null),
                line(Kind.MATERIAL, "varnish", null, "7", "kg", "9", null, null)));
        for (String kg : List.of("2.5", "0.125")) {
            lines.add(new QuoteLine(Kind.MATERIAL, "wire", null, money(kg), "kg", money("16"), null, null, "1.25 mm", Map.of()));
        }
        try (ReadBack book = written(quote("EUR", RoundingRule.LINES, "de", alternative("One", null, null, null, lines)))) {
            assertEquals(money("8.75"), book.money("hours_1", 2));
            assertEquals(money("2.625"), book.money("copper_1", 3));
        }
        List<QuoteLine> many = new ArrayList<>();
        for (int i = 0; i < 1000; i++) {
            many.add(line(Kind.LABOUR, "step", i % 2 == 0 ? "winder" : "fitter", "0.25", "h", "50", null, null));
        }
        try (ReadBack book = written(quote("EUR", RoundingRule.LINES, "en", alternative("One", null, null, null, many)))) {
            assertEquals(money("250.00"), book.money("hours_1", 2));
        }
    }

    @Test
    void wireThatALineOnlyNamesInWordsCountsAsItDoesInThePlanAndLabourWithoutAUnitIsHours() throws Exception {
        // 12 x 1.18 mm of the winding: 2 kg; 11.18 mm is none of its sizes, lead goes by the metre, varnish names no size
        Quote q = quote("EUR", RoundingRule.LINES, "en", alternative("One", null, null, null, List.of(
                line(Kind.MATERIAL, "Winding wire, 12 x 1,18 mm in hand", null, "2", "kg", "16", null, null),
                line(Kind.MATERIAL, "wire 11.18 mm", null, "1", "kg", "7", null, null),
                line(Kind.MATERIAL, "lead 1.18 mm", null, "4", "m", "7", null, null),
                line(Kind.MATERIAL, "varnish", null, "7", "kg", "9", null, null),
                line(Kind.LABOUR, "wind", "winder", "3", "", "50", null, null))));
        PartKey key = PartKey.parse("winding/main-stator");
        Part winding = new PartJson().read(key, "{\"schema\":1,\"role\":\"main-stator\",\"asWound\":false,"
                + "\"wire\":[{\"size\":\"1.180 mm\",\"strands\":12}]}");
        Map<PartKey, Part> parts = new TreeMap<>(SampleQuote.job(q).parts());
        parts.put(key, winding);
        Path file = folder.resolve("named.xlsx");
        new QuoteWorkbook().write(new Job("5f0c", "2026-0042", parts), q, SampleShop.shop(), file);
        try (ReadBack book = new ReadBack(file)) {
            assertEquals(money("2.000"), book.money("copper_1", 3));
            assertEquals(money("3.00"), book.money("hours_1", 2));
        }
    }

    @Test
    void arabicAndHebrewAreMarkedAsReadFromTheRightAndNothingElseIs() throws Exception {
        String arabic = "\u0645\u062d\u0645\u0644 6312 C3.";
        Quote q = quote("KWD", RoundingRule.LINES, "en", alternative("One", null, null, null, List.of(
                line(Kind.BEARING, arabic, null, "1", "pc", "15", null, null),
                line(Kind.BEARING, "bearing 6312 C3.", null, "1", "pc", "15", null, null))));
        Path file = folder.resolve("right.xlsx");
        new QuoteWorkbook().write(SampleQuote.job(q), q, SampleShop.shop(), file);
        int marked = 0;
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
            for (Row row : book.getSheetAt(1)) {
                for (Cell cell : row) {
                    boolean right = ((XSSFCellStyle) cell.getCellStyle()).getReadingOrder() == ReadingOrder.RIGHT_TO_LEFT;
                    assertEquals(cell.getCellType() == CellType.STRING && cell.getStringCellValue().equals(arabic), right,
                            cell.getAddress().toString());
                    marked += right ? 1 : 0;
                }
            }
        }
        assertEquals(1, marked);
    }

    @Test
    void totalsAreWholeInACurrencyWithoutDecimals() throws Exception {
        // 3 x 1250 less 2.5 % = 3656.25 -> 3656; 1 x 99 = 99; net 3755; 10 % = 375.5 -> 376; 3379; 19 % = 642.01 -> 642; 4021
        Quote q = quote("JPY", RoundingRule.LINES, "en", alternative("One", null, "10", null, List.of(
                line(Kind.LABOUR, "work", "winder", "3", "h", "1250", "2.5", "V19"),
                line(Kind.MATERIAL, "wedge", null, "1", "pc", "99", null, "V19"))));
        try (ReadBack book = written(q)) {
            assertEquals(money("3379"), book.money("net_1", 0));
            assertEquals(money("4021"), book.money("total_1", 0));
        }
    }

    @Test
    void totalsKeepThreeDecimalsWhereTheCurrencyHasThem() throws Exception {
        // 2.5 x 1.0325 = 2.58125 -> 2.581; 0.125 x 4.500 = 0.5625 -> 0.563; net 3.144; 7 % = 0.22008 -> 0.220; 3.364
        Quote q = quote("KWD", RoundingRule.LINES, "en", alternative("One", null, null, null, List.of(
                line(Kind.MATERIAL, "wire", null, "2.5", "kg", "1.0325", null, "V7"),
                line(Kind.MATERIAL, "tape", null, "0.125", "roll", "4.500", null, "V7"))));
        try (ReadBack book = written(q)) {
            assertEquals(money("3.144"), book.money("net_1", 3));
            assertEquals(money("3.364"), book.money("total_1", 3));
        }
    }

    @Test
    void aThousandLinesComeToTheCentUnderEitherRule() throws Exception {
        // each line 3 x 0.335 = 1.005. By lines: 1.01 x 1000 = 1010.00, 19 % = 191.90, 1201.90.
        // By totals: 1005.00, 19 % = 190.95, 1195.95.
        List<QuoteLine> lines = Collections.nCopies(1000, line(Kind.MATERIAL, "wedge", null, "3", "pc", "0.335", null, "V19"));
        try (ReadBack book = written(quote("EUR", RoundingRule.LINES, "en", alternative("One", null, null, null, lines)))) {
            assertEquals(money("1010.00"), book.money("net_1", 2));
            assertEquals(money("1201.90"), book.money("total_1", 2));
        }
        try (ReadBack book = written(quote("EUR", RoundingRule.TOTALS, "en", alternative("One", null, null, null, lines)))) {
            assertEquals(money("1005.00"), book.money("net_1", 2));
            assertEquals(money("1195.95"), book.money("total_1", 2));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void formulasAgreeWithDecimalArithmeticOnAnyQuote(long seed) throws Exception {
        // writing compares every total with decimal arithmetic and refuses a quote that differs
        Random random = new Random(seed);
        String currency = List.of("EUR", "JPY", "KWD", "IDR").get(random.nextInt(4));
        List<QuoteLine> lines = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            lines.add(line(Kind.values()[random.nextInt(6)], "line " + i, null,
                    BigDecimal.valueOf(random.nextInt(5000) - 300, random.nextInt(4)).toPlainString(), "pc",
                    BigDecimal.valueOf(random.nextInt(3_000_000), random.nextInt(5)).toPlainString(),
                    BigDecimal.valueOf(random.nextInt(10_000), 2).toPlainString(),
                    random.nextInt(3) == 0 ? null : random.nextBoolean() ? "V19" : "V7"));
        }
        Quote q = quote(currency, random.nextBoolean() ? RoundingRule.LINES : RoundingRule.TOTALS, "en",
                alternative("Any", "12.5", "3.75", null, lines));
        try (ReadBack customer = written(q);
                ReadBack workshop = written(q, QuoteWorkbook.Copy.WORKSHOP)) {
            assertEquals(customer.money("total_1", 3), workshop.money("total_1", 3));
            assertTrue(customer.formulaResults().stream().noneMatch(r -> r.startsWith("#")));
        }
    }

    @Test
    void theWorkshopsCopyFollowsItsMarkUpAndTheCustomersCopyHidesIt() throws Exception {
        // 12.34 x 1.15 = 14.191 -> 14.19, x 10 = 141.90; with 25 %: 15.425 -> 15.43, x 10 = 154.30
        Quote q = quote("EUR", RoundingRule.LINES, "en", alternative("One", "15", null, null,
                List.of(line(Kind.MATERIAL, "wire", null, "10", "kg", "12.34", null, null))));
        try (ReadBack book = written(q, QuoteWorkbook.Copy.WORKSHOP)) {
            assertEquals(money("141.90"), book.money("net_1", 2));
            Cell markUp = book.cells().stream().filter(c -> c.getCellType() == CellType.NUMERIC
                    && c.getNumericCellValue() == 15 && c.getColumnIndex() == 10).findFirst().orElseThrow();
            markUp.setCellValue(25);
            assertEquals(money("154.30"), book.money("net_1", 2));
            String printed = book.workbook().getPrintArea(1);
            assertTrue(printed.startsWith("'1 One'!$A$1:$H$"), printed);
        }
        try (ReadBack book = written(q)) {
            assertEquals(money("141.90"), book.money("net_1", 2));
            assertTrue(book.cells().stream().noneMatch(c -> c.getCellType() == CellType.NUMERIC
                    && (c.getNumericCellValue() == 12.34 || c.getNumericCellValue() == 15)));
        }
    }

    @Test
    void aMarginGivesTheSamePriceInBothCopiesAndStandsInTheWorkshopsOnly() throws Exception {
        // 70/(1 - 0.30) = 100.00; with 65 % margin 70/0.35 = 200.00
        Quote q = quote("EUR", RoundingRule.LINES, "en", new Quote.Alternative("One",
                List.of(line(Kind.MATERIAL, "wire", null, "1", "kg", "70", null, null)), null, money("30"), null, null,
                Map.of()));
        try (ReadBack book = written(q, QuoteWorkbook.Copy.WORKSHOP)) {
            assertEquals(money("100.00"), book.money("net_1", 2));
            book.cells().stream().filter(c -> c.getCellType() == CellType.NUMERIC && c.getNumericCellValue() == 30
                    && c.getColumnIndex() == 10).findFirst().orElseThrow().setCellValue(65);
            assertEquals(money("200.00"), book.money("net_1", 2));
        }
        try (ReadBack book = written(q)) {
            assertEquals(money("100.00"), book.money("net_1", 2));
            assertTrue(book.cells().stream().noneMatch(c -> c.getCellType() == CellType.NUMERIC
                    && (c.getNumericCellValue() == 70 || c.getNumericCellValue() == 30)));
        }
    }

    @Test
    void alternativesStandSideBySideInTheSummary() throws Exception {
        try (ReadBack book = written(SampleQuote.rich("en"))) {
            XSSFSheet summary = book.workbook().getSheetAt(0);
            assertEquals(4, book.workbook().getNumberOfSheets());
            List<String> linked = new ArrayList<>();
            summary.forEach(r -> r.forEach(c -> {
                if (c.getCellType() == CellType.FORMULA) {
                    linked.add(c.getCellFormula());
                }
            }));
            for (int i = 1; i <= 3; i++) {
                String total = book.workbook().getName("total_" + i).getRefersToFormula();
                assertTrue(linked.contains(total), total + " not in " + linked);
            }
            assertTrue(book.formulaResults().stream().noneMatch(r -> r.startsWith("#")));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@sum", "=cmd|' /C calc'!A0", "\t=1", "_x0041_", "a\u0007b", "ثلاجة الميناء",
        "北埠冰庫"})
    void textStaysTextWhateverItBeginsWith(String text) throws Exception {
        Quote q = quote("EUR", RoundingRule.LINES, "en", alternative(text, null, null, text,
                List.of(line(Kind.LABOUR, text, null, "1", text, "2", null, null))));
        try (ReadBack book = written(q)) {
            String kept = text.replace("\u0007", "\uFFFD").strip();
            List<Cell> cells = book.cells().stream().filter(c -> c.getCellType() == CellType.STRING
                    && c.getStringCellValue().strip().equals(kept)).toList();
            assertFalse(cells.isEmpty(), () -> book.texts().toString());
            for (Cell c : cells) {
                boolean dangerous = "=+-@\t".indexOf(c.getStringCellValue().charAt(0)) >= 0;
                assertEquals(dangerous, c.getCellStyle().getQuotePrefixed(), c.getAddress() + " " + c);
            }
        }
    }

    @Test
    void nothingOfAVeryLongTextIsLost() throws Exception {
        String word = "remark ";
        Quote q = quote("EUR", RoundingRule.LINES, "en", alternative("One", null, null, word.repeat(20_000),
                List.of(line(Kind.LABOUR, word.repeat(2_000), null, "1", "h", "2", null, null))));
        try (ReadBack book = written(q)) {
            long words = book.texts().stream().mapToLong(t -> (t.length() - t.replace("remark", "").length()) / 6).sum();
            assertEquals(22_000, words);
            assertEquals(money("2.00"), book.money("total_1", 2));
        }
    }

    @Test
    void aQuoteOfWhichLittleIsKnownSaysNothingOfTheRest() throws Exception {
        QuoteLine bare = new QuoteLine(null, null, null, null, null, money("7.5"), null, null, null);
        Quote q = new Quote(1, 1, null, null, "EUR", null, null, List.of(alternative(null, null, null, null, List.of(bare)),
                alternative("empty", null, null, null, List.of())), null, null, null, null, null);
        try (ReadBack book = written(q)) {
            assertEquals(money("7.50"), book.money("total_1", 2));
            assertEquals(money("0.00"), book.money("total_2", 2));
            assertTrue(book.texts().stream().noneMatch(t -> t.contains("null")), book.texts().toString());
        }
    }

    @Test
    void namesThatSheetsCannotBearAreMended() throws Exception {
        Quote q = quote("EUR", RoundingRule.LINES, "en",
                alternative("a/b[c]:*?\\ and a name that is far too long", null, null, null,
                        List.of(line(Kind.LABOUR, "x", null, "1", "h", "2", null, null))),
                alternative("'", null, null, null, List.of(line(Kind.LABOUR, "x", null, "1", "h", "3", null, null))));
        try (ReadBack book = written(q)) {
            assertEquals(money("2.00"), book.money("total_1", 2));
            assertEquals(money("3.00"), book.money("total_2", 2));
        }
    }

    @Test
    void taxCodesThatLookLikePatternsAreSummedAsWritten() throws Exception {
        // 1 x 10.00 at 5 % = 0.50, 1 x 20.00 at 10 % = 2.00; total 32.50
        Quote q = new Quote(1, 1, null, null, "EUR", RoundingRule.LINES, "en",
                List.of(alternative("One", null, null, null, List.of(
                        line(Kind.LABOUR, "x", null, "1", "h", "10", null, "*"),
                        line(Kind.LABOUR, "y", null, "1", "h", "20", null, "<>")))),
                List.of(new Quote.Tax("*", null, money("5"), null), new Quote.Tax("<>", null, money("10"), null)), null,
                null, null, null);
        try (ReadBack book = written(q)) {
            assertEquals(money("32.50"), book.money("total_1", 2));
        }
    }

    @Test
    void aQuoteInGermanCarriesNoEnglishLabel() throws Exception {
        try (ReadBack book = written(SampleQuote.rich("de"))) {
            assertTrue(book.texts().contains("Arbeitszeit"));
            assertTrue(book.texts().stream().noneMatch(t -> t.contains("Labour") || t.contains("Total with")));
        }
    }

    @Test
    void everyPagePrintsOnA4WithHeadAndNumber() throws Exception {
        try (ReadBack book = written(SampleQuote.rich("en"))) {
            for (int i = 0; i < book.workbook().getNumberOfSheets(); i++) {
                XSSFSheet sheet = book.workbook().getSheetAt(i);
                assertEquals(PrintSetup.A4_PAPERSIZE, sheet.getPrintSetup().getPaperSize());
                assertEquals(1, sheet.getPrintSetup().getFitWidth());
                assertEquals(0, sheet.getPrintSetup().getFitHeight());
                assertTrue(sheet.getFitToPage());
                assertEquals("Tidewater Rewinds && Sons", sheet.getHeader().getLeft());
                assertTrue(sheet.getHeader().getRight().contains("2026-0042"));
                assertEquals("Page &P of &N", sheet.getFooter().getRight());
                assertTrue(sheet.getFooter().getLeft().startsWith("DEMO"));
            }
            CellRangeAddress repeated = book.workbook().getSheetAt(2).getRepeatingRows();
            assertEquals("No.", book.workbook().getSheetAt(2).getRow(repeated.getFirstRow()).getCell(0).getStringCellValue());
        }
    }

    @Test
    void aQuoteThatCannotBeAddedUpLeavesTheOldFile() throws Exception {
        Path file = folder.resolve("quote.xlsx");
        Files.writeString(file, "old");
        Quote q = quote("EUR", RoundingRule.LINES, "en", alternative("One", null, null, null,
                List.of(line(Kind.LABOUR, "x", null, "1", "h", "2", null, "unknown"))));
        WorkbookNotWrittenException e = assertThrows(WorkbookNotWrittenException.class,
                () -> new QuoteWorkbook().write(SampleQuote.job(q), q, SampleShop.shop(), file));
        assertEquals(Reason.CONTENT, e.reason());
        assertTrue(e.getMessage().startsWith("The quote of job 2026-0042 was not written: "), e.getMessage());
        assertTrue(e.getMessage().contains("line 1") && e.getMessage().contains("unknown"), e.getMessage());
        assertEquals("old", Files.readString(file));
    }

    @Test
    void aQuoteWithoutAnyAlternativeOffersNothingAndIsRefusedWithWhatToDo() throws Exception {
        Path file = folder.resolve("quote.xlsx");
        Quote q = quote("EUR", RoundingRule.LINES, "en");
        WorkbookNotWrittenException e = assertThrows(WorkbookNotWrittenException.class,
                () -> new QuoteWorkbook().write(SampleQuote.job(q), q, SampleShop.shop(), file));
        assertEquals(Reason.CONTENT, e.reason());
        assertTrue(e.getMessage().contains("no alternative. Add one"), e.getMessage());
        assertTrue(Files.notExists(file));
    }
}
