package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.stream.IntStream;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.desk.chart.ChartArea;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.picture.PictureCanvas;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.inspection.ChecklistTemplate;
import org.copperbook.store.JobStore;
import org.eclipse.jface.preference.PreferenceDialog;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The as-found page: what is typed is judged beside it, with what to do about it. */
class InspectionPageTest {

    private static final PartKey PART = PartKey.of(PartKind.INSPECTION);

    private final Desktop desktop = new Desktop();
    private final Keyboard keys = new Keyboard(desktop);
    private JobEditor editor;

    @BeforeEach
    void theJobIsOpen() throws Exception {
        desktop.beSomebody();
        editor = desktop.open("2026-0008");
        editor.show(PART);
        desktop.settle(editor);
    }

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    private void cell(RecordGrid grid, int row, String column, String words) {
        keys.cell(grid, row, grid.model().columns().stream().map(c -> c.pointer()).toList().indexOf(column), words);
    }

    @Test
    void insulationOverTimeBecomesACurveThatFollowsTheTyping() {
        RecordGrid grid = desktop.grid("/readings", "/afterSeconds");
        String[][] run = {{"120 M", "30"}, {"180 M", "60"}, {"540 M", "600"}};
        for (int i = 0; i < run.length; i++) {
            cell(grid, i, "/place/winding", "main stator");
            cell(grid, i, "/observed", run[i][0]);
            cell(grid, i, "/afterSeconds", run[i][1]);
            cell(grid, i, "/windingCelsius", "21");
        }
        desktop.settle(editor);
        desktop.until("the curve is drawn", () -> desktop.shows("chart.insulation-main-stator-as-found"));
        ChartArea chart = (ChartArea) ((PictureCanvas) desktop.field("chart.insulation-main-stator-as-found")).getParent();
        desktop.until("with all points", () -> chart.chart().series().get(0).points().size() == 3);
        // 540/180 and 180/120
        assertTrue(chart.chart().note().contains("Polarisation index (10 min over 1 min) 3"), chart.chart().note());
        assertTrue(chart.chart().note().contains("Absorption ratio (60 s over 30 s) 1.5"), chart.chart().note());
        assertEquals(540, chart.chart().series().get(0).points().get(2).y(), 1e-9);
        cell(grid, 2, "/observed", "360 M");
        desktop.until("the curve follows", () -> chart.chart().series().get(0).points().get(2).y() == 360);
    }

    @Test
    void aTwoWireMeterOnAFifthOfAnOhmIsSaidAtOnceWithWhatToUseInstead() {
        String twoWire = desktop.session().shop().instruments().instruments().stream()
                .filter(i -> Boolean.FALSE.equals(i.fourWire()) && i.ranges().stream().anyMatch(r -> "ohm".equals(r.quantity())
                        && r.resolution() != null && r.resolution() >= 0.01 && r.upTo() < 1e5)).findFirst().orElseThrow().id();
        RecordGrid grid = desktop.grid("/readings", "/temperatureHow");
        cell(grid, 0, "/place/winding", "exciter rotor");
        cell(grid, 0, "/instrument", twoWire);
        cell(grid, 0, "/observed", "0.2");
        desktop.settle(editor);
        desktop.until("it is judged", () -> editor.judgement().verdicts().stream().anyMatch(v -> v.id().startsWith("meter.inspection")));
        Verdict said = editor.judgement().verdicts().stream().filter(v -> v.id().startsWith("meter.inspection")).findFirst().orElseThrow();
        assertTrue(said.reason().contains("cannot resolve"), said.reason());
        assertTrue(said.settle().contains("bridge"), said.settle());
        desktop.until("it stands under the reading", () -> desktop.saidUnder(grid).contains("cannot resolve"));
        assertTrue(desktop.saidUnder(grid).contains("bridge") && desktop.saidUnder(grid).contains("BR-1"), "what to use instead too: " + desktop.saidUnder(grid));
        cell(grid, 0, "/instrument", "BR-1");
        desktop.until("and goes when the bridge is named", () -> !desktop.saidUnder(grid).contains("cannot resolve"));
    }

    @Test
    void anInstrumentOutOfCalibrationIsSaidAtOnce() {
        RecordGrid grid = desktop.grid("/readings", "/temperatureHow");
        cell(grid, 0, "/place/winding", "exciter stator");
        cell(grid, 0, "/instrument", "MM-2");
        cell(grid, 0, "/observed", "30");
        desktop.until("it is said under the grid", () -> desktop.saidUnder(grid).contains("ran out on 2026-03-04"));
        assertTrue(desktop.saidUnder(grid).contains("in calibration"), desktop.saidUnder(grid));
    }

    @Test
    void aBearingSeatIsJudgedAsItIsTyped() {
        RecordGrid grid = desktop.grid("/fits");
        cell(grid, 0, "/seat", "shaft");
        cell(grid, 0, "/end", "drive end");
        cell(grid, 0, "/nominalMm", "45");
        cell(grid, 0, "/zone", "k5");
        cell(grid, 0, "/measuredMm", "44,99");
        desktop.until("outside its zone it fails", () -> outcome("fit.drive-end.shaft") == Outcome.FAILS);
        cell(grid, 0, "/measuredMm", "45.008");
        desktop.until("inside it, without an instrument, it is doubtful",
                () -> outcome("fit.drive-end.shaft") == Outcome.DOUBTFUL);
        cell(grid, 0, "/zone", "q9");
        desktop.until("an unknown zone sets no limit", () -> outcome("fit.drive-end.shaft") == Outcome.NO_LIMIT_SET);
        assertEquals("q9", grid.model().text(0, 3), "and stays as typed");
    }

    private Outcome outcome(String id) {
        return editor.judgement().verdicts().stream().filter(v -> v.id().equals(id)).map(Verdict::outcome).findFirst().orElse(null);
    }

    @Test
    void whatIsNotGoodBecomesFindingsWithWeightAndWorkInOneStep() {
        RecordGrid list = desktop.grid("/checklist");
        int bearings = IntStream.range(0, list.model().filled()).filter(r -> list.model().text(r, 1).equals("bearings"))
                .findFirst().orElseThrow();
        cell(list, bearings, "/condition", "worn");
        cell(list, bearings, "/note", "rumble at the drive end");
        desktop.press("inspection.makeFindings");
        desktop.press("inspection.makeFindings");
        RecordGrid findings = desktop.grid("/findings");
        assertEquals(1, findings.model().filled(), "the second press adds nothing");
        assertEquals("bearings", findings.model().text(0, 0));
        assertEquals("should be done", findings.model().text(0, 1));
        assertEquals("worn: rumble at the drive end", findings.model().text(0, 2));
        assertEquals("change both bearings", findings.model().text(0, 3));
        editor.document().undo(PART);
        desktop.work();
        assertEquals(0, findings.model().filled(), "one undo takes it back");
    }

    @Test
    void twoPointsOfOneNameBecomeTwoFindings() {
        RecordGrid list = desktop.grid("/checklist");
        int free = list.model().filled();
        for (int i = 0; i < 2; i++) {
            cell(list, free + i, "/area", i == 0 ? "drive end" : "other end");
            cell(list, free + i, "/point", "shield");
            cell(list, free + i, "/condition", "damaged");
        }
        desktop.press("inspection.makeFindings");
        RecordGrid findings = desktop.grid("/findings");
        assertEquals(2, findings.model().filled());
        assertEquals("drive end, shield", findings.model().text(0, 0));
        assertEquals("other end, shield", findings.model().text(1, 0));
    }

    @Test
    void theWorkThatFindingsProposeBecomesLinesOfTheQuote() {
        RecordGrid findings = desktop.grid("/findings");
        cell(findings, 0, "/where", "bearings");
        cell(findings, 0, "/proposedWork", "change both bearings");
        cell(findings, 1, "/where", "frame");
        PartKey quote = new PartKey(PartKind.QUOTE, "1");
        editor.begin(quote);
        desktop.settle(editor);
        editor.show(quote);
        desktop.settle(editor);
        desktop.press("quote.takeFindings");
        assertTrue(((Label) desktop.field("quote.tookFindings")).getText().startsWith("One line added"),
                ((Label) desktop.field("quote.tookFindings")).getText() + " " + editor.document().tree(PART).path("findings") + " "
                        + editor.document().tree(quote));
        desktop.press("quote.takeFindings");
        RecordGrid lines = desktop.grid("/alternatives/0/lines");
        desktop.until("the line stands there once", () -> lines.model().filled() == 1);
        assertEquals("bearings: change both bearings", editor.document().tree(quote).at("/alternatives/0/lines/0/text").asText());
    }

    @Test
    void theWorkshopEditsItsChecklistAndJobsAlreadyBegunKeepTheirs() throws Exception {
        cell(desktop.grid("/checklist"), 0, "/note", "begun with the list as it was");
        String before = desktop.grid("/checklist").model().text(0, 1);
        PreferenceDialog dialog = PreferencesUtil.createPreferenceDialogOn(desktop.page().getWorkbenchWindow().getShell(),
                "org.copperbook.inspection.checklist", null, null);
        dialog.setBlockOnOpen(false);
        dialog.open();
        desktop.work();
        Text lines = (Text) desktop.field("checklist/lines");
        String shipped = lines.getText();
        assertTrue(shipped.contains("bearings: change both bearings"), shipped);
        lines.setText("no point here");
        PreferencePage page = (PreferencePage) dialog.getSelectedPage();
        assertFalse(page.performOk(), "a line that is no point is refused");
        assertTrue(((Label) desktop.field("checklist/problem")).getText().contains("line 1"));
        assertEquals("no point here", lines.getText(), "and stays");
        lines.setText("mechanical: terminal box seal: new seal\nvisual: paint");
        JobStore store = desktop.session().store();
        PartKey theList = PartKey.of(PartKind.CHECKLIST);
        store.saveShopPart(theList, ChecklistTemplate.of("visual: lacing"),
                store.current(JobStore.SHOP, theList).map(s -> s.number()).orElse(0), desktop.session().who().orElseThrow(), "");
        assertFalse(page.performOk(), "what somebody else saved meanwhile is not written over unseen");
        assertTrue(((Label) desktop.field("checklist/problem")).getText().contains("New there: visual: lacing"),
                ((Label) desktop.field("checklist/problem")).getText());
        assertTrue(lines.getText().startsWith("mechanical: terminal box seal"), "what was typed is still there");
        assertTrue(page.performOk(), "whoever has seen it may put the list in its place");
        dialog.close();
        desktop.until("the shop knows it", () -> desktop.session().shop().checklist().points().size() == 2);
        assertEquals(before, desktop.grid("/checklist").model().text(0, 1), "the open job keeps its list");
        try {
            JobEditor later = desktop.open("2026-0007");
            ObjectNode kept = (ObjectNode) later.document().tree(PART);
            assertTrue(kept.path("checklist").toString().indexOf("terminal box seal") < 0, "a job begun earlier keeps its own");
            desktop.command("org.copperbook.desk.command.newJob");
            JobEditor fresh = (JobEditor) desktop.activeEditor();
            desktop.settle(fresh);
            fresh.show(PART);
            desktop.settle(fresh);
            cell(desktop.grid("/findings"), 0, "/where", "frame");
            RecordGrid list = desktop.grid("/checklist");
            desktop.until("a new job begins with the workshop's list", () -> list.model().filled() == 2);
            assertEquals("terminal box seal", list.model().text(0, 1));
        } finally {
            desktop.session().store().saveShopPart(PartKey.of(PartKind.CHECKLIST), new ChecklistTemplate(1, null, null),
                    desktop.session().store().current(JobStore.SHOP, PartKey.of(PartKind.CHECKLIST)).orElseThrow().revision()
                            .revision(), desktop.session().who().orElseThrow(), "as it was");
            desktop.until("the list is as it was", () -> desktop.session().shop().checklist().points().isEmpty());
        }
    }
}
