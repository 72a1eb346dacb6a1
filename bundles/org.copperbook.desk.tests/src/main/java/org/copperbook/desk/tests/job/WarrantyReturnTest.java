package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.store.JobHandle;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A machine that comes back: how it left stands beside what is read today. */
class WarrantyReturnTest {

    private static final PartKey BOOKING = PartKey.of(PartKind.BOOKING);
    private static final PartKey INSPECTION = PartKey.of(PartKind.INSPECTION);

    private final Desktop desktop = new Desktop();
    private JobEditor editor;

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    private void comesBackFrom(String earlier) throws Exception {
        PublishedSet set = new PublishedSet(desktop);
        String number = earlier == null ? set.takeIn(PartKind.values()) : earlier;
        ObjectNode booking = desktop.session().json().tree(set.whole().part(BOOKING).orElseThrow());
        booking.put("earlierJob", number);
        JobHandle back = desktop.session().store().create(
                (Booking) desktop.session().json().read(BOOKING, booking), "foreman-1");
        desktop.session().who("tester-1");
        editor = desktop.open(back.number());
        editor.document().beginWith(INSPECTION, desktop.session().json().mapper().createObjectNode().put("schema", 1));
        editor.begin(INSPECTION);
        desktop.settle(editor);
    }

    private TableItem row(String where) {
        return Arrays.stream(((Table) desktop.field("earlier.table")).getItems())
                .filter(i -> i.getText(0).equals(where)).findFirst()
                .orElseThrow(() -> new AssertionError("no row " + where));
    }

    @Test
    void whatItReadWhenItLeftStandsBesideTodaysReadingAtOneTemperature() throws Exception {
        comesBackFrom(null);
        desktop.until("the earlier job has been read", () -> desktop.shows("earlier.table"));
        String where = Arrays.stream(((Table) desktop.field("earlier.table")).getItems()).map(i -> i.getText(0))
                .filter(t -> t.startsWith("Exciter stator") && !t.contains("insulation")).findFirst().orElseThrow();
        assertTrue(row(where).getText(1).contains("\u03a9"), row(where).getText(1));
        assertEquals("\u2013", row(where).getText(2), "not read yet today");
        ObjectNode reading = desktop.session().json().mapper().createObjectNode();
        reading.put("quantity", "RESISTANCE").put("state", "AS_FOUND").put("windingCelsius", 25)
                .put("instrument", "bridge-1").put("at", "2026-09-01T08:00:00Z");
        reading.putObject("place").put("winding", "exciter-stator").put("kind", "WHOLE").put("mark", "F1-F2");
        reading.putObject("observed").put("kind", "VALUE").put("value", 20.0);
        editor.document().change(INSPECTION, "/readings", tree -> {
            tree.putArray("readings").add(reading);
            return tree;
        });
        desktop.settle(editor);
        desktop.until("today's reading stands beside it", () -> row(where).getText(2).contains("\u03a9"));
        assertTrue(row(where).getText(3).contains("more than its doubt"), row(where).getText(3));
    }

    @Test
    void anEarlierJobThatIsNotHereIsSaid() throws Exception {
        comesBackFrom("1999-0001");
        desktop.until("the area says that there is no such job",
                () -> ((Label) desktop.field("earlier.said")).getText().contains("no job 1999-0001"));
    }
}
