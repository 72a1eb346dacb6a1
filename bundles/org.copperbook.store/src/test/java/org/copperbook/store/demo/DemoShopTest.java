package org.copperbook.store.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.JobFile;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.sqlite.SqliteJobStore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DemoShopTest {

    private static final Path SHIPPED = Path.of("..", "..", "demo-data").toAbsolutePath().normalize();

    @TempDir
    Path folder;

    @Test
    void theShippedDemoComesIntoTheStoreWholeAndOnlyOnce() throws Exception {
        try (JobStore store = SqliteJobStore.open(folder.resolve("demo.sqlite"))) {
            List<JobHandle> jobs = new DemoShop(SHIPPED).load(store);
            assertTrue(jobs.size() >= 6, jobs.toString());
            assertTrue(store.shop().workshop().demo());
            assertTrue(store.persons().size() >= 6);
            assertTrue(store.audit().passed());
            assertEquals(List.of(), new DemoShop(SHIPPED).load(store));
            assertEquals(jobs.size(), store.register(RegisterQuery.first(1)).total());
            PartJson json = new PartJson();
            for (Path file : Files.list(SHIPPED.resolve("jobs")).toList()) {
                Job original = new JobFile(json).read(Files.newInputStream(file));
                assertEquals(original, store.load(store.idOf(original.number()).orElseThrow()));
            }
        }
    }

    private Path copy(String workshop, String people, String job) throws IOException {
        Path demo = folder.resolve("demo-data");
        Files.createDirectories(demo.resolve("shop"));
        Files.createDirectories(demo.resolve("jobs"));
        Files.writeString(demo.resolve("shop").resolve("workshop.json"), workshop.replace('\'', '"'));
        Files.writeString(demo.resolve("shop").resolve("people.json"), people.replace('\'', '"'));
        Files.writeString(demo.resolve("jobs").resolve("one.json"), job.replace('\'', '"'));
        return demo;
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "{'schema':1,'demo':true} | [] | {'copperbookJob':1,'parts':{'booking':{'schema':1,'photos':5}}} | one.json",
        "{'schema':1,'demo':true} | [] | {'copperbookJob':1, | one.json",
        "{'schema':1,'demo':true} | {'key':1 | {'copperbookJob':1,'parts':{}} | people.json",
        "{'schema':1} | [] | {'copperbookJob':1,'parts':{}} | workshop.json",
        "{'schema':'x'} | [] | {'copperbookJob':1,'parts':{}} | workshop.json"})
    void aBadFileIsNamedAndTheStoreStaysEmpty(String workshop, String people, String job, String named)
            throws IOException {
        Path demo = copy(workshop, people, job);
        try (JobStore store = SqliteJobStore.open(folder.resolve("demo.sqlite"))) {
            BadRecordException e = assertThrows(BadRecordException.class, () -> new DemoShop(demo).load(store));
            assertTrue(e.getMessage().startsWith(named), e.getMessage());
            assertEquals(0, store.register(RegisterQuery.first(1)).total());
            assertTrue(store.persons().isEmpty());
        }
    }
}
