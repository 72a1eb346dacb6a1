package org.copperbook.sheets.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.copperbook.jobs.runup.LogQuantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LogReaderTest {

    private static final String TITLES = "Time;Speed [r/min];Frequency [Hz];U-V [V];V-W [V];W-U [V];Exciter current [A]";

    @TempDir
    private Path folder;

    /** A made-up log: every level held for a minute, one row a second, with a little noise. */
    private static List<String> rows(double... levels) {
        Random random = new Random(42);
        List<String> rows = new ArrayList<>();
        rows.add(TITLES);
        int t = 0;
        for (double level : levels) {
            for (int i = 0; i < 60; i++) {
                double n = 1 + 0.0004 * random.nextGaussian();
                rows.add(String.format(Locale.ROOT, "2026-03-04 10:%02d:%02d;%.1f;%.2f;%.1f;%.1f;%.1f;%.3f", t / 60 % 60,
                        t % 60, 1500 * n, 50 * n, level * n, level * n * 1.002, level * n * 0.999, level / 250));
                t++;
            }
        }
        return rows;
    }

    private Path file(List<String> rows) throws Exception {
        return Files.writeString(folder.resolve("log.csv"), String.join("\r\n", rows) + "\r\n");
    }

    private LogReport read(List<String> rows) throws Exception {
        Path file = file(rows);
        LogHead head = LogHead.of(file);
        return LogReader.read(file, head, head.guess(), SteadyRule.USUAL, (at, of) -> true);
    }

    private static List<String> texts(LogReport report) {
        return report.problems().stream().map(LogProblem::text).toList();
    }

    @Test
    void titlesAndUnitsTellWhatColumnsCarry() throws Exception {
        LogHead head = LogHead.of(file(rows(100)));
        assertEquals(';', head.separator());
        assertEquals(0, head.guess().clock());
        assertEquals(List.of(LogQuantity.SPEED, LogQuantity.FREQUENCY, LogQuantity.VOLTS_UV, LogQuantity.VOLTS_VW,
                LogQuantity.VOLTS_WU, LogQuantity.EXCITER_AMPS), head.guess().columns().stream()
                .map(LogColumn::quantity).filter(q -> q != null).toList());
    }

    @Test
    void eachLevelThatWasHeldMakesOnePointWithItsMean() throws Exception {
        LogReport report = read(rows(100, 200, 300));
        assertEquals(List.of(), texts(report));
        assertEquals(180, report.used());
        assertEquals(3, report.steady().size());
        for (int i = 0; i < 3; i++) {
            assertEquals(100 * (i + 1), report.steady().get(i).means().get(LogQuantity.VOLTS_UV), 0.05 * (i + 1));
        }
        assertEquals(2, report.steady().get(0).firstRow());
        assertEquals(61, report.steady().get(0).lastRow());
    }

    @Test
    void theHashIsThatOfTheWholeFile() throws Exception {
        List<String> rows = rows(100, 150);
        LogReport report = read(rows);
        byte[] bytes = Files.readAllBytes(folder.resolve("log.csv"));
        assertEquals(HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)), report.hash());
        assertEquals(bytes.length, report.bytes());
    }

    @Test
    void aRampMakesNoPoint() throws Exception {
        List<String> rows = new ArrayList<>(List.of("t [s],U-V [V]"));
        for (int i = 0; i < 600; i++) {
            rows.add(i + "," + String.format(Locale.ROOT, "%.2f", 100 + i * 0.05));
        }
        assertEquals(List.of(), read(rows).steady());
    }

    @Test
    void everyFaultIsNamedByItsRowAndEntersNoPoint() throws Exception {
        List<String> rows = rows(100, 200);
        rows.set(10, rows.get(10).replaceFirst("(;[^;]*);[^;]*;", "$1;NaN;"));
        rows.set(20, rows.get(20).replaceFirst("(;[^;]*);[^;]*;", "$1;;"));
        String[] volts = rows.get(30).split(";");
        volts[3] = "0.1001 kV";
        rows.set(30, String.join(";", volts));
        rows.add(41, rows.get(40));
        rows.subList(51, 56).clear();
        rows.set(70, rows.get(70).replace("10:01:", "09:01:"));
        rows.set(80, rows.get(80) + ";7");
        rows.set(90, rows.get(90).replaceFirst("2026[^;]*", "soon"));
        LogReport report = read(rows);
        List<String> said = texts(report);
        assertTrue(said.contains("Row 11: not a number in \u201cFrequency [Hz]\u201d: NaN"), said.toString());
        assertTrue(said.stream().anyMatch(s -> s.startsWith("Row 21: an empty cell")), said.toString());
        assertTrue(said.stream().anyMatch(s -> s.startsWith("Row 31: another unit") && s.contains("kV instead of V")), said.toString());
        assertTrue(said.contains("Row 42: the row before it once more"), said.toString());
        assertTrue(said.stream().anyMatch(s -> s.startsWith("Row 52: rows are missing before it") && s.contains("6.00 s")), said.toString());
        assertTrue(said.stream().anyMatch(s -> s.startsWith("Row 71: the clock goes back")), said.toString());
        assertTrue(said.stream().anyMatch(s -> s.startsWith("Row 81: another number of cells")), said.toString());
        assertTrue(said.contains("Row 91: the moment cannot be read"), said.toString());
        for (long row : List.of(11L, 21L, 31L, 81L, 91L)) {
            assertTrue(report.steady().stream().noneMatch(p -> p.firstRow() <= row && row <= p.lastRow()),
                    "row " + row + " must not be inside a point");
        }
    }

    @Test
    void columnsThatChangePlacesAreSeenAndLeftAside() throws Exception {
        List<String> rows = rows(400, 400);
        for (int i = 30; i < 90; i++) {
            String[] c = rows.get(i).split(";");
            String speed = c[1];
            c[1] = c[2];
            c[2] = speed;
            rows.set(i, String.join(";", c));
        }
        LogReport report = read(rows);
        assertTrue(texts(report).stream().anyMatch(s -> s.startsWith("Rows 31 to 90: two columns change places")), texts(report).toString());
        assertTrue(report.steady().stream().noneMatch(p -> p.firstRow() < 91 && p.lastRow() > 30), report.steady().toString());
        assertFalse(report.steady().isEmpty());
    }

    @Test
    void aValueThatNoMachineHasIsNotTaken() throws Exception {
        List<String> rows = rows(100);
        rows.set(15, rows.get(15).replaceFirst(";15\\d\\d\\.\\d|;14\\d\\d\\.\\d", ";150000.0"));
        assertTrue(texts(read(rows)).stream().anyMatch(s -> s.startsWith("Row 16: no machine has this value")));
    }

    @Test
    void decimalCommasAndKilovoltsAreRead() throws Exception {
        List<String> rows = new ArrayList<>(List.of("t [min];U-V [kV]"));
        for (int i = 0; i < 40; i++) {
            rows.add((i / 20.0 + "").replace('.', ',') + ";0,4");
        }
        LogReport report = read(rows);
        assertEquals(400, report.steady().get(0).means().get(LogQuantity.VOLTS_UV), 1e-9);
        assertEquals(117, report.seconds(), 1e-9);
    }

    @Test
    void datesThatDoNotTellDayFromMonthAreAskedFor() throws Exception {
        Path file = file(List.of("Time,U-V [V],V-W [V]", "03/04/2026 10:00:00,1,1", "03/04/2026 10:00:01,1,1"));
        UnreadableLogException said = assertThrows(UnreadableLogException.class, () -> LogHead.of(file));
        assertTrue(said.getMessage().contains("do not tell day from month"), said.getMessage());
    }

    @Test
    void stoppingTakesNothing() throws Exception {
        List<String> rows = new ArrayList<>(List.of("t [s],U-V [V]"));
        for (int i = 0; i < 20_000; i++) {
            rows.add(i + ",100");
        }
        Path file = file(rows);
        LogHead head = LogHead.of(file);
        assertThrows(UnreadableLogException.class,
                () -> LogReader.read(file, head, head.guess(), SteadyRule.USUAL, (at, of) -> false));
    }

    @Test
    void thinningKeepsEveryPeak() throws Exception {
        List<String> rows = new ArrayList<>(List.of("t [s],U-V [V]"));
        for (int i = 0; i < 30_000; i++) {
            rows.add(i + "," + (i == 17_777 ? 523 : i == 23_456 ? 12 : 400));
        }
        LogReport report = read(rows);
        double[] highs = report.highs().get(LogQuantity.VOLTS_UV);
        double[] lows = report.lows().get(LogQuantity.VOLTS_UV);
        assertTrue(highs.length <= Thinning.MOST && highs.length >= Thinning.MOST / 2);
        assertEquals(523, java.util.Arrays.stream(highs).max().orElseThrow());
        assertEquals(12, java.util.Arrays.stream(lows).min().orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void numbersAreReadAsThePlatformReadsThem(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            double v = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(12) - 4);
            String text = i % 3 == 0 ? Double.toString(v) : String.format(Locale.ROOT, "%." + random.nextInt(9) + "f", v);
            byte[] b = text.getBytes(StandardCharsets.ISO_8859_1);
            assertEquals(Double.parseDouble(text) + 0.0, LogText.number(b, 0, b.length, '.') + 0.0, text);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-", "NaN", "1.2.3", "12 V", "--", "1e", "Infinity", "0x1F", ","})
    void whatIsNoNumberIsNone(String text) {
        byte[] b = text.getBytes(StandardCharsets.ISO_8859_1);
        assertTrue(Double.isNaN(LogText.number(b, 0, b.length, '.')), text);
    }
}
