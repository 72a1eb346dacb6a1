package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.HoldPointState.State;
import org.copperbook.jobs.check.HoldPoints;
import org.copperbook.jobs.check.Stage;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.seal.IssuedCopies;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.store.JobStore;
import org.copperbook.store.Saved;
import org.copperbook.store.sqlite.SqliteJobStore;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A released record in the window: closed, opened again with a reason, released anew, and its workbook known again. */
class ClosedRecordTest {

    private static final PartKey RUN_UP = PartKey.of(PartKind.RUN_UP);
    private static final PartKey SIGN_OFFS = PartKey.of(PartKind.SIGN_OFFS);
    private static final PartKey COPIES = PartKey.of(PartKind.ISSUED_COPIES);

    private final Desktop desktop = new Desktop();
    private JobEditor editor;

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    private void openReleased() throws Exception {
        String number = new PublishedSet(desktop).takeIn(PartKind.values());
        be("checker-1");
        editor = desktop.open(number);
        desktop.settle(editor);
        assertEquals(State.SIGNED, release());
    }

    private void be(String person) {
        desktop.session().who(person);
        desktop.work();
        if (editor != null) {
            desktop.settle(editor);
        }
    }

    private void show(PartKey key) {
        assertTrue(editor.show(key), key + " stands in the outline");
        desktop.settle(editor);
    }

    private State release() {
        return HoldPoints.of(editor.judgement().holdPoints(), HoldPoint.RELEASE).state();
    }

    private JobStore store() {
        return desktop.session().store();
    }

    private void save() {
        desktop.page().saveEditor(editor, false);
        desktop.until("the job is saved", () -> !editor.isDirty());
        desktop.settle(editor);
    }

    private void openAgain(String reason) {
        show(SIGN_OFFS);
        ((Text) desktop.field("reopen.note.RELEASE")).setText(reason);
        desktop.press("reopen.RELEASE");
        desktop.settle(editor);
    }

    @Test
    void itIsClosedUntilSomebodyOpensItAgainWithAReasonAndThenSignedAnew() throws Exception {
        openReleased();
        show(RUN_UP);
        assertTrue(desktop.shows("blocked"), "the page says that the record is closed");
        openAgain(" ");
        assertNotEquals("", ((Label) desktop.field("reopen.said.RELEASE")).getText(), "no reason, no opening");
        assertEquals(State.SIGNED, release());
        openAgain("the torque of a line was mistyped");
        assertEquals(State.REOPENED, release());
        show(RUN_UP);
        assertFalse(desktop.shows("blocked"));
        show(SIGN_OFFS);
        be("winder-1");
        show(SIGN_OFFS);
        desktop.press("sign.RELEASE");
        desktop.settle(editor);
        String refused = ((Label) desktop.field("sign.said.RELEASE")).getText();
        assertTrue(refused.toLowerCase(Locale.ROOT).contains("quality checker"), refused);
        assertEquals(State.REOPENED, release(), "a winder releases nothing");
        be("checker-1");
        show(SIGN_OFFS);
        Thread.sleep(1100); // a signature has to be later than the reopening, and both are kept to the second
        desktop.press("sign.RELEASE");
        desktop.settle(editor);
        assertEquals(State.SIGNED, release());
        save();
        assertEquals(2, store().load(editor.document().id()).signOffs().orElseThrow().signatures().stream()
                .filter(s -> s.point() == HoldPoint.RELEASE).count());
    }

    @Test
    void aChangeFromElsewhereTakesTheReleaseBackForAllToSee() throws Exception {
        openReleased();
        openAgain("to be sealed");
        Thread.sleep(1100); // as above
        desktop.press("sign.RELEASE");
        desktop.settle(editor);
        save();
        String id = editor.document().id();
        Saved before = store().current(id, RUN_UP).orElseThrow();
        RunUp same = (RunUp) before.part();
        var tree = desktop.session().json().tree(same);
        tree.put("note", "a later remark");
        try (JobStore elsewhere = SqliteJobStore.open(store().file())) {
            elsewhere.save(id, RUN_UP, desktop.session().json().read(RUN_UP, tree), before.number(), "tester-1", "late");
        }
        desktop.until("the window has seen the change", () -> release() == State.REOPENED);
        Job job = store().load(id);
        assertTrue(Stage.of(job).words().contains("release void"), Stage.of(job).words());
        show(SIGN_OFFS);
        assertTrue(desktop.shows("sign.RELEASE"), "it can be signed anew");
    }

    @Test
    void theReleaseWorkbookIsKeptAmongTheIssuedCopiesOnce() throws Exception {
        openReleased();
        String id = editor.document().id();
        WrittenWorkbook.by(desktop, editor, "org.copperbook.desk.command.recordWorkbook");
        desktop.until("the copy is on record", () -> store().current(id, COPIES).isPresent());
        WrittenWorkbook.by(desktop, editor, "org.copperbook.desk.command.recordWorkbook");
        desktop.settle(editor);
        assertEquals(1, ((IssuedCopies) store().current(id, COPIES).orElseThrow().part()).copies().size());
        assertFalse(editor.isDirty());
    }
}
