package org.copperbook.sheets;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.JobChecks;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Odd texts in booking, plate and inspection: in the record they are text and whole. */
class HostileRecordTest {

    private static final PartJson JSON = new PartJson();

    @TempDir
    Path folder;

    private static Job with(String text) throws BadRecordException {
        String t = text.replace("\\", "\\\\").replace("\"", "\\\"");
        return new Job("j", "2026-0001", Map.of())
                .with(PartKey.of(PartKind.BOOKING), JSON.read(PartKey.of(PartKind.BOOKING),
                        "{\"schema\":1,\"customer\":\"" + t + "\",\"machine\":\"" + t + "\",\"reportedFault\":\"" + t + "\"}"))
                .with(PartKey.of(PartKind.NAMEPLATE), JSON.read(PartKey.of(PartKind.NAMEPLATE), "{\"schema\":1,\"maker\":\"" + t
                        + "\",\"serial\":\"" + t + "\",\"standard\":\"" + t + "\",\"otherRatings\":[{\"connection\":\"" + t + "\"}]}"))
                .with(PartKey.of(PartKind.INSPECTION), JSON.read(PartKey.of(PartKind.INSPECTION),
                        "{\"schema\":1,\"checklist\":[{\"area\":\"" + t + "\",\"point\":\"" + t + "\",\"note\":\"" + t
                                + "\"}],\"findings\":[{\"where\":\"" + t + "\",\"text\":\"" + t + "\"}],\"fits\":[{\"zone\":\"" + t
                                + "\",\"nominalMm\":40,\"measuredMm\":40.01,\"note\":\"" + t + "\"}],\"recommendedScope\":\"" + t + "\"}"));
    }

    private ReadBack written(Job job) throws Exception {
        Path file = folder.resolve("record.xlsx");
        new JobRecordWorkbook(ZoneId.of("UTC")).write(job, JobChecks.verdicts(job, SampleShop.shop()),
                SampleVerdicts.holdPoints(false), SampleShop.shop(), file);
        return new ReadBack(file);
    }

    @ParameterizedTest
    @ValueSource(strings = {"=cmd|' /C calc'!A0", "=HYPERLINK(\"x\")", "@SUM(1)", "+1+1", "-2+3", "مصنع الأمل للمحركات",
        "東方電機製作所", "_x0041_", "<b>&amp;"})
    void everyTextIsACellOfTextAndWhole(String text) throws Exception {
        try (ReadBack book = written(with(text))) {
            int seen = 0;
            for (Sheet s : book.workbook()) {
                for (Row r : s) {
                    for (Cell c : r) {
                        assertTrue(c.getCellType() != CellType.FORMULA, s.getSheetName() + " " + c.getAddress());
                        seen += c.getCellType() == CellType.STRING && c.getStringCellValue().equals(text) ? 1 : 0;
                    }
                }
            }
            assertTrue(seen >= 8, "it stands in the record " + seen + " times");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"recommendedScope\":\"%s\"", "\"findings\":[{\"text\":\"%s\"}]",
        "\"checklist\":[{\"point\":\"%s\"}]", "\"fits\":[{\"note\":\"%s\"}]"})
    void aVeryLongTextLosesNothing(String field) throws Exception {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < 9000; i++) {
            words.append("word").append(i).append(' ');
        }
        String text = words.toString().strip();
        Job job = new Job("j", "2026-0001", Map.of()).with(PartKey.of(PartKind.INSPECTION), JSON.read(
                PartKey.of(PartKind.INSPECTION), "{\"schema\":1," + field.formatted(text) + "}"));
        try (ReadBack book = written(job)) {
            // a text may be broken over rows and lines, anywhere between two words
            String all = String.join(" ", book.texts()).replace('\n', ' ') + " ";
            for (int i = 0; i < 9000; i += 500) {
                assertTrue(all.contains("word" + i + " "), "word" + i);
            }
            assertTrue(all.contains("word8999"));
        }
    }
}
