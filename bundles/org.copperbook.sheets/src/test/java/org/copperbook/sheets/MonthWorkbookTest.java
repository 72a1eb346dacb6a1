package org.copperbook.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.copperbook.jobs.report.MonthEntry;
import org.copperbook.jobs.report.MonthFact.Kind;
import org.copperbook.jobs.report.MonthHours;
import org.copperbook.jobs.report.MonthReport;
import org.copperbook.jobs.shop.Capacities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The figures of a month stay formulas over the jobs behind them. */
class MonthWorkbookTest {

    private static final YearMonth MONTH = YearMonth.of(2026, 3);

    /** Ten hours a week, two a day; the March of 2026 has 22 days from Monday to Friday. */
    private static final Capacities CAPACITIES = new Capacities(1,
            List.of(new Capacities.OfTrade("winder*", BigDecimal.TEN, Map.of())), Map.of());

    @TempDir
    Path folder;

    private static MonthEntry entry(Kind kind, String what, String number, String amount) {
        return new MonthEntry(kind, what, "id-" + number, number, "=cmd|' /C calc'!A0", "pump * motor?",
                new BigDecimal(amount));
    }

    private Path written(MonthReport report, List<MonthEntry> entries) throws WorkbookNotWrittenException {
        Path target = folder.resolve("month.xlsx");
        new MonthWorkbook().write(report, MonthHours.of(report, CAPACITIES), entries, SampleShop.shop(), target);
        return target;
    }

    private static Row row(XSSFWorkbook book, String firstText) {
        for (Row r : book.getSheetAt(0)) {
            if (r.getCell(1) != null && r.getCell(1).getCellType() == CellType.STRING
                    && r.getCell(1).getStringCellValue().equals(firstText)) {
                return r;
            }
        }
        throw new AssertionError("no row for " + firstText);
    }

    @Test
    void countsAndSumsAreFormulasOverTheJobs() throws IOException, WorkbookNotWrittenException {
        MonthReport report = new MonthReport(MONTH, List.of(
                new MonthReport.Line(Kind.BOOKED, "", 3, BigDecimal.ZERO),
                new MonthReport.Line(Kind.QUOTED, "EUR", 2, new BigDecimal("1500.250")),
                new MonthReport.Line(Kind.HOURS, "winding", 1, new BigDecimal("7.500"))));
        Path file = written(report, List.of(entry(Kind.BOOKED, "", "1", "0"), entry(Kind.QUOTED, "EUR", "1", "1000.250"),
                entry(Kind.BOOKED, "", "2", "0"), entry(Kind.QUOTED, "EUR", "2", "500"),
                entry(Kind.BOOKED, "", "3", "0"), entry(Kind.HOURS, "winding", "3", "7.5")));
        try (XSSFWorkbook book = new XSSFWorkbook(file.toFile().getPath())) {
            Cell booked = row(book, "Booked in").getCell(3);
            assertEquals(CellType.FORMULA, booked.getCellType());
            assertEquals(3, booked.getNumericCellValue());
            Row quoted = row(book, "Quoted, net");
            assertEquals(2, quoted.getCell(3).getNumericCellValue());
            assertEquals(1500.25, quoted.getCell(4).getNumericCellValue(), 1e-9);
            assertTrue(quoted.getCell(4).getCellFormula().startsWith("SUMIF("), quoted.getCell(4).getCellFormula());
            assertEquals(7.5, row(book, "Hours agreed to").getCell(4).getNumericCellValue(), 1e-9);
            assertEquals(HorizontalAlignment.RIGHT, quoted.getCell(4).getCellStyle().getAlignment(), "sums stand under each other");
            assertEquals(PrintSetup.A4_PAPERSIZE, book.getSheetAt(1).getPrintSetup().getPaperSize());
            assertTrue(book.getSheetAt(1).getPrintSetup().getLandscape());
            assertEquals(1, book.getSheetAt(1).getPrintSetup().getFitWidth());
            assertEquals("2:2", book.getSheetAt(1).getRepeatingRows().formatAsString(), "the row of titles on every page");
            assertEquals("Page &P of &N", book.getSheetAt(1).getFooter().getRight());
            Cell customer = book.getSheetAt(1).getRow(2).getCell(4);
            assertEquals(CellType.STRING, customer.getCellType(), "a customer's name computes nothing");
        }
    }

    @Test
    void hoursOfEachTradeStandBesideWhatItCanWork() throws IOException, WorkbookNotWrittenException {
        MonthReport report = new MonthReport(MONTH, List.of(
                new MonthReport.Line(Kind.HOURS, "Winder*", 1, new BigDecimal("30")),
                new MonthReport.Line(Kind.WORKED, "fitter", 1, new BigDecimal("3.25")),
                new MonthReport.Line(Kind.WORKED, "winder*", 2, new BigDecimal("12.5"))));
        Path file = written(report, List.of(entry(Kind.HOURS, "Winder*", "1", "30"), entry(Kind.WORKED, "fitter", "1", "3.25"),
                entry(Kind.WORKED, "winder*", "1", "10"), entry(Kind.WORKED, "winder*", "2", "2.5")));
        try (XSSFWorkbook book = new XSSFWorkbook(file.toFile().getPath())) {
            Row winder = row(book, "winder*");
            assertEquals(12.5, winder.getCell(2).getNumericCellValue(), 1e-9);
            assertEquals(30, winder.getCell(3).getNumericCellValue(), 1e-9);
            assertEquals(44, winder.getCell(4).getNumericCellValue(), 1e-9);
            Row fitter = row(book, "fitter");
            assertEquals(CellType.FORMULA, fitter.getCell(2).getCellType());
            assertEquals(3.25, fitter.getCell(2).getNumericCellValue(), 1e-9);
            assertEquals(0, fitter.getCell(3).getNumericCellValue(), 1e-9);
            assertEquals(CellType.BLANK, fitter.getCell(4).getCellType(), "nobody has said what fitters can work");
        }
    }

    @Test
    void aMonthInWhichNothingHappenedSaysSo() throws IOException, WorkbookNotWrittenException {
        try (XSSFWorkbook book = new XSSFWorkbook(written(new MonthReport(MONTH, List.of()), List.of()).toString())) {
            assertEquals("Nothing happened in this month.", book.getSheetAt(0).getRow(book.getSheetAt(0).getLastRowNum())
                    .getCell(0).getStringCellValue());
        }
    }
}
