package org.copperbook.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.jobs.stock.StockUnit;
import org.copperbook.jobs.work.Hours;
import org.copperbook.store.JobStore;
import org.copperbook.store.stock.Stock;
import org.copperbook.store.stock.StockMove;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Where people have secrets, who may not do something in the registers, the stock or the hours is told who may, and loses
 * nothing. Expected: the table of roles and rights of the contributor guide.
 */
class WhoMayOnPagesTest {

    private static final PartKey BOOKING = PartKey.of(PartKind.BOOKING);
    private static final PartKey HOURS = PartKey.of(PartKind.HOURS);
    private static final String SECRET = "one secret for a day";
    private static final String JOB = "2026-0007";

    private final Desktop desktop = new Desktop();
    private final String run = Long.toString(System.nanoTime(), Character.MAX_RADIX);
    private final String owner = "w-owner-" + run;
    private final String winder = "w-winder-" + run;
    private final String checker = "w-checker-" + run;
    private final String code = "T-" + run;
    private JobStore store;

    @BeforeEach
    void peopleWithSecrets() {
        store = desktop.session().store();
        String somebody = desktop.beSomebody();
        Stock stock = store.stock();
        stock.describe(new StockItem(1, code, StockItem.Kind.BEARING, "Test bearing", "6205", null, null, StockUnit.PC, "here",
                new BigDecimal("4.50"), null, null, null, null, null, null), null, somebody, "");
        stock.move(List.of(new StockMove(code, StockMovement.of(StockMovement.Kind.RECEIVE, BigDecimal.TEN, null, null))),
                somebody);
        store.savePerson(new Person(owner, "Orla Owner", Set.of(Role.OWNER), null, null, true), owner);
        store.savePerson(new Person(winder, "Wim Winder", Set.of(Role.WINDER), null, null, true), owner);
        store.savePerson(new Person(checker, "Cleo Checker", Set.of(Role.QUALITY_CHECKER), null, null, true), owner);
        desktop.until("the people are known", () -> desktop.session().shop().people().containsKey(checker));
        store.accounts().begin(owner, SECRET.toCharArray());
        store.accounts().reset(winder, SECRET.toCharArray());
        store.accounts().reset(checker, SECRET.toCharArray());
        desktop.session().signedInOrOut();
    }

    /** Erasing everybody who has a secret leaves the workshop as it was: without secrets. */
    @AfterEach
    void leave() {
        desktop.closeAll();
        store.accounts().signOut();
        Instant now = Instant.now();
        store.eraseAgain(Map.of(owner, now, winder, now, checker, now));
        desktop.session().signedInOrOut();
        desktop.work();
        assertFalse(desktop.session().hasSecrets());
    }

    private void signedIn(String key) throws Exception {
        desktop.command("org.copperbook.desk.command.signIn");
        desktop.press("signIn/person/" + key);
        ((Text) desktop.field("signIn/secret")).setText(SECRET);
        desktop.press("signIn/do");
        desktop.until("the dialog is gone", () -> !desktop.shows("signIn/do"));
        assertEquals(Optional.of(key), desktop.session().who());
    }

    private String said(String id) {
        return ((Label) desktop.field(id)).getText();
    }

    private void stock() throws Exception {
        desktop.command("org.copperbook.office.command.stock");
        ((Text) desktop.field("stock.find")).setText(code);
        desktop.until("the item is marked", () -> ((Table) desktop.field("stock.items")).getItemCount() == 1
                && said("stock.chosen").startsWith(code));
        desktop.until("its ledger is read", () -> ((Table) desktop.field("stock.ledger")).getItemCount() > 0);
    }

    private BigDecimal onHand() {
        return ((StockItem) store.stock().item(code).orElseThrow().part()).onHand();
    }

    /** The button "put into register": customers are kept by foreman, office and owner. */
    @Test
    void aWinderPutsNoCustomerIntoTheRegisterAndIsToldWhoMay() throws Exception {
        signedIn(winder);
        desktop.command("org.copperbook.desk.command.newJob");
        JobEditor editor = (JobEditor) desktop.activeEditor();
        desktop.settle(editor);
        editor.show(BOOKING);
        desktop.work();
        String name = "Quayside Hoists " + run;
        Text field = (Text) desktop.field("/customer");
        assertTrue(field.forceFocus());
        field.setText(name);
        desktop.until("the register is read", () -> desktop.shows("offered.keep") && desktop.field("offered.keep").isEnabled());
        desktop.press("offered.keep");
        desktop.until("the refusal is shown, not " + said("offered.said"), () -> said("offered.said").contains("Wim Winder"));
        assertTrue(said("offered.said").contains("office") && said("offered.said").contains("owner"), said("offered.said"));
        assertTrue(desktop.field("offered.keep").isEnabled(), "who may can press it after signing in");
        Booking booking = editor.document().part(BOOKING, Booking.class).orElseThrow();
        assertEquals(name, booking.customer(), "nothing typed is lost");
        assertNull(booking.customerKey());
        signedIn(owner);
        assertEquals(name, desktop.text("/customer"));
    }

    @Test
    void whoMayNotIssueStockSeesWhyAndTheFieldsKeepWhatWasTyped() throws Exception {
        signedIn(checker);
        stock();
        ((Text) desktop.field("stock.quantity")).setText("3");
        ((Text) desktop.field("stock.job")).setText(JOB);
        desktop.press("stock.do.ISSUE");
        desktop.until("the refusal is shown, not " + said("stock.said"), () -> said("stock.said").contains("Cleo Checker"));
        assertTrue(said("stock.said").contains("winder"), said("stock.said"));
        assertEquals("3", desktop.text("stock.quantity"));
        assertEquals(JOB, desktop.text("stock.job"));
        assertEquals(0, BigDecimal.TEN.compareTo(onHand()));
        signedIn(winder);
        assertEquals("3", desktop.text("stock.quantity"), "whoever takes over goes on from there");
        desktop.press("stock.do.ISSUE");
        desktop.until("it is issued", () -> onHand().compareTo(new BigDecimal("7")) == 0);
    }

    @Test
    void whoMayNotDescribeAnItemSeesWhyAndTheFieldsKeepWhatWasTyped() throws Exception {
        signedIn(winder);
        stock();
        CTabFolder tabs = (CTabFolder) desktop.field("stock.tabs");
        tabs.setSelection(1);
        tabs.notifyListeners(SWT.Selection, new Event());
        desktop.work();
        ((Text) desktop.field("item/stock.place")).setText("another shelf");
        desktop.press("stock.keep");
        desktop.until("the refusal is shown, not " + said("stock.itemSaid"), () -> said("stock.itemSaid").contains("Wim Winder"));
        assertEquals("another shelf", desktop.text("item/stock.place"));
        assertEquals("here", ((StockItem) store.stock().item(code).orElseThrow().part()).place());
    }

    /** Everybody books hours; but what one typed another neither changes nor saves. */
    @Test
    void hoursThatSomebodyTypedStayTheirsWhileAnotherTakesOver() throws Exception {
        signedIn(winder);
        JobEditor editor = desktop.open(JOB);
        editor.show(HOURS);
        desktop.settle(editor);
        int rows = desktop.grid("/entries").model().filled();
        desktop.press("/entries#grid.add");
        desktop.type("/entries", rows, 3, "1.75");
        assertTrue(editor.isDirty());
        signedIn(checker);
        desktop.until("it says whose this is", () -> desktop.shows("others"));
        desktop.press("hours.begin");
        editor.doSave(new NullProgressMonitor());
        desktop.work();
        assertTrue(editor.isDirty(), "nobody else saves it");
        assertEquals(1, hours(editor).entries().stream().filter(e -> winder.equals(e.who())).count());
        assertTrue(hours(editor).running().isEmpty(), "nor begins a time in it");
        assertTrue(said("hours.begun").contains("Wim Winder"), said("hours.begun"));
        signedIn(winder);
        desktop.until("it may be edited again", () -> !desktop.shows("others"));
        editor.doSave(new NullProgressMonitor());
        desktop.until("it is saved", () -> !editor.isDirty());
        assertEquals(winder, store.current(editor.document().id(), HOURS).orElseThrow().revision().who());
    }

    private static Hours hours(JobEditor editor) {
        return editor.document().part(HOURS, Hours.class).orElseThrow();
    }

    /** What a winder typed into the instruments stays in sight when it may not be saved: testers keep instruments. */
    @Test
    void whoMayNotKeepInstrumentsSeesWhyAndNothingTypedIsLost() throws Exception {
        signedIn(winder);
        desktop.command("org.copperbook.office.command.registers");
        desktop.until("the instruments are read", () -> desktop.shows("/instruments/0/id"));
        int before = store.current(JobStore.SHOP, PartKey.of(PartKind.INSTRUMENTS)).orElseThrow().number();
        desktop.type("/instruments/0/name", "typed by the winder " + run);
        desktop.activeEditor().doSave(new NullProgressMonitor());
        desktop.until("the refusal is shown", () -> desktop.shows("failure"));
        assertTrue(desktop.activeEditor().isDirty());
        assertEquals("typed by the winder " + run, desktop.text("/instruments/0/name"));
        assertEquals(before, store.current(JobStore.SHOP, PartKey.of(PartKind.INSTRUMENTS)).orElseThrow().number());
    }
}
