package org.copperbook.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.copperbook.desk.command.WorkbookFolder;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.desk.text.Days;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.shop.Capacities;
import org.copperbook.jobs.shop.Instrument;
import org.copperbook.jobs.shop.Instruments;
import org.copperbook.jobs.shop.LabourRates;
import org.copperbook.store.JobStore;
import org.copperbook.store.Saved;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The registers of the shop in the window. Expected: the tests' own inputs. */
class RegistersTest {

    private static final String SHOW = "org.copperbook.office.command.registers";
    private static final PartKey INSTRUMENTS = PartKey.of(PartKind.INSTRUMENTS);

    @TempDir
    Path folder;

    private static final int RATES = 2;

    private final Desktop desktop = new Desktop();
    private Saved before;

    @BeforeEach
    void showThem() throws Exception {
        desktop.closeAll();
        desktop.beSomebody();
        before = saved(INSTRUMENTS);
        desktop.command(SHOW);
        desktop.until("the instruments are read", () -> desktop.shows("/instruments/0/id"));
    }

    /** What other tests find is what they found before. */
    @AfterEach
    void asItWas() {
        desktop.closeAll();
        Saved now = saved(INSTRUMENTS);
        if (!now.part().equals(before.part())) {
            store().saveShopPart(INSTRUMENTS, before.part(), now.number(), desktop.session().who().orElseThrow(), "");
        }
    }

    private JobStore store() {
        return desktop.session().store();
    }

    private Saved saved(PartKey key) {
        return store().current(JobStore.SHOP, key).orElse(null);
    }

    private <T extends Part> T part(PartKind kind, Class<T> type) {
        return type.cast(saved(PartKey.of(kind)).part());
    }

    private void tab(int index) {
        CTabFolder tabs = (CTabFolder) desktop.field("registers.tabs");
        tabs.setSelection(index);
        tabs.notifyListeners(SWT.Selection, new Event());
        desktop.work();
        if (index == RATES) {
            desktop.until("the rates are read", () -> desktop.grid("/rates").model().filled() > 0);
        }
    }

    private void save() {
        desktop.activeEditor().doSave(new NullProgressMonitor());
        desktop.work();
    }

    private void saveAndWait() {
        save();
        desktop.until("it is saved", () -> !desktop.activeEditor().isDirty());
    }

    private String said() {
        return ((Label) desktop.field("instruments.said")).getText();
    }

    private Table list() {
        return (Table) desktop.field("instruments.list");
    }

    @Test
    void anInstrumentIsAddedWithACertificateAndUndoneUntilItIsSaved() throws Exception {
        int count = ((Instruments) before.part()).instruments().size();
        desktop.press("instruments.add");
        assertEquals(count + 1, list().getItemCount());
        desktop.type("/instruments/" + count + "/id", "NEW-7");
        desktop.type("/instruments/" + count + "/name", "Thickness gauge");
        String certificates = "/instruments/" + count + "/certificates";
        desktop.press(certificates + "#grid.add");
        desktop.type(certificates, 0, 0, "C-1");
        desktop.type(certificates, 0, 3, LocalDate.now().plusDays(10).toString());
        desktop.type(certificates, 0, 2, LocalDate.now().minusDays(10).toString());
        assertTrue(list().getItem(count).getText(3).contains("10 days"), list().getItem(count).getText(3));
        assertTrue(desktop.activeEditor().isDirty());
        desktop.command("org.eclipse.ui.edit.undo");
        assertFalse(list().getItem(count).getText(3).contains("10 days"), list().getItem(count).getText(3));
        desktop.command("org.eclipse.ui.edit.redo");
        saveAndWait();
        Instrument kept = part(PartKind.INSTRUMENTS, Instruments.class).find("NEW-7").orElseThrow();
        assertEquals("Thickness gauge", kept.name());
        assertEquals(LocalDate.now().plusDays(10), kept.calibrationDue());
        assertEquals("C-1", kept.certificate());
    }

    @Test
    void undoAndRedoAreOfferedOnlyWhileTheRegisterShownHasSomethingForThem() throws Exception {
        desktop.until("nothing is to be undone yet", () -> !desktop.offers("Undo") && !desktop.offers("Redo"));
        desktop.type("/instruments/0/name", "typed here");
        desktop.until("it can be undone", () -> desktop.offers("Undo") && !desktop.offers("Redo"));
        tab(RATES);
        desktop.until("not from another register", () -> !desktop.offers("Undo"));
        tab(0);
        desktop.until("but from its own", () -> desktop.offers("Undo"));
        desktop.command("org.eclipse.ui.edit.undo");
        desktop.until("it can be done again", () -> !desktop.offers("Undo") && desktop.offers("Redo"));
    }

    @Test
    void anIdThatAnotherHasIsNotSavedAndSaid() {
        desktop.type("/instruments/0/id", "BR-1");
        save();
        assertTrue(desktop.activeEditor().isDirty());
        desktop.type("/instruments/0/id", "BR-1x");
        saveAndWait();
        // A save that had been begun all the same would have made a revision of its own.
        assertEquals(before.number() + 1, saved(INSTRUMENTS).number());
        assertTrue(part(PartKind.INSTRUMENTS, Instruments.class).find("BR-1x").isPresent());
    }

    /** Who leaves the program with another page before the eyes has to see what keeps the window open. */
    @Test
    void aRegisterThatCannotBeSavedComesToTheFrontWithItsReason() throws Exception {
        var registers = desktop.activeEditor();
        desktop.type("/instruments/0/id", "BR-1");
        desktop.command("org.copperbook.office.command.stock");
        assertFalse(desktop.page().isPartVisible(registers));
        assertFalse(desktop.page().saveAllEditors(false), "not everything is saved");
        desktop.work();
        assertEquals(registers, desktop.activeEditor());
        assertTrue(desktop.shows("failure"));
    }

    @Test
    void whatIsOutOfUseIsOfferedNoMoreAndStaysInTheList() throws Exception {
        int count = list().getItemCount();
        desktop.press("instruments.use");
        assertTrue(said().contains("Not saved yet"), said());
        desktop.command("org.eclipse.ui.edit.undo");
        assertEquals("", said(), "what was undone is said no more");
        desktop.press("instruments.use");
        saveAndWait();
        assertEquals("", said(), "nor that it is not saved");
        assertEquals(count, list().getItemCount());
        assertEquals("out of use", list().getItem(0).getText(3));
        assertFalse(part(PartKind.INSTRUMENTS, Instruments.class).instruments().get(0).inUse());
    }

    @Test
    void theListIsFilteredAsSomebodyTypes() {
        int all = list().getItemCount();
        ((Text) desktop.field("instruments.filter")).setText("insul");
        assertTrue(list().getItemCount() > 0 && list().getItemCount() < all);
        ((Text) desktop.field("instruments.filter")).setText("nothing like it");
        assertEquals(0, list().getItemCount());
        ((Text) desktop.field("instruments.filter")).setText("");
        assertEquals(all, list().getItemCount());
    }

    /** What somebody else saves while this window has a draft of its own. */
    private void savedElsewhere(List<Instrument> instruments) {
        store().saveShopPart(INSTRUMENTS, new Instruments(1, instruments, Map.of()), before.number(),
                desktop.session().who().orElseThrow(), "");
    }

    private static Instrument renamed(Instrument i, String name) {
        return new Instrument(i.id(), name, i.kind(), i.ranges(), i.fourWire(), i.leadOhm(), i.leadOhmU(), i.calibrated(),
                i.calibrationDue(), i.certificate(), Map.of());
    }

    @Test
    void twoWhoChangeOneInstrumentAtOnceAreShownBoth() {
        desktop.type("/instruments/0/name", "typed here");
        List<Instrument> others = new ArrayList<>(((Instruments) before.part()).instruments());
        others.set(0, renamed(others.get(0), "typed elsewhere"));
        savedElsewhere(others);
        save();
        desktop.until("both are shown", () -> desktop.shows("conflict/instruments"));
        assertEquals("Instruments \u2013 " + others.get(0).id(),
                ((Label) desktop.field("conflict/instruments/0#place")).getText());
        assertEquals("What it is: typed here", ((Button) desktop.field("conflict/instruments/0#mine")).getText());
        assertEquals("What it is: typed elsewhere", ((Button) desktop.field("conflict/instruments/0#theirs")).getText());
        desktop.press("conflict/settle");
        saveAndWait();
        assertEquals("typed here", part(PartKind.INSTRUMENTS, Instruments.class).instruments().get(0).name());
    }

    @Test
    void twoWhoAddAndChangeDifferentInstrumentsAtOnceNeedNotChoose() {
        List<Instrument> others = new ArrayList<>(((Instruments) before.part()).instruments());
        int count = others.size();
        desktop.type("/instruments/0/name", "typed here");
        desktop.press("instruments.add");
        desktop.type("/instruments/" + count + "/id", "HERE-1");
        others.set(1, renamed(others.get(1), "typed elsewhere"));
        others.add(renamed(new Instrument("THERE-1", null, Instrument.Kind.OTHER, null, null, null, null, null, null, null,
                Map.of()), "added elsewhere"));
        savedElsewhere(others);
        saveAndWait();
        Instruments now = part(PartKind.INSTRUMENTS, Instruments.class);
        assertEquals(count + 2, now.instruments().size());
        assertEquals("typed here", now.instruments().get(0).name());
        assertEquals("typed elsewhere", now.instruments().get(1).name());
        assertTrue(now.find("HERE-1").isPresent() && now.find("THERE-1").isPresent());
        assertFalse(desktop.shows("conflict/instruments"));
        assertEquals(count + 2, list().getItemCount(), "the list shows both");
    }

    @Test
    void theHistorySaysWhatChangedAndGoesBackWithANewRevision() {
        String name = ((Instruments) before.part()).instruments().get(0).name();
        desktop.type("/instruments/0/name", "renamed");
        saveAndWait();
        desktop.press("instruments.history");
        desktop.until("the history is read", () -> desktop.shows("history.revisions")
                && ((Table) desktop.field("history.revisions")).getItemCount() == before.number() + 1);
        Table fields = (Table) desktop.field("history.fields");
        assertEquals(1, fields.getItemCount());
        assertEquals(name, fields.getItem(0).getText(1));
        assertEquals("renamed", fields.getItem(0).getText(2));
        Table revisions = (Table) desktop.field("history.revisions");
        revisions.setSelection(1);
        revisions.notifyListeners(SWT.Selection, new Event());
        desktop.press("history.goBack");
        saveAndWait();
        assertEquals(before.number() + 2, saved(INSTRUMENTS).number());
        assertEquals(before.part(), saved(INSTRUMENTS).part());
    }

    @Test
    void aTableIsTakenInAndWhatIsRefusedIsNamed() throws Exception {
        Path file = Files.writeString(folder.resolve("meters.csv"), "Ger\u00e4tenummer;Bezeichnung;Kalibriert am;F\u00e4llig\n"
                + "NEW-1;Waage;01.02.2026;01.02.2027\nNEW-2;Uhr;01.02.2026;01.02.2025\n;ohne;;\n");
        desktop.press("instruments.import");
        ((Text) desktop.field("import.path")).setText(file.toString());
        desktop.field("import.path").notifyListeners(SWT.DefaultSelection, new Event());
        desktop.until("the table is read", () -> desktop.shows("import.refused")
                && ((Table) desktop.field("import.refused")).getItemCount() == 2);
        assertEquals("D3", ((Table) desktop.field("import.refused")).getItem(0).getText(0));
        assertEquals("A4", ((Table) desktop.field("import.refused")).getItem(1).getText(0));
        int count = list().getItemCount();
        desktop.press("import.takeIn");
        assertEquals(count + 1, list().getItemCount());
        assertEquals(before.number(), saved(INSTRUMENTS).number(), "nothing is saved yet");
        saveAndWait();
        Instrument kept = part(PartKind.INSTRUMENTS, Instruments.class).find("NEW-1").orElseThrow();
        assertEquals("Waage", kept.name());
        assertEquals(LocalDate.of(2027, 2, 1), kept.calibrationDue());
    }

    /** In the colour of what fails on the screen too: the toolkit drops it from rows whose ground is drawn by hand. */
    @Test
    void anOverdueCalibrationIsSaidInWordsInBoldAndInTheColourOfWhatFails() {
        LocalDate yesterday = LocalDate.now().minusDays(1);
        desktop.press("/instruments/0/certificates#grid.add");
        int last = desktop.grid("/instruments/0/certificates").model().filled() - 1;
        desktop.type("/instruments/0/certificates", last, 2, yesterday.minusYears(1).toString());
        desktop.type("/instruments/0/certificates", last, 3, yesterday.toString());
        list().setSelection(1);
        list().notifyListeners(SWT.Selection, new Event());
        desktop.work();
        TableItem row = list().getItem(0);
        assertEquals("overdue since " + Days.ofLocale().day(yesterday), row.getText(3));
        assertTrue((row.getFont(3).getFontData()[0].getStyle() & SWT.BOLD) != 0);
        RGB warning = Look.of(list()).palette().problem().getRGB();
        desktop.until("it is painted in " + warning, () -> painted(row.getTextBounds(3), warning));
        assertFalse(painted(list().getItem(2).getTextBounds(3), warning), list().getItem(2).getText(3) + " is no warning");
    }

    /** Whether a colour stands in a part of the list as the screen shows it. */
    private boolean painted(Rectangle part, RGB colour) {
        Image seen = new Image(list().getDisplay(), part.width, part.height);
        GC gc = new GC(list());
        try {
            gc.copyArea(seen, part.x, part.y);
            ImageData pixels = seen.getImageData();
            for (int y = 0; y < pixels.height; y++) {
                for (int x = 0; x < pixels.width; x++) {
                    if (pixels.palette.getRGB(pixels.getPixel(x, y)).equals(colour)) {
                        return true;
                    }
                }
            }
            return false;
        } finally {
            gc.dispose();
            seen.dispose();
        }
    }

    @Test
    void whatWasWrittenAsAWorkbookIsTakenInAgainWithoutARefusedRow() throws Exception {
        Path target = WorkbookFolder.current().resolve("instruments.xlsx");
        Files.deleteIfExists(target);
        desktop.press("instruments.workbook");
        desktop.until("it is written", () -> Files.exists(target)
                && ((Label) desktop.field("instruments.said")).getText().contains("Written"));
        desktop.press("instruments.import");
        ((Text) desktop.field("import.path")).setText(target.toString());
        desktop.field("import.path").notifyListeners(SWT.DefaultSelection, new Event());
        desktop.until("it can be taken in", () -> desktop.field("import.takeIn").isEnabled());
        assertEquals(0, ((Table) desktop.field("import.refused")).getItemCount());
        desktop.press("import.takeIn");
        saveAndWait();
        List<Instrument> kept = part(PartKind.INSTRUMENTS, Instruments.class).instruments();
        List<Instrument> was = ((Instruments) before.part()).instruments();
        assertEquals(was.size(), kept.size());
        for (int i = 0; i < was.size(); i++) {
            assertEquals(was.get(i).id(), kept.get(i).id());
            assertEquals(was.get(i).name(), kept.get(i).name());
            assertEquals(was.get(i).ranges(), kept.get(i).ranges());
            assertEquals(was.get(i).calibrationDue(), kept.get(i).calibrationDue());
            assertEquals(was.get(i).certificate(), kept.get(i).certificate());
            assertEquals(was.get(i).leadOhm(), kept.get(i).leadOhm());
            assertEquals(was.get(i).leadOhmU(), kept.get(i).leadOhmU());
        }
    }

    @Test
    void theListIsWrittenAsAWorkbook() throws Exception {
        Path target = WorkbookFolder.current().resolve("instruments.xlsx");
        Files.deleteIfExists(target);
        desktop.press("instruments.workbook");
        desktop.until("it is written", () -> Files.exists(target)
                && ((Label) desktop.field("instruments.said")).getText().contains("Written"));
    }

    private void rate(String trade, String perHour, String from) {
        int row = desktop.grid("/rates").model().filled();
        desktop.type("/rates", row, 0, trade);
        desktop.type("/rates", row, 1, perHour);
        desktop.type("/rates", row, 2, from);
    }

    @Test
    void twoRatesOfOneTradeFromOneDayAreNotSavedUntilOneHasAnotherDay() {
        tab(RATES);
        int revision = saved(PartKey.of(PartKind.LABOUR_RATES)).number();
        rate("spinner", "48", "2025-07-01");
        rate("Spinner ", "52", "2025-07-01");
        save();
        assertTrue(desktop.activeEditor().isDirty());
        desktop.type("/rates", desktop.grid("/rates").model().filled() - 1, 2, "2025-08-01");
        saveAndWait();
        assertEquals(revision + 1, saved(PartKey.of(PartKind.LABOUR_RATES)).number());
    }

    @Test
    void aRateIsKeptBesideTheOlderOne() {
        tab(RATES);
        rate("turner", "48", "2025-07-01");
        rate("turner", "51.5", "2026-01-01");
        saveAndWait();
        LabourRates kept = part(PartKind.LABOUR_RATES, LabourRates.class);
        assertEquals(new BigDecimal("51.5"), kept.perHour("Turner", LocalDate.of(2026, 1, 1)).orElseThrow());
        assertEquals(new BigDecimal("48"), kept.perHour("turner", LocalDate.of(2025, 12, 31)).orElseThrow());
        assertTrue(kept.perHour("turner", LocalDate.of(2025, 6, 30)).isEmpty());
        desktop.until("the shop is read anew", () -> desktop.session().shop().rates().equals(kept));
    }

    @Test
    void ratesAreFilteredAsSomebodyTypesAndWhatIsTypedMeanwhileStaysInSight() {
        tab(RATES);
        LabourRates rates = part(PartKind.LABOUR_RATES, LabourRates.class);
        String trade = rates.rates().get(1).trade();
        long of = rates.rates().stream().filter(r -> (r.trade() + " " + r.note()).contains(trade)).count();
        ((Text) desktop.field("rates.filter")).setText(trade.toUpperCase());
        RecordGrid grid = desktop.grid("/rates");
        assertEquals(of, grid.model().filled());
        assertTrue(of < rates.rates().size(), "another trade is hidden");
        desktop.type("/rates", (int) of, 0, "sieve maker");
        assertEquals("sieve maker", grid.model().text((int) of, 0), "a new row is not hidden by the filter");
        ((Text) desktop.field("rates.filter")).setText("");
        assertEquals(rates.rates().size() + 1, grid.model().filled());
    }

    @Test
    void everyListIsCopiedWithItsHeadings() {
        tab(RATES);
        LabourRates rates = part(PartKind.LABOUR_RATES, LabourRates.class);
        desktop.press("rates.copy");
        desktop.until("the clipboard has the rates", () -> desktop.copied().startsWith("Trade\tPrice of an hour\tFrom\tNote\n"));
        assertEquals(rates.rates().size() + 1, desktop.copied().split("\n").length);
        assertTrue(desktop.copied().contains("\n" + rates.rates().get(0).trade() + "\t"), desktop.copied());
        tab(3);
        Event keys = new Event();
        keys.keyCode = 'c';
        keys.stateMask = SWT.MOD1 | SWT.SHIFT;
        desktop.field("/trades").notifyListeners(SWT.KeyDown, keys);
        desktop.until("the clipboard has the capacities", () -> desktop.copied().startsWith("Trade\tHours a week\n"));
        tab(0);
        desktop.press("instruments.copy");
        desktop.until("the clipboard has the instruments", () -> desktop.copied().contains("\n"
                + ((Instruments) before.part()).instruments().get(0).id() + "\t"));
    }

    @Test
    void aWeekThatDiffersIsKept() {
        tab(3);
        Capacities old = part(PartKind.CAPACITIES, Capacities.class);
        desktop.press("/weeks" + "#grid.add");
        int row = old.weeks().size();
        desktop.type("/weeks", row, 0, "2026-12-30");
        desktop.type("/weeks", row, 2, "0");
        saveAndWait();
        assertEquals(BigDecimal.ZERO, part(PartKind.CAPACITIES, Capacities.class).in(LocalDate.of(2026, 12, 28),
                old.trades().get(0).trade()).orElseThrow());
        store().saveShopPart(PartKey.of(PartKind.CAPACITIES), old, saved(PartKey.of(PartKind.CAPACITIES)).number(),
                desktop.session().who().orElseThrow(), "");
    }

    /** Takes a table of capacities in as far as its rows are understood. */
    private Table capacitiesFrom(Path file) {
        desktop.press("capacities.import");
        ((Text) desktop.field("import.path")).setText(file.toString());
        desktop.field("import.path").notifyListeners(SWT.DefaultSelection, new Event());
        desktop.until("it can be taken in", () -> desktop.field("import.takeIn").isEnabled());
        return (Table) desktop.field("import.refused");
    }

    @Test
    void weeksThatDifferGoOutIntoTheWorkbookOfCapacitiesAndComeBack() throws Exception {
        PartKey key = PartKey.of(PartKind.CAPACITIES);
        String who = desktop.session().who().orElseThrow();
        Capacities old = part(PartKind.CAPACITIES, Capacities.class);
        String trade = old.trades().get(0).trade();
        List<Capacities.Week> weeks = List.of(
                new Capacities.Week(LocalDate.of(2031, 12, 24), null, BigDecimal.ZERO, "closed", Map.of()),
                new Capacities.Week(LocalDate.of(2031, 5, 7), trade, new BigDecimal("12.5"), null, Map.of()));
        Capacities all = new Capacities(1, old.trades(), weeks, Map.of());
        store().saveShopPart(key, all, saved(key).number(), who, "");
        tab(3);
        desktop.until("they are read", () -> desktop.grid("/weeks").model().filled() == 2);
        Path target = WorkbookFolder.current().resolve("capacities.xlsx");
        Files.deleteIfExists(target);
        desktop.press("capacities.workbook");
        desktop.until("it is written", () -> ((Label) desktop.field("capacities.said")).getText().contains("Written"));
        store().saveShopPart(key, new Capacities(1, old.trades(), Map.of()), saved(key).number(), who, "");
        desktop.until("they are gone", () -> desktop.grid("/weeks").model().filled() == 0);
        assertEquals(0, capacitiesFrom(target).getItemCount());
        desktop.press("import.takeIn");
        saveAndWait();
        assertEquals(weeks, part(PartKind.CAPACITIES, Capacities.class).weeks());
        assertEquals(old.trades(), part(PartKind.CAPACITIES, Capacities.class).trades(), "and nothing else is changed");
        Table refused = capacitiesFrom(Files.writeString(folder.resolve("weeks.csv"), "Trade;Hours a week;Week;Note\n"
                + ";5;2031-12-22;still closed\n;6;2031-12-28;the same week\n;7;;\n" + "polisher;8;;no week\n" + trade + ";9;;\n"));
        assertEquals(List.of("C3", "A4", "D5"), Stream.of(refused.getItems()).map(i -> i.getText(0)).toList());
        desktop.press("import.takeIn");
        saveAndWait();
        Capacities now = part(PartKind.CAPACITIES, Capacities.class);
        assertEquals(2, now.weeks().size(), "a day of the same week is about the same week");
        assertEquals(new Capacities.Week(LocalDate.of(2031, 12, 22), null, BigDecimal.valueOf(5), "still closed", Map.of()),
                now.weeks().get(0));
        assertEquals(BigDecimal.valueOf(9), now.of(trade).orElseThrow());
        store().saveShopPart(key, old, saved(key).number(), who, "");
    }
}
