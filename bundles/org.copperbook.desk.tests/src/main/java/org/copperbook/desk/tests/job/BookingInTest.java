package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.MachineKind;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuotePrices;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.winding.Windings;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A machine is booked in from nothing through the real window, captured, quoted and put on paper. */
class BookingInTest {

    private static final PartKey BOOKING = PartKey.of(PartKind.BOOKING);
    private static final PartKey NAMEPLATE = PartKey.of(PartKind.NAMEPLATE);
    private static final PartKey STATOR = PartKey.windingAsFound(WindingRole.MAIN_STATOR);
    private static final PartKey QUOTE = PartKey.quote(1);

    private final Desktop desktop = new Desktop();
    private final Keyboard keys = new Keyboard(desktop);
    private String first;
    private String second;

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @Test
    void aMachineGoesFromTheDoorToItsWorkbooks() throws Exception {
        first = desktop.beSomebody();
        second = desktop.session().shop().people().values().stream()
                .filter(p -> p.active() && !p.roles().isEmpty() && !p.key().equals(first)).findFirst().orElseThrow().key();
        JobEditor editor = bookIn();
        nameplate(editor);
        capture(editor);
        quote(editor);

        Job kept = desktop.session().store().load(editor.document().id());
        Booking booking = kept.booking().orElseThrow();
        assertEquals("Alder Mill", booking.customer());
        assertEquals("No volts after the flood.", booking.reportedFault());
        assertEquals(MachineKind.BRUSHLESS_ALTERNATOR, booking.machineKind());
        Nameplate plate = kept.nameplate().orElseThrow();
        assertEquals(400, plate.voltageV());
        assertEquals(62_500, plate.apparentPowerVA());
        assertEquals(4, plate.poles());
        windingKept((WindingData) kept.part(STATOR).orElseThrow());
        quoteKept((Quote) kept.part(QUOTE).orElseThrow());
        onPaper(editor, kept);
    }

    @Test
    void whoSaysWhoWorksAfterANewJobWasBegunHasBookedItIn() throws Exception {
        for (boolean typed : new boolean[] {false, true}) {
            desktop.session().who("");
            desktop.command("org.copperbook.desk.command.newJob");
            JobEditor editor = (JobEditor) desktop.activeEditor();
            desktop.settle(editor);
            editor.show(BOOKING);
            assertEquals("", desktop.text("/bookedBy"));
            if (typed) {
                keys.fill("/customer", "Alder Mill");
            }
            String who = desktop.beSomebody();
            String name = desktop.session().shop().nameOf(who);
            desktop.until("the booking names " + name, () -> desktop.text("/bookedBy").equals(name));
            assertEquals(typed, editor.isDirty(), "a name alone is nothing to save");
            desktop.closeAll();
        }
    }

    private JobEditor bookIn() throws Exception {
        desktop.command("org.copperbook.desk.command.newJob");
        JobEditor editor = (JobEditor) desktop.activeEditor();
        desktop.settle(editor);
        editor.show(BOOKING);
        keys.fill("/customer", "Alder Mill");
        keys.fill("/machineKind", "brushless alternator");
        keys.fill("/machine", "mill race set");
        desktop.type("/reportedFault", "No volts after the flood.");
        assertTrue(editor.isDirty(), "what is typed is unsaved");
        assertTrue(editor.document().number().isEmpty());
        save(editor);
        assertFalse(editor.document().number().isEmpty(), "the first save gives the number");
        return editor;
    }

    private void nameplate(JobEditor editor) {
        editor.show(NAMEPLATE);
        keys.fill("/serial", "am 7741");
        keys.fill("/apparentPowerVA", "62,5 kva");
        assertEquals("62.5 kVA", desktop.text("/apparentPowerVA"), "a decimal comma is understood and echoed");
        keys.fill("/voltageV", "400");
        keys.fill("/frequencyHz", "50");
        keys.fill("/phases", "3");
        keys.fill("/poles", "4");
        save(editor);
    }

    /**
     * 36 slots, 4 poles, two layers, span 1-9: three slots per pole and phase chorded by one slot. Fundamental winding
     * factor 0.9598 x 0.9848 = 0.9452 (distribution and pitch factor of any textbook on winding; memory).
     */
    private void capture(JobEditor editor) {
        editor.document().beginWith(STATOR, new Windings().beginning(STATOR, editor.document().job(),
                desktop.session().json()));
        editor.begin(STATOR);
        desktop.settle(editor);
        assertEquals("4", desktop.text("/poles"), "the plate's poles are offered");
        keys.fill("/slots", "36");
        keys.fill("/layers", "2");
        keys.fill("/span", "1-9");
        keys.fill("/turnsPerCoil", "6");
        keys.fill("/circuits", "1");
        desktop.press("winding.layOut");
        assertEquals(12, desktop.grid("/groups").model().filled());
        Table figures = (Table) desktop.field("figures.rows");
        desktop.until("the winding factor is computed", () -> figures.getItemCount() > 0
                && figures.getItem(0).getText(4).contains("U 0.9452"));
        desktop.type("conditions.windingCelsius", "19,5");
        choose("conditions.instrument", 1);
        choose("conditions.method", 2);
        int resistance = column("/groups", "/resistance");
        keys.fill("/groups", 0, resistance, "0,0415");
        for (int g = 2; g <= 12; g++) {
            keys.continueDown("/groups", g == 5 ? "41.9 m" : "0.0415");
        }
        count(editor, first);
        count(editor, second);
        desktop.session().who(first);
        desktop.settle(editor);
        save(editor);
    }

    private void count(JobEditor editor, String person) {
        desktop.session().who(person);
        desktop.settle(editor);
        desktop.press("count.begin");
        desktop.type("count.whole", "1-12: 6 6 6");
        desktop.type("count.tapStrands", "1");
        desktop.press("count.handIn");
        desktop.settle(editor);
    }

    private void windingKept(WindingData kept) {
        assertEquals(36, kept.slots());
        assertEquals("1-9", kept.span());
        assertEquals(36, kept.groups().stream().mapToInt(g -> g.coils().size()).sum());
        CoilGroup one = kept.groups().get(0);
        assertEquals(List.of(6, 6, 6), one.coils().stream().map(c -> c.turns()).toList());
        assertEquals(8, one.coils().get(0).returnSlot() - one.coils().get(0).goSlot());
        Reading reading = one.resistance();
        assertEquals(0.0415, reading.observed().value());
        assertEquals(19.5, reading.windingCelsius());
        assertEquals(Reading.Method.FOUR_WIRE, reading.method());
        assertEquals(first, reading.by());
        assertEquals(0.0419, kept.groups().get(4).resistance().observed().value());
        assertEquals(List.of(first, second), kept.counts().stream().map(c -> c.by()).toList());
        assertEquals(12, kept.counts().get(1).groups().size());
    }

    /** 40 h at 55.00 and 12.5 kg at 18.40 are 2430.00; with 20 % tax 2916.00. */
    private void quote(JobEditor editor) {
        editor.document().beginWith(QUOTE, new org.copperbook.office.Quotes().beginning(QUOTE,
                editor.document().job(), desktop.session().json()));
        editor.begin(QUOTE);
        desktop.settle(editor);
        keys.fill("/taxes", 0, 0, "v20");
        keys.fill("/taxes", 0, 2, "20");
        String lines = "/alternatives/0/lines";
        line(lines, 0, "labour", "strip and rewind", "40", "h", "55.00");
        line(lines, 1, "material", "copper wire", "12.5", "kg", "18,40");
        save(editor);
        String total = desktop.text("quote.total.0").replaceAll("[^0-9.]+", " ");
        assertTrue(total.contains("2 430.00") || total.contains("2430.00"), desktop.text("quote.total.0"));
    }

    private void line(String list, int row, String... cells) {
        String[] columns = {"/kind", "/text", "/quantity", "/unit", "/unitPrice"};
        for (int i = 0; i < columns.length; i++) {
            keys.fill(list, row, column(list, columns[i]), cells[i]);
        }
    }

    private static void quoteKept(Quote kept) throws Exception {
        assertEquals("v20", kept.alternatives().get(0).lines().get(1).tax());
        var totals = new QuotePrices(kept).totals(kept.alternatives().get(0));
        assertEquals(0, totals.net().compareTo(new BigDecimal("2430.00")));
        assertEquals(0, totals.gross().compareTo(new BigDecimal("2916.00")));
    }

    private void onPaper(JobEditor editor, Job kept) throws Exception {
        WrittenWorkbook quote = WrittenWorkbook.by(desktop, editor, "org.copperbook.desk.command.quoteWorkbook");
        quote.says("Alder Mill");
        quote.says("strip and rewind");
        quote.computes(2430.00);
        quote.computes(2916.00);
        WrittenWorkbook record = WrittenWorkbook.by(desktop, editor, "org.copperbook.desk.command.recordWorkbook");
        record.says(kept.number());
        record.says("Alder Mill");
        record.says("No volts after the flood.");
        record.says("am 7741");
        record.says("1-9");
        record.says("41.5 m\u03a9");
    }

    private void save(JobEditor editor) {
        keys.control('s');
        desktop.until("Ctrl+S has saved the job", () -> !editor.isDirty());
        desktop.settle(editor);
    }

    private int column(String list, String pointer) {
        var columns = desktop.grid(list).model().columns();
        for (int c = 0; c < columns.size(); c++) {
            if (columns.get(c).pointer().equals(pointer)) {
                return c;
            }
        }
        throw new AssertionError(list + " has no column " + pointer);
    }

    private void choose(String id, int item) {
        Combo combo = (Combo) desktop.field(id);
        combo.select(item);
        combo.notifyListeners(org.eclipse.swt.SWT.Selection, new org.eclipse.swt.widgets.Event());
        desktop.work();
    }
}
