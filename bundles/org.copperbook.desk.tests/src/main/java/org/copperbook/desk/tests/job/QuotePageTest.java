package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.editor.OutlineRow;
import org.copperbook.desk.editor.PartState;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.customer.Customer;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockUnit;
import org.copperbook.jobs.winding.WindingRole;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The page of a quote. Amounts are decimal arithmetic by hand, written out beside each. */
class QuotePageTest {

    private static final PartKey QUOTE = PartKey.quote(1);
    private static final String LIST = "/alternatives";
    private static final String OTHER = "B-6312-2Z";
    private static final String SPARE = "D-70-16-K";

    private final Desktop desktop = new Desktop();
    private final Keyboard keys = new Keyboard(desktop);
    private JobEditor editor;

    @BeforeEach
    void aQuoteIsBegun() throws Exception {
        desktop.beSomebody();
        editor = desktop.open("2026-0008");
        editor.begin(QUOTE);
        desktop.settle(editor);
        editor.show(QUOTE);
        desktop.settle(editor);
    }

    @AfterEach
    void leave() {
        desktop.closeAll();
        for (String code : List.of(OTHER, SPARE)) {
            desktop.session().store().stock().item(code).map(i -> (StockItem) i.part()).filter(i -> !Boolean.TRUE.equals(i.retired()))
                    .ifPresent(i -> describe(i.retire(), i));
        }
    }

    private void describe(StockItem item, StockItem before) {
        desktop.session().store().stock().describe(item, before, desktop.session().who().orElseThrow(), "");
    }

    /** An item that is in stock for one test; afterwards it is not kept any more. */
    private void inStock(String code, StockItem.Kind kind, String name, String size, String price) {
        describe(new StockItem(StockItem.SCHEMA, code, kind, name, size, null, null, StockUnit.PC, null, new BigDecimal(price), null,
                null, null, null, false, null),
                desktop.session().store().stock().item(code).map(i -> (StockItem) i.part()).orElse(null));
    }

    private void cell(RecordGrid grid, int row, String column, String words) {
        keys.cell(grid, row, column(grid, column), words);
    }

    private static int column(RecordGrid grid, String pointer) {
        return grid.model().columns().stream().map(c -> c.pointer()).toList().indexOf(pointer);
    }

    private static String shown(RecordGrid grid, int row, String column) {
        return grid.model().text(row, column(grid, column)).replace("\u00a0", " ");
    }

    private List<String> names() {
        List<String> names = new ArrayList<>();
        for (JsonNode a : editor.document().rows(QUOTE, LIST)) {
            names.add(a.path("name").asText());
        }
        return names;
    }

    private void line(int alternative, int row, String kind, String text, String quantity, String unit, String price) {
        RecordGrid lines = desktop.grid(LIST + "/" + alternative + "/lines");
        cell(lines, row, "/kind", kind);
        cell(lines, row, "/text", text);
        cell(lines, row, "/quantity", quantity);
        cell(lines, row, "/unit", unit);
        if (!price.isEmpty()) {
            cell(lines, row, "/unitPrice", price);
        }
    }

    @Test
    void alternativesAreAddedNamedCopiedMovedTakenOutAndTakenBack() {
        RecordGrid beside = desktop.grid(LIST, "net");
        assertEquals(1, beside.model().filled());
        cell(beside, 1, "/name", "clean and dry");
        desktop.until("the new alternative has its own lines", () -> desktop.shows(LIST + "/1/lines"));
        line(1, 0, "labour", "wash and dry", "6", "h", "50");
        beside.moveTo(1, 0);
        desktop.press("quote.copyAlternative");
        assertEquals(List.of("full rewind", "clean and dry", "clean and dry, copy"), names());
        assertEquals("wash and dry", editor.document().value(QUOTE, LIST + "/2/lines/0/text").asText());
        desktop.press("quote.moveUp");
        desktop.press("quote.moveUp");
        assertEquals(List.of("clean and dry, copy", "full rewind", "clean and dry"), names());
        desktop.press("quote.moveUp");
        assertEquals("It is the first already.", ((Label) desktop.field("alternatives/said")).getText());
        desktop.type(LIST + "/0/name", "part repair");
        assertEquals("part repair", shown(beside, 0, "/name"));
        editor.document().removeRow(QUOTE, LIST, 0);
        desktop.work();
        assertFalse(desktop.shows(LIST + "/2/lines"), "what is gone is off the page");
        editor.document().undo(QUOTE);
        desktop.work();
        assertTrue(desktop.shows(LIST + "/2/lines"));
        assertEquals(List.of("part repair", "full rewind", "clean and dry"), names());
    }

    @Test
    void anOfferThatCannotBePricedIsNotSentAndItIsSaidWhere() {
        desktop.type("/terms", "thirty days");
        desktop.press("quote.send");
        assertTrue(((Label) desktop.field("sending/said")).getText().startsWith("Not sent: there are no lines yet. "), ((Label) desktop.field("sending/said")).getText());
        line(0, 0, "labour", "wind", "6", "h", "50");
        cell(desktop.grid(LIST + "/0/lines"), 1, "/text", "something without a price");
        desktop.press("quote.send");
        assertTrue(((Label) desktop.field("sending/said")).getText().startsWith("Not sent: alternative \"full rewind\", line 2 (something without a price): has no unit price"), ((Label) desktop.field("sending/said")).getText());
        assertFalse(editor.document().value(QUOTE, "/sent").isObject());
        editor.document().removeRow(QUOTE, LIST + "/0/lines", 1);
        desktop.press("quote.send");
        assertTrue(editor.document().value(QUOTE, "/sent").isObject(), ((Label) desktop.field("sending/said")).getText());
    }

    private PartState state() {
        return editor.outline().stream().filter(OutlineRow.Page.class::isInstance).map(OutlineRow.Page.class::cast)
                .filter(p -> p.key().equals(QUOTE)).map(OutlineRow.Page::state).findFirst().orElseThrow();
    }

    @Test
    void aQuoteIsCompleteOnceEveryAlternativeHasLinesAndAllHaveAPrice() {
        desktop.type("/terms", "thirty days");
        desktop.until("without a line it is only begun", () -> state() == PartState.BEGUN);
        line(0, 0, "labour", "wind", "6", "h", "");
        assertEquals(PartState.BEGUN, state(), "a line without a price");
        cell(desktop.grid(LIST + "/0/lines"), 0, "/unitPrice", "50");
        desktop.until("all of it has a price", () -> state() == PartState.COMPLETE);
        cell(desktop.grid(LIST, "net"), 1, "/name", "clean and dry");
        desktop.until("the new alternative has no lines", () -> state() == PartState.BEGUN);
        desktop.press("quote.send");
        assertTrue(((Label) desktop.field("sending/said")).getText().startsWith("Not sent: alternative 2 has no lines. "),
                ((Label) desktop.field("sending/said")).getText());
    }

    @Test
    void linesWithoutATaxKindBesideTaxKindsAreSaid() {
        line(0, 0, "labour", "wind", "6", "h", "50");
        line(0, 1, "material", "wire", "2", "kg", "16");
        assertFalse(desktop.text("quote.total.0").contains("tax kind"), "a quote without tax kinds has nothing to forget");
        cell(desktop.grid("/taxes"), 0, "/code", "S");
        cell(desktop.grid("/taxes"), 0, "/ratePercent", "20");
        cell(desktop.grid(LIST + "/0/lines"), 0, "/tax", "S");
        assertTrue(desktop.text("quote.total.0").endsWith("1 of 2 lines without a tax kind"), desktop.text("quote.total.0"));
        cell(desktop.grid(LIST + "/0/lines"), 1, "/tax", "S");
        assertFalse(desktop.text("quote.total.0").contains("tax kind"), desktop.text("quote.total.0"));
    }

    @Test
    void undoingAllOfABegunQuoteLeavesAPageThatGoesOn() {
        desktop.type("/terms", "thirty days");
        while (editor.document().canUndo(QUOTE)) {
            editor.document().undo(QUOTE);
            desktop.work();
        }
        assertFalse(editor.document().part(QUOTE, Quote.class).isPresent());
        editor.document().redo(QUOTE);
        desktop.work();
        assertTrue(editor.document().part(QUOTE, Quote.class).isPresent());
    }

    @Test
    void anAgreementSaysWhatItLacksAndWhenItsLimitIsPassed() {
        cell(desktop.grid(LIST, "net"), 1, "/name", "clean and dry");
        line(0, 0, "labour", "wind", "6", "h", "50");
        editor.document().set(QUOTE, "/approval/agreed", BooleanNode.TRUE);
        desktop.work();
        assertTrue(desktop.text("quote.answered").contains("not which alternative"), desktop.text("quote.answered"));
        desktop.type("/approval/alternative", "full rewind");
        desktop.type("/approval/limit", "250");
        // 6 h x 50 = 300 without tax kinds
        assertTrue(desktop.text("quote.answered").contains("Agreed up to 250.00 EUR; the alternative comes to 50.00 EUR more"), desktop.text("quote.answered"));
        desktop.type("/approval/limit", "300");
        assertEquals("Write down who answered, how and when.", desktop.text("quote.answered"));
    }

    @Test
    void linesAreProposedFromTheRecordOnceAndWhatIsMissingIsSaid() throws Exception {
        editor = desktop.open("2026-0005");
        editor.begin(QUOTE);
        desktop.settle(editor);
        editor.show(QUOTE);
        desktop.settle(editor);
        desktop.press("quote.revise");
        int before = editor.document().rows(QUOTE, LIST + "/0/lines").size();
        desktop.press("quote.propose");
        JsonNode lines = editor.document().rows(QUOTE, LIST + "/0/lines").deepCopy();
        assertTrue(lines.size() > before, lines.toString());
        String said = ((Label) desktop.field("quote.tookFindings")).getText();
        assertTrue(said.contains("added"), said);
        desktop.press("quote.propose");
        assertEquals(lines, editor.document().rows(QUOTE, LIST + "/0/lines"), "a second press adds nothing");
        editor.document().undo(QUOTE);
        desktop.work();
        assertEquals(before, editor.document().rows(QUOTE, LIST + "/0/lines").size(), "one undo takes all of it back");
    }

    @Test
    void bearingsAreProposedAtThePriceOfTheStockAndItIsSaidWhichWasTaken() throws Exception {
        StockItem item = (StockItem) desktop.session().store().stock().item("B-6312").orElseThrow().part();
        editor = desktop.open("2026-0005");
        editor.show(QUOTE);
        desktop.settle(editor);
        desktop.press("quote.revise");
        desktop.press("quote.propose");
        String said = ((Label) desktop.field("quote.tookFindings")).getText();
        if (bearing("6312").path("unitPrice").isMissingNode()) {
            assertTrue(said.contains("the stock is not read yet"), said);
            desktop.until("the stock is read", () -> {
                desktop.press("quote.priceLines");
                return !bearing("6312").path("unitPrice").isMissingNode();
            });
            said = ((Label) desktop.field("quote.tookFindings")).getText();
        }
        assertEquals(0, item.price().compareTo(bearing("6312").path("unitPrice").decimalValue()));
        assertTrue(said.contains("1 x B-6312 (6312"), said);
    }

    @Test
    void theWorkOfFindingsGoesIntoTheMarkedAlternativeInWordsAndWithItsTrade() throws Exception {
        PartKey inspection = PartKey.of(PartKind.INSPECTION);
        editor.document().put(inspection, desktop.session().json().read(inspection, "{\"schema\":1,\"findings\":["
                + "{\"where\":\"exciter-rotor\",\"severity\":\"MUST_BE_DONE\",\"text\":\"burnt\",\"proposedWork\":\"rewind it\"},"
                + "{\"where\":\"cover\",\"severity\":\"NOTE\",\"text\":\"dented\",\"proposedWork\":\"straighten\"}]}"));
        RecordGrid beside = desktop.grid(LIST, "net");
        cell(beside, 1, "/name", "clean and dry");
        desktop.until("the new alternative has its own lines", () -> desktop.shows(LIST + "/1/lines"));
        beside.moveTo(1, 0);
        desktop.press("quote.takeFindings");
        assertEquals("2 lines added to \"clean and dry\"; they have no price yet. One line names no trade: the finding does not say "
                + "which one of the rates does it. Type it, then put prices in.", said());
        JsonNode lines = editor.document().rows(QUOTE, LIST + "/1/lines").deepCopy();
        assertEquals(List.of("exciter rotor: rewind it", "cover: straighten"), lines.findValuesAsText("text"));
        assertEquals(List.of("winder"), lines.findValuesAsText("trade"), "the shop has a rate for it");
        desktop.press("quote.priceLines");
        assertTrue(editor.document().value(QUOTE, LIST + "/1/lines/0/unitPrice").isNumber(), said());
        desktop.press("quote.takeFindings");
        assertEquals(2, editor.document().rows(QUOTE, LIST + "/1/lines").size(), "a second press adds nothing");
        beside.moveTo(0, 0);
        desktop.press("quote.takeFindings");
        assertEquals(2, editor.document().rows(QUOTE, LIST + "/0/lines").size(), "another alternative offers the same work");
    }

    @Test
    void theShopsPricesAreNotConvertedWhichIsSaidUntilOthersAreTyped() {
        line(0, 0, "labour", "wind", "6", "h", "");
        cell(desktop.grid(LIST + "/0/lines"), 0, "/trade", "winder");
        desktop.press("quote.priceLines");
        BigDecimal rate = first().path("unitPrice").decimalValue();
        assertFalse(desktop.text("quote.total.0").contains("Not converted"), desktop.text("quote.total.0"));
        desktop.type("/currency", "KWD");
        String warned = "Not converted: one line has the price of the shop, which is in EUR, as it stands. Type it in KWD.";
        assertTrue(desktop.text("quote.total.0").endsWith(" KWD. " + warned), desktop.text("quote.total.0"));
        assertTrue(desktop.text("quote.rule").endsWith(warned), "and beside the currency: " + desktop.text("quote.rule"));
        line(0, 1, "labour", "wind more", "6", "h", "");
        cell(desktop.grid(LIST + "/0/lines"), 1, "/trade", "winder");
        desktop.press("quote.priceLines");
        assertTrue(editor.document().value(QUOTE, LIST + "/0/lines/1/unitPrice").isMissingNode(), "no price of another currency is put in");
        assertTrue(said().contains("are in EUR and the quote is not, so no price was put in"), said());
        desktop.press("quote.propose");
        assertEquals(1, editor.document().rows(QUOTE, LIST + "/0/lines").findValues("unitPrice").size(), "nor with new lines");
        assertTrue(said().contains("no price was put in"), said());
        cell(desktop.grid(LIST + "/0/lines"), 0, "/unitPrice", rate.add(BigDecimal.ONE).toPlainString());
        assertFalse(desktop.text("quote.total.0").contains("Not converted"), desktop.text("quote.total.0"));
        cell(desktop.grid(LIST + "/0/lines"), 0, "/unitPrice", rate.toPlainString());
        assertTrue(desktop.text("quote.total.0").contains("Not converted"), desktop.text("quote.total.0"));
        desktop.type("/currency", "EUR");
        assertFalse(desktop.text("quote.rule").contains("Not converted"), desktop.text("quote.rule"));
    }

    @Test
    void aLimitIsShownInItsOwnCurrencyAlsoWhereItIsNotCompared() {
        editor.document().set(PartKey.of(PartKind.BOOKING), "/spendLimit", com.fasterxml.jackson.databind.node.DecimalNode.valueOf(new BigDecimal("600")));
        line(0, 0, "labour", "wind", "10", "h", "70");
        // 10 h x 70 = 700 without tax kinds
        assertEquals("The total with tax is above the limit of 600.00 EUR by 100.00 EUR: ask the customer first.", desktop.text("quote.limit.0"));
        desktop.type("/currency", "KWD");
        assertTrue(desktop.text("quote.limit.0").startsWith("The limit of 600.00 EUR is in another currency"),
                "two decimals, as euros have (ISO 4217): " + desktop.text("quote.limit.0"));
    }

    private String said() {
        return ((Label) desktop.field("quote.tookFindings")).getText();
    }

    /** Presses a button until the stock is read, which goes on behind the page. */
    private void pressOnceTheStockIsRead(String button) {
        desktop.press(button);
        desktop.until("the stock is read", () -> {
            if (said().contains("the stock is not read yet")) {
                desktop.press(button);
            }
            return !said().contains("the stock is not read yet");
        });
    }

    private JsonNode first() {
        return editor.document().value(QUOTE, LIST + "/0/lines/0");
    }

    private StockItem inStock(String code) {
        return (StockItem) desktop.session().store().stock().item(code).orElseThrow().part();
    }

    /** A bridge for which the diodes of the stock will do, with one on the wrong plate, so that a new set is proposed. */
    private void aBridgeThatFails() throws Exception {
        PartKey rectifier = PartKey.of(PartKind.RECTIFIER);
        editor.document().put(rectifier, desktop.session().json().read(rectifier, "{\"schema\":1,\"circuit\":\"FULL_WAVE\","
                + "\"positions\":[{\"position\":\"D1\",\"plate\":\"POSITIVE\",\"basePolarity\":\"ANODE_BASE\"}],"
                + "\"fitted\":{\"averageA\":35,\"repetitivePeakV\":1000}}"));
        desktop.settle(editor);
    }

    @Test
    void aDiodeSetInOneLineHasThePriceOfTheDiodesOfBothPolarities() throws Exception {
        BigDecimal cathode = inStock("D-40-12-K").price();
        BigDecimal anode = inStock("D-40-12-A").price();
        aBridgeThatFails();
        line(0, 0, "diode set", "complete diode set", "1", "set", "");
        pressOnceTheStockIsRead("quote.priceLines");
        assertEquals(0, cathode.add(anode).multiply(BigDecimal.valueOf(3)).compareTo(first().path("unitPrice").decimalValue()),
                "three diodes of each polarity in a three-phase bridge");
        assertTrue(said().contains("3 x D-40-12-K (") && said().contains("3 x D-40-12-A ("), said());
    }

    @Test
    void eachPolarityOfADiodeSetIsProposedAsALineOfItsOwnAndNotASecondTime() throws Exception {
        aBridgeThatFails();
        desktop.until("the stock is read", () -> {
            desktop.press("quote.propose");
            boolean read = !said().contains("the stock is not read yet");
            if (!read) {
                editor.document().undo(QUOTE);
            }
            return read;
        });
        List<String> diodes = new ArrayList<>();
        for (JsonNode l : editor.document().rows(QUOTE, LIST + "/0/lines")) {
            if (l.path("kind").asText().equals("DIODE_SET")) {
                diodes.add(l.path("text").asText() + ": " + l.path("quantity").asInt() + " " + l.path("unit").asText() + " at "
                        + l.path("unitPrice").decimalValue().stripTrailingZeros().toPlainString());
            }
        }
        assertEquals(List.of("rectifier diodes, cathode on the stud: 3 pc at " + plain("D-40-12-K"),
                "rectifier diodes, anode on the stud: 3 pc at " + plain("D-40-12-A")), diodes);
        JsonNode lines = editor.document().rows(QUOTE, LIST + "/0/lines").deepCopy();
        desktop.press("quote.propose");
        assertEquals(lines, editor.document().rows(QUOTE, LIST + "/0/lines"), "nothing is proposed twice");
    }

    private String plain(String code) {
        return inStock(code).price().stripTrailingZeros().toPlainString();
    }

    private static boolean isInSight(Control c) {
        Composite around = c.getParent();
        while (!(around instanceof ScrolledComposite)) {
            around = around.getParent();
        }
        Rectangle seen = ((ScrolledComposite) around).getClientArea();
        Rectangle at = c.getDisplay().map(c.getParent(), around, c.getBounds());
        return at.y >= seen.y && at.y + at.height <= seen.y + seen.height;
    }

    @Test
    void ofSeveralDiodesOfOnePolarityItIsAskedWhichAndLeavingPutsNothingIn() throws Exception {
        inStock(SPARE, StockItem.Kind.DIODE, "Stud diode, cathode to stud", "70 A, 1600 V", "15");
        aBridgeThatFails();
        line(0, 0, "diode set", "complete diode set", "1", "set", "");
        desktop.until("two of the cathode are known, so it is asked first", () -> {
            desktop.press("quote.priceLines");
            boolean asked = desktop.shows("proposal.choice.0");
            if (!asked && !first().path("unitPrice").isMissingNode()) {
                editor.document().undo(QUOTE);
            }
            return asked;
        });
        Combo choice = (Combo) desktop.field("proposal.choice.0");
        assertEquals(2, choice.getItemCount());
        assertFalse(desktop.shows("proposal.choice.1"), "of the anode there is one only");
        desktop.press("proposal.leave");
        assertTrue(desktop.field("quote.priceLines").forceFocus());
        desktop.press("quote.priceLines");
        desktop.until("all of the question is in sight", () -> isInSight(desktop.field("proposal.choice.0"))
                && isInSight(desktop.field("proposal.take")));
        desktop.press("proposal.leave");
        assertTrue(desktop.field("quote.priceLines").isFocusControl(), "the keyboard goes on where it was asked from");
        assertFalse(desktop.shows("proposal.choice.0"));
        assertTrue(first().path("unitPrice").isMissingNode(), "left, nothing is put in");
        desktop.press("quote.priceLines");
        ((Combo) desktop.field("proposal.choice.0")).select(1);
        desktop.press("proposal.take");
        assertEquals(0, new BigDecimal("15").add(inStock("D-40-12-A").price()).multiply(BigDecimal.valueOf(3))
                .compareTo(first().path("unitPrice").decimalValue()), "3 at 15 and 3 of the other polarity");
    }

    @Test
    void whereOnePolarityIsNotInStockAllOfTheSetHasThePriceOfTheOtherAndThatIsSaid() throws Exception {
        StockItem anode = inStock("D-40-12-A");
        describe(anode.retire(), anode);
        try {
            aBridgeThatFails();
            line(0, 0, "diode set", "complete diode set", "1", "set", "");
            desktop.until("the stock is read as it is now", () -> {
                desktop.press("quote.priceLines");
                boolean now = said().contains("6 x D-40-12-K (");
                if (!now && !first().path("unitPrice").isMissingNode()) {
                    editor.document().undo(QUOTE);
                }
                return now;
            });
            assertEquals(0, inStock("D-40-12-K").price().multiply(BigDecimal.valueOf(6))
                    .compareTo(first().path("unitPrice").decimalValue()));
            assertTrue(said().contains("needs diodes with the cathode on the stud (3) and with the anode there (3)"), said());
        } finally {
            describe(anode, inStock("D-40-12-A"));
        }
    }

    @Test
    void wireIsPricedByTheGradeOfItsWindingAndAnotherGradeOnTheShelfIsSaid() throws Exception {
        BigDecimal grade2 = inStock("W-1.000-G2").price();
        for (int grade : List.of(1, 2)) {
            PartKey rotor = PartKey.windingAsFound(WindingRole.MAIN_ROTOR);
            editor.document().put(rotor, desktop.session().json().read(rotor, "{\"schema\":1,\"role\":\"main-rotor\","
                    + "\"asWound\":false,\"wire\":[{\"size\":\"1.00 mm\",\"strands\":1,\"grade\":" + grade + "}],\"meanTurnM\":0.8,"
                    + "\"groups\":[{\"number\":1,\"coils\":[{\"turns\":500}]}]}"));
            desktop.settle(editor);
            desktop.press("quote.propose");
            List<JsonNode> wire = new ArrayList<>();
            editor.document().rows(QUOTE, LIST + "/0/lines").forEach(l -> {
                if (l.path("wire").asText().equals("1.00 mm")) {
                    wire.add(l);
                }
            });
            assertEquals(1, wire.size());
            assertTrue(wire.get(0).path("text").asText().contains("1.00 mm grade " + grade), wire.toString());
            if (grade == 1) {
                assertTrue(wire.get(0).path("unitPrice").isMissingNode(), "of grade 1 there is none");
                assertTrue(said().contains("names grade 1, and in stock is only grade 2"), said());
                editor.document().undo(QUOTE);
            } else {
                assertEquals(0, grade2.compareTo(wire.get(0).path("unitPrice").decimalValue()));
                assertFalse(said().contains("names grade"), said());
            }
        }
    }

    @Test
    void whatNothingInStockFitsHasNoPriceAndIsNamed() {
        line(0, 0, "bearing", "bearing 7310 B, drive end", "1", "pc", "");
        pressOnceTheStockIsRead("quote.priceLines");
        assertTrue(first().path("unitPrice").isMissingNode());
        assertTrue(said().contains("\"bearing 7310 B, drive end\": nothing in stock is known to fit"), said());
    }

    @Test
    void anotherFittingItemIsChosenByTheKeyboardAndItsTextAndPriceComeInWithTheLines() throws Exception {
        desktop.beSomebody();
        inStock(OTHER, StockItem.Kind.BEARING, "Deep groove ball bearing", "6312-2Z C3", "55.25");
        editor = desktop.open("2026-0005");
        editor.show(QUOTE);
        desktop.settle(editor);
        desktop.press("quote.revise");
        JsonNode before = editor.document().rows(QUOTE, LIST + "/0/lines").deepCopy();
        desktop.until("the question is asked", () -> {
            desktop.press("quote.propose");
            boolean asked = desktop.shows("proposal.choice.0");
            if (!asked) {
                editor.document().undo(QUOTE);
            }
            return asked;
        });
        assertEquals(before, editor.document().rows(QUOTE, LIST + "/0/lines"), "nothing is in the quote yet");
        Combo choice = (Combo) desktop.field("proposal.choice.0");
        assertTrue(choice.isFocusControl(), "the keyboard is on it");
        assertTrue(choice.getText().startsWith("B-6312:"), choice.getText());
        keys.press(SWT.ARROW_DOWN);
        desktop.until("the next one is chosen", () -> choice.getText().startsWith("B-6312-2Z:"));
        desktop.press("proposal.take");
        JsonNode line = bearing("6312-2Z C3");
        assertEquals(0, new BigDecimal("55.25").compareTo(line.path("unitPrice").decimalValue()));
        desktop.press("quote.propose");
        JsonNode lines = editor.document().rows(QUOTE, LIST + "/0/lines").deepCopy();
        assertEquals(1, lines.findValuesAsText("text").stream().filter(t -> t.contains("6312") && t.contains("drive end")
                && !t.contains("non-drive")).count(), "it is not proposed a second time: " + lines);
        editor.document().undo(QUOTE);
        desktop.work();
        assertEquals(before, editor.document().rows(QUOTE, LIST + "/0/lines"), "one undo takes all of it back");
    }

    private JsonNode bearing(String type) {
        for (JsonNode line : editor.document().rows(QUOTE, LIST + "/0/lines")) {
            if (line.path("text").asText().startsWith("bearing " + type + ", drive end")) {
                return line;
            }
        }
        throw new AssertionError("no line of the bearing " + type);
    }

    @Test
    void aQuoteBeginsInTheLanguageCurrencyAndTermsOfTheCustomerAndIsWrittenSo() throws Exception {
        var store = desktop.session().store();
        String who = desktop.beSomebody();
        PartKey customer = Customer.newKey();
        store.saveShopPart(customer, new Customer(Customer.SCHEMA, "Wattkante Werft", null, null, null, List.of(), null, "de", "KWD",
                "14 Tage netto", null, null, null, Map.of()), 0, who, "");
        PartKey booking = PartKey.of(PartKind.BOOKING);
        editor = desktop.open(store.create((Booking) desktop.session().json().read(booking, "{\"schema\":1,\"customer\":"
                + "\"Wattkante Werft\",\"customerKey\":\"" + customer.name() + "\"}"), who).number());
        editor.begin(QUOTE);
        desktop.settle(editor);
        desktop.until("the customer is read", () -> desktop.text("/language").equals("Deutsch"));
        assertEquals("KWD", desktop.text("/currency"));
        assertEquals("14 Tage netto", desktop.text("/terms"));
        line(0, 0, "labour", "wickeln", "2.5", "h", "1.0325");
        assertEquals("2.581", shown(desktop.grid(LIST, "net"), 0, "net"), "2.58125 in three decimals (ISO 4217)");
        WrittenWorkbook written = WrittenWorkbook.by(desktop, editor, "org.copperbook.desk.command.quoteWorkbook");
        written.says("KWD, Betr\u00e4ge mit 3 Nachkommastellen");
        written.says("14 Tage netto");
    }

    @Test
    void whatWasSentIsRevisedAndNotChanged() {
        line(0, 0, "labour", "wind", "10", "h", "50");
        desktop.press("quote.send");
        assertTrue(editor.document().value(QUOTE, "/sent/fingerprint").asText().matches("[0-9a-f]{64}"));
        assertFalse(((Text) desktop.field("/currency")).getEditable());
        assertFalse(desktop.grid(LIST + "/0/lines").isEditable());
        assertTrue(((Text) desktop.field("/approval/how")).getEditable(), "the answer is still to be written down");
        desktop.press("quote.propose");
        assertTrue(((Label) desktop.field("quote.tookFindings")).getText().contains("Revise it first"));
        assertTrue(desktop.text("quote.sentSaid").startsWith("Sent "), desktop.text("quote.sentSaid"));
        desktop.type("/approval/how", "by telephone");
        assertTrue(desktop.text("quote.sentSaid").startsWith("Sent "), "an answer changes no offer");
        desktop.press("quote.revise");
        assertEquals(2, editor.document().value(QUOTE, "/revision").asInt());
        assertTrue(editor.document().value(QUOTE, "/sent").isMissingNode());
        assertTrue(editor.document().value(QUOTE, "/approval").isMissingNode(), "a revised offer has no answer yet");
        assertTrue(((Text) desktop.field("/currency")).getEditable());
        assertEquals("wind", editor.document().value(QUOTE, LIST + "/0/lines/0/text").asText());
        editor.document().undo(QUOTE);
        desktop.work();
        assertEquals("by telephone", editor.document().value(QUOTE, "/approval/how").asText(), "one undo takes it back");
        assertFalse(((Text) desktop.field("/currency")).getEditable());
    }

    @Test
    void whatTheCustomerAgreedToIsRevisedAndNotChangedThoughItWasNeverMarkedAsSent() throws Exception {
        editor = desktop.open("2026-0005");
        editor.show(QUOTE);
        desktop.settle(editor);
        assertTrue(editor.document().value(QUOTE, "/approval/agreed").asBoolean());
        assertFalse(((Text) desktop.field("/currency")).getEditable());
        assertFalse(desktop.grid(LIST + "/0/lines").isEditable());
        desktop.press("quote.propose");
        assertTrue(((Label) desktop.field("quote.tookFindings")).getText().contains("agreed"));
        assertTrue(desktop.text("quote.sentSaid").contains("agreed"), desktop.text("quote.sentSaid"));
        desktop.press("quote.revise");
        assertTrue(((Text) desktop.field("/currency")).getEditable());
        editor.document().undo(QUOTE);
        desktop.work();
        assertFalse(((Text) desktop.field("/currency")).getEditable());
    }

    @Test
    void everyRevisionCanBeLookedAtWithWhatChanged() throws Exception {
        editor = desktop.open("2026-0005");
        editor.show(QUOTE);
        desktop.settle(editor);
        desktop.press("quote.revisions");
        desktop.until("the revisions are listed", () -> desktop.shows("history.revisions")
                && ((Table) desktop.field("history.revisions")).getItemCount() > 0);
        Table fields = (Table) desktop.field("history.fields");
        assertTrue(fields.getItemCount() > 0, "the first revision says what it began with");
        fields.getShell().close();
    }

    @Test
    void aThousandLinesOpenAndCanBeTypedInto() {
        editor.document().change(QUOTE, LIST + "/0/lines", tree -> {
            var lines = ((com.fasterxml.jackson.databind.node.ObjectNode) tree.path("alternatives").path(0)).putArray("lines");
            for (int i = 0; i < 1000; i++) {
                lines.addObject().put("kind", "MATERIAL").put("text", i == 0 ? "=cmd|' /C calc'!A0" : "item " + i)
                        .put("quantity", 1).put("unitPrice", 2);
            }
            return tree;
        });
        desktop.work();
        RecordGrid lines = desktop.grid(LIST + "/0/lines");
        assertEquals(1000, lines.model().filled());
        assertEquals("2,000.00", shown(desktop.grid(LIST, "net"), 0, "net").replace('\u202f', ','));
        cell(lines, 999, "/unitPrice", "7");
        assertEquals("2,005.00", shown(desktop.grid(LIST, "net"), 0, "net").replace('\u202f', ','));
        cell(lines, 1000, "/text", "one more");
        assertEquals(1001, lines.model().filled());
        assertEquals("=cmd|' /C calc'!A0", shown(lines, 0, "/text"), "it stays text");
    }

    @Test
    void moneyThatCannotBeIsSaidAndNothingIsLost() {
        line(0, 0, "material", "wire", "1", "kg", "10");
        RecordGrid lines = desktop.grid(LIST + "/0/lines");
        cell(lines, 0, "/unitPrice", "-10");
        assertEquals("-10", shown(lines, 0, "/unitPrice"), "a price below zero stays to be mended");
        assertTrue(editor.document().tree(QUOTE).at("/alternatives/0/lines/0/unitPrice").decimalValue().signum() >= 0,
                "and is not taken for a price");
        assertTrue(desktop.text("quote.total.0").startsWith("alternative 1, line 1, Cost per unit: \"-10\" is below zero, and a price"),
                desktop.text("quote.total.0"));
        assertEquals("", shown(desktop.grid(LIST, "net"), 0, "net"), "no sum is made without it");
        desktop.press("quote.send");
        String sent = ((Label) desktop.field("sending/said")).getText();
        assertTrue(sent.startsWith("Not sent: alternative 1, line 1, Cost per unit: \"-10\" is below zero"), sent);
        assertTrue(sent.contains(" an amount below zero instead. An offer goes out"), sent);
        cell(lines, 0, "/quantity", "some");
        cell(lines, 0, "/unitPrice", "10");
        assertTrue(desktop.text("quote.total.0").startsWith("alternative 1, line 1, Quantity: \"some\""),
                "an amount that is not read is not taken for one: " + desktop.text("quote.total.0"));
        cell(lines, 0, "/quantity", "1");
        desktop.type(LIST + "/0/markUpPercent", "-150");
        assertEquals("-150", desktop.text(LIST + "/0/markUpPercent"), "what was typed stays to be mended");
        desktop.type(LIST + "/0/markUpPercent", "ten");
        assertTrue(desktop.text("quote.total.0").startsWith("alternative 1, Mark-up on cost, %: \"ten\""), desktop.text("quote.total.0"));
        desktop.type(LIST + "/0/markUpPercent", "10");
        desktop.type("/currency", "KWD");
        assertEquals("11.000", shown(desktop.grid(LIST, "net"), 0, "net"), "three decimals (ISO 4217)");
        desktop.type("/currency", "JPY");
        assertEquals("11", shown(desktop.grid(LIST, "net"), 0, "net"), "no decimals (ISO 4217)");
        desktop.type("/currency", "XQQ");
        assertTrue(desktop.text("quote.total.0").contains("XQQ"), desktop.text("quote.total.0"));
        desktop.type("/currency", "EUR");
        desktop.type(LIST + "/0/name", "\u0644\u0641 \u0643\u0627\u0645\u0644 \u5168\u91cd\u7e5e");
        assertEquals("\u0644\u0641 \u0643\u0627\u0645\u0644 \u5168\u91cd\u7e5e", names().get(0));
    }

    @Test
    void theAlternativesStandSideBySideAndTheWorkshopsFiguresApart() {
        // 10 h x 50 + 4 kg x 25 = 600; margin 20 % = 750.00; with 20 % tax 900.00; earned 150 = 25 % of 600
        RecordGrid taxes = desktop.grid("/taxes");
        cell(taxes, 0, "/code", "T");
        cell(taxes, 0, "/ratePercent", "20");
        line(0, 0, "labour", "wind", "10", "h", "50");
        line(0, 1, "material", "varnish", "4", "kg", "25");
        cell(desktop.grid(LIST + "/0/lines"), 0, "/tax", "T");
        cell(desktop.grid(LIST + "/0/lines"), 1, "/tax", "T");
        desktop.type(LIST + "/0/markUpPercent", "30");
        assertEquals("30 % mark-up on cost, 23.08 % margin on the price",
                desktop.text("quote.markUpAndMargin.0").replace(',', '.').replace("cost.", "cost,"), "30/1.3 = 23.08");
        desktop.type(LIST + "/0/marginPercent", "20");
        assertEquals("", desktop.text(LIST + "/0/markUpPercent"), "the margin has taken the mark-up's place");
        assertEquals("25 % mark-up on cost, 20 % margin on the price", desktop.text("quote.markUpAndMargin.0"));
        RecordGrid beside = desktop.grid(LIST, "net");
        assertEquals("750.00", shown(beside, 0, "net"));
        assertEquals("150.00", shown(beside, 0, "tax"));
        assertEquals("900.00", shown(beside, 0, "gross"));
        RecordGrid inside = desktop.grid(LIST, "earned");
        assertEquals("10", shown(inside, 0, "hours"));
        assertEquals("", shown(inside, 0, "copper"), "varnish in kilograms is no copper");
        assertEquals("600.00", shown(inside, 0, "cost"));
        assertEquals("150.00", shown(inside, 0, "earned"));
        assertEquals("25", shown(inside, 0, "markUpReached"));
        assertEquals("20", shown(inside, 0, "marginReached"));
        editor.document().undo(QUOTE);
        desktop.work();
        assertEquals("30", desktop.text(LIST + "/0/markUpPercent"), "one undo puts the mark-up back");
    }

    @Test
    void takingBackLinesTypedBehindTheLastOneKeepsTheCursorAmongTheLines() {
        RecordGrid lines = desktop.grid(LIST + "/0/lines");
        int before = lines.model().filled();
        for (int row = before; row < before + 3; row++) {
            cell(lines, row, "/tax", "S");
        }
        assertEquals(before + 3, lines.model().filled());
        for (int left = before + 2; left >= before; left--) {
            keys.control('z');
            int now = left;
            desktop.until(now + " lines are left", () -> lines.model().filled() == now);
            assertTrue(lines.table().isFocusControl(), "the cursor has left the lines for " + Display.getCurrent().getFocusControl());
            assertEquals(now, lines.row(), "the cursor stands where the line was");
        }
        assertEquals(List.of("full rewind"), names());
    }

    @Test
    void tabBringsEveryColumnThatItReachesIntoSight() throws Exception {
        RecordGrid lines = desktop.grid(LIST + "/0/lines");
        line(0, 0, "labour", "wash and dry", "6", "h", "50");
        // What was typed is judged first, since columns are fitted anew to what they then say.
        desktop.settle(editor);
        for (TableColumn c : lines.table().getColumns()) {
            c.setWidth(lines.table().getClientArea().width / 3);
        }
        assertTrue(lines.table().forceFocus());
        lines.moveTo(0, 0);
        desktop.work();
        for (int column = 1; column < lines.model().columns().size(); column++) {
            int now = column;
            keys.press(SWT.TAB);
            desktop.until("Tab reaches column " + now, () -> lines.column() == now);
            desktop.until("column " + column + " is in sight", () -> {
                Rectangle cell = lines.table().getItem(0).getBounds(now);
                Rectangle seen = lines.table().getClientArea();
                return cell.x >= seen.x && cell.x + cell.width <= seen.x + seen.width;
            });
        }
    }

    @Test
    void aLongTextLeavesQuantityUnitAndPriceInSightInASmallWindow() {
        Shell window = desktop.page().getWorkbenchWindow().getShell();
        Point before = window.getSize();
        boolean maximized = window.getMaximized();
        window.setMaximized(false);
        window.setSize(1280, 800);
        try {
            RecordGrid lines = desktop.grid(LIST + "/0/lines");
            String words = "balancing of the rotor with its fan and its coupling, in two planes";
            line(0, 0, "outside work", words, "12.5", "job", "1250.75");
            lines.moveTo(0, 0);
            desktop.work();
            Rectangle price = lines.table().getItem(0).getBounds(column(lines, "/unitPrice"));
            Rectangle text = lines.table().getItem(0).getBounds(column(lines, "/text"));
            assertTrue(text.x >= 0 && price.x + price.width <= lines.table().getClientArea().width, text + " to " + price + " in " + lines.table().getClientArea());
            lines.moveTo(0, column(lines, "/text"));
            desktop.until("all words of the text are said", () -> desktop.saidUnder(lines).contains(words));
        } finally {
            window.setSize(before);
            window.setMaximized(maximized);
        }
    }

    @Test
    void tabPassesOverWhatIsWorkedOut() {
        RecordGrid beside = desktop.grid(LIST, "net");
        assertTrue(beside.table().forceFocus());
        beside.moveTo(0, 0);
        keys.press(SWT.TAB);
        desktop.until("Tab leaves the grid behind its only typed column", () -> !beside.table().isFocusControl());
        assertEquals(0, beside.column());
        assertTrue(beside.table().forceFocus());
        beside.moveTo(0, 1);
        Event letter = new Event();
        letter.character = '9';
        letter.keyCode = '9';
        beside.table().notifyListeners(SWT.KeyDown, letter);
        desktop.until("it is said that the cell cannot be typed into", () -> says(beside.control(), "worked out"));
    }

    @Test
    void aQuoteThatIsSentLooksClosed() {
        line(0, 0, "labour", "wash and dry", "6", "h", "50");
        RecordGrid lines = desktop.grid(LIST + "/0/lines");
        Color open = lines.table().getBackground();
        assertEquals(2, lines.table().getItemCount(), "the line and an empty row");
        desktop.press("quote.send");
        assertTrue(editor.document().value(QUOTE, "/sent").isObject());
        assertEquals(1, lines.table().getItemCount(), "no row offers to be typed into");
        Color ground = Display.getCurrent().getSystemColor(SWT.COLOR_WIDGET_BACKGROUND);
        assertEquals(ground, lines.table().getBackground());
        assertEquals(ground, desktop.field(LIST + "/0/name").getBackground());
        editor.document().undo(QUOTE);
        desktop.work();
        assertEquals(2, lines.table().getItemCount());
        assertEquals(open, lines.table().getBackground());
    }

    private static boolean says(Control at, String words) {
        return at instanceof Label l && l.getText().contains(words)
                || at instanceof Composite c && List.of(c.getChildren()).stream().anyMatch(child -> says(child, words));
    }

    @Test
    void afterCopyingAnAlternativeItsNameIsTypedAndNothingIsPressedAgain() {
        RecordGrid beside = desktop.grid(LIST, "net");
        beside.moveTo(0, 0);
        assertTrue(desktop.field("quote.copyAlternative").forceFocus());
        desktop.press("quote.copyAlternative");
        desktop.until("the grid has the cursor", () -> beside.table().isFocusControl());
        assertEquals(1, beside.row());
        keys.continueDown(LIST, "new coils only");
        assertEquals(List.of("full rewind", "new coils only"), names());
    }

    @Test
    void lettersTypedOverTheListOfAClickedCellChooseInTheCell() {
        RecordGrid lines = desktop.grid(LIST + "/0/lines");
        int kind = column(lines, "/kind");
        assertTrue(lines.table().forceFocus());
        lines.moveTo(0, kind);
        desktop.work();
        Rectangle cell = lines.table().getItem(0).getBounds(kind);
        Event click = new Event();
        click.button = 1;
        click.x = cell.x + cell.width / 2;
        click.y = cell.y + cell.height / 2;
        lines.table().notifyListeners(SWT.MouseDown, click);
        desktop.until("the choices are offered", () -> desktop.shows("grid/choices") && desktop.field("grid/choices").isFocusControl());
        keys.continueDown(LIST + "/0/lines", "labour");
        assertFalse(desktop.shows("grid/choices"));
        assertEquals("labour", shown(lines, 0, "/kind"));
    }
}
