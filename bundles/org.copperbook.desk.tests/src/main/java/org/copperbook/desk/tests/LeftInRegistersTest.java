package org.copperbook.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.copperbook.desk.page.ShopPages;
import org.copperbook.desk.tests.window.CrashEntries;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.shop.LabourRates;
import org.copperbook.store.JobStore;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What was typed into the registers and not saved when the program ended without warning. Expected: the tests' own inputs. */
class LeftInRegistersTest {

    private static final int CUSTOMERS = 1;
    private static final int RATES = 2;

    private final Desktop desktop = new Desktop();

    @BeforeEach
    void showThem() throws Exception {
        desktop.closeAll();
        desktop.beSomebody();
        show();
    }

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    private void show() throws Exception {
        desktop.command("org.copperbook.office.command.registers");
        desktop.until("the instruments are read", () -> desktop.shows("/instruments/0/id"));
    }

    private CTabFolder tabs() {
        return (CTabFolder) desktop.field("registers.tabs");
    }

    private void tab(int index) {
        tabs().setSelection(index);
        tabs().notifyListeners(SWT.Selection, new Event());
        desktop.work();
    }

    /** The entry with these words under the name of a program that runs no more is what a crash leaves. */
    private void crash(String words) throws Exception {
        desktop.until("the journal has it", () -> CrashEntries.find(words).isPresent());
        Path kept = CrashEntries.find(words).orElseThrow();
        byte[] bytes = Files.readAllBytes(kept);
        desktop.closeAll();
        desktop.until("closing forgets the entry", () -> CrashEntries.find(words).isEmpty());
        Files.write(CrashEntries.ofADeadProgram(kept), bytes);
    }

    @Test
    void aNewCustomerNotSavedIsPutBackAndChosen() throws Exception {
        tab(CUSTOMERS);
        desktop.until("the customers are read", () -> ((Table) desktop.field("customers.list")).getItemCount() > 0);
        desktop.press("customers.add");
        String name = "Bright Weir " + System.nanoTime();
        desktop.type("/name", name);
        crash(name);
        ShopPages.open(Platform.getExtensionRegistry(), Set.of(PartKind.CUSTOMER), desktop.page());
        desktop.until("the registers say that something was left", () -> desktop.shows("left"));
        assertFalse(desktop.activeEditor().isDirty(), "nothing is put back unasked");
        desktop.press("left/putBack");
        desktop.until("it is back and shown", () -> tabs().getSelectionIndex() == CUSTOMERS && desktop.shows("/name")
                && desktop.text("/name").equals(name));
    }

    @Test
    void aRateHalfTypedIsPutBackAsTypedBesideWhatWasSavedMeanwhile() throws Exception {
        PartKey key = PartKey.of(PartKind.LABOUR_RATES);
        tab(RATES);
        desktop.until("the rates are read", () -> desktop.grid("/rates").model().filled() > 0);
        int row = desktop.grid("/rates").model().filled();
        String trade = "polisher " + System.nanoTime();
        desktop.type("/rates", row, 0, trade);
        desktop.type("/rates", row, 1, "about fifty");
        desktop.until("the text not understood is kept too", () -> CrashEntries.find("about fifty").isPresent());
        crash(trade);
        var now = desktop.session().store().current(JobStore.SHOP, key).orElseThrow();
        LabourRates rates = (LabourRates) now.part();
        String note = "noted elsewhere " + System.nanoTime();
        LabourRates.Rate first = rates.rates().get(0);
        var others = new java.util.ArrayList<>(rates.rates());
        others.set(0, new LabourRates.Rate(first.trade(), first.perHour(), first.validFrom(), note, first.more()));
        desktop.session().store().saveShopPart(key, new LabourRates(rates.schema(), others, rates.more()), now.number(),
                desktop.session().who().orElseThrow(), "");
        show();
        desktop.until("the registers say that something was left", () -> desktop.shows("left"));
        desktop.press("left/putBack");
        desktop.until("both are shown", () -> tabs().getSelectionIndex() == RATES && desktop.shows("/rates")
                && trade.equals(desktop.grid("/rates").model().text(row, 0)));
        assertEquals(note, desktop.grid("/rates").model().text(0, 3));
        assertFalse(desktop.shows("conflict/labour-rates"), "the two rows have nothing to do with each other");
        assertEquals(trade, desktop.grid("/rates").model().text(row, 0));
        assertEquals("about fifty", desktop.grid("/rates").model().text(row, 1));
    }

    @Test
    void whatWasLeftCanBeThrownAway() throws Exception {
        String note = "not wanted " + System.nanoTime();
        desktop.type("/instruments/0/note", note);
        crash(note);
        show();
        desktop.press("left/throwAway");
        desktop.until("the entry is gone", () -> CrashEntries.find(note).isEmpty());
        assertFalse(desktop.activeEditor().isDirty());
    }
}
