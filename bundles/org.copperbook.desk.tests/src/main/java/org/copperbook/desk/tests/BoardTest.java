package org.copperbook.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.desk.text.Days;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.report.BoardStep;
import org.copperbook.jobs.shop.Capacities;
import org.copperbook.store.JobHandle;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.RegisterRow;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Where every job stands, in the window. */
class BoardTest {

    private static final String OPEN = "org.copperbook.office.command.board";

    private final Desktop desktop = new Desktop();
    private String who;

    @BeforeEach
    void somebodyWorks() {
        who = desktop.beSomebody();
    }

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    private List<String> onTheBoard() {
        List<String> numbers = new ArrayList<>();
        for (BoardStep step : BoardStep.values()) {
            if (desktop.shows("board/" + step.name())) {
                Table t = (Table) desktop.field("board/" + step.name());
                for (int i = 0; i < t.getItemCount(); i++) {
                    numbers.add(t.getItem(i).getText().split("[, ]")[0]);
                }
            }
        }
        return numbers.stream().sorted().toList();
    }

    private List<String> inTheStore() {
        return desktop.session().store().register(RegisterQuery.first(10_000)).rows().stream().map(RegisterRow::number)
                .sorted().toList();
    }

    private JobHandle job(String booking, String standing) throws Exception {
        var json = desktop.session().json();
        JobHandle job = desktop.session().store()
                .create((Booking) json.read(PartKey.of(PartKind.BOOKING), booking), who);
        if (standing != null) {
            PartKey key = PartKey.of(PartKind.STANDING);
            desktop.session().store().save(job.id(), key, (Standing) json.read(key, standing), 0, who, "");
        }
        return job;
    }

    private void tab(int index) {
        CTabFolder tabs = (CTabFolder) desktop.field("board.tabs");
        tabs.setSelection(index);
        tabs.notifyListeners(SWT.Selection, new Event());
        desktop.work();
    }

    @Test
    void everyJobOfTheStoreIsOnTheBoardOnceAndNewOnesComeByThemselves() throws Exception {
        desktop.command(OPEN);
        desktop.until("the board shows every job, " + inTheStore(), () -> onTheBoard().equals(inTheStore()));
        job("{\"schema\":1}", null);
        job("{\"schema\":1,\"customer\":\"Dunmere Dairy\"}",
                "{\"schema\":1,\"closure\":{\"how\":\"CANCELLED\",\"reason\":\"booked twice\"}}");
        job("{\"schema\":1,\"promised\":\"2020-02-03\"}", "{\"schema\":1,\"waiting\":{\"waitingFor\":\"PARTS\"}}");
        desktop.until("and the new ones too", () -> onTheBoard().equals(inTheStore()));
    }

    @Test
    void enterOnACardOpensItsJob() throws Exception {
        JobHandle job = job("{\"schema\":1,\"customer\":\"Elmstead Quarry\",\"promised\":\"1999-01-01\"}", null);
        desktop.command(OPEN);
        desktop.until("the job stands first among those booked in, for it is due first",
                () -> desktop.shows("board/BOOKED_IN")
                        && ((Table) desktop.field("board/BOOKED_IN")).getItem(0).getText().startsWith(job.number()));
        Table booked = (Table) desktop.field("board/BOOKED_IN");
        Event enter = new Event();
        enter.item = booked.getItem(0);
        booked.notifyListeners(SWT.DefaultSelection, enter);
        desktop.until("the job is open", () -> desktop.activeEditor() instanceof JobEditor);
        assertEquals(job.number(), ((JobEditor) desktop.activeEditor()).getPartName());
    }

    @Test
    void theListSaysWhatIsLateAndWhy() throws Exception {
        JobHandle job = job("{\"schema\":1,\"customer\":\"Fernhurst Foundry\",\"promised\":\"2001-01-01\"}",
                "{\"schema\":1,\"waiting\":{\"waitingFor\":\"OUTSIDE_WORK\",\"reason\":\"shaft at the grinder\"}}");
        desktop.command(OPEN);
        tab(1);
        Combo which = (Combo) desktop.field("list.which");
        which.select(List.of(which.getItems()).indexOf("late"));
        which.notifyListeners(SWT.Selection, new Event());
        Table list = (Table) desktop.field("board.list");
        desktop.until("the late job is in the list", () -> Stream.of(list.getItems())
                .anyMatch(i -> i.getText(0).equals(job.number())));
        String row = Stream.of(list.getItems()).filter(i -> i.getText(0).equals(job.number()))
                .map(i -> i.getText(2) + " / " + i.getText(3)).findFirst().orElseThrow();
        assertTrue(row.contains("days late") && row.contains("outside work") && row.contains("shaft at the grinder"), row);
    }

    @Test
    void whatAJobWaitsForIsSaidOnTheBoardAndTakenBack() throws Exception {
        JobHandle job = job("{\"schema\":1,\"customer\":\"Gorse Hill Feeds\",\"promised\":\"1998-01-01\"}",
                "{\"schema\":1,\"later\":5}");
        desktop.command(OPEN);
        desktop.until("the job stands first among those booked in", () -> desktop.shows("board/BOOKED_IN")
                && ((Table) desktop.field("board/BOOKED_IN")).getItem(0).getText().startsWith(job.number()));
        askWaiting();
        desktop.press("waiting/keep");
        assertEquals(1, revision(job), "what was not changed is not saved");
        askWaiting();
        choose("PARTS");
        ((Text) desktop.field("waiting/since")).setText("last Tuesday");
        desktop.press("waiting/keep");
        assertTrue(((Label) desktop.field("waiting/said")).getText().contains(Days.ofLocale().day(LocalDate.now())),
                "a slip is said, the dialog stays");
        ((Text) desktop.field("waiting/since")).setText(Days.ofLocale().day(LocalDate.of(2026, 3, 31)));
        ((Text) desktop.field("waiting/reason")).setText("=bearing ordered");
        desktop.press("waiting/keep");
        desktop.until("it is on record", () -> standing(job).waiting() != null);
        assertEquals(Standing.WaitingFor.PARTS, standing(job).waiting().waitingFor());
        assertEquals("=bearing ordered", standing(job).waiting().reason());
        assertEquals(LocalDate.of(2026, 3, 31), LocalDate.ofInstant(standing(job).waiting().since(), ZoneId.systemDefault()));
        assertEquals(5, standing(job).more().get("later").asInt(), "what a newer version keeps there stays");
        desktop.until("the card says so", () -> ((Table) desktop.field("board/BOOKED_IN")).getItem(0).getText()
                .contains("=bearing ordered"));
        askWaiting();
        choose("NOTHING");
        desktop.press("waiting/keep");
        desktop.until("it waits no more", () -> standing(job).waiting() == null);
    }

    @Test
    void oneJobIsChosenAtATime() throws Exception {
        job("{\"schema\":1,\"customer\":\"Gorse Hill Feeds\"}", null);
        desktop.command(OPEN);
        desktop.until("jobs stand in two columns", () -> desktop.shows("board/BOOKED_IN") && desktop.shows("board/QUOTED")
                && ((Table) desktop.field("board/QUOTED")).getItemCount() > 0);
        Table booked = (Table) desktop.field("board/BOOKED_IN");
        Table quoted = (Table) desktop.field("board/QUOTED");
        booked.setFocus();
        desktop.work();
        assertEquals(1, booked.getSelectionCount());
        quoted.setFocus();
        desktop.work();
        assertEquals(1, quoted.getSelectionCount());
        assertEquals(0, booked.getSelectionCount());
    }

    private void askWaiting() {
        Table booked = (Table) desktop.field("board/BOOKED_IN");
        booked.setFocus();
        booked.setSelection(0);
        Event key = new Event();
        key.keyCode = 'w';
        booked.notifyListeners(SWT.KeyDown, key);
        desktop.work();
    }

    private void choose(String what) {
        for (String other : List.of("NOTHING", "PARTS", "CUSTOMER", "OUTSIDE_WORK", "OTHER")) {
            ((Button) desktop.field("waiting/" + other)).setSelection(other.equals(what));
        }
    }

    private int revision(JobHandle job) {
        return desktop.session().store().current(job.id(), PartKey.of(PartKind.STANDING)).orElseThrow().number();
    }

    private Standing standing(JobHandle job) {
        return (Standing) desktop.session().store().current(job.id(), PartKey.of(PartKind.STANDING)).orElseThrow().part();
    }

    @Test
    void hoursAWeekOfATradeAreTypedAndKept() throws Exception {
        desktop.command(OPEN);
        tab(2);
        ((Text) desktop.field("load.trade")).setText("glass blower");
        ((Text) desktop.field("load.hours")).setText("37.5");
        desktop.press("load.keep");
        Table table = (Table) desktop.field("load.table");
        desktop.until("the trade is in the table", () -> Stream.of(table.getItems())
                .anyMatch(i -> i.getText(0).equals("glass blower") && i.getText(1).equals("37.5")));
        Capacities kept = (Capacities) desktop.session().store().current("shop", PartKey.of(PartKind.CAPACITIES))
                .orElseThrow().part();
        assertEquals("37.5", kept.of("glass blower").orElseThrow().toPlainString());
    }
}
