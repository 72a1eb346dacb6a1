package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.check.Cautions;
import org.copperbook.jobs.check.Hazardous;
import org.copperbook.jobs.faults.FaultFinding;
import org.copperbook.store.JobHandle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The fault finder in the window: symptoms and answers rank the suspects, the next step carries its cautions. */
class FaultFinderTest {

    private static final PartKey BOOKING = PartKey.of(PartKind.BOOKING);
    private static final PartKey FAULT = PartKey.of(PartKind.FAULT_FINDING);

    private final Desktop desktop = new Desktop();

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    private String first() {
        return ((Table) desktop.field("fault.table")).getItem(0).getText(0);
    }

    private String label(String id) {
        return ((Label) desktop.field(id)).getText();
    }

    /** Common practice: low and balanced clears the main stator, and the rectifier is checked first. */
    @Test
    void answersRankTheSuspectsAndAreSavedAndUndone() throws Exception {
        String who = desktop.beSomebody();
        JobHandle made = desktop.session().store().create((Booking) desktop.session().json().read(BOOKING,
                "{\"schema\":1,\"machineKind\":\"BRUSHLESS_ALTERNATOR\",\"reportedFault\":\"lights dim\"}"), who);
        JobEditor editor = desktop.open(made.number());
        assertTrue(editor.show(FAULT));
        desktop.settle(editor);
        assertTrue(label("fault.nextStep").startsWith("What was reported?"), label("fault.nextStep"));

        Button low = (Button) desktop.field("/symptoms/low-output");
        assertTrue(low.setFocus());
        low.setSelection(true);
        low.notifyListeners(SWT.Selection, new org.eclipse.swt.widgets.Event());
        new Keyboard(desktop).fill("/answers/separate-excitation", "low-balanced");
        desktop.until("the rectifier stands first", () -> first().equals("rotating rectifier"));
        assertTrue(label("fault.nextStep").startsWith("Diode readings with the leads lifted?"), label("fault.nextStep"));
        assertTrue(label("fault.why").contains("Main stator sound"), label("fault.why"));
        assertTrue(label("fault.cautions").contains("lock off and prove dead"), label("fault.cautions"));
        assertTrue(label("fault.evidence").contains("For: \""), label("fault.evidence"));

        desktop.press("fault.goThere");
        assertTrue(desktop.field("/answers/diodes-isolated").isFocusControl(), "the cursor stands on the answer");
        desktop.type("/answers/diodes-isolated", "one or more open both ways");
        desktop.until("the reading speaks for the rectifier",
                () -> label("fault.evidence").contains("one or more open both ways\" speaks strongly for it"));
        desktop.command("org.eclipse.ui.edit.undo");
        desktop.until("the answer is undone", () -> !label("fault.evidence").contains("open both ways"));
        desktop.command("org.eclipse.ui.file.save");
        desktop.until("the job is saved", () -> !editor.isDirty());
        FaultFinding kept = (FaultFinding) desktop.session().store().current(made.id(), FAULT).orElseThrow().part();
        assertEquals(List.of("low-output"), kept.symptoms());
        assertEquals(Map.of("separate-excitation", "low-balanced"), kept.answers());
        assertFalse(label("fault.taken").contains("Nothing yet"));
    }

    /** A battery on the field can be tried and answered whatever comes next: its cautions stand where the answer is given. */
    @Test
    void everyHazardousStepShowsItsCautionsWhereItIsAnswered() throws Exception {
        JobEditor editor = opened("dead");
        assertTrue(label("fault.nextStep").startsWith("What was reported?"), "neither of the steps below is the next one");
        for (Map.Entry<String, Hazardous> e : Map.of("flash-field", Hazardous.FLASHING, "separate-excitation",
                Hazardous.SEPARATE_EXCITATION, "main-stator-insulation", Hazardous.INSULATION_TEST).entrySet()) {
            Label shown = (Label) desktop.field("/answers/" + e.getKey() + "/cautions");
            for (String caution : Cautions.requiredFor(e.getValue())) {
                assertTrue(shown.getText().contains(caution), e.getKey() + " without: " + caution);
            }
            desktop.until("all cautions of " + e.getKey() + " are seen",
                    () -> shown.getSize().y >= shown.computeSize(shown.getSize().x, SWT.DEFAULT).y);
        }
        assertTrue(((Label) desktop.field("/answers/wiring-check/cautions")).getText().contains("lock off and prove dead"));
        desktop.settle(editor);
    }

    @Test
    void everySymptomIsReadInFullInANarrowWindow() throws Exception {
        Shell window = desktop.page().getWorkbenchWindow().getShell();
        Rectangle was = window.getBounds();
        try {
            window.setMaximized(false);
            window.setSize(900, 700);
            desktop.register();
            opened("dead");
            for (String symptom : List.of("no-output", "low-output", "drops-on-load")) {
                Button word = (Button) desktop.field("/symptoms/" + symptom);
                desktop.until(word.getText() + " is read in full", () -> word.getSize().x <= word.getParent().getSize().x
                        && word.getSize().y >= word.computeSize(word.getSize().x, SWT.DEFAULT).y
                        && word.computeSize(word.getSize().x, SWT.DEFAULT).x <= word.getSize().x);
            }
        } finally {
            window.setBounds(was);
        }
    }

    private JobEditor opened(String fault) throws Exception {
        String who = desktop.beSomebody();
        JobHandle made = desktop.session().store().create((Booking) desktop.session().json().read(BOOKING,
                "{\"schema\":1,\"machineKind\":\"BRUSHLESS_ALTERNATOR\",\"reportedFault\":\"" + fault + "\"}"), who);
        JobEditor editor = desktop.open(made.number());
        assertTrue(editor.show(FAULT));
        desktop.settle(editor);
        return editor;
    }

    /** What somebody reads before going near a machine: a line cut off is a caution not given. */
    @Test
    void theCautionsOfANextStepThatHasJustChangedAreSeenInFull() throws Exception {
        JobEditor editor = opened("dead");
        assertTrue(label("fault.cautions").isEmpty(), label("fault.cautions"));
        Button none = (Button) desktop.field("/symptoms/no-output");
        none.setSelection(true);
        none.notifyListeners(SWT.Selection, new org.eclipse.swt.widgets.Event());
        desktop.until("there are cautions", () -> label("fault.cautions").contains("\n"));
        desktop.settle(editor);
        desktop.work();
        for (String id : List.of("fault.nextStep", "fault.why", "fault.cautions", "fault.evidence", "fault.taken")) {
            Label words = (Label) desktop.field(id);
            int wanted = words.computeSize(words.getSize().x, SWT.DEFAULT).y;
            assertTrue(words.getSize().y >= wanted, id + " is " + words.getSize().y + " high, its words need " + wanted);
        }
    }
}
