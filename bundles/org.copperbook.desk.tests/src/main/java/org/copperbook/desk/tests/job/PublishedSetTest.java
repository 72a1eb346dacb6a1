package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.tests.keys.JobByKeys;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.check.JobChecks;
import org.copperbook.jobs.check.Stage;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.signoff.SignOffs;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/**
 * The 60 kW brushless set of US Army TM 9-6115-645-24 through the window, from its booking to the signed release.
 * The manual's limits at 25 degrees Celsius (table 4-3): exciter stator 24.85 to 33.61 ohm, exciter rotor 0.202 to
 * 0.274 ohm between two lines, generator rotor 0.52 to 0.70 ohm, generator stator 0.040 to 0.054 ohm per section.
 */
class PublishedSetTest {

    private static final PartKey INSPECTION = PartKey.of(PartKind.INSPECTION);
    private static final PartKey SIGN_OFFS = PartKey.of(PartKind.SIGN_OFFS);
    private static final String READINGS = "/readings";

    private final Desktop desktop = new Desktop();
    private final Keyboard keys = new Keyboard(desktop);
    private final PublishedSet set = new PublishedSet(desktop);
    private JobEditor editor;

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @Test
    void readingsTypedAreJudgedByTheManualsLimits() throws Exception {
        open(set.takeIn(PartKind.BOOKING, PartKind.NAMEPLATE, PartKind.QUOTE));
        typeReadings();
        Map.of("exciter-stator.resistance.as-found.whole", Outcome.FAILS,
                "main-rotor.resistance.as-found.whole", Outcome.MEETS,
                "exciter-rotor.resistance.as-found.u-v", Outcome.MEETS,
                "exciter-rotor.resistance.as-found.v-w", Outcome.MEETS,
                "main-stator.resistance.as-found.t1-t4", Outcome.MEETS,
                "main-stator.resistance.as-found.t9-t12", Outcome.MEETS)
                .forEach((id, outcome) -> assertEquals(outcome, verdict(id).outcome(), id));
        Verdict rejected = verdict("exciter-stator.resistance.as-found.whole");
        assertTrue(rejected.source().contains("TM 9-6115-645-24"), rejected.source());
        assertTrue(rejected.value() + rejected.expandedU() < rejected.bounds().lower(), "below with its whole whisker");
        assertEquals(rejected.id(), editor.verdicts().shown().get(0).id(), "the heaviest stands first at the right");
        RecordGrid grid = desktop.grid(READINGS, "/method");
        grid.moveTo(3, 0);
        assertTrue(grid.spoken().contains("fails"), grid.spoken());
        grid.moveTo(1, 0);
        assertTrue(grid.spoken().contains("meets"), grid.spoken());
    }

    @Test
    void theSeparateExcitationRunOpensOnlyWhenItsCautionsAreAcknowledgedByName() throws Exception {
        open(set.takeIn(PartKind.BOOKING, PartKind.NAMEPLATE));
        show(INSPECTION);
        RecordGrid runs = desktop.grid("/excitationRuns");
        assertFalse(runs.model().grows(), "no run can be begun yet");
        desktop.press("cautions.separate-excitation");
        assertTrue(runs.model().grows());
        SignOffs.CautionAcknowledged said = editor.document().job().signOffs().orElseThrow().cautions().get(0);
        assertEquals("tester-1", said.by());
        cell("/excitationRuns", "/regulatorIsolated", 0, "yes");
        cell("/excitationRuns", "/speedRpm", 0, "1803");
        cell("/excitationRuns", "/exciterA", 0, "1.12");
        cell("/excitationRuns", "/batteryV", 0, "24");
        cell("/excitationRuns", "/lineVolts/a", 0, "131.2");
        cell("/excitationRuns", "/lineVolts/b", 0, "131.0");
        cell("/excitationRuns", "/lineVolts/c", 0, "131.5");
        cell("/excitationRuns", "/instrument", 0, "volt-1");
        cell("/excitationRuns", "/at", 0, "2026-03-03 13:30");
        cell("/excitationRuns", "/expectedV", 0, "208");
        cell("/excitationRuns", "/expectedFrom", 0, "nominal");
        desktop.settle(editor);
        assertEquals("tester-1", editor.document().job().inspection().orElseThrow().excitationRuns().get(0).cautionsBy());
        assertEquals(Outcome.FAILS, verdict("excitation-run.1").outcome(), "far below nominal");
        save();
    }

    /** Page after page by keyboard alone; what is judged is what the same set's file is judged to be without a window. */
    @Test
    void theSetIsTypedFromItsBookingToItsReleaseWorkbook() throws Exception {
        set.shop();
        JobByKeys job = new JobByKeys(desktop);
        TypedSet typed = new TypedSet(desktop, job);
        desktop.session().who("foreman-1");
        job.bookIn();
        editor = job.editor();
        typed.booking();
        typed.nameplate();
        job.save().somebody("tester-1");
        typed.inspection();
        job.save().somebody("foreman-1");
        typed.quote();
        job.save().somebody("winder-1");
        typed.oldWinding();
        captureIsSignedByTwoBeforeTheNewWindingIsOpen(job);
        typed.newWinding();
        job.save().somebody("tester-1");
        typed.provingTheNewWinding();
        judgeWithstand(job);
        job.somebody("winder-1").sign(HoldPoint.WINDING_PROVED).somebody("tester-1").sign(HoldPoint.WINDING_PROVED);
        assertEquals(HoldPointState.State.SIGNED, job.state(HoldPoint.WINDING_PROVED).state());
        typed.impregnation();
        typed.rectifier();
        typed.runUp();
        job.page(SIGN_OFFS).sign(HoldPoint.RECTIFIER_COMPLETE).save();
        job.somebody("winder-1").refused(HoldPoint.RELEASE).somebody("checker-1").sign(HoldPoint.RELEASE).save();
        assertEquals(Stage.At.RELEASED, Stage.of(desktop.session().store().load(editor.document().id())).at());
        sameAsWithoutAWindow(WrittenWorkbook.by(desktop, editor, "org.copperbook.desk.command.recordWorkbook"));
    }

    private void captureIsSignedByTwoBeforeTheNewWindingIsOpen(JobByKeys job) {
        job.save().add("Add: Winding", "Exciter stator, as wound", TypedSet.WOUND);
        assertTrue(desktop.shows("blocked"), "the window says why the new winding is closed");
        assertFalse(((Text) desktop.field("/span")).getEditable(), "nothing can be typed there yet");
        job.somebody("tester-1").page(SIGN_OFFS).refused(HoldPoint.CAPTURE_COMPLETE)
                .somebody("winder-1").sign(HoldPoint.CAPTURE_COMPLETE)
                .somebody("winder-2").sign(HoldPoint.CAPTURE_COMPLETE);
        assertEquals(HoldPointState.State.SIGNED, job.state(HoldPoint.CAPTURE_COMPLETE).state());
        job.somebody("winder-1").page(TypedSet.WOUND);
        assertFalse(desktop.shows("blocked"));
        assertTrue(((Text) desktop.field("/span")).getEditable());
    }

    /** No volts of the exciter field stand on the plate, so the withstand has no limit: the checker says it will do. */
    private void judgeWithstand(JobByKeys job) {
        job.save().somebody("checker-1").page(SIGN_OFFS)
                .chooseWith("open.verdict", verdict("withstand.exciter-stator.1").title())
                .field("open.reason", "1500 V is the least of IEC 60034-1, table 16.")
                .press("open.acceptable", () -> editor.document().job().signOffs()
                        .filter(s -> s.judgements().stream().anyMatch(j -> "checker-1".equals(j.by()))).isPresent());
    }

    private void sameAsWithoutAWindow(WrittenWorkbook record) {
        List<Verdict> ofFile = JobChecks.verdicts(set.whole(), desktop.session().shop());
        assertEquals(outcomes(ofFile), outcomes(editor.judgement().verdicts()));
        for (Verdict v : ofFile) {
            if (v.value() != null) {
                assertEquals(v.value(), verdict(v.id()).value(), 1e-9 * Math.abs(v.value()), v.id());
            }
            record.says(v.title());
        }
        assertEquals(Outcome.FAILS, verdict("exciter-stator.resistance.as-found.whole").outcome());
        record.says("TM 9-6115-645-24");
        record.says("Hill Road Pumping Station");
        record.says("fails");
        record.says("Q. Hazel");
    }

    private static Map<String, Outcome> outcomes(List<Verdict> verdicts) {
        Map<String, Outcome> outcomes = new TreeMap<>();
        verdicts.forEach(v -> outcomes.put(v.id(), v.outcome()));
        return outcomes;
    }

    private void show(PartKey key) {
        assertTrue(editor.show(key), key + " stands in the outline");
        desktop.settle(editor);
        assertEquals(key, editor.shown().orElseThrow());
        assertTrue(editor.page().isPresent(), key + " could not be made");
    }


    private void open(String number) throws Exception {
        desktop.session().who("tester-1");
        editor = desktop.open(number);
        be("tester-1");
    }

    private void be(String person) {
        desktop.session().who(person);
        desktop.work();
        desktop.settle(editor);
    }

    private void save() throws Exception {
        keys.control('s');
        desktop.until("Ctrl+S has saved the job", () -> !editor.isDirty());
        desktop.settle(editor);
    }

    private Verdict verdict(String id) {
        return editor.judgement().verdicts().stream().filter(v -> v.id().equals(id)).findFirst()
                .orElseThrow(() -> new AssertionError(id + " is not among " + editor.judgement().verdicts().stream()
                        .map(Verdict::id).toList()));
    }

    private void typeReadings() {
        show(INSPECTION);
        resistance(0, "main rotor", "F1-F2", "0,5955");
        resistance(1, "main stator", "T1-T4", "45.73 m");
        resistance(2, "main stator", "T2-T5", "45.93 m");
        resistance(3, "exciter stator", "F1-F2", "21.44 ohm");
        resistance(4, "exciter rotor", "U-V", "0.2301");
        resistance(5, "exciter rotor", "V-W", "0.2307");
        resistance(6, "exciter rotor", "W-U", "0.2304");
        resistance(7, "main stator", "T3-T6", "0.04564");
        resistance(8, "main stator", "T7-T10", "0.04583");
        resistance(9, "main stator", "T8-T11", "0.04573");
        resistance(10, "main stator", "T9-T12", "0.04603");
        insulation(0, "main stator", "180 M");
        insulation(1, "main rotor", "95");
        insulation(2, "exciter stator", "60");
        insulation(3, "exciter rotor", "0.12 G");
        desktop.settle(editor);
        assertEquals(15, editor.document().rows(INSPECTION, READINGS).size());
    }

    private void resistance(int row, String winding, String mark, String ohms) {
        String column = "/method";
        cellOf(column, "/place/winding", row, winding);
        cellOf(column, "/place/mark", row, mark);
        cellOf(column, "/observed", row, ohms);
        if (row == 0) {
            cellOf(column, "/windingCelsius", row, "18");
            cellOf(column, "/instrument", row, "bridge-1");
            cellOf(column, "/method", row, "4-wire");
        }
        cellOf(column, "/at", row, "2026-03-03 09:" + (10 + row));
    }

    private void insulation(int row, String winding, String ohms) {
        String column = "/testVolts";
        cellOf(column, "/place/winding", row, winding);
        cellOf(column, "/observed", row, ohms);
        cellOf(column, "/testVolts", row, "500");
        cellOf(column, "/afterSeconds", row, "1 min");
        if (row == 0) {
            cellOf(column, "/windingCelsius", row, "18");
            cellOf(column, "/instrument", row, "ir-tester-1");
        }
        cellOf(column, "/at", row, "2026-03-03 09:" + (30 + row));
    }

    private void cellOf(String gridColumn, String column, int row, String text) {
        type(desktop.grid(READINGS, gridColumn), column, row, text);
    }

    private void cell(String list, String column, int row, String text) {
        type(desktop.grid(list, column), column, row, text);
    }

    private void type(RecordGrid grid, String column, int row, String text) {
        int at = grid.model().columns().stream().map(c -> c.pointer()).toList().indexOf(column);
        keys.cell(grid, row, at, text);
        assertTrue(editor.document().typed(INSPECTION, grid.model().pointer(row, at)).isEmpty(),
                column + " understands \"" + text + "\"");
    }
}
