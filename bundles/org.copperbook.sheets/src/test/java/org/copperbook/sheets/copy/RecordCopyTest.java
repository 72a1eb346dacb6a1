package org.copperbook.sheets.copy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.json.JobFile;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.seal.Seal;
import org.copperbook.jobs.shop.Instruments;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.shop.WireStock;
import org.copperbook.jobs.shop.Workshop;
import org.copperbook.sheets.JobRecordWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RecordCopyTest {

    @TempDir
    Path folder;
    private Path file;
    private Job job;

    @BeforeEach
    void aRecordIsWritten() throws Exception {
        file = folder.resolve("record.xlsx");
        try (InputStream in = JobRecordWorkbook.class.getResourceAsStream("sample-job.json")) {
            job = new JobFile(new PartJson()).read(in);
        }
        write(file);
    }

    private void write(Path target) throws Exception {
        Workshop shop = (Workshop) new PartJson().read(org.copperbook.jobs.PartKey.parse("workshop"),
                "{\"schema\":1,\"name\":\"Quarry Lane Rewinds\",\"referenceCelsius\":20,\"copperConstant\":235}");
        new JobRecordWorkbook(ZoneId.of("UTC")).write(job, List.of(), List.of(), new Shop(shop,
                new Instruments(1, null, null), new WireStock(1, null, null),
                org.copperbook.jobs.limits.DefaultLimits.load(new PartJson()), java.util.Map.of()), target);
    }

    private interface Tampering {
        void with(XSSFWorkbook workbook);
    }

    private Path tampered(Tampering tampering) throws Exception {
        Path target = folder.resolve("tampered.xlsx");
        try (InputStream in = Files.newInputStream(file); XSSFWorkbook w = new XSSFWorkbook(in);
                OutputStream out = Files.newOutputStream(target)) {
            tampering.with(w);
            w.write(out);
        }
        return target;
    }

    private static Cell firstText(XSSFWorkbook w, String sheet) {
        for (Row row : w.getSheet(sheet)) {
            for (Cell cell : row) {
                if (cell.getCellType() == CellType.STRING && !cell.getStringCellValue().isBlank()) {
                    return cell;
                }
            }
        }
        throw new AssertionError("no text in " + sheet);
    }

    @Test
    void aCopyNamesItsJobAndTheFingerprintOfItsRecord() throws Exception {
        RecordCopy copy = RecordCopy.read(file);
        assertEquals(new CopyMarks(job.number(), Seal.of(job).fingerprint()), copy.marks());
        assertTrue(copy.cells().values().stream().anyMatch(Seal.of(job).shown()::equals));
    }

    @Test
    void theSameRecordWrittenTwiceSaysTheSame() throws Exception {
        Path again = folder.resolve("again.xlsx");
        write(again);
        assertEquals(RecordCopy.read(file).digest(), RecordCopy.read(again).digest());
    }

    @Test
    void howItLooksMakesNoDifference() throws Exception {
        Path dressed = tampered(w -> {
            XSSFCellStyle style = w.createCellStyle();
            style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
            firstText(w, "Run-up").setCellStyle(style);
            w.getSheetAt(0).setColumnWidth(0, 9999);
        });
        assertEquals(RecordCopy.read(file).digest(), RecordCopy.read(dressed).digest());
    }

    /** Ways to change what a workbook says. */
    enum Way implements Tampering {
        TEXT {
            @Override
            public void with(XSSFWorkbook w) {
                Cell c = firstText(w, "Run-up");
                c.setCellValue(c.getStringCellValue() + ".");
            }
        },
        NEW_CELL {
            @Override
            public void with(XSSFWorkbook w) {
                w.getSheet("Sign-offs").createRow(500).createCell(2).setCellValue("all in order");
            }
        },
        SHEET_GONE {
            @Override
            public void with(XSSFWorkbook w) {
                w.removeSheetAt(w.getSheetIndex("Verdicts"));
            }
        },
        SHEET_NAME {
            @Override
            public void with(XSSFWorkbook w) {
                w.setSheetName(w.getSheetIndex("Run-up"), "Run-up test");
            }
        },
        NUMBER_FOR_TEXT {
            @Override
            public void with(XSSFWorkbook w) {
                firstText(w, "As found").setCellValue(0.25);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Way.class)
    void whateverIsChangedInWhatItSaysShows(Way way) throws Exception {
        RecordCopy written = RecordCopy.read(file);
        RecordCopy altered = RecordCopy.read(tampered(way));
        assertEquals(written.marks(), altered.marks());
        assertNotEquals(written.digest(), altered.digest());
        assertTrue(!written.differences(altered).isEmpty());
    }

    @Test
    void theCellThatWasChangedIsNamedWithBothContents() throws Exception {
        RecordCopy altered = RecordCopy.read(tampered(w -> firstText(w, "Cover").setCellValue("Another Workshop")));
        var differences = RecordCopy.read(file).differences(altered);
        assertEquals(Set.of("Cover!A1"), differences.keySet());
        assertEquals("Another Workshop", differences.get("Cover!A1").there());
        assertTrue(differences.get("Cover!A1").here().contains(job.number()));
    }

    @Test
    void whatIsNoRecordIsRefusedWithTheReason() throws Exception {
        Path text = Files.writeString(folder.resolve("note.xlsx"), "not a workbook");
        Path plain = folder.resolve("plain.xlsx");
        try (XSSFWorkbook w = new XSSFWorkbook(); OutputStream out = Files.newOutputStream(plain)) {
            w.createSheet("x");
            w.write(out);
        }
        Path huge = folder.resolve("huge.xlsx");
        try (java.io.RandomAccessFile f = new java.io.RandomAccessFile(huge.toFile(), "rw")) {
            f.setLength(65L * 1024 * 1024);
        }
        assertEquals(UnreadableCopy.Reason.NO_WORKBOOK, reason(text));
        assertEquals(UnreadableCopy.Reason.NO_RECORD, reason(plain));
        assertEquals(UnreadableCopy.Reason.TOO_LARGE, reason(huge));
        assertEquals(UnreadableCopy.Reason.MISSING, reason(folder.resolve("none.xlsx")));
        assertEquals(UnreadableCopy.Reason.MISSING, reason(folder));
    }

    private static UnreadableCopy.Reason reason(Path file) {
        return assertThrows(UnreadableCopy.class, () -> RecordCopy.read(file)).reason();
    }
}
