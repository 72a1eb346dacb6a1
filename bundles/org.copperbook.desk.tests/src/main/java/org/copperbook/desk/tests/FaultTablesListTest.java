package org.copperbook.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.copperbook.desk.command.WorkbookFolder;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.faults.DefaultFaultTables;
import org.copperbook.jobs.faults.FaultTables;
import org.copperbook.jobs.faults.FaultTables.OutcomeRow;
import org.copperbook.store.JobStore;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The workshop's own fault tables among the registers. Expected: what the test types, beside the tables that ship. */
class FaultTablesListTest {

    private static final PartKey KEY = PartKey.of(PartKind.FAULT_TABLES);
    private static final String FREQUENCY = "/tests/1/outcomes";
    private static final int MAIN_STATOR = 1;

    @TempDir
    Path folder;

    private final Desktop desktop = new Desktop();
    private FaultTables shipped;

    @BeforeEach
    void showThem() throws Exception {
        desktop.closeAll();
        desktop.beSomebody();
        shipped = DefaultFaultTables.load(desktop.session().json());
        assertEquals("frequency", shipped.tests().get(1).id());
        desktop.command("org.copperbook.office.command.registers");
        CTabFolder tabs = (CTabFolder) desktop.field("registers.tabs");
        for (int i = 0; i < tabs.getItemCount(); i++) {
            if (tabs.getItem(i).getText().equals("Fault finder")) {
                tabs.setSelection(i);
            }
        }
        tabs.notifyListeners(SWT.Selection, new Event());
        desktop.work();
    }

    /** What other tests find is what they found before. */
    @AfterEach
    void leave() {
        desktop.closeAll();
        JobStore store = desktop.session().store();
        store.current(JobStore.SHOP, KEY).filter(s -> ((FaultTables) s.part()).isThere()).ifPresent(s ->
                store.saveShopPart(KEY, FaultTables.none(), s.number(), desktop.session().who().orElseThrow(), ""));
    }

    private void show(String question) {
        Combo shown = (Combo) desktop.field("faults.shown");
        shown.select(shown.indexOf(question));
        shown.notifyListeners(SWT.Selection, new Event());
        desktop.work();
    }

    private void save() {
        desktop.activeEditor().doSave(new NullProgressMonitor());
        desktop.work();
    }

    private void saveAndWait() {
        save();
        desktop.until("it is saved", () -> !desktop.activeEditor().isDirty());
    }

    private String sums() {
        return ((Text) desktop.field("faults.sum")).getText();
    }

    private FaultTables inForce() {
        return desktop.session().shop().faultTables();
    }

    private static Map<String, Double> likelihoods(FaultTables tables, int outcome) {
        return tables.tests().get(1).outcomes().get(outcome).likelihoods();
    }

    @Test
    void aCopyIsChangedIsRefusedUntilItAddsUpAndRanksFromThenOn() {
        assertFalse(desktop.field("faults.back").isEnabled(), "what ships is in use");
        desktop.press("faults.copyShipped");
        show(shipped.tests().get(1).question());
        assertEquals("Everything adds up to 100 %.", sums());
        desktop.type(FREQUENCY, 0, MAIN_STATOR, "90 %");
        // 0.97 + 0.02 + 0.01 in the tables that ship: 90 instead of 97 leaves 93.
        assertEquals("main stator: 93 %, should be 100 %", sums());
        save();
        assertTrue(desktop.activeEditor().isDirty());
        assertEquals(shipped, inForce());
        desktop.type(FREQUENCY, 1, MAIN_STATOR, "9");
        saveAndWait();
        desktop.until("the shop is read anew", () -> !inForce().equals(shipped));
        assertEquals(0.90, likelihoods(inForce(), 0).get("main-stator"));
        assertEquals(0.09, likelihoods(inForce(), 1).get("main-stator"));
        assertEquals(likelihoods(shipped, 0).get("speed"), likelihoods(inForce(), 0).get("speed"));
        desktop.press("faults.back");
        saveAndWait();
        desktop.until("what ships ranks again", () -> inForce().equals(shipped));
    }

    @Test
    void undoBringsBackTheCopyThatWasGivenUp() throws Exception {
        desktop.press("faults.copyShipped");
        desktop.type("/suspects", 0, 1, "11 %");
        assertEquals("All parts together: 101 %, should be 100 %", sums());
        desktop.press("faults.back");
        assertFalse(desktop.shows("/suspects"));
        desktop.command("org.eclipse.ui.edit.undo");
        assertEquals("11 %", desktop.grid("/suspects").model().text(0, 1));
        desktop.command("org.eclipse.ui.edit.undo");
        assertEquals("10 %", desktop.grid("/suspects").model().text(0, 1));
        desktop.command("org.eclipse.ui.edit.undo");
        assertFalse(desktop.field("faults.back").isEnabled());
    }

    private void read(Path table) {
        desktop.press("faults.import");
        ((Text) desktop.field("import.path")).setText(table.toString());
        desktop.field("import.path").notifyListeners(SWT.DefaultSelection, new Event());
        desktop.until("the table can be taken in", () -> desktop.field("import.takeIn").isEnabled());
    }

    @Test
    void aTableOfLikelihoodsIsTakenInAndWhatItDoesNotKnowIsNamed() throws Exception {
        read(Files.writeString(folder.resolve("likelihoods.csv"), """
                question;answer;main stator
                frequency;right;90
                frequency;low;9
                frequency;sideways;3
                tea leaves;right;3
                """));
        Table refused = (Table) desktop.field("import.refused");
        assertEquals(List.of("B4", "A5"), List.of(refused.getItem(0).getText(0), refused.getItem(1).getText(0)));
        assertTrue(refused.getItem(0).getText(3).contains("right, low, high"), refused.getItem(0).getText(3));
        desktop.press("import.takeIn");
        saveAndWait();
        desktop.until("the shop is read anew", () -> !inForce().equals(shipped));
        assertEquals(0.90, likelihoods(inForce(), 0).get("main-stator"));
        assertEquals(0.09, likelihoods(inForce(), 1).get("main-stator"));
        assertEquals(likelihoods(shipped, 2), likelihoods(inForce(), 2));
    }

    @Test
    void whatWasWrittenAsAWorkbookIsTakenInAgainAndChangesNothing() throws Exception {
        Path target = WorkbookFolder.current().resolve("fault finder.xlsx");
        Files.deleteIfExists(target);
        desktop.press("faults.workbook");
        desktop.until("it is written", () -> Files.exists(target)
                && ((Label) desktop.field("faults.said")).getText().contains("Written"));
        read(target);
        assertEquals(0, ((Table) desktop.field("import.refused")).getItemCount());
        desktop.press("import.takeIn");
        saveAndWait();
        FaultTables kept = (FaultTables) desktop.session().store().current(JobStore.SHOP, KEY).orElseThrow().part();
        List<List<OutcomeRow>> before = shipped.tests().stream().map(FaultTables.TestRow::outcomes).toList();
        assertEquals(before, kept.tests().stream().map(FaultTables.TestRow::outcomes).toList());
    }
}
