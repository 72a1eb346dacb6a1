package org.copperbook.sheets;

import static org.copperbook.sheets.SampleQuote.alternative;
import static org.copperbook.sheets.SampleQuote.line;
import static org.copperbook.sheets.SampleQuote.quote;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.InputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.copperbook.calc.money.QuoteTotals;
import org.copperbook.calc.money.RoundingRule;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuoteFigures;
import org.copperbook.jobs.quote.QuoteLine;
import org.copperbook.jobs.quote.QuoteLine.Kind;
import org.copperbook.jobs.quote.QuotePrices;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Totals as another spreadsheet program computes them from the formulas alone. */
@Tag("libreoffice")
class LibreOfficeTotalsTest {

    @TempDir
    Path folder;

    private XSSFWorkbook recalculated(Quote quote) throws Exception {
        Path file = folder.resolve("quote.xlsx");
        new QuoteWorkbook().write(SampleQuote.job(quote), quote, SampleShop.shop(), file);
        LibreOffice.spoilStoredResults(file);
        Path made = new LibreOffice(folder).convert(file, "xlsx", folder.resolve("made"));
        try (InputStream in = Files.newInputStream(made)) {
            XSSFWorkbook book = new XSSFWorkbook(in);
            book.forEach(s -> s.forEach(r -> r.forEach(c -> {
                if (c.getCellType() == CellType.FORMULA) {
                    assertNotEquals(CellType.ERROR, c.getCachedFormulaResultType(), c.getAddress() + ": " + c);
                }
            })));
            return book;
        }
    }

    private static BigDecimal stored(XSSFWorkbook book, String name, int digits) {
        CellReference at = new AreaReference(book.getName(name).getRefersToFormula(), book.getSpreadsheetVersion())
                .getFirstCell();
        double value = book.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol()).getNumericCellValue();
        return BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_EVEN);
    }

    @Test
    void aThousandLinesComeToTheCent() throws Exception {
        // each line 3 x 0.335 = 1.005 -> 1.01; x 1000 = 1010.00; 19 % = 191.90; 1201.90
        List<QuoteLine> lines = Collections.nCopies(1000, line(Kind.MATERIAL, "wedge", null, "3", "pc", "0.335", null, "V19"));
        try (XSSFWorkbook book = recalculated(quote("EUR", RoundingRule.LINES, "en",
                alternative("One", null, null, null, lines)))) {
            assertEquals(new BigDecimal("1201.90"), stored(book, "total_1", 2));
        }
    }

    @Test
    void currenciesOfNoAndOfThreeDecimalsComeOutRight() throws Exception {
        // 3 x 1250 less 2.5 % = 3656.25 -> 3656; 99; net 3755; 10 % = 375.5 -> 376; 3379; 19 % = 642.01 -> 642; 4021
        try (XSSFWorkbook book = recalculated(quote("JPY", RoundingRule.LINES, "de", alternative("One", null, "10", null,
                List.of(line(Kind.LABOUR, "work", null, "3", "h", "1250", "2.5", "V19"),
                        line(Kind.MATERIAL, "wedge", null, "1", "pc", "99", null, "V19")))))) {
            assertEquals(new BigDecimal("4021"), stored(book, "total_1", 0));
        }
        // 2.5 x 1.0325 = 2.58125 -> 2.581; 0.125 x 4.5 = 0.5625 -> 0.563; 3.144; 7 % = 0.22008 -> 0.220; 3.364
        try (XSSFWorkbook book = recalculated(quote("KWD", RoundingRule.LINES, "en", alternative("One", null, null, null,
                List.of(line(Kind.MATERIAL, "wire", null, "2.5", "kg", "1.0325", null, "V7"),
                        line(Kind.MATERIAL, "tape", null, "0.125", "roll", "4.5", null, "V7")))))) {
            assertEquals(new BigDecimal("3.364"), stored(book, "total_1", 3));
        }
    }

    private static QuoteLine bare(Kind kind, String text, String trade, String quantity, String price, String tax) {
        return new QuoteLine(kind, text, trade, quantity == null ? null : new BigDecimal(quantity), null, new BigDecimal(price), null,
                tax, Map.of());
    }

    /**
     * Labour without a unit or without an amount, lines without a tax beside taxed ones, the two polarities of a diode set.
     * V19: 10 x 52.00 = 520.00; 3 x 9.60 = 28.80; 3 x 10.105 = 30.315 -> 30.32; 2.933 x 16.20 = 47.5146 -> 47.51; 626.63.
     * V7: 55.00 once. Without: 2.5 x 46.20 = 115.50; 45.00; 160.50. Net 842.13; 19 % = 119.0597 -> 119.06; 7 % = 3.85; 965.04.
     * Hours: 10 + 2.5 + 1.
     */
    @ParameterizedTest
    @CsvSource({"USD, en", "EUR, en", "EUR, de"})
    void labourWithoutAUnitUntaxedLinesAndBothPolaritiesOfDiodesAgreeInEveryProgram(String currency, String language) throws Exception {
        Quote q = quote(currency, RoundingRule.LINES, language, alternative("One", null, null, null, List.of(
                bare(Kind.LABOUR, "labour, winder", "winder", "10", "52.00", "V19"),
                bare(Kind.LABOUR, "labour, fitter", "fitter", "2.5", "46.20", null),
                bare(Kind.LABOUR, "fetch it", null, null, "55.00", "V7"),
                line(Kind.DIODE_SET, "rectifier diodes, cathode on the stud", null, "3", "pc", "9.60", null, "V19"),
                line(Kind.DIODE_SET, "rectifier diodes, anode on the stud", null, "3", "pc", "10.105", null, "V19"),
                new QuoteLine(Kind.MATERIAL, "winding wire 1.00 mm grade 2, main rotor", null, new BigDecimal("2.933"), "kg",
                        new BigDecimal("16.20"), null, "V19", "1.00 mm", Map.of()),
                bare(Kind.OTHER, "deposit for the crate", null, "1", "45.00", " "))));
        QuotePrices prices = new QuotePrices(q);
        assertEquals(new BigDecimal("842.13"), prices.totals(q.alternatives().get(0)).net());
        assertEquals(new BigDecimal("965.04"), prices.totals(q.alternatives().get(0)).gross());
        assertEquals(0, new BigDecimal("13.5").compareTo(QuoteFigures.hours(q.alternatives().get(0))));
        try (XSSFWorkbook book = recalculated(q)) {
            for (boolean evaluated : new boolean[] {false, true}) {
                if (evaluated) {
                    book.getCreationHelper().createFormulaEvaluator().evaluateAll();
                }
                assertEquals(new BigDecimal("842.13"), stored(book, "net_1", 2));
                assertEquals(new BigDecimal("965.04"), stored(book, "total_1", 2));
                assertEquals(new BigDecimal("13.50"), stored(book, "hours_1", 2));
                assertEquals(new BigDecimal("2.933"), stored(book, "copper_1", 3));
            }
        }
    }

    @Test
    void randomQuotesAgreeWithDecimalArithmetic() throws Exception {
        Random random = new Random(11);
        Quote.Alternative[] alternatives = new Quote.Alternative[6];
        for (int a = 0; a < alternatives.length; a++) {
            List<QuoteLine> lines = new ArrayList<>();
            for (int i = 0; i < 150; i++) {
                lines.add(line(Kind.values()[random.nextInt(6)], "line " + i, null,
                        BigDecimal.valueOf(random.nextInt(5000) - 300, random.nextInt(4)).toPlainString(), "pc",
                        BigDecimal.valueOf(random.nextInt(3_000_000), random.nextInt(5)).toPlainString(),
                        BigDecimal.valueOf(random.nextInt(10_000), 2).toPlainString(),
                        random.nextInt(3) == 0 ? null : random.nextBoolean() ? "V19" : "V7"));
            }
            alternatives[a] = alternative("Way " + a, "12.5", "3.75", null, lines);
        }
        Quote q = quote("EUR", RoundingRule.TOTALS, "en", alternatives);
        try (XSSFWorkbook book = recalculated(q)) {
            for (int a = 0; a < alternatives.length; a++) {
                QuoteTotals totals = new QuotePrices(q).totals(alternatives[a]);
                assertEquals(totals.net(), stored(book, "net_" + (a + 1), 2));
                assertEquals(totals.gross(), stored(book, "total_" + (a + 1), 2));
            }
        }
    }
}
