package org.copperbook.sheets.cards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Damaged and hostile workbooks of old winding cards: each is read or refused in words, none crashes the reader or keeps
 * it busy for good. Few in the daily build, 20,000 with {@code -Pfuzz}.
 */
@Timeout(1800)
class WorkbookFuzzTest {

    private static final int INPUTS = Integer.getInteger("copperbook.fuzz", 300);
    private static final String TEXTS = "xl/sharedStrings.xml";
    private static final String SHEET = "xl/worksheets/sheet1.xml";
    private static final String[] POISON = {"<!DOCTYPE a [<!ENTITY b SYSTEM \"file:///etc/passwd\">]>", "&b;", "</row>",
        "<c r=\"ZZZZ99999999\"/>", "count=\"2000000000\"", "r=\"-1\"", "\u0000", "1e999999999", "<![CDATA[", "'", "-2147483649",
        "../../../escaped", "=cmd|' /C calc'!A0"};

    @TempDir
    Path folder;

    private final Random random = new Random(20261126);

    @Test
    void workbooksAreReadOrRefusedInWords() throws Exception {
        byte[] raw = sound();
        Map<String, byte[]> content = content(raw);
        List<String> names = new ArrayList<>(content.keySet());
        int read = 0;
        int refused = 0;
        for (int i = 0; i < INPUTS; i++) {
            byte[] bytes;
            if (random.nextInt(4) == 0) {
                bytes = damaged(raw);
            } else {
                // Packed anew, so that what is inside is looked at.
                Map<String, byte[]> other = new LinkedHashMap<>(content);
                String name = names.get(random.nextInt(names.size()));
                other.put(name, damaged(other.get(name)));
                bytes = zip(other);
            }
            Path file = Files.write(folder.resolve("damaged.xlsx"), bytes);
            try {
                rows(file);
                read++;
            } catch (UnreadableTableException e) {
                refused++;
                assertFalse(e.getMessage().isBlank());
            } catch (RuntimeException | Error e) {
                Files.write(Path.of("target", "crash-" + i + ".xlsx"), bytes);
                fail("workbook " + i + " was neither read nor refused in words", e);
            }
        }
        assertTrue(read > 0 && refused > 0, read + " read, " + refused + " refused");
        System.out.printf("fuzz, workbooks: %d read, %d refused in words, 0 crashes%n", read, refused);
    }

    @Test
    void anEntityOfAnotherFileIsNotReadIn() throws Exception {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "the secret of the shop");
        Map<String, byte[]> content = content(sound());
        String texts = text(content, TEXTS);
        int root = texts.indexOf("<sst");
        content.put(TEXTS, bytes(texts.substring(0, root) + "<!DOCTYPE sst [<!ENTITY b SYSTEM \"" + secret.toUri()
                + "\">]>" + texts.substring(root).replaceFirst("Harbour Works", "&b;")));
        Path file = Files.write(folder.resolve("entity.xlsx"), zip(content));
        try {
            assertFalse(rows(file).toString().contains("secret"), "read in");
        } catch (UnreadableTableException e) {
            assertFalse(e.getMessage().contains("the secret"), e.getMessage());
        }
    }

    @Test
    void aCountThatIsALieReservesNothing() throws Exception {
        Map<String, byte[]> content = content(sound());
        String lie = text(content, TEXTS).replaceFirst(" count=\"\\d+\"", " count=\"2147483647\"")
                .replaceFirst(" uniqueCount=\"\\d+\"", " uniqueCount=\"2147483647\"");
        assertTrue(lie.contains("uniqueCount=\"2147483647\""), "the count is lied about");
        content.put(TEXTS, bytes(lie));
        Path file = Files.write(folder.resolve("count.xlsx"), zip(content));
        try {
            assertEquals(rows(Files.write(folder.resolve("sound.xlsx"), sound())).toString(), rows(file).toString());
        } catch (UnreadableTableException e) {
            assertFalse(e.getMessage().isBlank());
        }
    }

    @Test
    void aRowOfANumberBeyondEverySheetIsOneRowAndNotAllThoseBefore() throws Exception {
        Map<String, byte[]> content = content(sound());
        String sheet = text(content, SHEET);
        assertTrue(sheet.contains("<row r=\"3\""), sheet);
        content.put(SHEET, bytes(sheet.replace("<row r=\"3\"", "<row r=\"1000000000\"")));
        Path file = Files.write(folder.resolve("row.xlsx"), zip(content));
        int all = rows(Files.write(folder.resolve("sound.xlsx"), sound())).size();
        assertEquals(all, rows(file).size());
    }

    @Test
    void namesThatLeadOutOfTheFolderWriteNothing() throws Exception {
        Map<String, byte[]> content = content(sound());
        content.put("../escaped.txt", new byte[] {1});
        content.put("xl/media/../../../escaped.png", new byte[] {1});
        Path room = Files.createDirectories(folder.resolve("a/b/c"));
        Path file = Files.write(room.resolve("names.xlsx"), zip(content));
        try {
            rows(file);
        } catch (UnreadableTableException e) {
            assertFalse(e.getMessage().isBlank());
        }
        try (var all = Files.walk(folder)) {
            assertTrue(all.noneMatch(p -> p.getFileName().toString().startsWith("escaped")));
        }
    }

    private static List<TableRow> rows(Path file) throws UnreadableTableException {
        List<TableRow> rows = new ArrayList<>();
        CardFile.open(file).rows(row -> {
            rows.add(row);
            return true;
        });
        return rows;
    }

    private static byte[] sound() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            var sheet = book.createSheet("Cards");
            String[] titles = {"Card", "Maker", "Slots", "Poles", "Bore mm", "Turns"};
            Row head = sheet.createRow(0);
            for (int c = 0; c < titles.length; c++) {
                head.createCell(c).setCellValue(titles[c]);
            }
            for (int r = 1; r <= 20; r++) {
                Row row = sheet.createRow(r);
                row.createCell(0).setCellValue("K" + r);
                row.createCell(1).setCellValue("Harbour Works");
                row.createCell(2).setCellValue(36);
                row.createCell(3).setCellValue(4);
                row.createCell(4).setCellValue(100.5 + r);
                row.createCell(5).setCellFormula("C" + (r + 1) + "/4");
            }
            book.write(out);
        }
        return out.toByteArray();
    }

    private byte[] damaged(byte[] sound) {
        byte[] b = sound.clone();
        for (int times = 1 + random.nextInt(3); times > 0 && b.length > 0; times--) {
            int at = random.nextInt(b.length);
            b = switch (random.nextInt(5)) {
                case 0 -> Arrays.copyOf(b, at);
                case 1 -> spliced(b, at, at, bytes(POISON[random.nextInt(POISON.length)]));
                case 2 -> spliced(b, at, Math.min(b.length, at + 1 + random.nextInt(40)), new byte[0]);
                case 3 -> spliced(b, at, at, bytes("<a>".repeat(1 + random.nextInt(3000))));
                default -> flipped(b, at);
            };
        }
        return b;
    }

    private byte[] flipped(byte[] b, int at) {
        b[at] ^= (byte) (1 << random.nextInt(8));
        return b;
    }

    private static byte[] spliced(byte[] b, int from, int to, byte[] in) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(b, 0, from);
        out.writeBytes(in);
        out.write(b, to, b.length - to);
        return out.toByteArray();
    }

    private static Map<String, byte[]> content(byte[] zip) throws IOException {
        Map<String, byte[]> content = new LinkedHashMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry e = in.getNextEntry(); e != null; e = in.getNextEntry()) {
                content.put(e.getName(), in.readAllBytes());
            }
        }
        return content;
    }

    private static byte[] zip(Map<String, byte[]> content) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> e : content.entrySet()) {
                zip.putNextEntry(new ZipEntry(e.getKey()));
                zip.write(e.getValue());
                zip.closeEntry();
            }
        }
        return out.toByteArray();
    }

    private static String text(Map<String, byte[]> content, String name) {
        return new String(content.get(name), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
