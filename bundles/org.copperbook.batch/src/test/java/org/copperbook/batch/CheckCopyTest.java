package org.copperbook.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCopyTest {

    @TempDir
    Path folder;
    private BatchRun batch;
    private Path file;

    @BeforeEach
    void aReleasedJobIsWritten() {
        batch = new BatchRun(folder);
        assertEquals(0, batch.on("take-in", "--shop", BatchRun.DEMO.resolve("shop").toString(),
                BatchRun.demoJob("2026-0002-shorted-diode")).exit());
        assertEquals(0, batch.on("workbooks", "2026-0002", "--out", folder.toString()).exit());
        file = folder.resolve("2026-0002-record.xlsx");
    }

    /** Changes the first text of the sheet that holds a word, as somebody at a spreadsheet would. */
    private Path altered(String from, String to) throws Exception {
        Path target = folder.resolve("altered.xlsx");
        boolean found = false;
        try (InputStream in = Files.newInputStream(file); XSSFWorkbook w = new XSSFWorkbook(in);
                OutputStream out = Files.newOutputStream(target)) {
            for (Row row : w.getSheet("Verdicts")) {
                for (Cell cell : row) {
                    if (!found && cell.getCellType() == CellType.STRING && cell.getStringCellValue().equals(from)) {
                        cell.setCellValue(to);
                        found = true;
                    }
                }
            }
            w.write(out);
        }
        assertTrue(found, from);
        return target;
    }

    @Test
    void aQuoteWorkbookIsHeldAgainstTheRevisionItWasWrittenFrom() throws Exception {
        Path quote = folder.resolve("2026-0002-quote-1.xlsx");
        BatchRun.Result genuine = batch.on("check-copy", quote.toString());
        assertEquals(0, genuine.exit(), genuine.out() + genuine.err());
        assertTrue(genuine.out().contains("as the store has it"), genuine.out());
        Path cheaper = folder.resolve("cheaper.xlsx");
        String[] place = new String[1];
        try (InputStream in = Files.newInputStream(quote); XSSFWorkbook w = new XSSFWorkbook(in);
                OutputStream out = Files.newOutputStream(cheaper)) {
            for (Row row : w.getSheetAt(1)) {
                Cell price = row.getCell(4);
                if (place[0] == null && price != null && price.getCellType() == CellType.NUMERIC) {
                    price.setCellValue(price.getNumericCellValue() / 2);
                    place[0] = w.getSheetName(1) + "!" + price.getAddress().formatAsString();
                }
            }
            w.write(out);
        }
        BatchRun.Result differs = batch.on("check-copy", cheaper.toString());
        assertEquals(1, differs.exit(), differs.out());
        assertTrue(differs.out().contains(place[0]), differs.out());
        assertEquals(2, differs.out().strip().lines().count(), "the price and nothing else: " + differs.out());
    }

    /** A workbook with one sheet, whose first cell takes the number of the job. */
    private static Path template(Path file, String sheet) throws Exception {
        try (XSSFWorkbook w = new XSSFWorkbook(); OutputStream out = Files.newOutputStream(file)) {
            w.createSheet(sheet).createRow(0).createCell(0);
            var name = w.createName();
            name.setNameName("job_number");
            name.setRefersToFormula(sheet + "!$A$1");
            w.write(out);
        }
        return file;
    }

    private static String firstCell(Path quote, String sheet) throws Exception {
        try (InputStream in = Files.newInputStream(quote); XSSFWorkbook w = new XSSFWorkbook(in)) {
            return w.getSheet(sheet).getRow(0).getCell(0).getStringCellValue();
        }
    }

    @Test
    void theTemplateTakenInWithTheShopIsUsedUnlessAnotherIsNamed() throws Exception {
        Path shop = Files.createDirectory(folder.resolve("shop"));
        template(shop.resolve("quote-template.xlsx"), "Ours");
        BatchRun.Result taken = batch.on("take-in", "--shop", shop.toString());
        assertEquals(0, taken.exit(), taken.err());
        assertFalse(taken.err().contains("quote-template.xlsx"), taken.err());
        Path to = Files.createDirectory(folder.resolve("kept"));
        assertEquals(0, batch.on("workbooks", "2026-0002", "--out", to.toString()).exit());
        assertEquals("2026-0002", firstCell(to.resolve("2026-0002-quote-1.xlsx"), "Ours"));
        Path other = template(folder.resolve("other.xlsx"), "Other");
        assertEquals(0, batch.on("workbooks", "2026-0002", "--out", to.toString(), "--quote-template", other.toString()).exit());
        assertEquals("2026-0002", firstCell(to.resolve("2026-0002-quote-1.xlsx"), "Other"));
    }

    @Test
    void aNameOfTheTemplateThatIsLikeThoseOfQuotesButNoneOfThemIsSaidAndTheTemplateTakenIn() throws Exception {
        Path shop = Files.createDirectory(folder.resolve("shop"));
        Path file = template(folder.resolve("plain.xlsx"), "Ours");
        try (InputStream in = Files.newInputStream(file); XSSFWorkbook w = new XSSFWorkbook(in);
                OutputStream out = Files.newOutputStream(shop.resolve("quote-template.xlsx"))) {
            var name = w.createName();
            name.setNameName("total_brutto");
            name.setRefersToFormula("Ours!$A$2");
            w.write(out);
        }
        BatchRun.Result taken = batch.on("take-in", "--shop", shop.toString());
        assertEquals(0, taken.exit(), taken.err());
        assertTrue(taken.err().contains("total_brutto"), taken.err());
    }

    @Test
    void aShopWhoseTemplateCannotBeUsedIsRefusedInWords() throws Exception {
        Path shop = Files.createDirectory(folder.resolve("shop"));
        Files.writeString(shop.resolve("quote-template.xlsx"), "no workbook");
        BatchRun.Result taken = batch.on("take-in", "--shop", shop.toString());
        assertTrue(taken.exit() != 0 && taken.err().contains("cannot be read as a workbook"), taken.err());
        Files.delete(shop.resolve("quote-template.xlsx"));
        Files.writeString(shop.resolve("quote-template.json"), "{\"schema\":1,\"kept\":\"abc\"}");
        assertTrue(batch.on("take-in", "--shop", shop.toString()).err().contains("quote-template.xlsx"));
    }

    @Test
    void aQuoteIsWrittenIntoATemplateOfTheWorkshopsOwn() throws Exception {
        Path own = template(folder.resolve("own.xlsx"), "Offer");
        Path to = Files.createDirectory(folder.resolve("filled"));
        assertEquals(0, batch.on("workbooks", "2026-0002", "--out", to.toString(), "--quote-template", own.toString()).exit());
        assertEquals("2026-0002", firstCell(to.resolve("2026-0002-quote-1.xlsx"), "Offer"));
        BatchRun.Result none = batch.on("workbooks", "2026-0002", "--out", to.toString(), "--quote-template", "gone.xlsx");
        assertTrue(none.exit() != 0 && none.err().contains("gone.xlsx is not there"), none.err());
    }

    @Test
    void aReleaseWorkbookIsKnownAgainAlsoUnderAnotherName() throws Exception {
        Path copy = Files.copy(file, folder.resolve("from the customer.xlsx"));
        BatchRun.Result r = batch.on("check-copy", copy.toString());
        assertEquals(0, r.exit(), r.out() + r.err());
        assertTrue(r.out().startsWith("Genuine"), r.out());
    }

    @Test
    void writingItTwiceLeavesOneEntry() {
        assertEquals(0, batch.on("workbooks", "2026-0002", "--out", folder.resolve("again").toString()).exit());
        assertEquals(1, batch.on("export", "2026-0002").json().at("/parts/issued-copies/copies").size());
        assertEquals(0, batch.on("check-copy", folder.resolve("again/2026-0002-record.xlsx").toString()).exit());
    }

    @Test
    void aVerdictTurnedByHandIsFoundAndNamed() throws Exception {
        BatchRun.Result r = batch.on("check-copy", altered("fails", "meets").toString());
        assertEquals(1, r.exit());
        assertTrue(r.out().contains("ALTERED"), r.out());
        assertTrue(r.out().lines().anyMatch(l -> l.contains("Verdicts!")
                && l.endsWith("the record says \"fails\", the file says \"meets\"")), r.out());
    }

    @Test
    void aWorkbookOfAReleaseThatWasTakenBackIsCalledOvertaken() throws Exception {
        Path job = Files.writeString(folder.resolve("changed.json"), batch.on("export", "2026-0002").out());
        BatchRun other = new BatchRun(Files.createDirectory(folder.resolve("other")));
        String changed = Files.readString(job).replaceFirst("\"reopenings\"\\s*:\\s*\\[", "\"reopenings\" : [ "
                + "{\"point\":\"RELEASE\",\"because\":\"a reading was mistyped\",\"at\":\"2026-11-01T08:00:00Z\",\"by\":\"foreman\"},");
        if (changed.equals(Files.readString(job))) {
            changed = changed.replaceFirst("\"signatures\"\\s*:", "\"reopenings\" : [{\"point\":\"RELEASE\",\"because\":"
                    + "\"a reading was mistyped\",\"at\":\"2026-11-01T08:00:00Z\",\"by\":\"foreman\"}], \"signatures\" :");
        }
        Files.writeString(job, changed);
        BatchRun.Result in = other.on("take-in", "--shop", BatchRun.DEMO.resolve("shop").toString(), job.toString());
        assertEquals(0, in.exit(), in.err());
        BatchRun.Result r = other.on("check-copy", file.toString());
        assertEquals(1, r.exit(), r.out() + r.err());
        assertTrue(r.out().contains("overtaken"), r.out());
    }

    @Test
    void aWorkbookOfAnotherStoreIsNotIssuedHere() throws Exception {
        BatchRun other = new BatchRun(Files.createDirectory(folder.resolve("other")));
        other.on("take-in", BatchRun.demoJob("2026-0002-shorted-diode"));
        BatchRun.Result r = other.on("check-copy", file.toString());
        assertEquals(1, r.exit());
        assertTrue(r.out().contains("NOT ISSUED HERE"), r.out());
    }

    @Test
    void aJobThatIsNotReleasedIssuesNothing() {
        batch.on("take-in", BatchRun.demoJob("2026-0006-lost-residual"));
        batch.on("workbooks", "2026-0006", "--out", folder.toString());
        assertTrue(batch.on("export", "2026-0006").json().at("/parts/issued-copies").isMissingNode());
        BatchRun.Result r = batch.on("check-copy", folder.resolve("2026-0006-record.xlsx").toString());
        assertEquals(1, r.exit());
        assertTrue(r.out().contains("NOT ISSUED HERE"), r.out());
    }

    @Test
    void whatIsNoRecordIsBadInputInOneLine() throws Exception {
        Path text = Files.writeString(folder.resolve("note.xlsx"), "hello");
        BatchRun.Result r = batch.on("check-copy", text.toString());
        assertEquals(2, r.exit());
        assertTrue(r.onlyErrorLine().contains("note.xlsx"), r.err());
    }

    @Test
    void aTamperedStoreIsFoundByTheAudit() throws Exception {
        assertEquals(0, batch.on("verify").exit());
        try (Connection c = DriverManager.getConnection("jdbc:sqlite:" + batch.store)) {
            c.createStatement().executeUpdate("DROP TRIGGER IF EXISTS revision_keeps_its_text");
            int changed = c.createStatement().executeUpdate(
                    "UPDATE revision SET why = why || '.' WHERE sequence = (SELECT max(sequence) FROM revision)");
            assertEquals(1, changed);
        }
        BatchRun.Result r = batch.on("verify");
        assertEquals(1, r.exit(), r.out());
        assertFalse(r.out().isBlank());
    }
}
