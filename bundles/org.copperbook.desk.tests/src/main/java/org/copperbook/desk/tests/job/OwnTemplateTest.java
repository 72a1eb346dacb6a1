package org.copperbook.desk.tests.job;

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
import org.copperbook.jobs.quote.Quote;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.PartInitException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The quote is written into the workshop's own template when one is chosen in the preferences. */
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
}
