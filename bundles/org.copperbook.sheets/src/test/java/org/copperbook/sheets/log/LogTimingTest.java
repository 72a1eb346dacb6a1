package org.copperbook.sheets.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.copperbook.jobs.runup.LogQuantity;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A log of a million rows beside the plainest reading of the same lines in the same run. Not part of the usual tests; run
 * it with {@code mvn -Ptiming -pl bundles/org.copperbook.sheets -am package -Dtest=LogTimingTest
 * -Dsurefire.failIfNoSpecifiedTests=false}.
 */
@Tag("timing")
class LogTimingTest {

    private static final int ROWS = 1_000_000;

    @TempDir
    private Path folder;

    @Test
    void aMillionRowsAgainstReadingTheirLines() throws Exception {
        Path file = folder.resolve("long.csv");
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write("t [s];Speed [r/min];Frequency [Hz];U-V [V];V-W [V];W-U [V];Exciter current [A];DE [\u00b0C]\n");
            for (int i = 0; i < ROWS; i++) {
                double n = 1 + (i * 2654435761L % 1000 - 500) * 1e-6;
                out.write(String.format(Locale.ROOT, "%.1f;%.1f;%.2f;%.1f;%.1f;%.1f;%.3f;%.1f\n", i / 10.0, 1500 * n, 50 * n,
                        400 * n, 400.5 * n, 399.8 * n, 1.6, 20 + 40.0 * i / ROWS));
            }
        }
        double raw = Double.MAX_VALUE;
        double own = Double.MAX_VALUE;
        LogHead head = LogHead.of(file);
        LogReport report = null;
        for (int i = 0; i < 3; i++) {
            long start = System.nanoTime();
            long lines = 0;
            try (BufferedReader in = Files.newBufferedReader(file)) {
                while (in.readLine() != null) {
                    lines++;
                }
            }
            raw = Math.min(raw, (System.nanoTime() - start) / 1e9);
            assertEquals(ROWS + 1, lines);
            start = System.nanoTime();
            report = LogReader.read(file, head, head.guess(), SteadyRule.USUAL, (at, of) -> true);
            own = Math.min(own, (System.nanoTime() - start) / 1e9);
        }
        System.out.printf(Locale.ROOT, "%d rows, %.1f MB: lines only %.3f s, log read %.3f s, ratio %.2f%n", ROWS,
                Files.size(file) / 1e6, raw, own, own / raw);
        assertEquals(ROWS, report.rows());
        assertEquals(ROWS, report.used());
        assertEquals(400, report.steady().get(0).means().get(LogQuantity.VOLTS_UV), 0.1);
    }
}
