package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.copperbook.desk.chart.ChartArea;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.runup.LogQuantity;
import org.copperbook.jobs.runup.RunPoint;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.runup.log.LogArea;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A logger's file becomes points of the run-up and a chart, through the window, and its faults are read out first. */
class LoggedRunUpTest {

    private static final PartKey RUN_UP = PartKey.of(PartKind.RUN_UP);

    private final Desktop desktop = new Desktop();

    @TempDir
    private Path folder;

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    private JobEditor begun() throws Exception {
        desktop.beSomebody();
        desktop.command("org.copperbook.desk.command.newJob");
        JobEditor editor = (JobEditor) desktop.activeEditor();
        desktop.settle(editor);
        editor.begin(RUN_UP);
        desktop.settle(editor);
        return editor;
    }

    /** Three levels of field, each held for half a minute; the twentieth row of readings has lost a cell. */
    private Path log() throws Exception {
        StringBuilder rows = new StringBuilder("t [s];Speed [r/min];U-V [V];V-W [V];W-U [V];Exciter current [A]\n");
        for (int i = 0; i < 90; i++) {
            double volts = 100 * (i / 30 + 1);
            rows.append(String.format(Locale.ROOT, "%d;1500;%.1f;%.1f;%s;%.2f\n", i, volts, volts, i == 19 ? "" : "" + volts,
                    volts / 200));
        }
        return Files.writeString(folder.resolve("run.csv"), rows);
    }

    @Test
    void theChosenPointsOfALogEnterTheRecordAndTheChart() throws Exception {
        JobEditor editor = begun();
        LogArea area = (LogArea) desktop.field("log.choose").getParent().getData(LogArea.class.getName());
        area.open(log());
        desktop.until("the columns are shown", () -> desktop.shows("log.quantity.0")
                && ((Button) desktop.field("log.read")).isEnabled());
        ((Combo) desktop.field("log.kind")).select(RunPoint.Kind.OPEN_CIRCUIT_UP.ordinal());
        desktop.press("log.read");
        desktop.until("the log is read", () -> ((Button) desktop.field("log.take")).isEnabled());
        String faults = ((Text) desktop.field("log.problems")).getText();
        assertTrue(faults.startsWith("Row 21: an empty cell in \u201cW-U [V]\u201d"), faults);
        desktop.press("log.all");
        desktop.press("log.take");
        assertEquals(0, points(editor).size(), "no point without the cautions of live work");
        desktop.press("cautions.live-run-up");
        desktop.press("log.take");
        desktop.until("the points are in the record", () -> points(editor).size() >= 3);
        assertEquals(List.of(0.5, 1.0, 1.5), points(editor).stream().map(RunPoint::exciterA).distinct().toList());
        RunUp run = editor.document().part(RUN_UP, RunUp.class).orElseThrow();
        assertEquals(64, run.logs().get(0).hash().length());
        assertEquals(90, run.logs().get(0).rows());
        desktop.until("the curve is drawn", () -> desktop.shows("chart.open-circuit"));
        ChartArea chart = (ChartArea) desktop.field("chart.open-circuit").getParent();
        assertEquals("rising field", chart.chart().series().get(0).title());
        desktop.settle(editor);
        theCrosshairTellsValuesAndTheChartIsSaved(chart);
    }

    private void theCrosshairTellsValuesAndTheChartIsSaved(ChartArea chart) throws Exception {
        chart.canvas().setFocus();
        Event right = new Event();
        right.keyCode = SWT.ARROW_RIGHT;
        right.stateMask = SWT.MOD1;
        // The air-gap line begins at nothing; 200 V at 1 A is the second level of the log.
        for (int stop = 0; stop < 3; stop++) {
            chart.canvas().notifyListeners(SWT.KeyDown, right);
        }
        desktop.work();
        String said = ((Label) desktop.field("chart.open-circuit.reading")).getText();
        assertTrue(said.contains("1 A") && said.contains("rising field 200 V"), said);
        for (String end : List.of("svg", "png", "csv")) {
            Path file = folder.resolve("curve." + end);
            chart.canvas().output().askWhere(type -> Optional.of(file));
            chart.askCsvFile(() -> Optional.of(file));
            switch (end) {
                case "svg" -> chart.canvas().output().saveSvg();
                case "png" -> chart.canvas().output().savePng();
                default -> chart.saveCsv();
            }
            desktop.until(end + " is saved", () -> file.toFile().length() > 0);
        }
        desktop.until("the picture is whole", () -> read(folder.resolve("curve.svg")).strip().endsWith("</svg>"));
        assertTrue(read(folder.resolve("curve.svg")).contains("Open-circuit curve"));
        desktop.until("the image is whole", () -> image(folder.resolve("curve.png")));
        desktop.until("the numbers are whole", () -> read(folder.resolve("curve.csv")).contains("rising field,1,200,"));
    }

    private static boolean image(Path file) {
        try {
            return new ImageData(file.toString()).width > 100;
        } catch (SWTException half) {
            return false;
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Column names that tell nothing are set by hand once; the next file of that logger is read the same way. */
    @Test
    void aMappingSetByHandIsOfferedForTheNextFileOfTheLogger() throws Exception {
        JobEditor editor = begun();
        LogArea area = (LogArea) desktop.field("log.choose").getParent().getData(LogArea.class.getName());
        area.open(Files.writeString(folder.resolve("first.csv"), "t [s];K7;K8\n0;1500;398\n1;1501;399\n2;1500;398\n"));
        desktop.until("the columns are shown", () -> desktop.shows("log.quantity.2"));
        choose("log.quantity.1", LogQuantity.SPEED);
        choose("log.quantity.2", LogQuantity.VOLTS_UV);
        ((Text) desktop.field("log.unit.1")).setText("r/min");
        ((Text) desktop.field("log.unit.2")).setText("V");
        desktop.press("log.read");
        desktop.until("the first is read", () -> ((Button) desktop.field("log.take")).isEnabled());
        area.open(Files.writeString(folder.resolve("second.csv"), "t [s];K7;K8\n0;1490;201\n1;1491;202\n2;1490;201\n"));
        desktop.until("the second is shown as the first was", () -> chosen("log.quantity.1") == LogQuantity.SPEED
                && chosen("log.quantity.2") == LogQuantity.VOLTS_UV
                && ((Label) desktop.field("log.said")).getText().contains("second.csv"));
        assertEquals("r/min", ((Text) desktop.field("log.unit.1")).getText());
        desktop.settle(editor);
    }

    private void choose(String id, LogQuantity quantity) {
        ((Combo) desktop.field(id)).select(2 + quantity.ordinal());
    }

    private LogQuantity chosen(String id) {
        int at = ((Combo) desktop.field(id)).getSelectionIndex();
        return at < 2 ? null : LogQuantity.values()[at - 2];
    }

    private static List<RunPoint> points(JobEditor editor) {
        return editor.document().part(RUN_UP, RunUp.class).map(RunUp::points).orElse(List.of());
    }
}
