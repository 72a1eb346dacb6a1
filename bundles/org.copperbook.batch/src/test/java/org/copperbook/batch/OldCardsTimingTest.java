package org.copperbook.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How long 10,000 cards take against the bare reading of the same workbook in the same run. Not part of the usual tests;
 * run it with {@code mvn -Ptiming -pl bundles/org.copperbook.batch -am package -Dtest=OldCardsTimingTest
 * -Dsurefire.failIfNoSpecifiedTests=false}.
 */
@Tag("timing")
class OldCardsTimingTest {

    private static final int ROWS = 10_000;
    private static final int ROUNDS = 3;

    @TempDir
    Path folder;

    @Test
    void tenThousandCardsAgainstBareReading() throws Exception {
        Path file = workbook();
        double bare = 0;
        double understood = 0;
        double in = 0;
        for (int round = 0; round <= ROUNDS; round++) {
            double read = seconds(() -> assertEquals(ROWS + 1, bare(file)));
            double dry = seconds(() -> assertEquals(0, new BatchRun(folder).run("take-in-cards", file.toString(),
                    "--dry-run").exit()));
            BatchRun batch = new BatchRun(Files.createDirectories(folder.resolve("round-" + round)));
            double taken = seconds(() -> assertEquals(ROWS, batch.on("take-in-cards", file.toString(), "--json").json()
                    .path("new").asInt()));
            // the first round warms up
            bare += round == 0 ? 0 : read / ROUNDS;
            understood += round == 0 ? 0 : dry / ROUNDS;
            in += round == 0 ? 0 : taken / ROUNDS;
        }
        System.out.printf("10,000 cards, mean of %d rounds: reading the workbook whole with POI %.2f s = 1;"
                + " read and understood %.2f; taken into the store %.2f%n", ROUNDS, bare, understood / bare, in / bare);
    }

    private interface Work {
        void run() throws Exception;
    }

    private static double seconds(Work work) throws Exception {
        long begin = System.nanoTime();
        work.run();
        return (System.nanoTime() - begin) * 1e-9;
    }

    /** The reading that POI offers without further ado: the whole workbook as objects, every cell visited. */
    private static int bare(Path file) throws Exception {
        int rows = 0;
        try (InputStream in = Files.newInputStream(file); XSSFWorkbook book = new XSSFWorkbook(in)) {
            for (Row row : book.getSheetAt(0)) {
                for (Cell cell : row) {
                    rows += cell.toString().isEmpty() ? 0 : 0;
                }
                rows++;
            }
        }
        return rows;
    }

    private Path workbook() throws Exception {
        String[] titles = {"Card no.", "Maker", "Serial no.", "Rating (kVA)", "Volts", "Poles", "Slots", "Coil pitch",
            "Turns per coil", "Wire (mm)", "Strands in hand", "Parallel circuits", "Connection", "Bore (mm)",
            "Core length (mm)", "Mean turn (mm)"};
        Path file = folder.resolve("cards.xlsx");
        try (SXSSFWorkbook book = new SXSSFWorkbook(100); OutputStream out = Files.newOutputStream(file)) {
            SXSSFSheet sheet = book.createSheet("Cards");
            for (int i = 0; i <= ROWS; i++) {
                Row row = sheet.createRow(i);
                Object[] cells = i == 0 ? titles : new Object[] {"C-" + i, "Corrow", "S" + i, 20.0 + i % 80, 400.0, 4.0,
                    48.0, "1-11", 3.0 + i % 30, 1.18, 2.0 + i % 8, 1.0, "star", 180.0 + i % 200, 120.0 + i % 150,
                    700.0 + i % 400};
                for (int c = 0; c < cells.length; c++) {
                    if (cells[c] instanceof Double d) {
                        row.createCell(c).setCellValue(d);
                    } else {
                        row.createCell(c).setCellValue(cells[c].toString());
                    }
                }
            }
            book.write(out);
        }
        return file;
    }
}
