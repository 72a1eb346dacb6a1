package org.copperbook.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The delivery note without a window. Expected: the tests' own inputs and the words of the two languages. */
class DeliveryNoteCommandTest {

    @TempDir
    Path folder;
    private BatchRun batch;
    private Path out;

    @BeforeEach
    void begin() {
        batch = new BatchRun(folder);
        out = folder.resolve("notes");
    }

    /** Takes in a job and a shop whose customer speaks a language, or none. */
    private void takeIn(String customerLanguage, String handBack) throws IOException {
        Path shop = Files.createDirectories(folder.resolve("shop"));
        Files.writeString(shop.resolve("customers.json"), "{\"old\":{\"schema\":1,\"name\":\"Muehle\",\"mergedInto\":\"k1\"},"
                + "\"k1\":{\"schema\":1,\"name\":\"M\u00fchle Ost\"" + customerLanguage + "}}");
        Path job = Files.writeString(folder.resolve("job.json"), Files.readString(
                Path.of(BatchRun.demoJob("2026-0008-booked-in"))).replaceFirst("\"customerKey\": \"[^\"]+\"",
                "\"customerKey\": \"old\"").replaceFirst("\"parts\": \\{", "\"parts\": {" + handBack));
        BatchRun.Result r = batch.on("take-in", "--shop", shop.toString(), job.toString());
        assertEquals(0, r.exit(), r.err());
    }

    private static String ticked(String language) {
        return "\"hand-back\": {\"schema\":1,\"takenBy\":\"K. Ames\"" + language
                + ",\"items\":[{\"name\":\"grain dryer set\",\"machine\":true,\"back\":true}]},";
    }

    private String note(String... more) {
        String[] all = new String[4 + more.length];
        System.arraycopy(new String[] {"delivery-note", "2026-0008", "--out", out.toString()}, 0, all, 0, 4);
        System.arraycopy(more, 0, all, 4, more.length);
        BatchRun.Result r = batch.on(all);
        assertEquals(0, r.exit(), r.err());
        Path file = out.resolve("2026-0008-delivery-note.xlsx");
        assertEquals(file.toString(), r.out().strip());
        return WorkbookText.of(file);
    }

    @Test
    void itIsInTheLanguageOfTheCustomerThatStaysUnlessAnotherIsNamed() throws IOException {
        takeIn(",\"language\":\"de\"", ticked(""));
        String german = note();
        assertTrue(german.contains("Lieferschein, Auftrag 2026-0008"), german);
        assertTrue(german.contains("grain dryer set") && german.contains("K. Ames"), german);
        assertTrue(note("--language", "en").contains("Delivery note, job 2026-0008"));
    }

    @Test
    void theLanguageWrittenDownGoesBeforeTheCustomers() throws IOException {
        takeIn(",\"language\":\"en\"", ticked(",\"language\":\"de\""));
        assertTrue(note().contains("Lieferschein"));
    }

    @Test
    void withoutAnyItIsEnglish() throws IOException {
        takeIn("", ticked(""));
        assertTrue(note().contains("Delivery note"));
    }

    @Test
    void withoutAnythingTickedThereIsNoneAndItSaysWhatToDo() throws IOException {
        takeIn("", "");
        BatchRun.Result r = batch.on("delivery-note", "2026-0008", "--out", out.toString());
        assertEquals(2, r.exit());
        assertTrue(r.onlyErrorLine().contains("2026-0008") && r.onlyErrorLine().contains("Handing back"), r.err());
        assertFalse(Files.exists(out));
    }

    @Test
    void aLanguageThatThereIsNotIsRefused() throws IOException {
        takeIn("", ticked(""));
        BatchRun.Result r = batch.on("delivery-note", "2026-0008", "--out", out.toString(), "--language", "fr");
        assertEquals(2, r.exit());
        assertTrue(r.onlyErrorLine().contains("\"fr\""), r.err());
        assertFalse(Files.exists(out));
    }
}
