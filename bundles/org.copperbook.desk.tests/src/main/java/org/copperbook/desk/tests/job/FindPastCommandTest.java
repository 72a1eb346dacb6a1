package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Past windings are looked for from the menu or by key, whatever page of the job is shown. */
class FindPastCommandTest {

    private final Desktop desktop = new Desktop();

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @Test
    void theCommandLeadsFromAnyPageOfTheJobToTheSearch() throws Exception {
        JobEditor editor = desktop.open("2026-0001");
        editor.show(PartKey.of(PartKind.BOOKING));
        desktop.settle(editor);
        desktop.command("org.copperbook.winding.command.findPast");
        desktop.settle(editor);
        assertEquals(PartKind.WINDING, editor.shown().orElseThrow().kind());
        desktop.until("the cursor stands in the search", () -> desktop.field("memory.words").isFocusControl());
    }
}
