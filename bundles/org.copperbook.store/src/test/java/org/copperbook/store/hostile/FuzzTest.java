package org.copperbook.store.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.JobFile;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.shop.Person;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.NumberTaken;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.Sample;
import org.copperbook.store.StoreException;
import org.copperbook.store.sqlite.SqliteJobStore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Damaged and hostile job files, archives and store files: each is taken in whole or refused in words, never half, and
 * none crashes the reader or keeps it busy for good. Few in the daily build, more than 100,000 with {@code -Pfuzz}.
 */
@Timeout(value = 60, unit = TimeUnit.MINUTES)
class FuzzTest {

    private static final int INPUTS = Integer.getInteger("copperbook.fuzz", 1_000);
    private static final PartJson JSON = new PartJson();
    private static final Path DEMO = Path.of("..", "..", "demo-data", "jobs");
    private static final long LONG = TimeUnit.SECONDS.toMillis(30);

    @TempDir
    Path folder;

    private final Damage damage = new Damage(20261126);
    private int refused;
    private int accepted;

    @Test
    void jobFilesAreTakenInWholeOrRefusedInWords() throws Exception {
        List<byte[]> sound = new ArrayList<>();
        for (String name : List.of("2026-0003-cancelled", "2026-0008-booked-in", "2026-0007-motor-quoted",
                "2026-0006-lost-residual")) {
            sound.add(Files.readAllBytes(DEMO.resolve(name + ".json")));
        }
        JobFile file = new JobFile(JSON);
        try (JobStore store = SqliteJobStore.open(folder.resolve("workshop.sqlite"))) {
            int in = 0;
            for (int i = 0; i < INPUTS; i++) {
                byte[] bytes = damage.of(sound.get(i % sound.size()));
                try {
                    Job job = file.read(new ByteArrayInputStream(bytes));
                    if (accepted++ % 20 == 0) {
                        in += takenIn(store, job) ? 1 : 0;
                        assertEquals(in, store.register(RegisterQuery.first(1)).total());
                    }
                } catch (BadRecordException e) {
                    refused++;
                    assertFalse(e.getMessage().isBlank());
                } catch (RuntimeException e) {
                    fail("input " + i + " was neither taken in nor refused in words", e);
                }
            }
            assertTrue(store.audit().passed(), () -> store.audit().toString());
        }
        say("job files");
    }

    private static boolean takenIn(JobStore store, Job job) {
        try {
            JobHandle handle = store.takeIn(job, "p1", "", NumberTaken.GIVE_NEW_NUMBER);
            assertEquals(texts(job), texts(store.load(handle.id())));
            return true;
        } catch (StoreException e) {
            return false;
        }
    }

    private static List<String> texts(Job job) {
        return job.parts().values().stream().map(JSON::write).toList();
    }

    @Test
    void archivesAreTakenInWholeOrRefusedInWords() throws Exception {
        Path sound = archive();
        Map<String, byte[]> content = content(sound);
        byte[] raw = Files.readAllBytes(sound);
        Path zip = folder.resolve("damaged.zip");
        Random random = new Random(7);
        int fresh = 0;
        JobStore store = SqliteJobStore.open(folder.resolve("empty-0.sqlite"));
        try {
            for (int i = 0; i < INPUTS / 20; i++) {
                if (random.nextInt(4) == 0) {
                    Files.write(zip, damage.of(raw));
                } else {
                    // Hashes made anew, so that what is inside is looked at.
                    Map<String, byte[]> other = new LinkedHashMap<>(content);
                    String name = other.keySet().stream().skip(random.nextInt(other.size())).findFirst().orElseThrow();
                    other.put(name, damage.of(other.get(name)));
                    Files.write(zip, zip(other));
                }
                long begin = System.currentTimeMillis();
                try {
                    store.takeInArchive(zip);
                    accepted++;
                    assertTrue(store.audit().passed());
                    store.privateNames();
                    store.close();
                    store = SqliteJobStore.open(folder.resolve("empty-" + ++fresh + ".sqlite"));
                } catch (StoreException e) {
                    refused++;
                    assertFalse(e.getMessage().isBlank());
                    assertEquals(0, store.register(RegisterQuery.first(1)).total());
                    assertEquals(0, store.audit().revisions());
                } catch (RuntimeException e) {
                    Files.copy(zip, Path.of("target", "crash-" + i + ".zip"),
                            java.nio.file.StandardCopyOption.REPLACE_EXISTING);
                    fail("archive " + i + " was neither taken in nor refused in words", e);
                }
                assertTrue(System.currentTimeMillis() - begin < LONG, "archive " + i + " kept the reader busy");
            }
        } finally {
            store.close();
        }
        say("archives");
    }

    @Test
    void storeFilesAreOpenedOrRefusedInWords() throws Exception {
        archive();
        byte[] sound = Files.readAllBytes(folder.resolve("sound.sqlite"));
        Path file = folder.resolve("damaged.sqlite");
        for (int i = 0; i < INPUTS / 50; i++) {
            for (String beside : List.of("", "-wal", "-shm")) {
                Files.deleteIfExists(folder.resolve("damaged.sqlite" + beside));
            }
            Files.write(file, damage.of(sound));
            try (JobStore store = SqliteJobStore.open(file)) {
                store.audit();
                for (var row : store.register(RegisterQuery.first(50)).rows()) {
                    store.load(row.jobId());
                }
                store.privateNames();
                accepted++;
            } catch (StoreException e) {
                refused++;
                assertFalse(e.getMessage().isBlank());
            } catch (RuntimeException e) {
                Files.copy(file, Path.of("target", "crash-" + i + ".sqlite"),
                        java.nio.file.StandardCopyOption.REPLACE_EXISTING);
                fail("store file " + i + " was neither opened nor refused in words", e);
            }
        }
        say("store files");
    }

    @Test
    void anArchiveMadeToFillTheDiskIsRefused() throws Exception {
        Map<String, byte[]> content = content(archive());
        content.put("people.jsonl", new byte[64 << 20]);
        Path zip = Files.write(folder.resolve("bomb.zip"), zip(content));
        assertTrue(Files.size(zip) < 1 << 20);
        assertTrue(refusal(zip).contains("200 times"), refusal(zip));
    }

    @Test
    void namesThatLeadOutOfTheFolderWriteNothing() throws Exception {
        Map<String, byte[]> content = content(archive());
        content.put("photos/../../escaped.txt", new byte[] {1});
        content.put("../escaped.txt", new byte[] {1});
        Path zip = Files.write(folder.resolve("escape.zip"), zip(content));
        Path room = Files.createDirectories(folder.resolve("a/b"));
        try (JobStore store = SqliteJobStore.open(room.resolve("new.sqlite"))) {
            store.takeInArchive(zip);
        }
        try (var all = Files.walk(folder)) {
            assertTrue(all.noneMatch(p -> p.toString().contains("escaped")));
        }
    }

    @Test
    void nestingWithoutEndAndImpossibleNumbersAreRefused() throws Exception {
        JobFile file = new JobFile(JSON);
        String booking = "{\"copperbookJob\":1,\"number\":\"1\",\"parts\":{\"booking\":{\"schema\":1,\"x\":%s}}}";
        for (String value : List.of("[".repeat(1_000_000), "{\"a\":".repeat(500_000), "1e999999999", "9".repeat(2_000_000),
                "\"" + "a".repeat(2_000_000) + "\"")) {
            try {
                Job job = file.read(new ByteArrayInputStream(
                        booking.formatted(value).getBytes(StandardCharsets.UTF_8)));
                file.write(job);
            } catch (BadRecordException e) {
                refused++;
                assertTrue(e.getMessage().length() < 2_000, "one line and not the whole file");
            }
        }
        assertTrue(refused >= 4, refused + " refused");
    }

    private String refusal(Path zip) {
        try (JobStore store = SqliteJobStore.open(folder.resolve("refusing.sqlite"))) {
            return assertThrows(StoreException.class, () -> store.takeInArchive(zip)).getMessage();
        }
    }

    private Path archive() throws IOException, BadRecordException {
        Path zip = folder.resolve("sound.zip");
        try (JobStore store = SqliteJobStore.open(folder.resolve("sound.sqlite"))) {
            JobHandle job = store.create(Sample.booking("Harbour Ice", "set"), "p1");
            store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("A1"), 0, "p1", "");
            store.savePerson(new Person("c1", "Ada Brook", Set.of(), null, null, true), "o");
            store.savePerson(new Person("c2", "Ben Marl", Set.of(), null, null, true), "o");
            store.erase("c2");
            store.keepPhoto(new byte[] {1, 2, 3});
            for (String name : List.of("2026-0008-booked-in", "2026-0003-cancelled")) {
                store.takeIn(new JobFile(JSON).read(Files.newInputStream(DEMO.resolve(name + ".json"))), "p1", "",
                        NumberTaken.GIVE_NEW_NUMBER);
            }
            store.archive(zip);
        }
        return zip;
    }

    private static Map<String, byte[]> content(Path zip) throws IOException {
        Map<String, byte[]> content = new LinkedHashMap<>();
        try (ZipFile file = new ZipFile(zip.toFile())) {
            for (ZipEntry e : file.stream().toList()) {
                if (!e.getName().equals("manifest.json")) {
                    content.put(e.getName(), file.getInputStream(e).readAllBytes());
                }
            }
        }
        return content;
    }

    /** An archive whose manifest agrees with what is in it. */
    private static byte[] zip(Map<String, byte[]> content) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        StringBuilder files = new StringBuilder();
        String last = "0".repeat(64);
        long revisions = 0;
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> e : content.entrySet()) {
                zip.putNextEntry(new ZipEntry(e.getKey()));
                zip.write(e.getValue());
                zip.closeEntry();
                files.append(files.length() == 0 ? "" : ",").append("{\"name\":\"").append(e.getKey())
                        .append("\",\"bytes\":").append(e.getValue().length).append(",\"sha256\":\"").append(
                                HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(e.getValue())))
                        .append("\"}");
            }
            String[] links = new String(content.get("revisions.jsonl"), StandardCharsets.UTF_8).strip().split("\n");
            String end = links[links.length - 1];
            int at = end.lastIndexOf("\"hash\":\"");
            revisions = links.length;
            last = at < 0 || at + 72 > end.length() ? last : end.substring(at + 8, at + 72).replaceAll("[^0-9a-f]", "0");
            zip.putNextEntry(new ZipEntry("manifest.json"));
            zip.write(("{\"copperbookArchive\":2,\"revisions\":" + revisions + ",\"lastHash\":\"" + last
                    + "\",\"files\":[" + files + "]}").getBytes(StandardCharsets.UTF_8));
            zip.closeEntry();
        }
        return out.toByteArray();
    }

    private void say(String what) {
        assertTrue(refused > 0, "damage that nothing refuses is no damage");
        System.out.printf("fuzz, %s: %d read, %d refused in words, 0 crashes%n", what, accepted, refused);
    }
}
