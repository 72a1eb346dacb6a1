package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.picture.PictureCanvas;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.rectifier.DiodePosition;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.sheets.picture.Mark;
import org.copperbook.sheets.picture.Point;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Diode set, core loop test, tests in process and drying, typed into their pages. */
class TestBayPagesTest {

    private static final String POSITIONS = "/positions";

    private final Desktop desktop = new Desktop();
    private final Keyboard keys = new Keyboard(desktop);

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    private JobEditor begun(PartKind kind) throws Exception {
        desktop.beSomebody();
        desktop.command("org.copperbook.desk.command.newJob");
        JobEditor editor = (JobEditor) desktop.activeEditor();
        desktop.settle(editor);
        assertTrue(editor.show(PartKey.of(kind)));
        desktop.settle(editor);
        return editor;
    }

    private static int column(RecordGrid grid, String pointer) {
        return grid.model().columns().stream().map(c -> c.pointer()).toList().indexOf(pointer);
    }

    private static Outcome outcome(JobEditor editor, String id) {
        return editor.judgement().verdicts().stream().filter(v -> v.id().equals(id)).map(v -> v.outcome()).findFirst()
                .orElse(null);
    }

    @Test
    void aShortedDiodeIsSeenInThePictureAndAsksForTheCompleteSet() throws Exception {
        JobEditor editor = begun(PartKind.RECTIFIER);
        RecordGrid found = desktop.grid(POSITIONS, "/asFoundForward");
        PictureCanvas picture = (PictureCanvas) desktop.field("rectifier.picture");
        for (String side : new String[] {"/asFoundForward", "/asFoundReverse"}) {
            keys.cell(found, 1, column(found, side), "2 mV");
            keys.cell(found, 1, column(found, side + "/isolated"), "in circuit");
        }
        desktop.until("read in circuit it is doubtful",
                () -> outcome(editor, "diode.d2.as-found") == Outcome.DOUBTFUL);
        for (String side : new String[] {"/asFoundForward", "/asFoundReverse"}) {
            keys.cell(found, 1, column(found, side + "/isolated"), "isolated");
        }
        desktop.until("read isolated it is shorted", () -> outcome(editor, "diode.d2.as-found") == Outcome.FAILS);
        desktop.until("the picture says so", () -> picture.scene().showing("positions/1")
                .anyMatch(m -> m instanceof Mark.Text t && t.text().equals("fails")));
        pick(picture, "positions/4");
        assertEquals(4, found.row(), "the diode picked is the row");
        found.moveTo(2, 0);
        assertEquals("positions/2", picture.highlighted(), "the row is the diode marked");
        desktop.press("rectifier.completeSet");
        assertTrue(editor.document().value(PartKey.of(PartKind.RECTIFIER), "/fitted/complete").asBoolean());
        desktop.until("the new set waits for its data",
                () -> outcome(editor, "rectifier.traceable") == Outcome.NOT_MEASURED);
        assertEquals(Outcome.NO_LIMIT_SET, outcome(editor, "rectifier.rating.peak"), "nobody stated the field");
        keys.fill("/duty/fieldV", "40");
        keys.fill("/fitted/repetitivePeakV", "600");
        // 40 V dc behind a bridge: pi/3 of it is the peak reverse, 41.9 V; 2.5 times 104.7 V
        desktop.until("the rating is judged", () -> outcome(editor, "rectifier.rating.peak") == Outcome.MEETS);
        assertTrue(desktop.text("/duty/peak").startsWith("41.89 V"), desktop.text("/duty/peak"));
        List<String> overThePrint = picture.output().heading();
        assertTrue(overThePrint.get(0).contains(editor.document().job().number()), overThePrint.get(0));
        assertTrue(overThePrint.get(1).startsWith(picture.scene().title()), overThePrint.get(1));
    }

    @Test
    void aHalfWaveSetHasThreePositionsAndNoReadingIsLostOnTheWay() throws Exception {
        JobEditor editor = begun(PartKind.RECTIFIER);
        PictureCanvas picture = (PictureCanvas) desktop.field("rectifier.picture");
        RecordGrid found = desktop.grid(POSITIONS, "/asFoundForward");
        keys.cell(found, 4, column(found, "/asFoundForward"), "512 mV");
        keys.fill("/circuit", "half-wave, three diodes");
        desktop.press("rectifier.layOut");
        var set = editor.document().part(PartKey.of(PartKind.RECTIFIER), RectifierSet.class).orElseThrow();
        assertEquals(RectifierSet.Circuit.HALF_WAVE, set.circuit());
        assertEquals(List.of("D1", "D2", "D5"), set.positions().stream().map(DiodePosition::position).toList());
        assertEquals(0.512, set.positions().get(2).asFoundForward().observed().value(), 1e-12);
        desktop.until("three are drawn", () -> IntStream.range(0, 6).mapToObj(i -> "positions/" + i)
                .filter(id -> picture.scene().showing(id).findAny().isPresent()).count() == 3);
        keys.fill("/circuit", "full-wave, six diodes");
        desktop.press("rectifier.layOut");
        set = editor.document().part(PartKey.of(PartKind.RECTIFIER), RectifierSet.class).orElseThrow();
        assertEquals(List.of("D1", "D2", "D3", "D4", "D5", "D6"),
                set.positions().stream().map(DiodePosition::position).toList());
    }

    private void pick(PictureCanvas picture, String id) {
        Point at = picture.scene().showing(id).filter(Mark.Arc.class::isInstance)
                .map(m -> ((Mark.Arc) m).centre()).findFirst().orElseThrow();
        org.eclipse.swt.graphics.Point here = picture.toControl(new Point(at.x() + 12, at.y()));
        for (int type : new int[] {SWT.MouseDown, SWT.MouseUp}) {
            Event e = new Event();
            e.button = 1;
            e.x = here.x;
            e.y = here.y;
            picture.notifyListeners(type, e);
        }
        desktop.work();
    }

    @Test
    void theJobsOfALotAreFoundInTheWindow() throws Exception {
        desktop.beSomebody();
        JobEditor editor = desktop.open("2026-0002");
        assertTrue(editor.show(PartKey.of(PartKind.RECTIFIER)));
        desktop.settle(editor);
        desktop.press("rectifier.lots");
        Table table = (Table) desktop.field("lots.table");
        desktop.until("the jobs are found", () -> table.getItemCount() >= 2);
        assertEquals("2026-0001", table.getItem(0).getText(0));
        assertEquals("2026-0002", table.getItem(1).getText(0));
    }

    @Test
    void theLoopTestIsWorkedOutBeforeARunCanBeRecorded() throws Exception {
        JobEditor editor = begun(PartKind.CORE);
        String[][] setUp = {{"outsideM", "520"}, {"yokeDepthM", "50"}, {"lengthM", "300"}, {"stacking", "0.97"},
            {"ironKgPerM3", "7650"}, {"targetT", "1.32"}, {"frequencyHz", "50"}, {"supplyV", "230"},
            {"fieldStrengthApm", "400"}};
        for (String[] field : setUp) {
            keys.fill("/setUp/" + field[0], field[1]);
        }
        assertEquals("missing: amps in the cable", desktop.text("/plan/missing"));
        keys.fill("/setUp/cableAPerMm2", "4");
        // transformer equation and Ampere's law, as in the library's reference rows: 53.9 turns, 590.6 A turns, 10.94 A
        assertTrue(desktop.text("/plan/turns").startsWith("54 "), desktop.text("/plan/turns"));
        assertTrue(desktop.text("/plan/amps").startsWith("10.94 A"), desktop.text("/plan/amps"));
        assertEquals("at least 2.734 mm\u00b2: take 4 mm\u00b2", desktop.text("/plan/cable"));
        RecordGrid runs = desktop.grid("/runs");
        assertFalse(runs.model().grows(), "no run before the cautions are read");
        desktop.press("cautions.core-loop");
        assertTrue(runs.model().grows());
        keys.cell(runs, 0, column(runs, "/volts"), "230");
        keys.cell(runs, 0, column(runs, "/watts"), "507");
        desktop.until("the specific loss stands in the row",
                () -> runs.model().text(0, column(runs, "specific")).startsWith("3.085"));
        assertEquals("54", runs.model().text(0, column(runs, "/turns")), "the run begins as planned");
        desktop.settle(editor);
    }

    @Test
    void surgePolarityAndDryingAreJudgedAsTheyAreTyped() throws Exception {
        JobEditor editor = begun(PartKind.IN_PROCESS);
        RecordGrid surges = desktop.grid("/surges");
        assertFalse(surges.model().grows(), "no surge test before the cautions are read");
        desktop.press("cautions.surge");
        keys.cell(surges, 0, column(surges, "/winding"), "main stator");
        keys.cell(surges, 0, column(surges, "/pair"), "U-V");
        keys.cell(surges, 0, column(surges, "/alike"), "differ");
        desktop.until("traces that differ fail", () -> outcome(editor, "surge.main-stator.u-v.1") == Outcome.FAILS);
        RecordGrid polarities = desktop.grid("/polarities");
        keys.cell(polarities, 0, column(polarities, "/winding"), "main stator");
        keys.cell(polarities, 0, column(polarities, "/method"), "test rotor on low volts");
        keys.cell(polarities, 0, column(polarities, "/right"), "as wanted");
        desktop.until("polarity as wanted meets",
                () -> outcome(editor, "polarity.main-stator.1") == Outcome.MEETS);
        JobEditor dried = desktop.open("2026-0004");
        assertTrue(dried.show(PartKey.of(PartKind.IMPREGNATION)));
        desktop.settle(dried);
        assertEquals(Outcome.MEETS, outcome(dried, "drying.levelled"));
        assertEquals("turned and levelled", desktop.text("/stage"));
        assertFalse(((PictureCanvas) desktop.field("impregnation.picture")).scene().isEmpty());
    }

    /** The old bench meter of the demo workshop is out of calibration since March. */
    @Test
    void anInstrumentOutOfCalibrationIsSaidBesideItsReading() throws Exception {
        JobEditor editor = begun(PartKind.RUN_UP);
        RecordGrid ohms = desktop.grid("/readings", "/method");
        String[][] cells = {{"/place/winding", "main stator"}, {"/place/mark", "U-V"}, {"/observed", "55.4 m"},
            {"/windingCelsius", "20"}, {"/instrument", "MM-2"}};
        for (String[] cell : cells) {
            keys.cell(ohms, 0, column(ohms, cell[0]), cell[1]);
        }
        PartKey runUp = PartKey.of(PartKind.RUN_UP);
        desktop.until("the meter is objected to", () -> editor.judgement().verdicts().stream()
                .anyMatch(v -> v.part().equals(runUp) && v.id().startsWith("meter.") && v.outcome() == Outcome.DOUBTFUL
                        && v.reason().contains("2026-03-04") && v.settle().contains("in calibration")));
        assertEquals("MM-2", editor.document().value(runUp, "/readings/0/instrument").asText(), "the reading stays");
    }
}
