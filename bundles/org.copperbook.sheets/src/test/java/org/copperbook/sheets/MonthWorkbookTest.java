package org.copperbook.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.copperbook.jobs.report.MonthEntry;
import org.copperbook.jobs.report.MonthFact.Kind;
import org.copperbook.jobs.report.MonthReport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The figures of a month stay formulas over the jobs behind them. */
class MonthWorkbookTest {

    private static final YearMonth MONTH = YearMonth.of(2026, 3);

    @TempDir
    Path folder;

    private static MonthEntry entry(Kind kind, String what, String number, String amount) {
        return new MonthEntry(kind, what, "id-" + number, number, "=cmd|' /C calc'!A0", "pump * motor?",
                new BigDecimal(amount));
    }

    private Path written(MonthReport report, List<MonthEntry> entries) throws WorkbookNotWrittenException {
        Path target = folder.resolve("month.xlsx");
        new MonthWorkbook().write(report, entries, SampleShop.shop(), target);
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
            Cell customer = book.getSheetAt(1).getRow(2).getCell(4);
            assertEquals(CellType.STRING, customer.getCellType(), "a customer's name computes nothing");
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
