package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Predicate;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.JobChecks;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.winding.TurnCount;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.store.Change;
import org.copperbook.store.JobStore;
import org.copperbook.winding.Windings;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Old cards are taken in, found again, taken over as a proposal and confirmed; a bare core gets a first winding. */
class PastWindingsTest {

    private static final PartKey STATOR = PartKey.windingAsFound(WindingRole.MAIN_STATOR);
    private static final String TITLES = "Karte;Hersteller;Leistung kVA;Spannung V;Polzahl;Nuten;Schritt;Windungen;"
            + "Draht mm;Dr\u00e4hte parallel;Zweige;Schaltung;Bohrung mm;Paketl\u00e4nge mm\r\n";

    @TempDir
    Path folder;

    private final Desktop desktop = new Desktop();

    @AfterEach
    void leave() {
        for (Shell shell : Display.getCurrent().getShells()) {
            if (shell.getData() instanceof WizardDialog d) {
                d.close();
            }
        }
        desktop.closeAll();
    }

    private JobEditor stator() throws Exception {
        desktop.beSomebody();
        desktop.command("org.copperbook.desk.command.newJob");
        JobEditor editor = (JobEditor) desktop.activeEditor();
        desktop.settle(editor);
        editor.document().beginWith(STATOR, new Windings().beginning(STATOR, editor.document().job(),
                desktop.session().json()));
        editor.begin(STATOR);
        desktop.settle(editor);
        return editor;
    }

    private static WindingData data(JobEditor editor) {
        return editor.document().part(STATOR, WindingData.class).orElseThrow();
    }

    private Path cards(String name, String rows) throws Exception {
        return Files.write(folder.resolve(name), (TITLES + rows).getBytes(Charset.forName("windows-1252")));
    }

    private static WizardDialog wizard() {
        for (Shell shell : Display.getCurrent().getShells()) {
            if (shell.getData() instanceof WizardDialog d) {
                return d;
            }
        }
        throw new AssertionError("no wizard is open");
    }

    private static Optional<Control> in(Control at, Predicate<Control> wanted) {
        if (wanted.test(at)) {
            return Optional.of(at);
        }
        if (at instanceof Composite c) {
            for (Control child : c.getChildren()) {
                Optional<Control> found = in(child, wanted);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private static Button button(int id) {
        return (Button) in(wizard().getShell(), c -> c instanceof Button && Integer.valueOf(id).equals(c.getData()))
                .orElseThrow();
    }

    private void press(int id) {
        desktop.until("the button can be pressed", () -> button(id).isEnabled());
        button(id).notifyListeners(SWT.Selection, new Event());
        desktop.work();
    }

    private String said(String id) {
        return ((Label) desktop.field(id)).getText();
    }

    private void toTheRows(Path file) {
        desktop.press("memory.takeIn");
        ((Text) desktop.field("cards.file")).setText(file.toString());
        press(IDialogConstants.NEXT_ID);
        press(IDialogConstants.NEXT_ID);
        desktop.until("the rows are shown", () -> desktop.shows("cards.rows"));
    }

    private void find() {
        desktop.press("memory.find");
        desktop.until("the search is over", () -> !said("open.past.said").contains("Searching"));
    }

    @Test
    void aCardIsTakenInFoundTakenOverAndConfirmed() throws Exception {
        JobEditor editor = stator();
        Path file = cards("book.csv", "T-1;Astermill;62,5;400;4;48;1-11;5;1,18;8;2;Stern;281,5;180\r\n"
                + "T-2;Astermill;62,5;400;4;48;1-11;f\u00fcnf;1,18;8;2;Stern;281,5;180\r\n"
                + "T-3;Wendlock;20;400;6;36;1-6;9;0,95;4;1;Stern;200;150\r\n");
        toTheRows(file);
        assertTrue(said("cards.summary").startsWith("3 rows: 2 can be taken in, 1 is refused"), said("cards.summary"));
        Table rows = (Table) desktop.field("cards.rows");
        desktop.until("the refused row says why", () -> rows.getItem(1).getText(1).contains("A whole number"));
        assertTrue(rows.getItem(0).getText().equals("2"), "the number of the row in the file");
        press(IDialogConstants.FINISH_ID);
        desktop.until("the cards are in", () -> desktop.shows("cards.done"));
        assertTrue(said("cards.done").contains("2 new cards taken in."), said("cards.done"));
        press(IDialogConstants.FINISH_ID);

        desktop.type("/slots", "48");
        desktop.type("/poles", "4");
        desktop.type("/boreM", "280");
        ((Text) desktop.field("memory.words")).setText("T- Astermill");
        find();
        Table list = (Table) desktop.field("memory.list");
        assertEquals(1, list.getItemCount());
        assertEquals("old card T-1", list.getItem(0).getText(1));
        assertTrue(list.getItem(0).getText(9).contains("bore +0.5 %"), list.getItem(0).getText(9));
        list.select(0);
        list.notifyListeners(SWT.Selection, new Event());
        desktop.press("memory.takeOver");
        desktop.until("the proposal stands", () -> desktop.shows("proposal.confirm"));
        assertEquals("1-11", desktop.text("/span"));
        assertEquals("8", desktop.grid("/wire").model().text(0, 1));
        assertEquals(0.280, data(editor).boreM(), "what was measured here stays");
        assertTrue(said("proposal.mark").contains("PROPOSAL") && said("proposal.mark").contains("old card T-1"));

        editor.document().undo(STATOR);
        desktop.work();
        assertEquals("", desktop.text("/span"), "one step takes all of it back");
        assertFalse(desktop.shows("proposal.confirm"));
        editor.document().redo(STATOR);
        desktop.work();

        assertTrue(proposal(editor).isEmpty() || proposal(editor).get().blocks());
        editor.document().change(STATOR, "/counts", t -> {
            t.putArray("counts").addObject().put("ordinal", 1).put("by", "somebody");
            return t;
        });
        assertTrue(proposal(editor).orElseThrow().blocks(), "the capture waits for the confirmation");
        desktop.press("proposal.confirm");
        assertFalse(desktop.shows("proposal.confirm"));
        assertFalse(proposal(editor).orElseThrow().blocks());
        assertEquals(desktop.session().who(), Optional.of(data(editor).takenOver().get(0).confirmedBy()));
        assertEquals(1, data(editor).counts().stream().map(TurnCount::ordinal).count());
    }

    private Optional<Verdict> proposal(JobEditor editor) {
        return JobChecks.verdicts(editor.document().job(), desktop.session().shop()).stream()
                .filter(v -> v.id().endsWith(".capture.proposal")).findFirst();
    }

    @Test
    void theMappingOfTheMenusImportIsOfferedAgainAndKnownCardsAreRecognised() throws Exception {
        desktop.beSomebody();
        Path file = Files.writeString(folder.resolve("own.csv"), "Ident,N,W,D\nM-1,36,9,25\nM-2,48,5,30\n");
        desktop.command("org.copperbook.winding.command.takeInCards");
        ((Text) desktop.field("cards.file")).setText(file.toString());
        press(IDialogConstants.NEXT_ID);
        choose("cards.field.0", "Card number");
        choose("cards.field.1", "Slots");
        choose("cards.field.2", "Turns per coil");
        choose("cards.field.3", "Bore");
        choose("cards.unit.3", "cm");
        press(IDialogConstants.NEXT_ID);
        desktop.until("the rows are shown", () -> desktop.shows("cards.rows"));
        Table rows = (Table) desktop.field("cards.rows");
        desktop.until("the first row is shown", () -> !rows.getItem(0).getText(0).isEmpty());
        assertEquals("2 | yes | M-1 | 36 | 9 | 250 mm", shown(rows.getItem(0), rows.getColumnCount()));
        press(IDialogConstants.FINISH_ID);
        desktop.until("the cards are in", () -> desktop.shows("cards.done"));
        press(IDialogConstants.FINISH_ID);

        stator();
        toTheRows(file);
        press(IDialogConstants.FINISH_ID);
        desktop.until("the cards are known", () -> desktop.shows("cards.done"));
        assertTrue(said("cards.done").contains("2 cards were in already"), said("cards.done"));
    }

    private static String shown(org.eclipse.swt.widgets.TableItem item, int columns) {
        return java.util.stream.IntStream.range(0, columns).mapToObj(item::getText)
                .collect(java.util.stream.Collectors.joining(" | "));
    }

    private void choose(String id, String word) {
        org.eclipse.swt.widgets.Combo combo = (org.eclipse.swt.widgets.Combo) desktop.field(id);
        combo.select(combo.indexOf(word));
        combo.notifyListeners(SWT.Selection, new Event());
        desktop.work();
    }

    @Test
    void anImportOfTenThousandIsStoppedAndGoesOnLater() throws Exception {
        stator();
        StringBuilder many = new StringBuilder();
        for (int i = 0; i < 10_000; i++) {
            many.append("S-").append(i).append(";Corrow;30;400;4;36;1-8;").append(5 + i % 20)
                    .append(";1,06;3;1;Stern;").append(150 + i % 200).append(",5;140\r\n");
        }
        Path file = cards("many.csv", many.toString());
        toTheRows(file);
        assertTrue(said("cards.summary").startsWith("10,000 rows: 10,000 can be taken in"), said("cards.summary"));
        int before = desktop.session().store().memory().size();
        AtomicBoolean asked = new AtomicBoolean();
        Display display = Display.getCurrent();
        JobStore.Listening listening = desktop.session().store().onChange(change -> {
            if (change.part().equals(Change.CARDS) && asked.compareAndSet(false, true)) {
                display.asyncExec(PastWindingsTest::stop);
            }
        });
        press(IDialogConstants.FINISH_ID);
        desktop.until("the import is over", () -> desktop.shows("cards.done"));
        listening.close();
        int in = desktop.session().store().memory().size() - before;
        assertTrue(in > 0 && in < 10_000, in + " are in");
        assertTrue(said("cards.done").startsWith("Stopped: " + String.format("%,d", in) + " of 10,000 cards are in"),
                said("cards.done"));
        press(IDialogConstants.FINISH_ID);

        toTheRows(file);
        press(IDialogConstants.FINISH_ID);
        desktop.until("the rest is in", () -> desktop.shows("cards.done"));
        assertEquals(10_000, desktop.session().store().memory().size() - before);
        assertTrue(said("cards.done").contains(String.format("%,d", in) + " cards were in already"), said("cards.done"));
        press(IDialogConstants.FINISH_ID);
    }

    /** Presses the stop button beside the progress bar. */
    private static void stop() {
        ToolBar bar = (ToolBar) in(wizard().getShell(), c -> c instanceof ToolBar && c.isVisible()).orElseThrow();
        bar.getItem(0).notifyListeners(SWT.Selection, new Event());
    }

    @Test
    void aBareCoreGetsAFirstWindingOnlyWhenTheFiguresSuffice() throws Exception {
        JobEditor editor = stator();
        PartKey plate = PartKey.parse("nameplate");
        desktop.type("/slots", "36");
        desktop.type("/poles", "6");
        desktop.press("design.compute");
        String missing = said("open.design.said");
        assertTrue(missing.contains("bore") && missing.contains("frequency") && missing.contains("Nothing is assumed"),
                missing);
        assertFalse(desktop.shows("design.list"));
        editor.document().beginWith(plate, desktop.session().json().mapper().createObjectNode().put("schema", 1));
        editor.document().change(plate, "/voltageV", t -> t.put("voltageV", 206.772).put("frequencyHz", 50.0)
                .put("apparentPowerVA", 20_000.0).put("connection", "star"));
        desktop.type("/boreM", "300");
        desktop.type("/coreLengthM", "250");
        desktop.type("/toothWidthM", "13");
        desktop.type("/yokeDepthM", "45");
        ((Text) desktop.field("design.slotArea")).setText("160 mm\u00b2");
        ((Text) desktop.field("design.gap")).setText("0.96");
        ((Text) desktop.field("design.fill")).setText("0.7");
        desktop.press("design.compute");
        Table list = (Table) desktop.field("design.list");
        // McPherson and Laramore, ch. 3 Ex. 1-3: span of five slots, two turns a coil, one circuit at 0.96 T
        assertEquals("1-6", list.getItem(0).getText(0));
        assertEquals("2", list.getItem(0).getText(1));
        assertEquals("1", list.getItem(0).getText(2));
        assertTrue(list.getItem(0).getText(5).startsWith("0.96 \u00b1 0.01"), list.getItem(0).getText(5));
        assertTrue(said("open.design.said").contains("What remains open"));
        list.select(0);
        list.notifyListeners(SWT.Selection, new Event());
        desktop.press("design.takeOver");
        assertEquals("1-6", desktop.text("/span"));
        assertTrue(said("proposal.mark").contains("bare core"), said("proposal.mark"));
    }
}
