package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.store.JobHandle;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A machine that was booked in twice: one job becomes void and leads to the other, and back. */
class MergedJobsTest {

    private static final PartKey STANDING = PartKey.of(PartKind.STANDING);

    private final Desktop desktop = new Desktop();
    private JobHandle first;
    private JobHandle second;
    private JobEditor editor;

    @BeforeEach
    void aMachineBookedInTwice() throws Exception {
        String who = desktop.beSomebody();
        PartKey key = PartKey.of(PartKind.BOOKING);
        Booking booking = (Booking) desktop.session().json().read(key, "{\"schema\":1,\"machine\":\"twice booked set\"}");
        first = desktop.session().store().create(booking, who);
        second = desktop.session().store().create(booking, who);
        editor = desktop.open(second.number());
        editor.show(STANDING);
        desktop.settle(editor);
    }

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    private void merge(String into) {
        Combo how = (Combo) desktop.field("closing.how");
        how.select(Standing.How.MERGED.ordinal());
        how.notifyListeners(SWT.Selection, new Event());
        desktop.type("closing.reason", "booked in twice");
        desktop.type("closing.into", into);
        desktop.press("closing.close");
    }

    private void refused(String into, String why) {
        merge(into);
        desktop.until("it is said: " + why, () -> ((Label) desktop.field("closing.said")).getText().contains(why));
        assertFalse(editor.document().job().standing().map(Standing::isVoid).orElse(false));
        desktop.until("another number can be tried", () -> desktop.field("closing.close").isEnabled());
    }

    @Test
    void theOtherJobIsLookedAtBeforeAnythingIsVoid() {
        refused("1066-0001", "no job 1066-0001");
        refused(second.number(), "this job");
        refused("2026-0003", "void");
    }

    /** The demo workshop's full rewind is released. */
    @Test
    void aReleasedJobIsNotMergedAwayAndNothingIsWritten() throws Exception {
        editor = desktop.open("2026-0001");
        editor.show(STANDING);
        desktop.settle(editor);
        var end = desktop.session().store().chainEnd();
        refused(first.number(), "2026-0001 is released");
        assertFalse(editor.isDirty(), "there is nothing to save");
        assertEquals(end, desktop.session().store().chainEnd());
        assertFalse(desktop.shows("merged.open." + first.number()));
    }

    @Test
    void bothJobsLeadToEachOtherAndTheNumberStays() throws Exception {
        merge(first.number());
        desktop.until("the job is merged", () -> editor.document().job().standing().map(Standing::isVoid).orElse(false));
        editor.doSave(new NullProgressMonitor());
        desktop.until("it is saved", () -> !editor.isDirty());
        assertTrue(((Label) desktop.field("closing.said")).getText().contains(first.number()));
        desktop.until("the job that goes on is offered", () -> desktop.shows("merged.open." + first.number()));
        desktop.press("merged.open." + first.number());
        desktop.until("it is open", () -> desktop.activeEditor() instanceof JobEditor e
                && e.getPartName().equals(first.number()) && e.isSettled());
        ((JobEditor) desktop.activeEditor()).show(STANDING);
        desktop.until("what was merged into it is said", () -> desktop.shows("merged.open." + second.number()));
        desktop.press("merged.open." + second.number());
        desktop.until("it leads back", () -> desktop.activeEditor() == editor);
        Standing kept = desktop.session().store().load(second.id()).standing().orElseThrow();
        assertEquals(first.number(), kept.closure().into());
        assertEquals("booked in twice", kept.closure().reason());
        assertEquals(second.id(), desktop.session().store().idOf(second.number()).orElseThrow());
    }

    /** The page beside the register in a small window, at the size for a bench. */
    @Test
    void inANarrowPageTheReasonHasRoomToBeReadAndEverythingCanBeHit() {
        Shell window = desktop.page().getWorkbenchWindow().getShell();
        boolean maximized = window.getMaximized();
        Rectangle before = window.getBounds();
        IEclipsePreferences preferences = InstanceScope.INSTANCE.getNode(Desk.BUNDLE);
        String size = preferences.get("size", Look.Size.DESK.name());
        try {
            window.setMaximized(false);
            window.setSize(1280, 800);
            preferences.put("size", Look.Size.BENCH.name());
            Look look = Look.of(window);
            desktop.until("the size is for a bench", () -> look.size() == Look.Size.BENCH);
            desktop.until("the reason has room for 20 letters, not " + desktop.field("closing.reason").getSize(),
                    () -> desktop.field("closing.reason").getSize().x >= look.chars(20));
            for (String id : List.of("closing.how", "closing.reason", "closing.into", "closing.close")) {
                Control c = desktop.field(id);
                assertTrue(c.getSize().y >= look.target(), id + " is " + c.getSize() + ", to be hit it needs " + look.target());
                assertTrue(c.getBounds().x + c.getSize().x <= c.getParent().getClientArea().width,
                        id + " at " + c.getBounds() + " reaches out of " + c.getParent().getClientArea());
            }
        } finally {
            preferences.put("size", size);
            window.setBounds(before);
            window.setMaximized(maximized);
            desktop.work();
        }
    }

    @Test
    void nothingOfTheClosingCanBeChangedOnceTheJobIsClosedUntilItIsUndone() throws Exception {
        List<String> fields = List.of("closing.how", "closing.reason", "closing.into", "closing.close");
        merge(first.number());
        desktop.until("the job is merged", () -> editor.document().job().standing().map(Standing::isVoid).orElse(false));
        desktop.until("it is said", () -> ((Label) desktop.field("closing.said")).getText().contains(first.number()));
        fields.forEach(id -> assertFalse(desktop.field(id).isEnabled(), id + " can be changed"));
        desktop.command("org.eclipse.ui.edit.undo");
        desktop.until("it is open again", () -> desktop.field("closing.close").isEnabled());
        fields.forEach(id -> assertTrue(desktop.field(id).isEnabled(), id + " can be changed"));
        assertEquals("", ((Label) desktop.field("closing.said")).getText());
    }
}
