package org.copperbook.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkbooksTest {

    @TempDir
    Path folder;
    private BatchRun batch;
    private Path out;

    @BeforeEach
    void begin() {
        batch = new BatchRun(folder);
        out = folder.resolve("books");
    }

    @Test
    void theRecordAndTheQuoteOfAJobAreWritten() {
        takeIn(BatchRun.DEMO.resolve("shop"), Path.of(BatchRun.demoJob("2026-0001-full-rewind")));
        BatchRun.Result r = batch.on("workbooks", "2026-0001", "--out", out.toString());
        assertEquals(0, r.exit(), r.err());
        assertEquals(List.of(out.resolve("2026-0001-quote-1.xlsx").toString(), out.resolve("2026-0001-record.xlsx").toString()),
                r.out().lines().toList());
        String record = WorkbookText.of(out.resolve("2026-0001-record.xlsx"));
        for (String text : new String[] {"2026-0001", "Brackenfold Dairy Co-operative", "W10-20617", "Greta Hollowmarsh",
            "IEEE 43"}) {
            assertTrue(record.contains(text), text + " is missing");
        }
        assertTrue(WorkbookText.of(out.resolve("2026-0001-quote-1.xlsx")).contains("full rewind"));
    }

    @Test
    void theSetOfTheManualEndsInAReleaseRecordWithTheRejectedReading() {
        Path input = Path.of("..", "org.copperbook.jobs", "src", "test", "resources", "real-input");
        takeIn(input.resolve("shop"), input.resolve("60kw-brushless-set.json"));
        JsonNode written = batch.on("workbooks", "2026-0060", "--out", out.toString(), "--json").json().path("workbooks");
        assertEquals(2, written.size());
        String record = WorkbookText.of(out.resolve("2026-0060-record.xlsx"));
        assertTrue(record.contains("TM 9-6115-645-24"), "the manual is named as the source of its limits");
        assertTrue(record.lines().anyMatch(l -> l.contains("Exciter stator") && l.contains("as found")
                && l.toLowerCase(java.util.Locale.ROOT).contains("fails")), "the reading that the manual rejects");
    }

    @Test
    void aShopThatHasNotSaidItsNameStillGetsItsWorkbooks() {
        assertEquals(0, batch.on("take-in", BatchRun.demoJob("2026-0001-full-rewind")).exit());
        BatchRun.Result r = batch.on("workbooks", "2026-0001", "--out", out.toString());
        assertEquals(0, r.exit(), r.err());
        assertTrue(WorkbookText.of(out.resolve("2026-0001-record.xlsx")).contains("Brackenfold Dairy Co-operative"));
        assertTrue(WorkbookText.of(out.resolve("2026-0001-quote-1.xlsx")).contains("full rewind"));
    }

    @Test
    void nothingIsWrittenWhereItCannotBe() throws IOException {
        takeIn(BatchRun.DEMO.resolve("shop"), Path.of(BatchRun.demoJob("2026-0003-cancelled")));
        Path file = Files.writeString(folder.resolve("a-file"), "x");
        BatchRun.Result r = batch.on("workbooks", "2026-0003", "--out", file.toString());
        assertEquals(2, r.exit());
        assertTrue(r.onlyErrorLine().contains("is a file"), r.err());
        assertEquals("x", Files.readString(file));
        assertEquals(2, batch.on("workbooks", "2026-0099", "--out", out.toString()).exit());
        assertFalse(Files.exists(out));
    }

    @Test
    void theDemoGoesThroughAndLeavesOnlyItsWorkbooks() throws IOException {
        BatchRun.Result r = batch.run("demo", "--out", out.toString());
        assertEquals(0, r.exit(), r.err());
        assertEquals("", r.err());
        assertTrue(r.out().contains("2026-0001") && r.out().contains("14 workbooks in " + out), r.out());
        try (Stream<Path> books = Files.list(out)) {
            List<Path> all = books.toList();
            assertEquals(14, all.size());
            all.forEach(b -> assertTrue(WorkbookText.of(b).toLowerCase(java.util.Locale.ROOT).contains("demo"),
                    b + " does not say that it is a demo"));
        }
        assertFalse(Files.exists(folder.resolve("default.sqlite")), "the user's own store is left alone");
    }

    @Test
    void theDemoKeepsItsStoreWhereOneIsNamedAndNeverMixesWithAnother() {
        JsonNode jobs = batch.on("demo", "--out", out.toString(), "--json").json().path("jobs");
        assertEquals(8, jobs.size());
        assertTrue(jobs.get(0).path("verdicts").path("FAILS").asInt() > 0);
        assertEquals(8, batch.on("list", "--json").json().path("jobs").size());
        assertEquals(0, batch.on("verify").exit());
        BatchRun.Result again = batch.on("demo", "--out", out.toString());
        assertEquals(2, again.exit());
        assertTrue(again.onlyErrorLine().contains("holds jobs already"), again.err());
    }

    @Test
    void theDemoSaysWhenItHasNoData() {
        BatchRun.Result r = batch.run("demo", "--data", folder.resolve("nowhere").toString());
        assertEquals(2, r.exit());
        assertTrue(r.onlyErrorLine().contains("--data DIR"));
    }

    private void takeIn(Path shop, Path job) {
        BatchRun.Result r = batch.on("take-in", "--shop", shop.toString(), job.toString());
        assertEquals(0, r.exit(), r.err());
    }
}
