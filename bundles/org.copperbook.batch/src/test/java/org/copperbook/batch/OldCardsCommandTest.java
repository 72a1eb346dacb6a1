package org.copperbook.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.copperbook.sheets.cards.CardTable;
import org.copperbook.sheets.cards.TableRow;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Old winding cards of the demo workshop are taken in without a window; faulty rows are named and left out. */
class OldCardsCommandTest {

    private static final String BOOK_A = BatchRun.DEMO.resolve("old-cards/winding-book-a.csv").toString();
    private static final String CARDS_B = BatchRun.DEMO.resolve("old-cards/winding-cards-b.xlsx").toString();

    @TempDir
    Path folder;

    private BatchRun batch;

    @BeforeEach
    void begin() {
        batch = new BatchRun(folder);
    }

    private static TreeSet<Integer> rows(JsonNode said) {
        TreeSet<Integer> rows = new TreeSet<>();
        said.path("left").forEach(l -> rows.add(l.path("row").asInt()));
        return rows;
    }

    @Test
    void theTextFileIsReadAsItIsMadeAndItsFaultyRowsAreNamed() {
        BatchRun.Result r = batch.on("take-in-cards", BOOK_A, "--json");
        assertEquals(0, r.exit(), r.err());
        JsonNode said = r.json();
        assertEquals(40, said.path("rows").asInt());
        // turns in words, odd poles, a span of one number and one outside the core, a bore of 270 m, no wire size
        assertEquals(6, said.path("refused").asInt());
        assertEquals(33, said.path("new").asInt());
        assertEquals(1, said.path("contradicting").asInt(), "two cards of one number that say different turns");
        assertEquals(new TreeSet<>(List.of(10, 16, 23, 29, 34, 37, 40)), rows(said));
    }

    @Test
    void theWorkbookIsReadWithItsDatesFormulasAndErrors() {
        BatchRun.Result r = batch.on("take-in-cards", CARDS_B, "--json");
        assertEquals(0, r.exit(), r.err());
        JsonNode said = r.json();
        assertEquals(80, said.path("rows").asInt());
        assertEquals(new TreeSet<>(List.of(12, 20, 26, 34, 47, 55, 63, 69)), rows(said));
        assertEquals(72, said.path("new").asInt());
        assertTrue(r.err().contains("formula") && r.err().contains("merged"), r.err());
        assertTrue(r.out().contains("9-1 or 1-9"), "the span that became a date is named");
    }

    @Test
    void aSecondTimeEveryCardIsRecognised() {
        batch.on("take-in-cards", CARDS_B);
        JsonNode said = batch.on("take-in-cards", CARDS_B, "--json").json();
        assertEquals(0, said.path("new").asInt());
        assertEquals(72, said.path("known").asInt());
        assertEquals(0, batch.on("verify").exit());
    }

    @Test
    void aMappingIsWrittenCorrectedAndUsed() throws Exception {
        Path mapping = folder.resolve("mapping.json");
        Path table = Files.writeString(folder.resolve("t.csv"), "Number,Hole,Turns\nx,25,5\ny,30,6\n");
        batch.run("take-in-cards", table.toString(), "--dry-run", "--write-mapping", mapping.toString());
        String written = Files.readString(mapping);
        assertTrue(written.contains("\"Hole\""), written);
        Files.writeString(mapping, written.replaceAll("(\"header\" : \"Hole\")", "$1,\n \"field\" : \"bore\", \"unit\" : \"cm\"")
                .replace("main-stator", "motor-stator"));
        BatchRun.Result r = batch.on("take-in-cards", table.toString(), "--mapping", mapping.toString());
        assertEquals(0, r.exit(), r.err());
        assertTrue(r.out().startsWith("2 rows: 2 new cards"), r.out());
        BatchRun.Result other = batch.on("take-in-cards", BOOK_A, "--mapping", mapping.toString());
        assertEquals(2, other.exit());
        assertTrue(other.onlyErrorLine().contains("other titles"), other.err());
    }

    @Test
    void theRowsLeftOutGoIntoAReport() throws Exception {
        Path report = folder.resolve("left.xlsx");
        BatchRun.Result r = batch.on("take-in-cards", BOOK_A, "--report", report.toString());
        assertEquals(0, r.exit(), r.err());
        assertEquals(1, r.out().lines().count(), r.out());
        List<TableRow> rows = new ArrayList<>();
        CardTable table = CardTable.open(report);
        table.read(table.detected(), rows::add);
        assertEquals(1 + 7, rows.size(), "titles and seven rows");
        assertEquals("10", rows.get(1).cell(0).text());
        assertEquals("f\u00fcnf", rows.get(1).cell(2).text());
    }

    @Test
    void aFileThatIsNoTableLeavesNotEvenAStore() throws Exception {
        Path page = Files.writeString(folder.resolve("page.xlsx"), "<html><body>no</body></html>");
        BatchRun.Result r = batch.on("take-in-cards", page.toString());
        assertEquals(2, r.exit());
        assertTrue(r.onlyErrorLine().contains("web page"), r.err());
        assertFalse(Files.exists(batch.store));
    }

    @Test
    void aDryRunTakesNothingIn() {
        BatchRun.Result r = batch.on("take-in-cards", CARDS_B, "--dry-run");
        assertEquals(0, r.exit(), r.err());
        assertTrue(r.out().contains("80 rows, of which 8 would be refused"), r.out());
        assertFalse(Files.exists(batch.store));
    }
}
