package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.editor.OutlineRow;
import org.copperbook.desk.page.PageRegistry;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKind;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.RegisterRow;
import org.eclipse.core.runtime.Platform;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Every page opens on every job, also on one that holds nothing, and nothing is logged as an error. */
class EveryPageTest {

    private static final int MOST_JOBS = 1000;
    private static final int OPENED = 12;

    private final Desktop desktop = new Desktop();

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @Test
    void everyPageOfEveryJobOpens() throws Exception {
        desktop.beSomebody();
        try (ErrorLog log = new ErrorLog()) {
            List<RegisterRow> rows = desktop.session().store().register(RegisterQuery.first(MOST_JOBS)).rows();
            // The newest stand first, and at the end those of the demo workshop; what other tests booked in is much alike.
            for (RegisterRow row : rows.subList(Math.max(0, rows.size() - OPENED), rows.size())) {
                JobEditor editor = desktop.open(row.number());
                assertTrue(openAll(editor) >= 8, row.number() + " has its pages");
                assertEquals(false, editor.isDirty(), "looking at " + row.number() + " changes nothing");
                desktop.closeAll();
            }
            assertEquals(List.of(), log.errors());
        }
    }

    @Test
    void everyPageOfAJobJustBegunOpens() throws Exception {
        desktop.beSomebody();
        try (ErrorLog log = new ErrorLog()) {
            desktop.command("org.copperbook.desk.command.newJob");
            JobEditor editor = (JobEditor) desktop.activeEditor();
            desktop.settle(editor);
            openAll(editor);
            assertEquals(false, editor.isDirty(), "looking at a new job begins nothing");
            assertEquals(List.of(), log.errors());
        }
    }

    @Test
    void everyKindOfPartOfAJobHasAPage() {
        Set<PartKind> shown = PageRegistry.read(Platform.getExtensionRegistry()).stream().map(p -> p.kind())
                .collect(Collectors.toSet());
        List<PartKind> without = new ArrayList<>();
        for (PartKind kind : PartKind.values()) {
            // issued copies are written by the workbook command and read by the check of a copy, never typed
            if (!kind.ofShop() && kind != PartKind.ISSUED_COPIES && !shown.contains(kind)) {
                without.add(kind);
            }
        }
        assertEquals(List.of(), without);
    }

    private int openAll(JobEditor editor) {
        int pages = 0;
        for (OutlineRow row : editor.outline()) {
            if (row instanceof OutlineRow.Page p) {
                pages++;
                assertTrue(editor.show(p.key()), p.label());
                desktop.settle(editor);
                assertTrue(editor.page().isPresent(), editor.getPartName() + ": " + p.label() + " could not be made");
                assertEquals(p.key(), editor.shown().orElseThrow());
            }
        }
        return pages;
    }
}
