package org.copperbook.store.backup;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.Sample;
import org.copperbook.store.StoreException;
import org.copperbook.store.engines.Engine;
import org.copperbook.store.engines.Place;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@ParameterizedClass
@EnumSource(Engine.class)
class ArchiveTest {

    @Parameter
    Engine engine;

    @TempDir
    Path folder;

    private Place place;

    private Path zip;
    private JobHandle job;
    private String photo;

    @BeforeEach
    void aShopInAnArchive() {
        zip = folder.resolve("shop.zip");
        place = engine.place(folder);
        try (JobStore store = place.open()) {
            job = store.create(Sample.booking("Harbour Ice", "set \u03a9 \ud83d\udd27"), "ada");
            for (int i = 0; i < 3; i++) {
                store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("A" + i), i, "ben", "reading " + i);
            }
            store.savePerson(new Person("ada", "Ada Brook", Set.of(Role.WINDER), null, null, true), "o");
            photo = store.keepPhoto(new byte[] {1, 2, 3});
            store.archive(zip);
        }
    }

    private JobStore another() {
        return engine.place(folder.resolve("another")).open();
    }

    @Test
    void everyRevisionAndHashComesBackAndTheAuditPasses() throws IOException {
        try (JobStore was = place.open();
                JobStore store = another()) {
            store.takeInArchive(zip);
            assertEquals(was.history(job.id(), Sample.NAMEPLATE), store.history(job.id(), Sample.NAMEPLATE));
            assertEquals(was.history(job.id(), Sample.BOOKING), store.history(job.id(), Sample.BOOKING));
            assertEquals(was.persons(), store.persons());
            assertArrayEquals(new byte[] {1, 2, 3}, store.photo(photo).orElseThrow());
            assertEquals(was.register(RegisterQuery.first(10)), store.register(RegisterQuery.first(10)));
            assertTrue(store.audit().passed(), () -> store.audit().toString());
            assertEquals(5, store.audit().revisions());
            // The series of numbers goes on, and so does the chain.
            assertEquals(was.create(Sample.booking("a", "b"), "ada").number(),
                    store.create(Sample.booking("a", "b"), "ada").number());
            assertTrue(store.audit().passed());
            store.archive(folder.resolve("again.zip"));
        }
        Map<String, byte[]> first = content(zip);
        Map<String, byte[]> second = content(folder.resolve("again.zip"));
        assertEquals(first.keySet(), second.keySet());
    }

    @Test
    void anArchiveOfAnArchiveIsTheSameFileByFile() throws IOException {
        try (JobStore store = another()) {
            store.takeInArchive(zip);
            store.archive(folder.resolve("again.zip"));
        }
        Map<String, byte[]> second = content(folder.resolve("again.zip"));
        content(zip).forEach((name, bytes) -> assertArrayEquals(bytes, second.get(name), name));
    }

    @Test
    void anArchiveIsNotTakenIntoAStoreThatHoldsRecordsNorWrittenOverAFile() {
        try (JobStore store = place.open()) {
            assertEquals(StoreException.Kind.ALREADY_THERE,
                    assertThrows(StoreException.class, () -> store.takeInArchive(zip)).kind());
            assertEquals(StoreException.Kind.ALREADY_THERE,
                    assertThrows(StoreException.class, () -> store.archive(zip)).kind());
            assertTrue(store.audit().passed());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"jobs.jsonl", "revisions.jsonl", "people.jsonl", "manifest.json", "number-series.jsonl"})
    void anArchiveThatLacksAFileIsRefusedAndLeavesNothing(String lacking) throws IOException {
        Map<String, byte[]> all = content(zip);
        all.remove(lacking);
        refused(all);
    }

    @ParameterizedTest
    @ValueSource(strings = {"jobs.jsonl", "revisions.jsonl", "people.jsonl", "number-series.jsonl"})
    void aChangedFileIsRefusedAndLeavesNothing(String changed) throws IOException {
        Map<String, byte[]> all = content(zip);
        String text = new String(all.get(changed), StandardCharsets.UTF_8);
        all.put(changed, text.replaceFirst("[aA]d?a?", "e").getBytes(StandardCharsets.UTF_8));
        refused(all);
    }

    @Test
    void aFileLongerThanAnnouncedIsRefused() throws IOException {
        Map<String, byte[]> all = content(zip);
        all.put("photos/" + photo, new byte[50_000_000]);
        refused(all);
    }

    @Test
    void namesThatLeadElsewhereAreNeverWritten() throws IOException {
        Map<String, byte[]> all = content(zip);
        all.put("../../escaped.txt", new byte[] {1});
        Path odd = write(all);
        try (JobStore store = another()) {
            store.takeInArchive(odd);
        }
        assertTrue(Files.notExists(folder.resolve("escaped.txt")));
        assertTrue(Files.notExists(folder.getParent().resolve("escaped.txt")));
    }

    private void refused(Map<String, byte[]> files) throws IOException {
        Path changed = write(files);
        try (JobStore store = another()) {
            StoreException e = assertThrows(StoreException.class, () -> store.takeInArchive(changed));
            assertTrue(e.getMessage().contains("Nothing was taken in"), e.getMessage());
            assertEquals(0, store.audit().revisions());
            assertEquals(0, store.persons().size());
        }
    }

    private Path write(Map<String, byte[]> files) throws IOException {
        Path to = folder.resolve("changed.zip");
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(to))) {
            for (Map.Entry<String, byte[]> e : files.entrySet()) {
                out.putNextEntry(new ZipEntry(e.getKey()));
                out.write(e.getValue());
            }
        }
        return to;
    }

    private static Map<String, byte[]> content(Path zip) throws IOException {
        Map<String, byte[]> all = new LinkedHashMap<>();
        try (ZipFile z = new ZipFile(zip.toFile())) {
            for (ZipEntry e : java.util.Collections.list(z.entries())) {
                all.put(e.getName(), z.getInputStream(e).readAllBytes());
            }
        }
        return all;
    }
}
