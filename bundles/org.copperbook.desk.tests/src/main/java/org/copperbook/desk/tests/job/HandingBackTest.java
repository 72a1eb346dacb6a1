package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.copperbook.desk.command.WorkbookFolder;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.booking.Standing.Closure;
import org.copperbook.jobs.booking.Standing.How;
import org.copperbook.jobs.booking.Standing.Waiting;
import org.copperbook.jobs.booking.Standing.WaitingFor;
import org.copperbook.jobs.handback.HandBack;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.jobs.stock.StockUnit;
import org.copperbook.store.JobHandle;
import org.copperbook.store.stock.StockMove;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Outside work, deliveries, what goes back and scrapping, typed into the page of a job. */
class HandingBackTest {

    private static final PartKey PAGE = PartKey.of(PartKind.HAND_BACK);

    private final Desktop desktop = new Desktop();
    private JobHandle job;
    private JobEditor editor;

    @BeforeEach
    void aMachineWithTwoPartsIsHere() throws Exception {
        String who = desktop.beSomebody();
        PartKey key = PartKey.of(PartKind.BOOKING);
        job = desktop.session().store().create((Booking) desktop.session().json().read(key, """
                {"schema":1,"machine":"pump set","parts":[{"name":"fan","received":true},{"name":"keys","received":false},
                {"name":"coupling","received":true}]}"""), who);
        editor = desktop.open(job.number());
        show(PAGE);
    }

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    private void show(PartKey page) {
        assertTrue(editor.show(page));
        desktop.settle(editor);
    }

    private String said(String id) {
        return ((Label) desktop.field(id)).getText();
    }

    private Job saved() {
        editor.doSave(new NullProgressMonitor());
        desktop.until("the job is saved", () -> !editor.isDirty());
        return desktop.session().store().load(job.id());
    }

    /** A refusal below the edge of the window is a button that does nothing. */
    private void seen(String id) {
        Control words = desktop.field(id);
        Composite up = words.getParent();
        while (!(up instanceof ScrolledComposite)) {
            up = up.getParent();
        }
        Composite form = up;
        desktop.until(id + " is inside the window", () -> {
            Rectangle in = words.getDisplay().map(words.getParent(), form, words.getBounds());
            return in.y >= 0 && in.y + in.height <= form.getClientArea().height;
        });
    }

    @Test
    void whatCameIsListedAndADifferenceHasToBeExplainedBeforeTheJobEnds() {
        assertEquals("pump set", desktop.grid("/items").model().text(0, 0));
        assertEquals("fan", desktop.grid("/items").model().text(1, 0));
        assertEquals("coupling", desktop.grid("/items").model().text(2, 0));
        desktop.type("/items", 1, 1, "no");
        desktop.press("items.all");
        assertTrue(said("items.differences").contains("fan"), said("items.differences"));
        desktop.press("ending.COLLECTED");
        assertTrue(said("ending.said").contains("not released"), said("ending.said"));
        seen("ending.said");
        desktop.type("/unreleased", "the owner fits it as it is");
        desktop.press("ending.COLLECTED");
        assertTrue(said("ending.said").contains("fan"), said("ending.said"));
        desktop.type("/takenBy", "K. Ames");
        desktop.type("/difference", "the fan was worn out and replaced");
        desktop.press("ending.COLLECTED");
        Job kept = saved();
        assertEquals(How.COLLECTED, kept.standing().orElseThrow().closure().how());
        assertEquals("Not released: the owner fits it as it is", kept.standing().orElseThrow().closure().reason());
        assertTrue(said("ending.said").contains("the owner fits it as it is"), said("ending.said"));
        HandBack back = kept.part(PartKind.HAND_BACK, HandBack.class).orElseThrow();
        assertEquals("K. Ames", back.takenBy());
        assertEquals(true, back.items().get(0).back());
        assertEquals(false, back.items().get(1).back());
    }

    @Test
    void undoOnThePageTakesTheEndingBackAndNothingElse() throws Exception {
        PartKey standing = PartKey.of(PartKind.STANDING);
        desktop.type("/difference", "left with the owner");
        desktop.press("ending.DECLINED");
        assertTrue(said("ending.said").contains("has ended"), said("ending.said"));
        desktop.command("org.eclipse.ui.edit.undo");
        desktop.settle(editor);
        assertTrue(editor.document().part(standing, Standing.class).map(Standing::closure).isEmpty(), "it is open again");
        assertEquals("", said("ending.said"));
        assertEquals("left with the owner", desktop.text("/difference"));
        desktop.command("org.eclipse.ui.edit.redo");
        desktop.settle(editor);
        assertTrue(said("ending.said").contains("has ended"), said("ending.said"));
        show(standing);
        editor.document().undo(standing);
        show(PAGE);
        assertEquals("", said("ending.said"), "taken back on the other page");
    }

    @Test
    void whatIsSetAsideForAJobIsNamedWhereItEndsAndGivenFree() {
        String code = "W-1.180-G2";
        var stock = desktop.session().store().stock();
        BigDecimal before = ((StockItem) stock.item(code).orElseThrow().part()).reservedInAll();
        desktop.until("nothing is set aside", () -> said("aside.said").startsWith("Nothing"));
        stock.move(List.of(new StockMove(code, StockMovement.of(StockMovement.Kind.RESERVE, new BigDecimal("2.5"), job.id(),
                Instant.now()))), desktop.session().who().orElseThrow());
        desktop.until("it is named", () -> said("aside.said").contains("2.5") && said("aside.said").contains(code));
        desktop.type("/difference", "never unpacked");
        desktop.press("ending.DECLINED");
        desktop.until("it is said that the job has ended", () -> said("aside.said").startsWith("The job has ended"));
        desktop.press("aside.release");
        desktop.until("it is free", () -> said("aside.said").startsWith("Given free"));
        StockItem now = (StockItem) stock.item(code).orElseThrow().part();
        assertEquals(0, BigDecimal.ZERO.compareTo(now.reservedFor(job.id())));
        assertEquals(0, before.compareTo(now.reservedInAll()));
    }

    @Test
    void whatIsOutKeepsTheJobOpenAndIsOfferedAsTheReasonToWait() {
        desktop.type("/outside", 0, 0, "shaft");
        desktop.type("/outside", 0, 1, "Grinders");
        desktop.type("/outside", 0, 3, "2026-05-01");
        desktop.press("items.all");
        desktop.press("ending.COLLECTED");
        assertTrue(said("ending.said").contains("shaft, Grinders"), said("ending.said"));
        show(PartKey.of(PartKind.STANDING));
        desktop.press("waiting.take.0");
        Job kept = saved();
        assertEquals(WaitingFor.OUTSIDE_WORK, kept.standing().orElseThrow().waiting().waitingFor());
        assertEquals("shaft, Grinders", kept.standing().orElseThrow().waiting().reason());
    }

    @Test
    void whatTheJobWaitsForIsNotedSinceNowInOneUndoStepAndAnEarlierDayStays() {
        PartKey standing = PartKey.of(PartKind.STANDING);
        show(standing);
        Instant before = Instant.now().truncatedTo(ChronoUnit.MINUTES);
        desktop.type("/waiting/waitingFor", "parts");
        Instant since = waiting().since();
        assertFalse(since.isBefore(before) || since.isAfter(Instant.now()), since + " is now");
        assertFalse(desktop.text("/waiting/since").isEmpty(), "the field shows it");
        editor.document().undo(standing);
        assertEquals(Optional.empty(), editor.document().part(standing), "one step takes both back");
        desktop.type("/waiting/since", "2026-03-02 07:00");
        since = waiting().since();
        desktop.type("/waiting/waitingFor", "customer");
        assertEquals(WaitingFor.CUSTOMER, waiting().waitingFor());
        assertEquals(since, waiting().since());
    }

    private Waiting waiting() {
        return editor.document().part(PartKey.of(PartKind.STANDING), Standing.class).orElseThrow().waiting();
    }

    /** An item of its own, of which there is nothing yet. */
    private String item(StockUnit unit) {
        String code = "H-" + UUID.randomUUID().toString().substring(0, 8);
        desktop.session().store().stock().describe(StockItem.of(code, StockItem.Kind.BEARING, "Bearing of " + code, unit), null,
                desktop.session().who().orElseThrow(), "");
        return code;
    }

    private StockItem stock(String code) {
        return (StockItem) desktop.session().store().stock().item(code).orElseThrow().part();
    }

    private void openReceiving() {
        desktop.press("receive.open");
        desktop.until("the window is open", () -> desktop.shows("receive.quantity"));
    }

    private void line(String says) {
        desktop.until("a line says " + says, () -> desktop.shows("receive.line.0") && said("receive.line.0").contains(says));
    }

    @Test
    void aDeliveryIsPutInStockWithTheRecordAndTakenOutAgainWithIt() {
        String code = item(StockUnit.PC);
        desktop.type("/deliveries", 0, 0, "bearing " + code);
        desktop.type("/deliveries", 0, 4, "2");
        desktop.grid("/deliveries").moveTo(0, 0);
        openReceiving();
        assertEquals("2", desktop.text("receive.quantity"), "what is missing is proposed");
        assertEquals(code, ((Table) desktop.field("receive.items")).getSelection()[0].getText(0), "the item of that name is marked");
        ((Text) desktop.field("receive.price")).setText("4.20");
        desktop.press("receive.put");
        line("go into stock when you save");
        assertEquals(0, stock(code).onHand().signum(), "nothing is moved before it is saved");
        saved();
        line("were put in stock, set aside for this job");
        assertEquals(0, new BigDecimal("2").compareTo(stock(code).reservedFor(job.id())));
        assertEquals(0, new BigDecimal("4.2").compareTo(stock(code).price()));
        assertEquals("2", desktop.grid("/deliveries").model().text(0, 5), "what came is written down with it");
        assertEquals("0", desktop.grid("/deliveries").model().text(0, 7));
        editor.document().undo(PAGE);
        desktop.until("it is said", () -> desktop.shows("receive.line.0") && said("receive.line.0").contains("taken out of stock again"));
        saved();
        assertEquals(0, stock(code).onHand().signum());
        assertEquals(0, stock(code).reservedInAll().signum());
        editor.document().redo(PAGE);
        saved();
        line("were put in stock");
        assertEquals(0, new BigDecimal("2").compareTo(stock(code).onHand()));
        desktop.press("receive.back.0");
        saved();
        assertEquals(0, stock(code).onHand().signum());
        assertEquals("2", desktop.grid("/deliveries").model().text(0, 5), "it came all the same");
    }

    @Test
    void whatWasPutInStockAndIssuedCannotBeTakenOutOfTheRecordAndTheRestIsSaved() {
        String code = item(StockUnit.PC);
        desktop.type("/deliveries", 0, 0, code);
        desktop.grid("/deliveries").moveTo(0, 0);
        openReceiving();
        ((Text) desktop.field("receive.quantity")).setText("1.5");
        desktop.press("receive.put");
        assertTrue(said("receive.said").contains("pieces are whole"), said("receive.said"));
        ((Text) desktop.field("receive.quantity")).setText("3");
        desktop.press("receive.put");
        saved();
        desktop.session().store().stock().move(List.of(new StockMove(code, StockMovement.of(StockMovement.Kind.ISSUE,
                new BigDecimal("2"), job.id(), Instant.now()))), desktop.session().who().orElseThrow());
        line("were put in stock");
        desktop.press("receive.back.0");
        editor.doSave(new NullProgressMonitor());
        desktop.work();
        assertTrue(editor.isDirty(), "the record still has what stock cannot give back");
        assertEquals(0, BigDecimal.ONE.compareTo(stock(code).onHand()));
        editor.document().undo(PAGE);
        desktop.until("nothing is left to save", () -> !editor.isDirty());
    }

    @Test
    void whatHasNotComeOfADeliveryIsComputedAndOffered() {
        desktop.type("/deliveries", 0, 0, "bearings");
        desktop.type("/deliveries", 0, 4, "2");
        desktop.type("/deliveries", 0, 5, "1");
        assertEquals("1", desktop.grid("/deliveries").model().text(0, 7));
        show(PartKey.of(PartKind.STANDING));
        desktop.press("waiting.take.0");
        assertEquals(WaitingFor.PARTS, saved().standing().orElseThrow().waiting().waitingFor());
    }

    @Test
    void theDeliveryNoteIsWrittenOnceSomethingIsTickedOff() throws Exception {
        desktop.command("org.copperbook.desk.command.deliveryNote");
        desktop.until("it is said that nothing is ticked", () -> desktop.shows("failure"));
        desktop.press("items.all");
        desktop.command("org.copperbook.desk.command.deliveryNote");
        Path note = WorkbookFolder.current().resolve(job.number() + " delivery note.xlsx");
        desktop.until(note + " is there", () -> Files.exists(note));
    }

    @Test
    void nothingIsScrappedWithoutConsent() {
        desktop.press("ending.SCRAPPED");
        assertTrue(said("ending.said").contains("consented"), said("ending.said"));
        desktop.type("/scrapping/consentBy", "K. Ames");
        desktop.type("/scrapping/how", "by letter");
        desktop.type("/scrapping/at", "2026-05-04");
        desktop.type("/scrapping/copper", "sold, price credited");
        desktop.press("ending.SCRAPPED");
        Closure closure = saved().standing().orElseThrow().closure();
        assertEquals(How.SCRAPPED, closure.how());
    }
}
