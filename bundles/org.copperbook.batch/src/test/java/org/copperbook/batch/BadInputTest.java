package org.copperbook.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever a file holds, a bad one gets one line with file, place and mend, exit code 2, and leaves nothing behind. */
class BadInputTest {

    @TempDir
    Path folder;
    private BatchRun batch;

    @BeforeEach
    void begin() {
        batch = new BatchRun(folder.resolve("shop"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "wrong type        | 'nameplate':{'schema':1,'voltageV':'about 400'} | nameplate at voltageV | must be a number",
        "true for a number | 'nameplate':{'schema':1,'poles':true}           | nameplate at poles | correct it",
        "list for object   | 'nameplate':[1,2]                               | nameplate | must be an object",
        "null part         | 'nameplate':null                                | nameplate | leave the part out",
        "no schema         | 'nameplate':{'poles':4}                         | nameplate at schema | is missing",
        "fraction of pole  | 'nameplate':{'schema':1,'poles':4.5}            | nameplate at poles | correct it",
        "seven poles       | 'nameplate':{'schema':1,'poles':7}              | nameplate at poles | pairs",
        "huge              | 'nameplate':{'schema':1,'voltageV':1e300}       | nameplate at voltageV | correct the figure",
        "overflow          | 'nameplate':{'schema':1,'voltageV':1e999}       | nameplate at voltageV | correct the figure",
        "too small         | 'booking':{'schema':1,'spendLimit':1e-50}          | booking at spendLimit | correct the figure",
        "bottomless        | 'booking':{'schema':1,'spendLimit':1e-999999999} | booking at spendLimit | correct it there",
        "not a number      | 'nameplate':{'schema':1,'voltageV':NaN}         | line 1 | mend the JSON",
        "negative ohms     | 'inspection':{'schema':1,'readings':[{'id':'a','quantity':'RESISTANCE','observed':"
            + "{'kind':'VALUE','value':-0.3}}]} | inspection at readings[0].observed.value | sign",
        "below zero kelvin | 'inspection':{'schema':1,'readings':[{'id':'a','quantity':'RESISTANCE','windingCelsius':-400}]}"
            + " | readings[0].windingCelsius | correct the figure",
        "unknown word      | 'inspection':{'schema':1,'readings':[{'id':'a','quantity':'SMELL'}]} | readings[0].quantity | INSULATION_RESISTANCE",
        "kind without value | 'inspection':{'schema':1,'readings':[{'id':'a','observed':{'kind':'VALUE'}}]}"
            + " | readings[0].observed | correct it",
        "bad date          | 'booking':{'schema':1,'bookedAt':'yesterday'}   | booking at bookedAt | a moment like",
        "unknown part      | 'boat':{'schema':1}                             | parts.boat | correct it",
        "part of the shop  | 'wire-stock':{'schema':1}                       | parts.wire-stock | shop",
        "duplicate key     | 'nameplate':{'schema':1,'poles':4,'poles':6}    | line 1 | mend the JSON",
        "cancelled without reason | 'standing':{'schema':1,'closure':{'how':'CANCELLED'}} | standing at closure | reason"})
    void aBadRecordIsRefusedInOneLine(String what, String part, String place, String mend) throws IOException {
        refused(write("{\"copperbookJob\":1,\"number\":\"2026-0042\",\"parts\":{" + part.replace('\'', '"') + "}}"),
                place, mend);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "[]", "null", "7", "\"text\"", "{}", "{\"copperbookJob\":1}",
        "{\"copperbookJob\":\"1\",\"parts\":{}}", "{\"copperbookJob\":2,\"parts\":{}}", "{\"copperbookJob\":1,\"parts\":[]}",
        "{\"copperbookJob\":1,\"parts\":{}} more", "{\"copperbookJob\":1,\"id\":\"shop\",\"parts\":{}}",
        "{\"copperbookJob\":1,\"id\":7,\"parts\":{}}", "{\"copperbookJob\":1,\"number\":\"../../etc\",\"parts\":{}}",
        "{\"copperbookJob\":1,\"number\":\"1\\u001b[31m\",\"parts\":{}}", "<job/>", "PK\u0003\u0004", "{'copperbookJob':1}"})
    void whatIsNoJobFileIsRefusedInOneLine(String text) throws IOException {
        refused(write(text), "", "");
    }

    @Test
    void everyPlaceAtWhichAFileCanBeCutOffIsRefused() throws IOException {
        byte[] whole = Files.readAllBytes(Path.of(BatchRun.demoJob("2026-0008-booked-in")));
        int end = new String(whole, StandardCharsets.UTF_8).stripTrailing().length();
        for (int length = 1; length < end; length += 13) {
            Path file = folder.resolve("cut.json");
            Files.write(file, java.util.Arrays.copyOf(whole, length));
            String line = refused(file, "line", "");
            assertTrue(line.contains("cut off") || line.contains("mend the JSON"), line);
        }
    }

    @Test
    void randomBytesAreRefused() throws IOException {
        Random random = new Random(20260817);
        for (int i = 0; i < 200; i++) {
            byte[] junk = new byte[1 + random.nextInt(400)];
            random.nextBytes(junk);
            Path file = folder.resolve("junk.json");
            Files.write(file, junk);
            refused(file, "", "");
        }
    }

    @Test
    void aGoodFileWithAnyOneByteSpoiltIsTakenInWholeOrRefusedInOneLine() throws IOException {
        byte[] good = Files.readAllBytes(Path.of(BatchRun.demoJob("2026-0008-booked-in")));
        Random random = new Random(7);
        for (int i = 0; i < 60; i++) {
            byte[] spoilt = good.clone();
            spoilt[random.nextInt(spoilt.length)] = (byte) random.nextInt(256);
            Path file = folder.resolve("spoilt.json");
            Files.write(file, spoilt);
            BatchRun one = new BatchRun(folder.resolve("shop" + i));
            BatchRun.Result r = one.on("take-in", file.toString());
            if (r.exit() == 0) {
                assertEquals(1, one.on("list", "--json").json().path("jobs").size());
            } else {
                assertEquals(2, r.exit(), r.err());
                r.onlyErrorLine();
                assertFalse(Files.exists(one.store));
            }
        }
    }

    @Test
    void textThatIsNotUtf8IsRefusedWithItsLine() throws IOException {
        Path file = folder.resolve("latin.json");
        Files.write(file, "{\n\"copperbookJob\":1,\n\"number\":\"M\u00fcller\"}".getBytes(StandardCharsets.ISO_8859_1));
        refused(file, "line 3", "UTF-8");
        Files.write(file, "{\"copperbookJob\":1,\"parts\":{}}".getBytes(StandardCharsets.UTF_16));
        refused(file, "", "UTF-8");
    }

    @Test
    void deepNestingIsRefused() throws IOException {
        refused(write("{\"copperbookJob\":1,\"parts\":{\"booking\":{\"schema\":1,\"x\":" + "[".repeat(100_000)
                + "]".repeat(100_000) + "}}}"), "", "");
    }

    @Test
    void aTextOfAMillionCharactersIsRefusedAndNotPrinted() throws IOException {
        refused(write("{\"copperbookJob\":1,\"parts\":{\"booking\":{\"schema\":1,\"customer\":\"" + "x".repeat(1_200_000)
                + "\"}}}"), "", "");
    }

    @Test
    void aFileOf200MegabytesIsRefusedBeforeItIsRead() throws IOException {
        Path file = folder.resolve("large.json");
        try (RandomAccessFile f = new RandomAccessFile(file.toFile(), "rw")) {
            f.setLength(200_000_000);
        }
        refused(file, "200 MB", "8 MiB");
    }

    @Test
    void aFolderAMissingFileAndADeviceAreRefused() throws IOException {
        refused(Files.createDirectory(folder.resolve("jobs.json")), "folder", "name the files");
        refused(folder.resolve("nowhere.json"), "no such file", "check the name");
        if (Files.exists(Path.of("/dev/zero"))) {
            refused(Path.of("/dev/zero"), "no regular file", "copy");
        }
    }

    @Test
    void oneBadFileAmongGoodOnesLeavesAllOut() throws IOException {
        Path bad = write("{");
        BatchRun.Result r = batch.on("take-in", BatchRun.demoJob("2026-0008-booked-in"), bad.toString(),
                BatchRun.demoJob("2026-0003-cancelled"));
        assertEquals(2, r.exit());
        assertTrue(r.onlyErrorLine().contains(bad.toString()));
        assertFalse(Files.exists(batch.store));
    }

    @Test
    void aRefusalLaterOnLeavesTheStoreAsItWas() {
        assertEquals(0, batch.on("take-in", BatchRun.demoJob("2026-0008-booked-in")).exit());
        String before = batch.on("list", "--json").out();
        BatchRun.Result again = batch.on("take-in", BatchRun.demoJob("2026-0003-cancelled"),
                BatchRun.demoJob("2026-0008-booked-in"));
        assertEquals(2, again.exit());
        assertTrue(again.onlyErrorLine().contains("2026-0008"), again.err());
        assertEquals(before, batch.on("list", "--json").out());
        assertEquals(0, batch.on("verify").exit());
    }

    @Test
    void aStoreThatIsNoStoreIsLeftAsItIs() throws IOException {
        Files.createDirectories(batch.store.getParent());
        Files.writeString(batch.store, "not a store");
        for (String command : new String[] {"list", "verify"}) {
            assertEquals(2, batch.on(command).exit());
        }
        assertEquals(2, batch.on("take-in", BatchRun.demoJob("2026-0008-booked-in")).exit());
        assertEquals("not a store", Files.readString(batch.store));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "people.json      | {'key':'p01'}                  | must be a list",
        "people.json      | [null]                         | must be a person",
        "people.json      | [{'name':'nobody','active':true}] | needs a key",
        "instruments.json | {'schema':1,'instruments':[{'id':'A','ranges':[{'upTo':-5}]}]} | instruments[0].ranges[0].upTo",
        "workshop.json    | {'schema':1,'referenceCelsius':'warm'} | must be a number",
        "booking.json     | {'schema':1}                   | is no file of the shop",
        "boat.json        | {'schema':1}                   | is no file of the shop",
        "limits.json      | {                              | cut off"})
    void aBadFileOfTheShopIsRefusedInOneLine(String name, String text, String says) throws IOException {
        Path shop = Files.createDirectories(folder.resolve("own"));
        Files.writeString(shop.resolve(name), text.replace('\'', '"'));
        BatchRun.Result r = batch.on("take-in", "--shop", shop.toString());
        assertEquals(2, r.exit());
        String line = r.onlyErrorLine();
        assertTrue(line.contains(name) && line.contains(says), line);
        assertFalse(Files.exists(batch.store));
    }

    private Path write(String text) throws IOException {
        Path file = folder.resolve("in.json");
        Files.writeString(file, text);
        return file;
    }

    private String refused(Path file, String place, String mend) throws IOException {
        BatchRun.Result r = batch.on("take-in", file.toString());
        assertEquals(2, r.exit(), r.err());
        assertEquals("", r.out());
        String line = r.onlyErrorLine();
        assertTrue(line.contains(file.toString()), line);
        assertTrue(line.contains(place) && line.contains(mend), line);
        assertTrue(line.length() < 600 && !line.contains("Exception") && !line.contains("org.copperbook")
                && !line.contains("java.") && line.chars().noneMatch(Character::isISOControl), line);
        if (Files.exists(batch.store.getParent())) {
            try (Stream<Path> left = Files.list(batch.store.getParent())) {
                assertEquals(0, left.count());
            }
        }
        return line;
    }
}
