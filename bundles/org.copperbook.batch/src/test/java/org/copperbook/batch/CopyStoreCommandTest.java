package org.copperbook.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.copperbook.store.engines.TestServer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CopyStoreCommandTest {

    @TempDir
    Path folder;

    private BatchRun batch;
    private String server;

    @BeforeEach
    void demo() throws Exception {
        batch = new BatchRun(folder);
        server = TestServer.shared().newDatabase().toString();
        batch.password(TestServer.PASSWORD);
        assertTrue(batch.on("demo", "--out", folder.resolve("books").toString()).exit() <= 1);
    }

    @Test
    void theDemoWorkshopGoesToAServerAndBackWithEveryHash() {
        JsonNode there = json(batch.run("copy-store", batch.store.toString(), server, "--json"));
        String back = folder.resolve("back.sqlite").toString();
        JsonNode again = json(batch.run("copy-store", server, back, "--json"));
        for (String same : new String[] {"jobs", "revisions", "people", "lastHash"}) {
            assertEquals(there.get(same), again.get(same), same);
        }
        assertTrue(there.get("revisions").asInt() > 50);
        assertEquals(0, batch.run("verify", "--connection", server).exit());
        assertEquals(batch.run("list", "--store", back).out(), batch.run("list", "--connection", server).out());
        BatchRun.Result twice = batch.run("copy-store", batch.store.toString(), server);
        assertEquals(2, twice.exit());
        assertTrue(twice.onlyErrorLine().contains("nothing was taken in"), twice.err());
    }

    @Test
    void aPasswordIsNeverTakenFromAnArgumentAndNeverRepeated() {
        String withPassword = server.replace("@", ":letmein@");
        BatchRun.Result refused = batch.run("list", "--connection", withPassword);
        assertEquals(2, refused.exit());
        assertFalse(refused.err().contains("letmein"), refused.err());
        batch.password("guessed");
        BatchRun.Result wrong = batch.run("list", "--connection", server);
        assertEquals(2, wrong.exit());
        assertTrue(wrong.onlyErrorLine().contains("password"), wrong.err());
        assertFalse(wrong.err().contains("guessed"), wrong.err());
        batch.password(null);
        BatchRun.Result none = batch.run("list", "--connection", server);
        assertTrue(none.onlyErrorLine().contains(StorePlace.PASSWORD), none.err());
    }

    @Test
    void theRolesOfAServersDatabaseAreMadeAndAFileHasNone() throws Exception {
        assertEquals(0, batch.run("copy-store", batch.store.toString(), server).exit());
        BatchRun.Result done = batch.run("grant-roles", server);
        assertEquals(0, done.exit(), done.err());
        assertTrue(done.out().contains("GRANT copperbook_winder TO"), done.out());
        BatchRun.Result file = batch.run("grant-roles", batch.store.toString());
        assertEquals(2, file.exit());
        assertTrue(file.onlyErrorLine().contains("is no server"), file.err());
    }

    private static JsonNode json(BatchRun.Result result) {
        assertEquals(0, result.exit(), result.err());
        return result.json();
    }
}
