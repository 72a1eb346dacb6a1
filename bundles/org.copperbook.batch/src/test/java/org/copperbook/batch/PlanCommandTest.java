package org.copperbook.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanCommandTest {

    @TempDir
    Path folder;

    /** 2 U + 1000 V for one minute, 400 V machine: IEC 60034-1, table 16 (memory). */
    @Test
    void thePlanNamesLevelCautionsAndState() throws Exception {
        BatchRun batch = new BatchRun(folder);
        assertEquals(0, batch.on("take-in", "--shop", BatchRun.DEMO.resolve("shop").toString(),
                BatchRun.DEMO.resolve("jobs/2026-0001-full-rewind.json").toString()).exit());
        String out = batch.on("plan", "2026-0001").out();
        assertTrue(out.contains("Withstand, Main stator: done; 1800 V ac rms, held 60 s"), out);
        assertTrue(out.contains("cautions acknowledged by name before: Withstand test"), out);
        JsonNode steps = batch.on("plan", "2026-0001", "--json").json().path("steps");
        for (JsonNode s : steps) {
            if (s.path("required").asBoolean()) {
                assertEquals("DONE", s.path("state").asText(), s.path("id").asText() + " of a released job");
            }
        }
        assertTrue(steps.size() > 15, steps.toString());
    }
}
