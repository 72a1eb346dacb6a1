package org.copperbook.desk.tests.keys;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.UUID;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.shop.LabourRates;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockUnit;
import org.copperbook.store.JobStore;
import org.copperbook.store.stock.Stock;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Stock and the registers by somebody who has a keyboard and no mouse. Expected: the test's own inputs. */
class StockByKeyboardTest {

    private static final String JOB = "2026-0005";

    private final Desktop desktop = new Desktop();
    private final Walker walker = new Walker(desktop);
    private final String code = "K-" + UUID.randomUUID().toString().substring(0, 8);
    private Stock stock;

    @BeforeEach
    void somebodyIsThere() throws Exception {
        desktop.closeAll();
        String who = desktop.beSomebody();
        stock = desktop.session().store().stock();
        stock.describe(StockItem.of(code, StockItem.Kind.BEARING, "Bearing by keys", StockUnit.PC), null, who, "");
        // Gives the window the keyboard; from here on there are keys only.
        desktop.command("org.copperbook.desk.command.register");
    }

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    private String said() {
        return ((Label) desktop.field("stock.said")).getText();
    }

    private void same(String expected, BigDecimal actual) {
        assertEquals(0, new BigDecimal(expected).compareTo(actual), actual + " instead of " + expected);
    }

    private StockItem now() {
        return (StockItem) stock.item(code).orElseThrow().part();
    }

    /** Types over what stands in a field and goes on with Enter. */
    private void fill(String field, String text) {
        walker.backTo(field);
        ((Text) walker.here()).selectAll();
        walker.types(text);
    }

    private void act(String kind, String says) {
        walker.to("stock.do." + kind).presses("it says " + says, () -> said().contains(says));
    }

    @Test
    void anItemIsReceivedSetAsideIssuedReturnedCountedAndSetRight() {
        walker.press(SWT.F9);
        desktop.until("the stock has the keyboard", () -> walker.at().equals("stock.find"));
        walker.writes(code);
        desktop.until("the item is marked", () -> ((Label) desktop.field("stock.chosen")).getText().startsWith(code));
        walker.press(SWT.ARROW_DOWN);
        desktop.until("the list has the keyboard", () -> walker.at().equals("stock.items"));
        walker.press(SWT.CR);
        desktop.until("the amount has the keyboard", () -> walker.at().equals("stock.quantity"));
        walker.types("10");
        act("RECEIVE", "On hand 10");
        fill("stock.quantity", "4");
        fill("stock.job", JOB);
        act("RESERVE", "free 6");
        same("4", now().reservedInAll());
        fill("stock.quantity", "3");
        act("ISSUE", "On hand 7");
        fill("stock.quantity", "1");
        act("RETURN", "On hand 8");
        fill("stock.quantity", "6");
        act("ADJUST", "On hand 6");
        same("6", now().onHand());
        Table ledger = (Table) desktop.field("stock.ledger");
        desktop.until("the ledger has five movements", () -> ledger.getItemCount() == 5);
        // What was counted wrong is taken back: the newest is the first of the list.
        walker.to("stock.takeBack").presses("it is set right", () -> said().contains("On hand 8"));
        same("8", now().onHand());
        assertEquals(6, stock.ledger(code, 99).size());
    }

    @Test
    void aRateIsTypedAndSaved() {
        PartKey key = PartKey.of(PartKind.LABOUR_RATES);
        JobStore store = desktop.session().store();
        int rates = ((LabourRates) store.current(JobStore.SHOP, key).orElseThrow().part()).rates().size();
        walker.press(SWT.F11);
        desktop.until("the instruments are there", () -> desktop.shows("/instruments/0/id"));
        CTabFolder tabs = (CTabFolder) desktop.field("registers.tabs");
        walker.backTo("registers.tabs");
        while (tabs.getSelectionIndex() < 2) {
            int before = tabs.getSelectionIndex();
            walker.backTo("registers.tabs");
            walker.press(SWT.ARROW_RIGHT);
            desktop.until("the next tab is shown", () -> tabs.getSelectionIndex() == before + 1);
        }
        walker.to("/rates").cell(rates, "/trade").row("polisher", "47.5");
        walker.control('s');
        desktop.until("it is saved", () -> !desktop.activeEditor().isDirty());
        LabourRates kept = (LabourRates) store.current(JobStore.SHOP, key).orElseThrow().part();
        assertEquals("polisher", kept.rates().get(rates).trade());
        assertEquals(new BigDecimal("47.5"), kept.rates().get(rates).perHour());
    }
}
