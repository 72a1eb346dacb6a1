package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.copperbook.desk.Desk;
import org.copperbook.desk.command.WorkbookFolder;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.quote.OwnTemplate;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.store.JobStore;
import org.copperbook.store.KeptTemplate;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PartInitException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The quote is written into a template of the workshop's own: the one of the registers, or one of this screen only. */
class OwnTemplateTest {

    private static final String QUOTE = "org.copperbook.desk.command.quoteWorkbook";

    private final Desktop desktop = new Desktop();
    private final IEclipsePreferences preferences = InstanceScope.INSTANCE.getNode(Desk.BUNDLE);

    @TempDir
    Path folder;

    private JobEditor job;

    @BeforeEach
    void open() throws PartInitException {
        job = desktop.open("2026-0001");
        desktop.settle(job);
    }

    @AfterEach
    void leave() {
        preferences.remove(WorkbookFolder.QUOTE_TEMPLATE);
        desktop.closeAll();
        JobStore store = desktop.session().store();
        store.current(JobStore.SHOP, KeptTemplate.KEY).filter(s -> ((OwnTemplate) s.part()).isThere())
                .ifPresent(s -> store.saveShopPart(KeptTemplate.KEY, OwnTemplate.none(), s.number(),
                        desktop.session().who().orElseThrow(), ""));
    }

    private Path template() throws IOException {
        Path file = folder.resolve("ours.xlsx");
        try (OutputStream out = Files.newOutputStream(file); XSSFWorkbook book = new XSSFWorkbook()) {
            XSSFSheet sheet = book.createSheet("Offer");
            sheet.createRow(0).createCell(0).setCellValue("The river bank house rules apply");
            sheet.createRow(1).createCell(0);
            sheet.createRow(3).createCell(0);
            sheet.createRow(6).createCell(0).setCellFormula("6*7");
            name(book, "customer", "Offer!$A$2");
            name(book, "customer_no", "Offer!$A$3");
            name(book, "lines", "Offer!$A$4:$A$4");
            name(book, "line_text", "Offer!$A$4");
            book.write(out);
        }
        return file;
    }

    private static void name(XSSFWorkbook book, String name, String place) {
        XSSFName named = book.createName();
        named.setNameName(name);
        named.setRefersToFormula(place);
    }

    /** What the job says at its top to have gone wrong. */
    private String trouble() {
        if (!desktop.shows("failure")) {
            return "";
        }
        Composite body = (Composite) ((Composite) desktop.field("failure")).getChildren()[0];
        return ((Label) body.getChildren()[0]).getText();
    }

    @Test
    void theTemplateIsFilledAndWhatElseIsInItStays() throws Exception {
        preferences.put(WorkbookFolder.QUOTE_TEMPLATE, template().toString());
        WrittenWorkbook written = WrittenWorkbook.by(desktop, job, QUOTE);
        written.says("The river bank house rules apply");
        written.computes(42);
        var kept = job.document().job();
        written.says(kept.booking().orElseThrow().customer());
        var quotes = kept.keys(PartKind.QUOTE);
        Quote newest = (Quote) kept.part(quotes.get(quotes.size() - 1)).orElseThrow();
        newest.alternatives().get(0).lines().forEach(line -> written.says(line.text()));
    }

    @Test
    void aTemplateThatIsGoneIsToldOfAndNothingIsWritten() throws Exception {
        Path gone = folder.resolve("gone.xlsx");
        preferences.put(WorkbookFolder.QUOTE_TEMPLATE, gone.toString());
        desktop.command(QUOTE);
        desktop.until("the window says which file is missing", () -> trouble().contains("gone.xlsx"));
        preferences.remove(WorkbookFolder.QUOTE_TEMPLATE);
        WrittenWorkbook.by(desktop, job, QUOTE).says(job.document().number());
    }

    private void showThePage() throws Exception {
        desktop.beSomebody();
        desktop.command("org.copperbook.office.command.registers");
        CTabFolder tabs = (CTabFolder) desktop.field("registers.tabs");
        for (CTabItem item : tabs.getItems()) {
            if (item.getText().equals("Quote template")) {
                tabs.setSelection(item);
            }
        }
        tabs.notifyListeners(SWT.Selection, new Event());
        desktop.until("the page is there", () -> label("template.now").equals("Quotes are written as they ship."));
    }

    private String label(String id) {
        return ((Label) desktop.field(id)).getText();
    }

    private void take(Path file) {
        Text path = (Text) desktop.field("template.path");
        path.setText(file.toString());
        path.notifyListeners(SWT.DefaultSelection, new Event());
        desktop.until("the file is looked at", path::isEnabled);
    }

    private void save() {
        desktop.activeEditor().doSave(new NullProgressMonitor());
        desktop.until("it is saved", () -> !desktop.activeEditor().isDirty());
    }

    @Test
    void theWorkshopChoosesItOnceAndItsFileIsNotNeededAnyMore() throws Exception {
        showThePage();
        Path file = template();
        byte[] bytes = Files.readAllBytes(file);
        take(file);
        assertTrue(label("template.now").contains("ours.xlsx"), label("template.now"));
        assertTrue(label("template.said").contains("customer_no"), "its cell would stay empty: " + label("template.said"));
        desktop.command("org.eclipse.ui.edit.undo");
        assertEquals("Quotes are written as they ship.", label("template.now"));
        desktop.command("org.eclipse.ui.edit.redo");
        save();
        Files.delete(file);
        desktop.press("template.copy");
        desktop.until("the copy is written", () -> label("template.said").contains("copy of ours.xlsx"));
        assertArrayEquals(bytes, Files.readAllBytes(WorkbookFolder.current().resolve("copy of ours.xlsx")));
        desktop.page().activate(job);
        WrittenWorkbook.by(desktop, job, QUOTE).says("The river bank house rules apply");
        showThePageAgain();
        desktop.press("template.remove");
        save();
        desktop.page().activate(job);
        WrittenWorkbook shipped = WrittenWorkbook.by(desktop, job, QUOTE);
        assertThrows(AssertionError.class, () -> shipped.says("The river bank house rules apply"));
    }

    private void showThePageAgain() throws Exception {
        desktop.command("org.copperbook.office.command.registers");
        desktop.until("it knows the template", () -> label("template.now").contains("ours.xlsx"));
    }

    @Test
    void whatCannotBeUsedIsRefusedInWordsAndChangesNothing() throws Exception {
        showThePage();
        take(Files.writeString(folder.resolve("notes.xlsx"), "no workbook"));
        assertTrue(label("template.said").contains("notes.xlsx cannot be read as a workbook"), label("template.said"));
        take(folder.resolve("gone.xlsx"));
        assertTrue(label("template.said").contains("gone.xlsx is not there"), label("template.said"));
        assertFalse(desktop.activeEditor().isDirty());
        assertEquals("Quotes are written as they ship.", label("template.now"));
    }
}
