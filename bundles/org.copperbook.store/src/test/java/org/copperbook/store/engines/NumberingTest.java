package org.copperbook.store.engines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.shop.Workshop;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.NumberTaken;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.Sample;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreOptions;
import org.copperbook.store.engines.Forked.Acknowledged;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Engine.class)
class NumberingTest {

    @Parameter
    Engine engine;

    @TempDir
    Path folder;

    private Place place;

    @BeforeEach
    void choose() {
        place = engine.place(folder);
    }

    private static StoreOptions at(String instant) {
        return StoreOptions.standard().withClock(Clock.fixed(Instant.parse(instant), ZoneOffset.UTC));
    }

    private JobStore open(String instant) {
        return place.open(at(instant));
    }

    private static String next(JobStore store) {
        return store.create(Sample.booking("Harbour Ice", "set"), "ada").number();
    }

    private static void pattern(JobStore store, int basedOn, String pattern) {
        store.saveShopPart(PartKey.parse("workshop"), Sample.part("workshop",
                "{\"schema\":1,\"numberSeries\":\"" + pattern + "\"}", Workshop.class), basedOn, "ada", "");
    }

    @Test
    void theSeriesStartsAgainEachYear() {
        try (JobStore store = open("2026-12-31T23:00:00Z")) {
            assertEquals(List.of("2026-0001", "2026-0002"), List.of(next(store), next(store)));
        }
        try (JobStore store = open("2027-01-01T01:00:00Z")) {
            assertEquals("2027-0001", next(store));
        }
    }

    @Test
    void aPatternWithoutYearRunsOn() {
        try (JobStore store = open("2026-12-31T23:00:00Z")) {
            pattern(store, 0, "JOB {n}/A");
            assertEquals("JOB 1/A", next(store));
        }
        try (JobStore store = open("2027-01-01T01:00:00Z")) {
            assertEquals("JOB 2/A", next(store));
        }
    }

    @Test
    void aPatternThatCannotNumberIsRefusedAndUsesUpNoNumber() {
        try (JobStore store = open("2026-03-02T08:00:00Z")) {
            int revision = 0;
            for (String bad : List.of("job", "{n}{n}", "{year}", "{month}-{n}", "{n", "{n:0}")) {
                pattern(store, revision++, bad);
                StoreException e = assertThrows(StoreException.class, () -> next(store), bad);
                assertEquals(Kind.BAD_NUMBER_SERIES, e.kind());
                assertTrue(e.getMessage().contains("\"" + bad + "\""), e.getMessage());
                assertTrue(e.getMessage().contains("{year}-{n:4}"), e.getMessage());
            }
            pattern(store, revision, "{year}-{n:4}");
            assertEquals("2026-0001", next(store));
        }
    }

    @Test
    void aJobTakenInKeepsItsNumberAndTheSeriesStepsOverIt() {
        try (JobStore store = open("2026-03-02T08:00:00Z")) {
            assertEquals("2026-0002", store.takeIn(job("k2", "2026-0002"), "ada", "", NumberTaken.REFUSE).number());
            assertEquals(List.of("2026-0001", "2026-0003"), List.of(next(store), next(store)));
        }
    }

    @Test
    void aTakenNumberIsRefusedOrReplacedAsAsked() {
        try (JobStore store = open("2026-03-02T08:00:00Z")) {
            next(store);
            StoreException e = assertThrows(StoreException.class,
                    () -> store.takeIn(job("k1", "2026-0001"), "ada", "", NumberTaken.REFUSE));
            assertEquals(Kind.ALREADY_THERE, e.kind());
            assertTrue(e.getMessage().contains("2026-0001"), e.getMessage());
            JobHandle other = store.takeIn(job("k1", "2026-0001"), "ada", "", NumberTaken.GIVE_NEW_NUMBER);
            assertEquals(new JobHandle("k1", "2026-0002"), other);
            JobHandle twice = store.takeIn(job("k1", "2026-0001"), "ada", "", NumberTaken.GIVE_NEW_NUMBER);
            assertEquals("2026-0003", twice.number());
            assertTrue(!twice.id().equals("k1"));
            assertEquals(Kind.ALREADY_THERE, assertThrows(StoreException.class,
                    () -> store.takeIn(job("k1", ""), "ada", "", NumberTaken.REFUSE)).kind());
            assertEquals("2026-0004", store.takeIn(job("k4", ""), "ada", "", NumberTaken.REFUSE).number());
        }
    }

    @Test
    void programsThatStartTogetherOnANewStoreNumberWithoutGapOrDouble() throws Exception {
        Path temp = Files.createDirectory(folder.resolve("temp"));
        int programs = 4;
        int threads = 2;
        int jobs = 10;
        List<Forked> running = new ArrayList<>();
        List<String> numbers = new ArrayList<>();
        try {
            for (int i = 0; i < programs; i++) {
                running.add(new Forked(place, temp, i, threads, jobs, 1));
            }
            for (Forked f : running) {
                f.finish().stream().filter(a -> a.part().equals("booking")).map(Acknowledged::number)
                        .forEach(numbers::add);
            }
        } finally {
            running.forEach(Forked::close);
        }
        int all = programs * threads * jobs;
        assertEquals(all, numbers.size());
        String year = numbers.get(0).substring(0, 5);
        assertEquals(new TreeSet<>(IntStream.rangeClosed(1, all).mapToObj(n -> year + "%04d".formatted(n)).toList()),
                new TreeSet<>(numbers));
        try (JobStore store = place.open()) {
            assertEquals(all, store.register(RegisterQuery.first(1)).total());
            assertTrue(store.audit().passed());
        }
    }

    private static Job job(String id, String number) {
        return new Job(id, number, Map.of(Sample.BOOKING, Sample.booking("Harbour Ice", "set")));
    }
}
