package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.store.JobHandle;
import org.copperbook.store.Saved;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** An open job stays as somebody left it: cursor, selection and scrolling, and what was saved past it is shown. */
class ComingBackTest {

    private static final PartKey BOOKING = PartKey.of(PartKind.BOOKING);
    private static final PartKey STANDING = PartKey.of(PartKind.STANDING);
    private static final PartKey NAMEPLATE = PartKey.of(PartKind.NAMEPLATE);

    private final Desktop desktop = new Desktop();
    private String who;
    private JobHandle made;
    private JobEditor editor;

    @BeforeEach
    void aJobIsOpen() throws Exception {
        who = desktop.beSomebody();
        made = desktop.session().store().create((Booking) desktop.session().json().read(BOOKING,
                "{\"schema\":1,\"hazardNote\":\"old bitumen\",\"machine\":\"pump motor\",\"customer\":\"Hollin Bank Laundry\"}"), who);
        editor = desktop.open(made.number());
        editor.show(BOOKING);
        desktop.settle(editor);
    }

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    private static ScrolledComposite page(Control inside) {
        Control at = inside;
        while (!(at instanceof ScrolledComposite)) {
            at = at.getParent();
        }
        return (ScrolledComposite) at;
    }

    @Test
    void cursorSelectionAndScrollingAreAsTheyWereWhenOneComesBack() throws Exception {
        Text field = (Text) desktop.field("/hazardNote");
        assertTrue(field.forceFocus());
        desktop.until("the cursor stands in the field", field::isFocusControl);
        field.setSelection(2, 5);
        Point scrolled = page(field).getOrigin();
        assertTrue(scrolled.y > 0, "the field is far down the page");
        desktop.open("2026-0001");
        desktop.until("the cursor is in the other job", () -> !field.isFocusControl());
        desktop.page().activate(editor);
        desktop.until("the cursor is back", field::isFocusControl);
        desktop.work();
        assertEquals(new Point(2, 5), field.getSelection());
        assertEquals(scrolled, page(field).getOrigin());
    }

    @Test
    void whatIsSaidAcrossTheTopDoesNotMoveThePageUnderThePointer() {
        Text field = (Text) desktop.field("/machine");
        ScrolledComposite page = page(field);
        page.setOrigin(0, page.getContent().getSize().y / 3);
        desktop.work();
        int before = field.toDisplay(0, 0).y;
        int top = page.toDisplay(0, 0).y;
        editor.say("something that takes a line of its own");
        desktop.work();
        assertTrue(page.toDisplay(0, 0).y > top, "the strip takes its place above the page");
        assertEquals(before, field.toDisplay(0, 0).y);
    }

    @Test
    void whatAnotherPageOfTheWindowSavedIsShown() throws Exception {
        editor.show(STANDING);
        desktop.settle(editor);
        assertEquals("", desktop.text("/waiting/reason"));
        desktop.session().store().save(made.id(), STANDING, desktop.session().json().read(STANDING,
                "{\"schema\":1,\"waiting\":{\"waitingFor\":\"PARTS\",\"reason\":\"slot wedges\"}}"), 0, who, "");
        desktop.until("the reason is shown", () -> desktop.text("/waiting/reason").equals("slot wedges"));
        assertFalse(editor.isDirty());
    }

    /** Closing undone before it was saved: nothing may go on saying that the job is closed. */
    @Test
    void aMergeTakenBackLeavesNothingThatSaysSo() throws Exception {
        JobHandle other = desktop.session().store().create((Booking) desktop.session().json().read(BOOKING,
                "{\"schema\":1,\"machine\":\"pump motor\"}"), who);
        editor.show(STANDING);
        desktop.settle(editor);
        org.eclipse.swt.widgets.Combo how = (org.eclipse.swt.widgets.Combo) desktop.field("closing.how");
        how.select(Standing.How.MERGED.ordinal());
        how.notifyListeners(SWT.Selection, new org.eclipse.swt.widgets.Event());
        Keyboard keys = new Keyboard(desktop);
        keys.fill("closing.reason", "booked twice");
        keys.fill("closing.into", other.number());
        desktop.press("closing.close");
        desktop.until("the job is merged", () -> editor.document().job().standing().map(Standing::isVoid).orElse(false));
        desktop.settle(editor);
        desktop.until("it is said", () -> desktop.shows("blocked"));
        keys.control('z');
        desktop.until("it is taken back", () -> !editor.document().job().standing().map(Standing::isVoid).orElse(false));
        desktop.settle(editor);
        desktop.until("the strip goes", () -> !desktop.shows("blocked"));
        assertEquals("", ((org.eclipse.swt.widgets.Label) desktop.field("closing.said")).getText());
        assertTrue(desktop.field("closing.how").isEnabled());
    }

    @Test
    void aTextNotUnderstoodInAPartThatIsClosedMeanwhileCanBeTakenOut() {
        editor.show(NAMEPLATE);
        desktop.type("/powerW", "abc");
        editor.document().change(STANDING, "/closure", tree -> {
            tree.putObject("closure").put("how", "CANCELLED").put("reason", "withdrawn");
            return tree;
        });
        desktop.settle(editor);
        editor.doSave(new NullProgressMonitor());
        desktop.until("it is said what was not saved", () -> desktop.shows("failure/takeOut"));
        assertTrue(editor.isDirty());
        assertFalse(((Text) desktop.field("/powerW")).getEditable(), "the part is closed");
        desktop.press("failure/takeOut");
        assertFalse(editor.isDirty());
        assertEquals("", desktop.text("/powerW"));
        assertFalse(desktop.shows("failure/takeOut"));
        assertTrue(desktop.session().store().current(made.id(), STANDING).map(Saved::part).isPresent());
    }

    @Test
    void theKeyForTheOpenJobGoesToTheOneWorkedOnLastWhateverIsOpenBeforeIt() throws Exception {
        Text field = (Text) desktop.field("/hazardNote");
        JobEditor other = desktop.open("2026-0001");
        desktop.settle(other);
        desktop.page().activate(editor);
        assertTrue(field.forceFocus());
        desktop.until("the cursor stands in the field", field::isFocusControl);
        desktop.command("org.copperbook.office.command.stock");
        desktop.until("the stock is before it", () -> desktop.shows("stock.items") && !field.isFocusControl());
        desktop.command("org.copperbook.desk.command.openJob");
        assertEquals(editor, desktop.activeEditor());
        desktop.until("the cursor is back", field::isFocusControl);
        desktop.command("org.copperbook.office.command.stock");
        desktop.command("org.copperbook.desk.command.register");
        desktop.command("org.copperbook.desk.command.openJob");
        assertEquals(editor, desktop.page().getActivePart(), "from the register as well");
        desktop.page().closeEditor(editor, false);
        desktop.command("org.copperbook.office.command.stock");
        desktop.command("org.copperbook.desk.command.openJob");
        assertEquals(other, desktop.activeEditor());
        desktop.page().closeEditor(other, false);
        desktop.command("org.copperbook.desk.command.register");
        desktop.command("org.copperbook.desk.command.openJob");
        assertEquals(desktop.activeEditor(), desktop.page().getActivePart(), "without a job, to the page that is open");
        assertTrue(desktop.shows("stock.items"));
    }
}
