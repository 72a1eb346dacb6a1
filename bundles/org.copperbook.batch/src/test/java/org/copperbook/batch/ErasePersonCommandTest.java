package org.copperbook.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ErasePersonCommandTest {

    private static final String CUSTOMER = "Quillhaven Harbour Board";
    private static final String CONTACT = "c02";

    @TempDir
    Path folder;

    private BatchRun batch;

    @BeforeEach
    void aReleasedJobIsWritten() {
        batch = new BatchRun(folder);
        assertEquals(0, batch.on("take-in", "--shop", BatchRun.DEMO.resolve("shop").toString(),
                BatchRun.demoJob("2026-0002-shorted-diode")).exit());
        assertEquals(0, batch.on("workbooks", "2026-0002", "--out", folder.toString()).exit());
    }

    private JsonNode person(String field, String value) {
        return StreamSupport.stream(batch.on("people", "--json").json().get("people").spliterator(), false)
                .filter(p -> value.equals(p.get(field).asText())).findFirst().orElse(null);
    }

    @Test
    void contactAndCustomerGoAndAReleasedWorkbookKeepsItsFingerprint() {
        JsonNode before = batch.on("export", "2026-0002").json();
        assertEquals("2026-0002", person("key", CONTACT).at("/jobs/0").asText());
        assertEquals(0, batch.on("erase-person", CONTACT).exit());
        BatchRun.Result r = batch.on("erase-person", person("name", CUSTOMER).get("key").asText());
        assertEquals(0, r.exit(), r.err());
        assertTrue(r.out().contains("2026-0002"), r.out());
        assertEquals(null, person("name", CUSTOMER));
        assertEquals(null, person("key", CONTACT));
        assertFalse(batch.on("list").out().contains("Quillhaven"));
        assertEquals(0, batch.on("verify").exit());
        JsonNode after = batch.on("export", "2026-0002").json();
        assertEquals(before.at("/parts/sign-offs"), after.at("/parts/sign-offs"));
        assertEquals(before.at("/parts/issued-copies"), after.at("/parts/issued-copies"));
        BatchRun.Result copy = batch.on("check-copy", folder.resolve("2026-0002-record.xlsx").toString());
        assertEquals(0, copy.exit(), copy.out() + copy.err());
        assertTrue(copy.out().startsWith("Genuine"), copy.out());
        assertEquals(0, batch.on("workbooks", "2026-0002", "--out", folder.resolve("again").toString()).exit());
    }

    @Test
    void aKeyThatIsNotThereIsRefusedInOneLine() {
        BatchRun.Result r = batch.on("erase-person", "nobody");
        assertEquals(2, r.exit());
        assertTrue(r.onlyErrorLine().contains("nobody"), r.err());
    }

    @Test
    void withoutALimitNothingIsDue() {
        BatchRun.Result r = batch.on("erase-due", "--yes");
        assertEquals(0, r.exit());
        assertTrue(r.onlyErrorLine().contains("keepNamesMonths"), r.err());
    }
}
