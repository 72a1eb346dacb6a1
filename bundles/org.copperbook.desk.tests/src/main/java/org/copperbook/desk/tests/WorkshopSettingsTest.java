package org.copperbook.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.shop.Workshop;
import org.copperbook.store.JobStore;
import org.copperbook.store.Saved;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Event;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Settings of the workshop among the registers. Expected: the test's own inputs. */
class WorkshopSettingsTest {

    private static final PartKey KEY = PartKey.of(PartKind.WORKSHOP);

    private final Desktop desktop = new Desktop();
    private String who;
    private Saved before;

    @BeforeEach
    void showThem() throws Exception {
        desktop.closeAll();
        who = desktop.beSomebody();
        before = saved();
        desktop.command("org.copperbook.office.command.registers");
        CTabFolder tabs = (CTabFolder) desktop.field("registers.tabs");
        for (int i = 0; i < tabs.getItemCount(); i++) {
            if (tabs.getItem(i).getText().equals("Workshop")) {
                tabs.setSelection(i);
            }
        }
        tabs.notifyListeners(SWT.Selection, new Event());
        desktop.until("the settings are read", () -> desktop.text("/name").equals(((Workshop) before.part()).name()));
    }

    /** What other tests find is what they found before. */
    @AfterEach
    void asItWas() {
        desktop.closeAll();
        Saved now = saved();
        if (!now.part().equals(before.part())) {
            store().saveShopPart(KEY, before.part(), now.number(), who, "");
        }
    }

    private JobStore store() {
        return desktop.session().store();
    }

    private Saved saved() {
        return store().current(JobStore.SHOP, KEY).orElseThrow();
    }

    private void save() {
        desktop.activeEditor().doSave(new NullProgressMonitor());
        desktop.work();
    }

    private String booked() throws Exception {
        return store().create((Booking) desktop.session().json().read(PartKey.of(PartKind.BOOKING), "{\"schema\":1}"), who).number();
    }

    @Test
    void jobsAreNumberedAnewFromTheNextOneOnAndLeaveNoGap() throws Exception {
        String mark = Long.toString(System.nanoTime(), 36);
        desktop.type("/numberSeries", "R{n}/" + mark + "/{n}");
        save();
        assertTrue(desktop.activeEditor().isDirty(), "two running numbers are none");
        desktop.type("/numberSeries", "R{n:3}/" + mark);
        assertEquals("R001/" + mark + ", then R002/" + mark, desktop.text("workshop.example"));
        save();
        desktop.until("it is saved", () -> !desktop.activeEditor().isDirty());
        assertEquals("R001/" + mark, booked());
        assertEquals("R002/" + mark, booked());
    }

    @Test
    void aCurrencyThatThereIsNotIsNotSavedAndSaid() {
        desktop.type("/currency", "EURO");
        save();
        assertTrue(desktop.activeEditor().isDirty());
        assertTrue(desktop.shows("failure"));
        desktop.type("/currency", "CHF");
        save();
        desktop.until("it is saved", () -> !desktop.activeEditor().isDirty());
        assertEquals("CHF", ((Workshop) saved().part()).currency());
        desktop.until("quotes begin with it", () -> desktop.session().shop().workshop().currency().equals("CHF"));
        assertEquals(Map.of(), ((Workshop) saved().part()).more());
    }
}
