package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.customer.Contact;
import org.copperbook.jobs.customer.Customer;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Customers of the register are offered while a machine is booked in. Expected: the demo workshop's register. */
class RegisterCustomersTest {

    private static final PartKey BOOKING = PartKey.of(PartKind.BOOKING);
    /** A customer of the demo workshop with one contact. */
    private static final String KEY = "c-brackenfold";
    private static final String NAME = "Brackenfold Dairy Co-operative";

    private final Desktop desktop = new Desktop();
    private final Keyboard keys = new Keyboard(desktop);
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

    private Booking booking() {
        return editor.document().part(BOOKING, Booking.class).orElseThrow();
    }

    private Table offers() {
        return (Table) desktop.field("offered.customers");
    }

    private String said() {
        return ((Label) desktop.field("offered.said")).getText();
    }

    /** Types into the customer's field and stays there. */
    private void typeAndStay(String text) {
        var field = (org.eclipse.swt.widgets.Text) desktop.field("/customer");
        assertTrue(field.forceFocus());
        field.setText(text);
        desktop.work();
    }

    @Test
    void arrowDownAndEnterTakeTheCustomerItsKeyAndItsContactInOneUndoStep() {
        typeAndStay("brack");
        desktop.until("the customer is offered", () -> desktop.shows("offered.customers"));
        assertEquals(NAME, offers().getItem(0).getText(0));
        keys.press(SWT.ARROW_DOWN);
        desktop.until("the cursor is on the offers", () -> offers().isFocusControl());
        keys.press(SWT.CR);
        desktop.until("the customer is taken", () -> KEY.equals(booking().customerKey()));
        Contact contact = ((Customer) desktop.session().store().shopParts(PartKind.CUSTOMER).stream()
                .filter(s -> s.key().name().equals(KEY)).findFirst().orElseThrow().part()).contacts().get(0);
        assertEquals(NAME, booking().customer());
        assertEquals(contact, booking().contact());
        assertEquals(contact.line(), desktop.text("/contact"));
        assertTrue(said().contains(contact.name()), said());
        assertFalse(desktop.shows("offered.customers"), "who is taken is not offered again");
        desktop.until("the cursor goes on", () -> desktop.field("/orderNo").isFocusControl());
        editor.document().undo(BOOKING);
        assertNull(booking().customerKey());
        assertNull(booking().contact());
        assertEquals("brack", booking().customer());
    }

    @Test
    void anotherNameTakesTheKeyOffAndAContactTypedBeforeStays() {
        desktop.type("/contact", "Bo Mill; 040 7");
        typeAndStay("farrow");
        desktop.until("the customer is offered", () -> desktop.shows("offered.customers"));
        desktop.press("offered.take");
        assertEquals("c-farrowdale", booking().customerKey());
        assertEquals(new Contact("Bo Mill", "040 7", ""), booking().contact());
        assertTrue(said().contains("stays"), said());
        desktop.type("/customer", "Somebody Else");
        assertNull(booking().customerKey());
        assertEquals("Somebody Else", booking().customer());
    }

    @Test
    void whoIsNotThereIsPutThereByOneButtonAndTheJobKeepsTheKey() {
        String name = "Wharfside Pumps " + System.nanoTime();
        desktop.type("/contact", "Ada Brook; 040 555");
        typeAndStay(name);
        desktop.until("it is said", () -> desktop.shows("offered.keep") && ((Button) desktop.field("offered.keep")).isEnabled());
        assertFalse(desktop.shows("offered.customers"));
        desktop.press("offered.keep");
        desktop.until("the booking is tied", () -> booking().customerKey() != null);
        Customer kept = (Customer) desktop.session().store().shopParts(PartKind.CUSTOMER).stream()
                .filter(s -> s.key().name().equals(booking().customerKey())).findFirst().orElseThrow().part();
        assertEquals(name, kept.name());
        assertEquals("Ada Brook", kept.contacts().get(0).name());
        editor.doSave(new NullProgressMonitor());
        desktop.until("it is booked in", () -> !editor.isDirty());
        Booking saved = desktop.session().store().load(editor.document().id()).booking().orElseThrow();
        assertEquals(booking().customerKey(), saved.customerKey());
        assertEquals("Ada Brook", saved.contact().name());
        String chained = desktop.session().store().current(editor.document().id(), BOOKING).orElseThrow().revision().json();
        assertFalse(chained.contains("Wharfside") || chained.contains("Brook"), chained);
    }

    @Test
    void aNameThatIsThereIsNotPutThereAgain() {
        typeAndStay(NAME);
        desktop.until("it is offered", () -> desktop.shows("offered.customers"));
        assertFalse(((Button) desktop.field("offered.keep")).isEnabled());
        assertTrue(((Button) desktop.field("offered.take")).isEnabled());
        assertEquals(desktop.field("/customer"), Display.getCurrent().getFocusControl(), "the offers do not take the cursor");
    }

    /** A button between two fields takes the blank of whoever goes on typing. */
    @Test
    void goingOnWithTabFromTheContactDoesNotPutAnybodyIntoTheRegister() {
        typeAndStay("Nobody Known " + System.nanoTime());
        desktop.until("the name can be put there", () -> desktop.shows("offered.keep") && ((Button) desktop.field("offered.keep")).isEnabled());
        assertTrue(desktop.field("/contact").forceFocus());
        keys.press(SWT.TAB);
        desktop.until("the cursor goes on", () -> Display.getCurrent().getFocusControl() != desktop.field("/contact"));
        assertEquals(desktop.field("/orderNo"), Display.getCurrent().getFocusControl());
    }

    @Test
    void aTextThatIsNoNameIsNotPutIntoTheRegister() {
        typeAndStay("windings burnt, ".repeat(10));
        desktop.until("the register was asked", () -> desktop.shows("offered.keep"));
        assertFalse(((Button) desktop.field("offered.keep")).isEnabled());
    }
}
