package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.nameplate.Nameplate;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A machine that was here before is found as its serial number is typed, and brings its plate. */
class HereBeforeTest {

    private static final PartKey BOOKING = PartKey.of(PartKind.BOOKING);
    private static final PartKey NAMEPLATE = PartKey.of(PartKind.NAMEPLATE);
    /** The serial of a machine in the demo workshop, and its job. */
    private static final String SERIAL = "W14-31180";
    private static final String NUMBER = "2026-0004";

    private final Desktop desktop = new Desktop();
    private JobEditor editor;

    @BeforeEach
    void beginABooking() throws Exception {
        desktop.beSomebody();
        desktop.command("org.copperbook.desk.command.newJob");
        editor = (JobEditor) desktop.activeEditor();
        desktop.settle(editor);
        editor.show(BOOKING);
        desktop.work();
    }

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    private Table found(String typed) {
        desktop.type("before.wanted", typed);
        desktop.until("an earlier job is found", () -> desktop.shows("before.jobs"));
        return (Table) desktop.field("before.jobs");
    }

    private void choose(Table table, int row) {
        table.setSelection(row);
        table.notifyListeners(SWT.Selection, new Event());
    }

    private String said() {
        return ((Label) desktop.field("before.said")).getText();
    }

    @Test
    void aFewSignsOfTheSerialFindTheMachineAndItBringsItsPlate() {
        Table table = found("w14-31");
        assertEquals(NUMBER, table.getItem(0).getText(0));
        assertEquals(SERIAL, table.getItem(0).getText(1));
        choose(table, 0);
        desktop.press("before.take");
        desktop.until("the plate has come", () -> editor.document().part(NAMEPLATE).isPresent());
        Job earlier = desktop.session().store().load(desktop.session().store().idOf(NUMBER).orElseThrow());
        assertEquals(earlier.nameplate().orElseThrow(), editor.document().part(NAMEPLATE, Nameplate.class).orElseThrow());
        Booking now = editor.document().part(BOOKING, Booking.class).orElseThrow();
        assertEquals(earlier.booking().orElseThrow().customer(), now.customer());
        assertEquals(earlier.booking().orElseThrow().machineKind(), now.machineKind());
        assertEquals(null, now.reportedFault(), "a fault belongs to one visit");
        assertEquals(earlier.booking().orElseThrow().customer(), desktop.text("/customer"), "the fields show it");
        assertTrue(editor.document().undo(NAMEPLATE).isPresent());
        assertFalse(editor.document().part(NAMEPLATE).isPresent(), "undo takes the plate back");
    }

    @Test
    void theArrowDownwardsGoesIntoTheListAndEnterTakesTheFirst() {
        found(SERIAL);
        Keyboard keys = new Keyboard(desktop);
        assertTrue(desktop.field("before.wanted").forceFocus());
        desktop.work();
        keys.press(SWT.ARROW_DOWN);
        desktop.until("the cursor is in the list", () -> desktop.field("before.jobs").isFocusControl());
        keys.press(SWT.CR);
        desktop.until("the plate has come", () -> editor.document().part(NAMEPLATE).isPresent());
    }

    @Test
    void whomToTalkToNowStaysWhenTheMachineIsTheSameOwners() {
        desktop.type("/customer", "Ninefold Hospital Trust");
        desktop.type("/contact", "Ada Brook; 040 555");
        found(SERIAL);
        desktop.until("the machine is found by its serial", () -> said().contains(SERIAL));
        choose((Table) desktop.field("before.jobs"), 0);
        desktop.press("before.take");
        desktop.until("the plate has come", () -> editor.document().part(NAMEPLATE).isPresent());
        Booking now = editor.document().part(BOOKING, Booking.class).orElseThrow();
        assertEquals("Ada Brook", now.contact().name());
        desktop.until("the cursor is on what belongs to this visit", () -> desktop.field("/reportedFault").isFocusControl());
        assertEquals("c-ninefold", now.customerKey());
    }

    @Test
    void whatIsTypedOfTheBookingAlreadyStaysAndIsNamed() {
        desktop.type("/customer", "Somebody Else");
        desktop.type("/contact", "Ada Brook; 040 555");
        desktop.type("/liftingMassKg", "812");
        desktop.type("before.wanted", SERIAL);
        desktop.until("the machine is found by its serial", () -> said().contains(SERIAL));
        choose((Table) desktop.field("before.jobs"), 0);
        desktop.press("before.take");
        desktop.until("the plate has come", () -> editor.document().part(NAMEPLATE).isPresent());
        Booking now = editor.document().part(BOOKING, Booking.class).orElseThrow();
        assertEquals("Somebody Else", now.customer());
        assertEquals(null, now.customerKey(), "nobody else's key stands with that name");
        assertEquals("Ada Brook", now.contact().name());
        assertEquals(812, now.liftingMassKg());
        Job earlier = desktop.session().store().load(desktop.session().store().idOf(NUMBER).orElseThrow());
        assertEquals(earlier.booking().orElseThrow().machineKind(), now.machineKind(), "what was blank is filled");
        assertTrue(said().contains("Customer") && said().contains("Mass to lift"), said());
    }

    @Test
    void whatIsTypedOfThePlateAlreadyStays() {
        editor.document().change(NAMEPLATE, "/type", plate -> plate.put("type", "as it stands on the plate"));
        choose(found(SERIAL), 0);
        desktop.press("before.take");
        desktop.until("the serial has come", () -> SERIAL.equals(
                editor.document().part(NAMEPLATE, Nameplate.class).map(Nameplate::serial).orElse("")));
        assertEquals("as it stands on the plate",
                editor.document().part(NAMEPLATE, Nameplate.class).orElseThrow().type());
    }

    @Test
    void typingTheCustomerShowsTheJobsOfThatCustomer() {
        desktop.type("/customer", "Ninefold");
        desktop.until("the customer's jobs are there", () -> desktop.shows("before.jobs")
                && ((Table) desktop.field("before.jobs")).getItemCount() > 0);
        assertEquals(NUMBER, ((Table) desktop.field("before.jobs")).getItem(0).getText(0));
        assertTrue(said().contains("Ninefold"), said());
    }

    @Test
    void whatStandsBelowStaysInReachWhenTheListAppears() {
        desktop.type("before.wanted", "nothing that was ever here");
        desktop.until("nothing is said to be found", () -> said().contains("nothing that was ever here"));
        found("20");
        desktop.work();
        Composite up = desktop.field("before.jobs").getParent();
        while (!(up instanceof ScrolledComposite)) {
            for (Control c : up.getChildren()) {
                assertTrue(!c.isVisible() || c.getBounds().y + c.getBounds().height <= up.getSize().y,
                        c + " at " + c.getBounds() + " ends below what holds it, of " + up.getSize());
            }
            up = up.getParent();
        }
    }

    @Test
    void aMachineThatReturnsIsTiedToItsEarlierJob() {
        choose(found(SERIAL), 0);
        desktop.press("before.returns");
        desktop.work();
        assertEquals(NUMBER, desktop.text("/earlierJob"));
    }

    @Test
    void aSerialThatWasNeverHereIsSaid() {
        desktop.type("before.wanted", "never-here-77");
        desktop.until("it says so", () -> said().contains("never-here-77"));
        assertFalse(desktop.shows("before.jobs"));
    }

    @Test
    void theEarlierJobOpensFromTheList() {
        choose(found(SERIAL), 0);
        desktop.press("before.open");
        desktop.until("it is open", () -> desktop.activeEditor() instanceof JobEditor e
                && e.document() != null && NUMBER.equals(e.document().number()));
    }
}
