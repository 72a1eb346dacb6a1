package org.copperbook.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackupCommandsTest {

    @TempDir
    Path folder;

    private BatchRun batch;

    @BeforeEach
    void demo() {
        batch = new BatchRun(folder);
        assertTrue(batch.on("demo", "--out", folder.resolve("books").toString()).exit() <= 1);
    }

    @Test
    void aBackupIsRestoredByOneCommandAndTheStoreThatWasThereIsKept() {
        int revisions = batch.on("verify", "--json").json().get("revisions").asInt();
        assertTrue(revisions > 50);
        String backup = batch.on("backup", "--json").json().get("file").asText();
        assertTrue(Path.of(backup).startsWith(folder.resolve("backups")), backup);
        assertEquals(0, batch.on("take-in", "--new-number", BatchRun.demoJob(someJob())).exit());
        int more = batch.on("verify", "--json").json().get("revisions").asInt();
        assertTrue(more > revisions);
        BatchRun.Result restored = batch.on("restore", backup, "--json");
        assertEquals(0, restored.exit(), restored.err());
        assertEquals(revisions, batch.on("verify", "--json").json().get("revisions").asInt());
        String aside = restored.json().get("aside").asText();
        assertEquals(more, batch.run("verify", "--json", "--store", aside).json().get("revisions").asInt());
    }

    private static String someJob() {
        String[] names = BatchRun.DEMO.resolve("jobs").toFile().list((d, n) -> n.endsWith(".json"));
        java.util.Arrays.sort(names);
        return names[0].replace(".json", "");
    }

    @Test
    void theWholeWorkshopGoesThroughAnArchiveIntoANewStore() {
        String zip = folder.resolve("shop.zip").toString();
        assertEquals(0, batch.on("archive", zip).exit());
        String other = folder.resolve("other.sqlite").toString();
        BatchRun.Result taken = batch.run("take-in-archive", zip, "--store", other, "--json");
        assertEquals(0, taken.exit(), taken.err());
        assertEquals(batch.on("verify", "--json").json().get("revisions"), taken.json().get("revisions"));
        assertEquals(batch.on("list", "--json").json(), batch.run("list", "--json", "--store", other).json());
        BatchRun.Result twice = batch.run("take-in-archive", zip, "--store", other);
        assertEquals(2, twice.exit());
        assertTrue(twice.onlyErrorLine().contains("holds records already"), twice.err());
    }

    @Test
    void whatIsNoBackupIsRefusedInOneLine() throws Exception {
        Path notes = Files.writeString(folder.resolve("notes.txt"), "milk ".repeat(1000));
        for (String command : new String[] {"restore", "take-in-archive"}) {
            BatchRun.Result r = "restore".equals(command) ? batch.on(command, notes.toString())
                    : batch.run(command, notes.toString(), "--store", folder.resolve("fresh.sqlite").toString());
            assertEquals(2, r.exit());
            assertTrue(r.onlyErrorLine().contains("notes.txt"), r.err());
        }
        assertEquals(2, batch.on("backup", "--keep", "0").exit());
        assertEquals(0, batch.on("verify").exit());
    }
}
