package org.copperbook.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.copperbook.desk.command.WorkbookFolder;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.editor.OutlineRow;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.Saved;
import org.copperbook.store.UserFolders;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class JobEditorTest {

    private static final PartKey BOOKING = PartKey.of(PartKind.BOOKING);
    private static final PartKey INSPECTION = PartKey.of(PartKind.INSPECTION);
    private static final String UNDO = "org.eclipse.ui.edit.undo";
    private static final String REDO = "org.eclipse.ui.edit.redo";
    private static final String SAVE = "org.eclipse.ui.file.save";

    private final Desktop desktop = new Desktop();
    private String number;

    @BeforeEach
    void anOpenJob() {
        desktop.beSomebody();
        number = desktop.session().store().register(RegisterQuery.first(50)).rows().stream().filter(r -> !r.voided())
                .filter(r -> desktop.session().store().load(r.jobId()).inspection()
                        .filter(i -> i.readings().size() > 2).isPresent())
                .findFirst().orElseThrow().number();
    }

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @Test
    void theOutlineHoldsThePartsInTheOrderOfAJobsLife() throws Exception {
        JobEditor editor = desktop.open(number);
        List<PartKind> kinds = editor.outline().stream().filter(OutlineRow.Page.class::isInstance)
                .map(r -> ((OutlineRow.Page) r).key().kind()).distinct().toList();
        assertTrue(kinds.containsAll(List.of(PartKind.BOOKING, PartKind.NAMEPLATE, PartKind.INSPECTION)),
                kinds.toString());
        assertEquals(kinds.stream().sorted().toList(), kinds);
        assertTrue(editor.outline().stream().anyMatch(OutlineRow.Point.class::isInstance), "hold points stand between");
    }

    @Test
    void everyPageOfEveryPlugInOpens() throws Exception {
        JobEditor editor = desktop.open(number);
        for (OutlineRow row : editor.outline()) {
            if (row instanceof OutlineRow.Page p) {
                assertTrue(editor.show(p.key()));
                desktop.work();
                assertTrue(editor.page().isPresent(), p.label() + " could not be made");
            }
        }
    }

    @Test
    void typingIsUndoneAndDoneAgainByTheStandardCommands() throws Exception {
        JobEditor editor = desktop.open(number);
        editor.show(BOOKING);
        String before = desktop.text("/machine");
        desktop.type("/machine", "workshop crane motor");
        assertTrue(editor.isDirty());
        desktop.command(UNDO);
        assertEquals(before, desktop.text("/machine"));
        assertFalse(editor.isDirty());
        desktop.command(REDO);
        assertEquals("workshop crane motor", desktop.text("/machine"));
        desktop.command(UNDO);
    }

    @Test
    void aSaveAppendsARevisionToTheStore() throws Exception {
        JobEditor editor = desktop.open(number);
        editor.show(BOOKING);
        String id = editor.document().id();
        Saved before = desktop.session().store().current(id, BOOKING).orElseThrow();
        String tag = "T-" + System.nanoTime();
        desktop.type("/tag", tag);
        desktop.command(SAVE);
        desktop.until("the job is saved", () -> !editor.isDirty());
        Saved after = desktop.session().store().current(id, BOOKING).orElseThrow();
        assertEquals(before.number() + 1, after.number());
        assertEquals(tag, ((Booking) after.part()).tag());
        assertEquals(desktop.session().who().orElseThrow(), after.revision().who());
    }

    @Test
    void aWrongTextStaysIsMarkedAndIsNotSaved() throws Exception {
        JobEditor editor = desktop.open(number);
        editor.show(BOOKING);
        desktop.type("/spendLimit", "about 900");
        assertEquals("about 900", desktop.text("/spendLimit"));
        assertEquals("about 900", editor.document().typed(BOOKING, "/spendLimit").orElseThrow());
        desktop.command(SAVE);
        assertTrue(editor.isDirty(), "a text not understood keeps the star");
        desktop.type("/spendLimit", "900");
        assertEquals(900, editor.document().part(BOOKING, Booking.class).orElseThrow().spendLimit().intValueExact());
        desktop.command(SAVE);
        desktop.until("the job is saved", () -> !editor.isDirty());
    }

    @Test
    void escRestoresWhatStoodThere() throws Exception {
        JobEditor editor = desktop.open(number);
        editor.show(BOOKING);
        String before = desktop.text("/customer");
        var field = (org.eclipse.swt.widgets.Text) desktop.field("/customer");
        field.setFocus();
        desktop.work();
        field.setText("somebody else");
        assertTrue(editor.isDirty());
        field.traverse(SWT.TRAVERSE_ESCAPE);
        desktop.work();
        assertEquals(before, desktop.text("/customer"));
        assertFalse(editor.isDirty());
    }

    @Test
    void undoIsOfferedOnThePageThatHasSomethingForIt() throws Exception {
        JobEditor editor = desktop.open(number);
        editor.show(BOOKING);
        desktop.until("nothing is to be undone yet", () -> !desktop.offers("Undo"));
        desktop.type("/arrivedBy", "own van");
        desktop.until("it can be undone", () -> desktop.offers("Undo"));
        editor.show(PartKey.of(PartKind.NAMEPLATE));
        desktop.until("not from another page", () -> !desktop.offers("Undo"));
        editor.show(BOOKING);
        desktop.until("but from its own", () -> desktop.offers("Undo"));
    }

    @Test
    void whatIsTypedStandsInTheCrashJournalWithinASecond() throws Exception {
        JobEditor editor = desktop.open(number);
        editor.show(BOOKING);
        String words = "typed at " + System.nanoTime();
        desktop.type("/transportDamage", words);
        long typed = System.currentTimeMillis();
        desktop.until("the journal holds the words", () -> journalHolds(words));
        long took = System.currentTimeMillis() - typed;
        assertTrue(took <= 1000, "took " + took + " ms");
        desktop.closeAll();
        desktop.until("the journal forgets what was thrown away", () -> !journalHolds(words));
    }

    @Test
    void aCellTypedIntoAGridIsInTheRecordAndUndoTakesItOut() throws Exception {
        JobEditor editor = desktop.open(number);
        editor.show(INSPECTION);
        desktop.work();
        int rows = desktop.grid("/checklist").model().filled();
        desktop.type("/checklist", rows, 1, "terminal box");
        assertEquals(rows + 1, desktop.grid("/checklist").model().filled());
        assertEquals("terminal box", editor.document().value(INSPECTION, "/checklist/" + rows + "/point").asText());
        desktop.command(UNDO);
        assertEquals(rows, desktop.grid("/checklist").model().filled());
    }

    @Test
    void verdictsFollowTheTyping() throws Exception {
        JobEditor editor = desktop.open(number);
        var before = editor.judgement().verdicts();
        assertFalse(before.isEmpty());
        var read = before.stream().filter(v -> v.part().equals(INSPECTION) && v.path() != null
                && v.path().startsWith("/readings/") && v.value() != null).findFirst().orElseThrow();
        String pointer = read.path().replaceAll("^(/readings/\\d+).*", "$1");
        var observed = editor.document().value(INSPECTION, pointer + "/observed/value");
        editor.document().set(INSPECTION, pointer + "/observed/value",
                com.fasterxml.jackson.databind.node.DoubleNode.valueOf(observed.doubleValue() * 3));
        desktop.settle(editor);
        var after = editor.judgement().verdicts().stream().filter(v -> v.id().equals(read.id())).findFirst()
                .orElseThrow();
        assertNotEquals(read.value(), after.value());
    }

    @Test
    void aMachineBookedInGetsItsNumberWithTheFirstSave() throws Exception {
        int before = desktop.session().store().register(RegisterQuery.first(0)).total();
        desktop.command("org.copperbook.desk.command.newJob");
        JobEditor editor = (JobEditor) desktop.activeEditor();
        desktop.settle(editor);
        editor.show(BOOKING);
        desktop.type("/customer", "Hollin Bank Laundry");
        desktop.type("/machine", "boiler house set");
        assertEquals("", editor.document().number());
        desktop.command(SAVE);
        desktop.until("the job has its number", () -> !editor.document().number().isEmpty());
        assertEquals(editor.document().number(), editor.getPartName());
        assertEquals(before + 1, desktop.session().store().register(RegisterQuery.first(0)).total());
        String id = desktop.session().store().idOf(editor.document().number()).orElseThrow();
        Booking kept = (Booking) desktop.session().store().current(id, BOOKING).orElseThrow().part();
        assertEquals("Hollin Bank Laundry", kept.customer());
        var table = desktop.register().table();
        desktop.until("the register shows it", () -> table.getItemCount() == before + 1);
    }

    @Test
    void twoPeoplesCopiesAreShownFieldByFieldAndNothingIsLost() throws Exception {
        JobEditor editor = desktop.open(number);
        editor.show(BOOKING);
        String id = editor.document().id();
        Saved before = desktop.session().store().current(id, BOOKING).orElseThrow();
        desktop.type("/arrivedBy", "my words");
        var theirs = desktop.session().json().tree(before.part());
        theirs.put("orderNo", "their number");
        desktop.session().store().save(id, BOOKING, desktop.session().json().read(BOOKING, theirs), before.number(),
                desktop.session().who().orElseThrow(), "");
        desktop.command(SAVE);
        desktop.until("both copies are shown", () -> !editor.document().conflicts().isEmpty());
        assertEquals("my words", desktop.text("/arrivedBy"));
        Control mine = desktop.field("conflict/arrivedBy#mine");
        Control[] cells = mine.getParent().getParent().getChildren();
        int row = List.of(cells).indexOf(mine.getParent());
        assertEquals("Arrived by", ((Label) cells[row - 1]).getText(), "the field by the name that it has on the page");
        Control[] headings = ((Composite) cells[1]).getChildren();
        assertEquals(mine.toDisplay(0, 0).x, headings[0].toDisplay(0, 0).x, "the heading stands above its copies");
        assertEquals(desktop.field("conflict/arrivedBy#theirs").toDisplay(0, 0).x, headings[1].toDisplay(0, 0).x);
        desktop.press("conflict/settle");
        assertTrue(editor.document().conflicts().isEmpty());
        desktop.command(SAVE);
        desktop.until("the job is saved", () -> !editor.isDirty());
        Booking kept = (Booking) desktop.session().store().current(id, BOOKING).orElseThrow().part();
        assertEquals("my words", kept.arrivedBy());
        assertEquals("their number", kept.orderNo());
        assertEquals(before.number() + 2, desktop.session().store().current(id, BOOKING).orElseThrow().number());
    }

    @Test
    void theQuoteAndTheRecordAreWrittenOutsideTheWindowsThread() throws Exception {
        String quoted = desktop.session().store().register(RegisterQuery.first(50)).rows().stream()
                .filter(r -> !r.voided() && !desktop.session().store().load(r.jobId()).keys(PartKind.QUOTE).isEmpty())
                .findFirst().orElseThrow().number();
        desktop.open(quoted);
        Path folder = WorkbookFolder.current();
        desktop.command("org.copperbook.desk.command.quoteWorkbook");
        desktop.until("the quote is written", () -> written(folder, quoted + " quote"));
        desktop.command("org.copperbook.desk.command.recordWorkbook");
        desktop.closeAll();
        desktop.until("the record is written though its job was closed",
                () -> written(folder, quoted + " job record"));
        desktop.until("the window says so", () -> shownText(desktop.page().getWorkbenchWindow().getShell())
                .contains(quoted + " job record"));
    }

    /** Every text that the window's labels show now. */
    private static String shownText(org.eclipse.swt.widgets.Control at) {
        if (at instanceof org.eclipse.swt.custom.CLabel label) {
            return label.getText() + "\n";
        }
        if (at instanceof org.eclipse.swt.widgets.Composite c) {
            StringBuilder all = new StringBuilder();
            for (var child : c.getChildren()) {
                all.append(shownText(child));
            }
            return all.toString();
        }
        return "";
    }

    @Test
    void largerTextMakesLargerRowsAtOnce() throws Exception {
        JobEditor editor = desktop.open(number);
        editor.show(INSPECTION);
        desktop.work();
        Look look = Look.of(org.eclipse.swt.widgets.Display.getCurrent());
        int small = desktop.grid("/checklist").table().getItemHeight();
        try {
            look.resize(Look.Size.BENCH);
            desktop.work();
            assertTrue(desktop.grid("/checklist").table().getItemHeight() > small);
            assertTrue(look.rowHeight() * 25.4 / org.eclipse.swt.widgets.Display.getCurrent().getDPI().y >= 9);
        } finally {
            look.resize(Look.Size.DESK);
            desktop.work();
        }
    }

    private static boolean written(Path folder, String name) {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.anyMatch(f -> f.getFileName().toString().startsWith(name)
                    && f.getFileName().toString().endsWith(".xlsx"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static boolean journalHolds(String words) {
        Path folder = UserFolders.current().journal();
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (Stream<Path> files = Files.list(folder)) {
            for (Path f : files.toList()) {
                if (Files.exists(f) && Files.readString(f).contains(words)) {
                    return true;
                }
            }
            return false;
        } catch (IOException replacedMeanwhile) {
            return false;
        }
    }

    /** Titles break between words; each row has room for its own title and the line below it. */
    @Test
    void everyVerdictHasRoomForItsTitleAndItsBar() throws Exception {
        JobEditor editor = desktop.open(number);
        editor.show(INSPECTION);
        desktop.settle(editor);
        Table table = (Table) desktop.field("verdicts");
        Look look = Look.of(table);
        table.getParent().getParent().setSize(look.chars(34), table.getParent().getParent().getSize().y);
        desktop.work();
        GC gc = new GC(table);
        try {
            gc.setFont(look.font(Look.Role.TEXT));
            int room = table.getClientArea().width - 12;
            for (int row = 0; row < editor.verdicts().shown().size() - 1; row++) {
                int lines = 1;
                int used = 0;
                for (String word : editor.verdicts().shown().get(row).title().split(" ")) {
                    int wide = gc.textExtent(" " + word).x;
                    lines += used > 0 && used + wide > room ? 1 : 0;
                    used = used > 0 && used + wide > room ? wide : used + wide;
                }
                int wanted = (Math.min(2, lines) + 1) * look.lineHeight();
                int height = table.getItem(row + 1).getBounds(0).y - table.getItem(row).getBounds(0).y;
                assertTrue(height >= wanted, "row " + row + " is " + height + " high, its title and bar need " + wanted);
            }
        } finally {
            gc.dispose();
        }
    }
}
