package org.copperbook.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MonthReportCommandTest {

    @TempDir
    Path folder;

    /** Jobs booked in by month, counted from the files themselves. */
    private static Map<String, Integer> bookedByMonth() throws IOException {
        Map<String, Integer> booked = new TreeMap<>();
        try (Stream<Path> files = Files.list(BatchRun.DEMO.resolve("jobs"))) {
            for (Path f : files.toList()) {
                JsonNode parts = new ObjectMapper().readTree(f.toFile()).get("parts");
                if (!List.of("CANCELLED", "MERGED").contains(parts.at("/standing/closure/how").asText())) {
                    booked.merge(parts.at("/booking/bookedAt").asText().substring(0, 7), 1, Integer::sum);
                }
            }
        }
        return booked;
    }

    private static long count(JsonNode report, String kind) {
        long found = 0;
        for (JsonNode line : report.get("lines")) {
            found += line.get("kind").asText().equals(kind) ? line.get("count").asLong() : 0;
        }
        return found;
    }

    @Test
    void theReportOfTheDemoWorkshopCountsWhatItsFilesSay() throws IOException {
        BatchRun batch = new BatchRun(folder);
        assertTrue(batch.on("demo", "--out", folder.resolve("books").toString()).exit() <= 1);
        Map<String, Integer> booked = bookedByMonth();
        assertTrue(booked.size() > 1, booked.toString());
        booked.forEach((month, jobs) -> assertEquals(jobs.longValue(),
                count(batch.on("month-report", month, "--json").json(), "BOOKED"), month));
        BatchRun.Result none = batch.on("month-report", "1999-01");
        assertEquals(0, none.exit());
        assertTrue(none.out().contains("Booked in"), none.out());
    }

    @Test
    void whatIsNoMonthIsRefusedInOneLine() {
        BatchRun batch = new BatchRun(folder);
        batch.on("demo", "--out", folder.resolve("books").toString());
        BatchRun.Result r = batch.on("month-report", "October");
        assertEquals(2, r.exit());
        assertTrue(r.onlyErrorLine().contains("2026-10"), r.err());
    }
}
