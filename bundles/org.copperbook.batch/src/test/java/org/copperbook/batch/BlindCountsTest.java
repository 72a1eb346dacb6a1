package org.copperbook.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertIterableEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Without a window the counts of a winding stay as blind to each other as in it. */
class BlindCountsTest {

    private static final String NUMBER = "2026-0007";

    @TempDir
    Path folder;

    /** A motor whose old winding has so many turns and strands everywhere, counted so many times. */
    private BatchRun counted(int turns, int counts) throws IOException {
        ObjectMapper mapper = new ObjectMapper();
        ObjectNode job = (ObjectNode) mapper.readTree(Path.of(BatchRun.demoJob("2026-0007-motor-quoted")).toFile());
        ObjectNode winding = (ObjectNode) job.path("parts").path("winding/motor-stator");
        winding.put("turnsPerCoil", turns);
        winding.findParents("turns").forEach(n -> {
            if (n.path("turns") instanceof ArrayNode list) {
                for (int i = 0; i < list.size(); i++) {
                    list.set(i, turns);
                }
            } else {
                ((ObjectNode) n).put("turns", turns);
            }
        });
        winding.findParents("strands").forEach(n -> ((ObjectNode) n).put("strands", turns));
        ArrayNode list = (ArrayNode) winding.path("counts");
        while (list.size() < counts) {
            list.add(((ObjectNode) list.get(0).deepCopy()).put("ordinal", list.size() + 1).put("by", "p03"));
        }
        Path here = Files.createDirectories(folder.resolve(turns + "-" + counts));
        Path file = Files.writeString(here.resolve("job.json"), mapper.writeValueAsString(job));
        BatchRun batch = new BatchRun(here);
        BatchRun.Result taken = batch.on("take-in", file.toString(), "--shop", BatchRun.DEMO.resolve("shop").toString());
        assertEquals(0, taken.exit(), taken.err());
        return batch;
    }

    private static String told(BatchRun batch) throws IOException {
        Path out = batch.store.resolveSibling("books");
        BatchRun.Result written = batch.on("workbooks", NUMBER, "--out", out.toString());
        assertEquals(0, written.exit(), written.err());
        return batch.on("show", NUMBER).out().replaceAll("\\d{4}-\\d\\d-\\d\\dT\\S+", "")
                + batch.on("show", NUMBER, "--json").json().path("job").path("parts")
                + batch.on("verdicts", NUMBER, "--json").json().path("verdicts")
                + WorkbookText.of(out.resolve(NUMBER + "-record.xlsx")).lines()
                .filter(l -> !l.startsWith("Fingerprint of the record")).collect(Collectors.joining("\n"));
    }

    @Test
    void afterAFirstCountNothingTellsItsTurns() throws IOException {
        BatchRun one = counted(97, 1);
        BatchRun other = counted(93, 1);
        String told = told(one);
        assertTrue(told.contains("motor-stator"));
        assertIterableEquals(told.lines().toList(), told(other).lines().toList(), "the same words, whatever was counted");
        BatchRun.Result refused = one.on("export", NUMBER);
        assertEquals(2, refused.exit());
        assertEquals("", refused.out());
        assertTrue(refused.onlyErrorLine().contains("being counted"), refused.err());
        assertTrue(refused.onlyErrorLine().contains("hand in the second count"), "it says what to do: " + refused.err());
    }

    @Test
    void onceTwoCountsAreInTheyAreTold() throws IOException {
        BatchRun one = counted(97, 2);
        String told = told(one);
        assertTrue(told.contains("\"turns\":[97"));
        assertNotEquals(told, told(counted(93, 2)));
        assertEquals(0, one.on("export", NUMBER).exit());
        assertFalse(one.on("export", NUMBER).out().isBlank());
    }
}
