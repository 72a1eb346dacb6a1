package org.copperbook.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The job record as another spreadsheet program reads it. */
@Tag("libreoffice")
class LibreOfficeRecordTest {

    @TempDir
    Path folder;

    @Test
    void everyTextAndEveryBarArrivesInAnotherProgram() throws Exception {
        Path file = folder.resolve("record.xlsx");
        new JobRecordWorkbook(ZoneId.of("Europe/Berlin")).write(SampleRecord.job(), SampleVerdicts.all(),
                SampleVerdicts.holdPoints(true), SampleShop.shop(), file);
        LibreOffice office = new LibreOffice(folder);
        try (ReadBack ours = new ReadBack(file);
                ReadBack theirs = new ReadBack(office.convert(file, "xlsx", folder.resolve("made")))) {
            assertEquals(said(ours), said(theirs));
            for (int i = 0; i < ours.workbook().getNumberOfSheets(); i++) {
                assertEquals(bars(ours, i), bars(theirs, i), ours.workbook().getSheetName(i));
            }
        }
        assertEquals("%PDF", new String(Files.readAllBytes(office.convert(file, "pdf", folder.resolve("made"))), 0, 4,
                java.nio.charset.StandardCharsets.US_ASCII));
    }

    private static List<String> said(ReadBack book) {
        return book.texts().stream().filter(t -> !t.isEmpty()).toList();
    }

    private static int bars(ReadBack book, int sheet) {
        XSSFSheet s = book.workbook().getSheetAt(sheet);
        XSSFDrawing drawing = s.getDrawingPatriarch();
        return drawing == null ? 0 : drawing.getShapes().size();
    }
}
