package org.copperbook.desk.tests.shared;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.run.OwnStart;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.store.RegisterQuery;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The window on a store that a newer version of the program has laid out: everything can be read, nothing changed. */
@OwnStart(OwnStart.Way.READING)
class NewerLayoutTest {

    private final Desktop desktop = new Desktop();

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @Test
    void jobsAreReadTheWindowSaysWhyAndNothingCanBeTyped() throws Exception {
        int jobs = desktop.session().store().register(RegisterQuery.first(0)).total();
        assertTrue(jobs > 5);
        Table table = desktop.register().table();
        desktop.until("the register shows all", () -> table.getItemCount() == jobs);
        JobEditor editor = desktop.open("2026-0001");
        editor.show(PartKey.of(PartKind.BOOKING));
        desktop.settle(editor);
        String said = ((Label) desktop.field("band/reading")).getText();
        assertTrue(said.contains("99") && said.startsWith("Only reading"), said);
        assertFalse(desktop.text("/customer").isEmpty());
        assertFalse(((Text) desktop.field("/customer")).getEditable());
        long end = desktop.session().store().chainEnd().sequence();
        assertFalse(editor.isDirty());
        assertEquals(end, desktop.session().store().chainEnd().sequence());
    }
}
