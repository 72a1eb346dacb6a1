package org.copperbook.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.copperbook.desk.command.WorkbookFolder;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.shop.Capacities;
import org.copperbook.jobs.work.Hours;
import org.copperbook.store.JobStore;
import org.copperbook.store.Saved;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The month in figures, and the jobs behind each. */
class MonthTest {

    private static final String SHOW = "org.copperbook.office.command.month";
    private static final String JOB = "2026-0001";

    private static final PartKey HOURS = PartKey.of(PartKind.HOURS);

    private final Desktop desktop = new Desktop();
    private YearMonth booked;

    @BeforeEach
    void showTheMonthOfAJob() throws Exception {
        JobStore store = desktop.session().store();
        booked = YearMonth.from(LocalDate.ofInstant(store.load(store.idOf(JOB).orElseThrow()).booking().orElseThrow()
                .bookedAt(), ZoneId.systemDefault()));
        desktop.command(SHOW);
        month(booked.toString());
    }

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    private void month(String text) {
        Text field = (Text) desktop.field("month.month");
        field.setText(text);
        field.notifyListeners(SWT.DefaultSelection, new Event());
        desktop.until("it says what came of " + text, () -> said().contains(text));
    }

    private String said() {
        return ((Label) desktop.field("month.said")).getText();
    }

    private Table figures() {
        return (Table) desktop.field("month.figures");
    }

    private Table jobs() {
        return (Table) desktop.field("month.jobs");
    }

    private TableItem figure(String what) {
        return Stream.of(figures().getItems()).filter(i -> i.getText(0).equals(what)).findFirst().orElseThrow();
    }

    @Test
    void theJobsBehindAFigureAreListedAndOpened() {
        TableItem row = figure("Booked in");
        figures().setSelection(row);
        figures().notifyListeners(SWT.Selection, new Event());
        assertEquals(row.getText(2), Integer.toString(jobs().getItemCount()));
        TableItem job = Stream.of(jobs().getItems()).filter(i -> i.getText(0).equals(JOB)).findFirst().orElseThrow();
        jobs().setSelection(job);
        jobs().notifyListeners(SWT.DefaultSelection, new Event());
        desktop.until("the job is open", () -> desktop.activeEditor() instanceof JobEditor e
                && e.getPartName().equals(JOB));
    }

    @Test
    void hoursOfATradeStandBesideWhatItCanWork() {
        JobStore store = desktop.session().store();
        String id = store.idOf(JOB).orElseThrow();
        var was = store.current(id, HOURS);
        List<Hours.Entry> entries = new ArrayList<>(was.map(s -> ((Hours) s.part()).entries()).orElse(List.of()));
        // A month in which the demo workshop has no hours.
        entries.add(new Hours.Entry(null, "winder", LocalDate.of(2027, 2, 10), new BigDecimal("30.5"), null, Map.of()));
        store.save(id, HOURS, new Hours(Hours.SCHEMA, entries, null, null), was.map(Saved::number).orElse(0),
                desktop.beSomebody(), "");
        BigDecimal week = ((Capacities) store.current(JobStore.SHOP, PartKey.of(PartKind.CAPACITIES)).orElseThrow().part())
                .of("winder").orElseThrow();
        month("2027-02");
        Table hours = (Table) desktop.field("month.hours");
        TableItem winder = Stream.of(hours.getItems()).filter(i -> i.getText(0).equals("winder")).findFirst().orElseThrow();
        assertEquals("30.5", winder.getText(1));
        // February 2027 is four whole weeks.
        assertEquals(0, week.multiply(BigDecimal.valueOf(4)).compareTo(new BigDecimal(winder.getText(3))));
        assertEquals("30.5", figure("Hours worked").getText(3));
        month("1899-01");
        assertFalse(desktop.shows("month.hours"), "no table without hours");
    }

    @Test
    void theMonthIsTurnedByKeysAndANonsenseMonthIsSaid() {
        Event down = new Event();
        down.keyCode = SWT.ARROW_DOWN;
        desktop.field("month.month").notifyListeners(SWT.KeyDown, down);
        String next = booked.plusMonths(1).toString();
        assertEquals(next, desktop.text("month.month"));
        desktop.until("the next month is shown", () -> said().contains(next));
        month("1899-01");
        assertEquals(0, figures().getItemCount());
        assertEquals(0, jobs().getItemCount());
        month("October");
        assertTrue(said().contains("is no month"), said());
    }

    @Test
    void itIsCopiedAndWrittenAsAWorkbook() throws Exception {
        Event copy = new Event();
        copy.keyCode = 'c';
        copy.stateMask = SWT.MOD1;
        figures().setFocus();
        figures().notifyListeners(SWT.KeyDown, copy);
        desktop.until("it says that it was copied", () -> said().startsWith("Copied"));
        desktop.until("the clipboard has the figures", () -> desktop.copied().startsWith("What\tOf\tHow many\tSum\nBooked in\t"));
        Path target = WorkbookFolder.current().resolve("month " + booked + ".xlsx");
        Files.deleteIfExists(target);
        desktop.press("month.workbook");
        desktop.until("the workbook is written", () -> Files.exists(target) && said().contains("Written"));
    }
}
