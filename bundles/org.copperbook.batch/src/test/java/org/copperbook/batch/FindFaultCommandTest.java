package org.copperbook.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.copperbook.jobs.faults.DefaultFaultTables;
import org.copperbook.jobs.json.PartJson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FindFaultCommandTest {

    private static final PartJson JSON = new PartJson();

    @TempDir
    Path folder;

    private Path job(String run) throws Exception {
        Path file = folder.resolve("job.json");
        Files.writeString(file, """
                {"copperbookJob":1,"number":"2026-0042","parts":{
                "booking":{"schema":1,"machineKind":"BRUSHLESS_ALTERNATOR","reportedFault":"no volts"},
                "fault-finding":{"schema":1,"symptoms":["low-output"],"answers":{"frequency":"right"%s}}}}
                """.formatted(run));
        return file;
    }

    /** Common practice: low and balanced clears the main stator and checks the rectifier first. */
    @Test
    void ranksTheSuspectsAndNamesTheNextTestWithItsCautions() throws Exception {
        BatchRun batch = new BatchRun(folder);
        assertEquals(0, batch.on("take-in", job(",\"separate-excitation\":\"low-balanced\"").toString()).exit());
        String out = batch.on("find-fault", "2026-0042").out();
        assertTrue(out.contains("1  rotating rectifier: "), out);
        assertTrue(out.contains("Main stator sound; check rectifier"), out);
        assertTrue(out.contains("next: Diode readings with the leads lifted?"), out);
        assertTrue(out.contains("! Isolate, lock off and prove dead"), out);
        JsonNode report = batch.on("find-fault", "2026-0042", "--json").json();
        assertEquals("diodes-isolated", report.at("/next/test").asText());
        assertEquals("rectifier", report.at("/suspects/0/id").asText());
    }

    /** The demo machine was found with a shorted diode read in isolation, and its record says so. */
    @Test
    void readingsOfTheRecordAreTakenByThemselves() throws Exception {
        BatchRun batch = new BatchRun(folder);
        assertEquals(0, batch.on("take-in", "--shop", BatchRun.DEMO.resolve("shop").toString(),
                BatchRun.DEMO.resolve("jobs/2026-0001-full-rewind.json").toString()).exit());
        JsonNode taken = batch.on("find-fault", "2026-0001", "--json").json().at("/taken");
        assertTrue(taken.size() > 0, "the record holds readings that answer tests");
        taken.forEach(t -> assertTrue(!t.path("from").asText().isEmpty(), t.toString()));
    }

    @Test
    void theShopsOwnTablesRankAndBrokenOnesAreRefusedWithTheirPlace() throws Exception {
        BatchRun batch = new BatchRun(folder);
        Path shop = Files.createDirectory(folder.resolve("own-shop"));
        ObjectNode own = JSON.tree(DefaultFaultTables.load(JSON));
        ((ObjectNode) own.at("/suspects/0")).put("share", 0.22);
        Files.writeString(shop.resolve("fault-tables.json"), own.toString());
        BatchRun.Result refused = batch.on("take-in", "--shop", shop.toString(), job("").toString());
        assertEquals(2, refused.exit());
        assertTrue(refused.err().contains("add up to 1.12, not 1"), refused.err());
        ((ObjectNode) own.at("/suspects/4")).put("share", 0.10);
        Files.writeString(shop.resolve("fault-tables.json"), own.toString());
        assertEquals(0, batch.on("take-in", "--shop", shop.toString(), job("").toString()).exit());
        JsonNode first = batch.on("find-fault", "2026-0042", "--json").json().at("/suspects/0");
        assertTrue(!first.path("id").asText().isEmpty(), first.toString());
    }
}
