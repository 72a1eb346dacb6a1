package org.copperbook.desk.tests.shared;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.picture.PictureCanvas;
import org.copperbook.desk.register.RegisterView;
import org.copperbook.desk.tests.run.OwnStart;
import org.copperbook.desk.tests.window.CrashEntries;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.JobCode;
import org.copperbook.jobs.booking.ProvisionalTag;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.sheets.picture.Mark;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.RegisterRow;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreOptions;
import org.copperbook.store.engines.TestServer;
import org.copperbook.store.mirror.MirroredStore;
import org.copperbook.store.postgres.PostgresJobStore;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The window on a PostgreSQL server, and somebody else who works on the same server. */
@OwnStart(OwnStart.Way.SERVER)
class OnAServerTest {

    private static final PartKey BOOKING = PartKey.of(PartKind.BOOKING);

    private final Desktop desktop = new Desktop();
    private JobStore theirs;
    private String they;

    @BeforeEach
    void somebodyElse() {
        they = desktop.beSomebody();
        theirs = PostgresJobStore.open(desktop.session().server().orElseThrow(), TestServer.PASSWORD,
                StoreOptions.standard());
    }

    @AfterEach
    void leave() {
        desktop.closeAll();
        theirs.close();
    }

    /** What happens in this window, and how long after the other's save it was to be seen. */
    private void seen(String what, Runnable save, BooleanSupplier shown) {
        save.run();
        long saved = System.nanoTime();
        desktop.until(what, shown);
        System.out.printf("%s: %d ms after the save%n", what, (System.nanoTime() - saved) / 1_000_000);
    }

    private RegisterRow aJob() {
        return theirs.register(RegisterQuery.first(50)).rows().stream().filter(r -> !r.voided()).findFirst()
                .orElseThrow();
    }

    /** Saves a field of the booking as the other workstation would. */
    private void theySave(String jobId, String field, String text) {
        Saved now = theirs.current(jobId, BOOKING).orElseThrow();
        ObjectNode tree = desktop.session().json().tree(now.part());
        tree.put(field, text);
        try {
            theirs.save(jobId, BOOKING, desktop.session().json().read(BOOKING, tree), now.number(), they, "");
        } catch (BadRecordException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void theWindowSaysWhichServerItWorksOn() {
        assertTrue(desktop.session().server().isPresent());
        assertEquals(theirs.register(RegisterQuery.first(0)).total(),
                desktop.session().store().register(RegisterQuery.first(0)).total());
    }

    private String band() {
        return ((Label) desktop.field("band/reach")).getText();
    }

    @Test
    void withoutTheServerReadingGoesOnAndWhatIsSavedWaitsForItsReturn() throws Exception {
        RegisterRow job = aJob();
        JobEditor editor = desktop.open(job.number());
        editor.show(BOOKING);
        desktop.settle(editor);
        ((MirroredStore) desktop.session().store()).follow();
        theirs.close();
        TestServer.shared().stop();
        String mine = "typed without the server " + System.nanoTime();
        ProvisionalTag provisional;
        try {
            desktop.type("/transportDamage", mine);
            editor.doSave(new NullProgressMonitor());
            desktop.until("it says that the job waits", () -> desktop.shows("band/reach") && band().contains("One job waits"));
            desktop.until("it says that the text is kept", () -> desktop.shows("failure")
                    && CrashEntries.find(mine).isPresent());
            assertTrue(editor.isDirty(), "nothing is taken for saved");
            assertFalse(desktop.page().closeEditor(editor, true), "a job that waits is not closed");
            String other = desktop.session().store().register(RegisterQuery.first(50)).rows().stream()
                    .map(RegisterRow::number).filter(n -> !n.equals(job.number())).findFirst().orElseThrow();
            JobEditor second = desktop.open(other);
            desktop.settle(second);
            assertEquals(other, second.document().number(), "other jobs are read on");

            desktop.command("org.copperbook.desk.command.newJob");
            JobEditor booking = (JobEditor) desktop.activeEditor();
            desktop.settle(booking);
            booking.show(BOOKING);
            desktop.type("/customer", "Came without the server");
            booking.doSave(new NullProgressMonitor());
            desktop.until("two jobs wait", () -> band().contains("2 jobs wait"));
            provisional = booking.provisionalTag().orElseThrow();
            assertTagIsPrintable(provisional);
            desktop.page().activate(second);
            scan(JobCode.of(provisional.inCode()));
            desktop.until("the code leads to the machine that waits", () -> desktop.activeEditor() == booking);
        } finally {
            TestServer.shared().start();
        }
        desktop.until("the server answers again", () -> desktop.session().store().unreachable().isEmpty());
        desktop.until("everything that waited is saved", () -> !editor.isDirty() && desktop.session().waiting() == 0);
        desktop.until("the band is gone", () -> !desktop.shows("band/reach"));
        theirs = PostgresJobStore.open(desktop.session().server().orElseThrow(), TestServer.PASSWORD,
                StoreOptions.standard());
        assertEquals(mine, ((Booking) theirs.current(job.jobId(), BOOKING).orElseThrow().part()).transportDamage());
        RegisterRow newest = theirs.register(RegisterQuery.first(1)).rows().get(0);
        assertEquals("Came without the server", newest.customer());
        assertTrue(newest.number().matches("\\d{4}-\\d{4}"), newest.number());
        desktop.closeAll();
        scan(JobCode.of(provisional.inCode()));
        desktop.until("the code leads to the job that has its number", () -> desktop.activeEditor() instanceof JobEditor j
                && j.getPartName().equals(newest.number()));
        assertTrue(theirs.audit().passed());
    }

    private void assertTagIsPrintable(ProvisionalTag tag) throws Exception {
        desktop.command("org.copperbook.desk.command.tag");
        for (String id : List.of("tag/label", "tag/card")) {
            Scene scene = ((PictureCanvas) desktop.field(id)).scene();
            String said = scene.marks().stream().filter(Mark.Text.class::isInstance).map(m -> ((Mark.Text) m).text())
                    .collect(Collectors.joining(" "));
            assertTrue(said.contains(tag.name()) && said.contains("no job number yet"), said);
        }
        desktop.field("tag/label").getShell().close();
    }

    /** What a reader sends, as key presses of the window system. */
    private void scan(String code) {
        Shell window = desktop.page().getWorkbenchWindow().getShell();
        window.forceActive();
        desktop.until("the window has the keyboard", () -> Display.getCurrent().getActiveShell() == window);
        desktop.pause(300);
        for (char c : (code + "\r").toCharArray()) {
            boolean shift = Character.isUpperCase(c);
            if (shift) {
                post(SWT.KeyDown, SWT.SHIFT, '\0');
            }
            post(SWT.KeyDown, c == '\r' ? SWT.CR : 0, c);
            post(SWT.KeyUp, c == '\r' ? SWT.CR : 0, c);
            if (shift) {
                post(SWT.KeyUp, SWT.SHIFT, '\0');
            }
        }
    }

    private static void post(int type, int keyCode, char character) {
        Event e = new Event();
        e.type = type;
        e.keyCode = keyCode;
        e.character = Character.toLowerCase(character);
        assertTrue(Display.getCurrent().post(e), "the window system takes the key");
    }

    @Test
    void aJobBookedInElsewhereAppearsInTheRegister() throws Exception {
        RegisterView register = desktop.register();
        Table table = register.table();
        int before = theirs.register(RegisterQuery.first(0)).total();
        desktop.until("the register is filled", () -> table.getItemCount() == before);
        Booking booking = (Booking) theirs.current(aJob().jobId(), BOOKING).orElseThrow().part();
        String[] number = new String[1];
        seen("the new job stands in the register", () -> {
            JobHandle job = theirs.create(booking, they);
            number[0] = job.number();
        }, () -> Stream.of(table.getItems()).anyMatch(i -> i.getText(0).equals(number[0])));
    }

    @Test
    void whatIsSavedElsewhereIsShownInAnOpenJob() throws Exception {
        RegisterRow job = aJob();
        JobEditor editor = desktop.open(job.number());
        editor.show(BOOKING);
        desktop.settle(editor);
        String words = "seen elsewhere " + System.nanoTime();
        seen("the field shows what the other saved", () -> theySave(job.jobId(), "transportDamage", words),
                () -> words.equals(desktop.text("/transportDamage")));
        assertFalse(editor.isDirty());
    }

    @Test
    void whatIsTypedHereStaysAndBothCopiesAreShownWhenTheSameFieldWasSavedElsewhere() throws Exception {
        RegisterRow job = aJob();
        JobEditor editor = desktop.open(job.number());
        editor.show(BOOKING);
        desktop.settle(editor);
        String mine = "mine " + System.nanoTime();
        desktop.type("/transportDamage", mine);
        theySave(job.jobId(), "transportDamage", "theirs");
        theySave(job.jobId(), "orderNo", "their number");
        desktop.until("the other's save is known here", () -> desktop.session().store()
                .current(job.jobId(), BOOKING).map(s -> ((Booking) s.part()).orderNo()).orElse("").equals("their number"));
        desktop.pause(300);
        assertEquals(mine, desktop.text("/transportDamage"), "typing is not overwritten");
        editor.doSave(new NullProgressMonitor());
        desktop.until("both copies are shown", () -> !editor.document().conflicts().isEmpty());
        desktop.press("conflict/settle");
        editor.doSave(new NullProgressMonitor());
        desktop.until("the job is saved", () -> !editor.isDirty());
        Booking kept = (Booking) theirs.current(job.jobId(), BOOKING).orElseThrow().part();
        assertEquals(mine, kept.transportDamage());
        assertEquals("their number", kept.orderNo());
        assertTrue(theirs.audit().passed());
    }
}
