package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.editor.OutlineRow;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.winding.Windings;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Ctrl+Z and Ctrl+Y take back and do again what was typed into fields and grids and what a page did by itself. */
class UndoOnAPageTest {

    private static final PartKey STATOR = PartKey.windingAsFound(WindingRole.MAIN_STATOR);

    private final Desktop desktop = new Desktop();
    private final Keyboard keys = new Keyboard(desktop);

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @Test
    void aLaidOutCoilListAndTheCellsTypedInItAreTakenBackStepByStep() throws Exception {
        desktop.beSomebody();
        desktop.command("org.copperbook.desk.command.newJob");
        JobEditor editor = (JobEditor) desktop.activeEditor();
        desktop.settle(editor);
        editor.document().beginWith(STATOR, new Windings().beginning(STATOR, editor.document().job(),
                desktop.session().json()));
        editor.begin(STATOR);
        desktop.settle(editor);
        assertFalse(marked(editor), "nothing is unsaved yet");
        keys.fill("/slots", "24");
        keys.fill("/poles", "4");
        keys.fill("/span", "1-6");
        keys.fill("/turnsPerCoil", "9");
        assertTrue(marked(editor), "the outline marks the part that is not saved");
        assertTrue(editor.isDirty());
        desktop.press("winding.layOut");
        assertEquals(12, groups());
        keys.fill("/groups", 11, coils(), "23-4 x8, 24-5 x9");
        assertEquals("23-4 \u00d78, 24-5 \u00d79", cell());
        keys.control('z');
        desktop.until("the cell is as laid out", () -> cell().equals("23-4 \u00d79, 24-5 \u00d79"));
        keys.control('z');
        desktop.until("the whole list is gone in one step", () -> groups() == 0);
        keys.control('z');
        desktop.until("the field is empty again", () -> desktop.text("/turnsPerCoil").isEmpty());
        keys.control('y');
        desktop.until("the field is filled again", () -> desktop.text("/turnsPerCoil").equals("9"));
        keys.control('y');
        desktop.until("the list is back", () -> groups() == 12);
        keys.control('y');
        desktop.until("the cell is as typed", () -> cell().equals("23-4 \u00d78, 24-5 \u00d79"));
        desktop.settle(editor);
    }

    private static boolean marked(JobEditor editor) {
        return editor.outline().stream().filter(OutlineRow.Page.class::isInstance).map(OutlineRow.Page.class::cast)
                .anyMatch(p -> p.key().equals(STATOR) && p.dirty());
    }

    private int groups() {
        return desktop.grid("/groups").model().filled();
    }

    private String cell() {
        return desktop.grid("/groups").model().text(11, coils());
    }

    private int coils() {
        return desktop.grid("/groups").model().columns().stream().map(c -> c.pointer()).toList().indexOf("/coils");
    }
}
