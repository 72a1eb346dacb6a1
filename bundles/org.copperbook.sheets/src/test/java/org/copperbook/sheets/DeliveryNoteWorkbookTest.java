package org.copperbook.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Map;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.customer.Customer;
import org.copperbook.jobs.handback.HandBack;
import org.copperbook.jobs.json.PartJson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What goes back, on paper; every expected text is the test's own. */
class DeliveryNoteWorkbookTest {

    @TempDir
    Path folder;

    private List<String> written(String language) throws Exception {
        PartKey booking = PartKey.of(PartKind.BOOKING);
        HandBack back = new HandBack(1, null, null, List.of(new HandBack.Item("pump set", true, true, null, null),
                new HandBack.Item("fan", null, false, "=cmd|' /C calc'!A0", null), new HandBack.Item("keys", null, null, null, null)),
                "the fan was replaced", LocalDate.of(2026, 5, 4), "K. Ames", language, null, null);
        Job job = new Job("id", "2026-0042", Map.of(booking, new PartJson().read(booking,
                "{\"schema\":1,\"customer\":\"Harbour Ice\",\"machine\":\"pump set\",\"orderNo\":\"PO 77\","
                        + "\"parts\":[{\"name\":\"fan\",\"received\":true}]}"), PartKey.of(PartKind.HAND_BACK), back));
        Path target = folder.resolve("note.xlsx");
        new DeliveryNoteWorkbook().write(job, back, SampleShop.shop(),
                DeliveryNoteWorkbook.language(back, Optional.empty()), target);
        List<String> texts = new ArrayList<>();
        try (XSSFWorkbook book = new XSSFWorkbook(target.toFile().getPath())) {
            assertEquals(PrintSetup.A4_PAPERSIZE, book.getSheetAt(0).getPrintSetup().getPaperSize());
            book.getSheetAt(0).forEach(r -> r.forEach(c -> {
                assertTrue(c.getCellType() != CellType.FORMULA, "no text of people becomes a formula");
                if (c.getCellType() == CellType.STRING) {
                    texts.add(c.getStringCellValue());
                }
            }));
        }
        return texts;
    }

    @Test
    void itSaysForWhomAndWhatGoesBackAndWhy() throws Exception {
        List<String> texts = written(null);
        assertTrue(texts.containsAll(List.of("Delivery note, job 2026-0042", "Harbour Ice", "PO 77", "pump set", "fan",
                "the fan was replaced", "K. Ames", "Signature")), texts.toString());
        assertEquals("yes", texts.get(texts.lastIndexOf("pump set") + 1));
        assertEquals("no", texts.get(texts.indexOf("fan") + 1));
        assertTrue(!texts.contains("keys"), "what was not ticked is not on the note: " + texts);
    }

    @Test
    void headingsOfALongListStandOnEveryPageOfIt() throws Exception {
        List<HandBack.Item> items = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            items.add(new HandBack.Item("part " + i, null, true, null, null));
        }
        HandBack back = new HandBack(1, null, null, items, null, null, null, null, null, null);
        Path target = folder.resolve("long.xlsx");
        new DeliveryNoteWorkbook().write(new Job("id", "2026-0042", Map.of(PartKey.of(PartKind.HAND_BACK), back)), back,
                SampleShop.shop(), Locale.GERMAN, target);
        try (XSSFWorkbook book = new XSSFWorkbook(target.toFile().getPath())) {
            int row = book.getSheetAt(0).getRepeatingRows().getFirstRow();
            assertEquals("Was", book.getSheetAt(0).getRow(row).getCell(0).getStringCellValue());
            assertEquals("part 0", book.getSheetAt(0).getRow(row + 1).getCell(0).getStringCellValue());
        }
    }

    @Test
    void theLanguageIsThePagesElseTheCustomersElseEnglish() {
        Customer german = new Customer(1, "x", null, null, null, null, null, "de", null, null, null, null, null, null);
        assertEquals(Locale.GERMAN, DeliveryNoteWorkbook.language(in(null), Optional.of(german)));
        assertEquals(Locale.ENGLISH, DeliveryNoteWorkbook.language(in("en"), Optional.of(german)));
        assertEquals(Locale.GERMAN, DeliveryNoteWorkbook.language(in(" "), Optional.of(german)));
        assertEquals(Locale.ENGLISH, DeliveryNoteWorkbook.language(in("?!"), Optional.empty()));
    }

    private static HandBack in(String language) {
        return new HandBack(1, null, null, null, null, null, null, language, null, null);
    }

    @Test
    void itIsGermanWhereThatIsAskedForAndEnglishForLanguagesNotShipped() throws Exception {
        List<String> german = written("de");
        assertTrue(german.containsAll(List.of("Lieferschein, Auftrag 2026-0042", "Unterschrift", "ja", "nein")), german.toString());
        assertTrue(written("fr").contains("Signature"));
    }
}
