package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.text.NumberFormat;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.jobs.stock.StockUnit;
import org.copperbook.jobs.work.Hours;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.NumberTaken;
import org.copperbook.store.stock.StockEntry;
import org.copperbook.store.stock.StockMove;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Hours and material of a job that has the booking, quote and winding of the demo's motor, agreed to. */
class HoursTest {

    private static final PartKey HOURS = PartKey.of(PartKind.HOURS);

    private final Desktop desktop = new Desktop();
    private JobStore store;
    private String who;
    private JobHandle job;
    private JobEditor editor;

    @BeforeEach
    void aJobWithAnAgreedQuote() throws Exception {
        who = desktop.beSomebody();
        store = desktop.session().store();
        Job demo = store.load(store.idOf("2026-0007").orElseThrow());
        String quote = "{\"schema\":1,\"revision\":1,\"currency\":\"EUR\",\"alternatives\":[{\"name\":\"rewind\",\"lines\":["
                + "{\"kind\":\"LABOUR\",\"trade\":\"winder\",\"quantity\":9,\"unit\":\"h\",\"unitPrice\":52},"
                + "{\"kind\":\"MATERIAL\",\"wire\":\"1.18 mm\",\"text\":\"wire\",\"quantity\":8,\"unit\":\"kg\",\"unitPrice\":16},"
                + "{\"kind\":\"OUTSIDE_WORK\",\"text\":\"grind shaft\",\"quantity\":1,\"unitPrice\":200}]}],"
                + "\"approval\":{\"agreed\":true}}";
        Map<PartKey, Part> parts = new java.util.TreeMap<>();
        demo.parts().forEach((k, p) -> {
            if (k.kind() == PartKind.BOOKING || k.kind() == PartKind.NAMEPLATE || k.kind() == PartKind.WINDING) {
                parts.put(k, p);
            }
        });
        parts.put(PartKey.quote(1), desktop.session().json().read(PartKey.quote(1), quote));
        job = store.takeIn(new Job(UUID.randomUUID().toString(), "", parts), who, "", NumberTaken.REFUSE);
        editor = desktop.open(job.number());
        editor.show(HOURS);
        desktop.settle(editor);
    }

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @Test
    void whatOutsideWorkCostStandsAgainstItsLineOfTheQuote() {
        PartKey back = PartKey.of(PartKind.HAND_BACK);
        assertArrayEquals(new String[] {"200", "0", "-200", "EUR"}, row("grind shaft"));
        editor.show(back);
        desktop.settle(editor);
        desktop.type("/outside", 0, 0, "shaft");
        desktop.type("/outside", 0, 3, "2026-05-01");
        editor.show(HOURS);
        desktop.settle(editor);
        assertTrue(((Label) desktop.field("hours.saidActuals")).getText().contains("shaft"), "no cost is written down yet");
        editor.show(back);
        desktop.settle(editor);
        desktop.type("/outside", 0, 7, "230.5");
        desktop.type("/outside", 0, 8, "grind shaft");
        editor.show(HOURS);
        desktop.settle(editor);
        assertArrayEquals(new String[] {"200", NumberFormat.getInstance().format(230.5), "+" + NumberFormat.getInstance()
                .format(30.5), "EUR"}, row("grind shaft"));
        assertFalse(((Label) desktop.field("hours.saidActuals")).getText().contains("shaft"));
    }

    private String[] row(String what) {
        desktop.until("there is a line of " + what, () -> find(what) != null);
        TableItem row = find(what);
        return new String[] {row.getText(1), row.getText(2), row.getText(3), row.getText(4)};
    }

    private TableItem find(String what) {
        return Stream.of(((Table) desktop.field("hours.actuals")).getItems()).filter(i -> i.getText(0).contains(what))
                .findFirst().orElse(null);
    }

    private String said(String id) {
        return ((Label) desktop.field(id)).getText();
    }

    @Test
    void hoursTypedStandAgainstTheQuoteAndAreNotAheadAnyMore() {
        assertEquals(List.of("9", "0", "-9", "h"), List.of(row("winder")));
        desktop.type("/entries", 0, 1, "winder");
        desktop.type("/entries", 0, 3, "10.5");
        assertEquals(List.of("9", "10.5", "+1.5", "h"), List.of(row("winder")));
        Hours hours = editor.document().part(HOURS, Hours.class).orElseThrow();
        assertEquals(who, hours.entries().get(0).who());
        assertEquals(java.time.LocalDate.now(), hours.entries().get(0).date());
    }

    @Test
    void workBegunAndStoppedBecomesAnEntryAndIsUndone() {
        desktop.press("hours.stop");
        assertTrue(said("hours.begun").contains("not begun"), said("hours.begun"));
        desktop.press("hours.begin");
        desktop.press("hours.begin");
        assertTrue(said("hours.begun").contains("already"), said("hours.begun"));
        assertEquals(1, editor.document().part(HOURS, Hours.class).orElseThrow().running().size());
        desktop.press("hours.stop");
        Hours stopped = editor.document().part(HOURS, Hours.class).orElseThrow();
        assertEquals(List.of(), stopped.running());
        assertEquals(0, BigDecimal.ZERO.compareTo(stopped.entries().get(0).hours()));
        editor.document().undo(HOURS);
        assertEquals(1, editor.document().part(HOURS, Hours.class).orElseThrow().running().size());
    }

    @Test
    void moreThanTwelveHoursInOneGoAreAskedAboutBeforeTheyAreWrittenDown() {
        Instant since = Instant.now().minusSeconds(13 * 3600).truncatedTo(java.time.temporal.ChronoUnit.SECONDS);
        editor.document().change(HOURS, "/running", tree -> {
            tree.withArray("running").addObject().put("who", who).put("since", since.toString());
            return tree;
        });
        desktop.work();
        assertTrue(said("hours.running").contains(desktop.session().shop().nameOf(who)), said("hours.running"));
        desktop.press("hours.stop");
        assertTrue(said("hours.begun").contains("13"), said("hours.begun"));
        assertEquals(List.of(), editor.document().part(HOURS, Hours.class).orElseThrow().entries());
        desktop.press("hours.stop");
        assertEquals(13, editor.document().part(HOURS, Hours.class).orElseThrow().entries().get(0).hours().doubleValue(), 0.05);
        assertTrue(said("hours.running").startsWith("Nobody"), said("hours.running"));
    }

    @Test
    void workOnTwoJobsAtOnceIsSaidAndTheOtherStoppedFromHere() throws Exception {
        Instant since = Instant.now().minusSeconds(2 * 3600).truncatedTo(java.time.temporal.ChronoUnit.SECONDS);
        JobHandle other = store.takeIn(new Job(UUID.randomUUID().toString(), "", Map.of(HOURS, desktop.session().json().read(HOURS,
                "{\"schema\":1,\"running\":[{\"who\":\"" + who + "\",\"trade\":\"fitter\",\"since\":\"" + since + "\"},"
                        + "{\"who\":\"somebody\",\"since\":\"" + since + "\"}]}"))), who, "", NumberTaken.REFUSE);
        desktop.press("hours.begin");
        desktop.until("the other job is named", () -> said("hours.elsewhere").contains(other.number()));
        desktop.press("hours.stopOther");
        desktop.until("it is stopped", () -> said("hours.elsewhere").contains("written down"));
        Hours there = (Hours) store.current(other.id(), HOURS).orElseThrow().part();
        assertEquals(List.of("somebody"), there.running().stream().map(Hours.Running::who).toList());
        assertEquals(2, there.entries().get(0).hours().doubleValue(), 0.05);
        assertEquals("fitter", there.entries().get(0).trade());
        assertEquals(1, editor.document().part(HOURS, Hours.class).orElseThrow().running().size(), "work here goes on");
    }

    @Test
    void theWireOfTheJobIsSetAsideByItsMassOnceAndWhatIsIssuedCounts() {
        StockItem before = (StockItem) store.stock().item("W-1.180-G2").orElseThrow().part();
        StockItem otherGrade = new StockItem(1, "W-1.180-G1", StockItem.Kind.WIRE, "Wire of another grade", "1.180 mm", 1,
                StockItem.Shape.ROUND, StockUnit.KG, null, null, null, null, null, null, null, null);
        store.stock().describe(otherGrade, null, who, "");
        store.stock().move(List.of(new StockMove("W-1.180-G1", StockMovement.of(StockMovement.Kind.RECEIVE, new BigDecimal("900"),
                null, null))), who);
        desktop.press("hours.reserveWire");
        desktop.until("it says so", () -> said("hours.saidWire").startsWith("Set aside"));
        StockItem now = (StockItem) store.stock().item("W-1.180-G2").orElseThrow().part();
        BigDecimal kg = now.reservedFor(job.id());
        StockItem left = (StockItem) store.stock().item("W-1.180-G1").orElseThrow().part();
        assertEquals(0, left.reservedInAll().signum(), "the winding names grade 2, however much there is of another");
        store.stock().describe(left.retire(), left, who, "");
        // The demo's quote, made by hand, reckons 8.1 kg with 8 %; here 5 % are added.
        assertEquals(8.1 / 1.08 * 1.05, kg.doubleValue(), 0.1);
        desktop.press("hours.reserveWire");
        desktop.until("nothing more", () -> said("hours.saidWire").startsWith("Nothing more"));
        store.stock().move(List.of(new StockMove("W-1.180-G2", StockMovement.of(StockMovement.Kind.ISSUE, kg, job.id(),
                Instant.now()))), who);
        assertEquals("128", row("winding wire")[0]);
        desktop.until("the wire stands in the list", () -> find("W-1.180-G2") != null);
        assertEquals(kg.multiply(before.price()).doubleValue(), new BigDecimal(row("winding wire")[1]).doubleValue(), 0.005);
        StockEntry issue = store.stock().ledger("W-1.180-G2", 1).get(0);
        store.stock().move(List.of(new StockMove("W-1.180-G2", issue.movement().reverse(Instant.now())),
                new StockMove("W-1.180-G2", StockMovement.of(StockMovement.Kind.RELEASE, kg, job.id(), Instant.now()))), who);
        StockItem after = (StockItem) store.stock().item("W-1.180-G2").orElseThrow().part();
        assertEquals(0, before.onHand().compareTo(after.onHand()));
    }

    @Test
    void costAgreedInAnotherCurrencyStandsApartAndIsSaid() throws Exception {
        PartKey quote = PartKey.quote(1);
        editor.show(quote);
        desktop.settle(editor);
        editor.document().change(quote, "/currency", tree -> tree.put("currency", "USD"));
        editor.show(HOURS);
        desktop.settle(editor);
        assertTrue(said("hours.saidActuals").contains("The quote is in USD, stock and outside work are in EUR"),
                said("hours.saidActuals"));
        assertEquals(List.of("128", "", "", "USD"), List.of(row("winding wire")));
        assertEquals(List.of("9", "0", "-9", "h"), List.of(row("winder")));
        editor.show(quote);
        desktop.settle(editor);
        editor.document().undo(quote);
        editor.show(HOURS);
        desktop.settle(editor);
        assertEquals(List.of("128", "0", "-128", "EUR"), List.of(row("winding wire")));
    }
}
