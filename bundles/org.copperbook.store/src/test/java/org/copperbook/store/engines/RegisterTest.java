package org.copperbook.store.engines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.store.Intake;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.NumberTaken;
import org.copperbook.store.RegisterColumn;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.RegisterRow;
import org.copperbook.store.RegisterSlice;
import org.copperbook.store.RegisterSort;
import org.copperbook.store.Sample;
import org.copperbook.store.StageOf.Standpoint;
import org.copperbook.store.StoreOptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.AfterParameterizedClassInvocation;
import org.junit.jupiter.params.BeforeParameterizedClassInvocation;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A register of 5,000 rows beside the same filter and order in plain Java. */
@ParameterizedClass
@EnumSource(Engine.class)
class RegisterTest {

    private static final int ROWS = 5_000;
    private static final List<String> CUSTOMERS = List.of("Harbour Ice", "Mill Lane Bakery", "Küstner Pumpen",
            "100% Hydro_Works", "O'Hara & Sons", "");
    private static final List<String> MACHINES = List.of("standby set", "oven fan", "bilge pump", "wind turbine 9",
            "wind turbine 10", "");

    @Parameter
    Engine engine;

    @TempDir
    static Path folder;

    private static JobStore store;
    private static List<RegisterRow> all;

    @BeforeParameterizedClassInvocation
    static void fill(Engine filled) {
        store = filled.place(folder).open();
        Random random = new Random(11);
        List<Job> jobs = new ArrayList<>();
        for (int i = 1; i <= ROWS; i++) {
            Map<PartKey, Part> parts = new java.util.HashMap<>();
            Booking b = Sample.booking(CUSTOMERS.get(random.nextInt(CUSTOMERS.size())),
                    MACHINES.get(random.nextInt(MACHINES.size())));
            parts.put(Sample.BOOKING, random.nextInt(5) == 0 ? Sample.part("booking",
                    "{\"schema\":1,\"customer\":\"" + b.customer() + "\"}", Booking.class) : b);
            if (random.nextBoolean()) {
                parts.put(Sample.NAMEPLATE, Sample.nameplate("SN" + random.nextInt(900)));
            }
            if (random.nextInt(10) == 0) {
                parts.put(Sample.STANDING, Sample.cancelled("not worth it"));
            }
            jobs.add(new Job("id" + i, "2026-%04d".formatted(i), parts));
        }
        store.takeIn(new Intake(Map.of(), List.of(), List.of(), jobs), "ada", "", NumberTaken.REFUSE);
        all = store.register(RegisterQuery.first(ROWS)).rows();
    }

    @AfterParameterizedClassInvocation
    static void close() {
        store.close();
    }

    @Test
    void everyJobHasItsRowNewestFirst() {
        assertEquals(ROWS, all.size());
        for (int i = 0; i < ROWS; i++) {
            assertEquals("2026-%04d".formatted(ROWS - i), all.get(i).number());
        }
        assertTrue(all.stream().anyMatch(RegisterRow::voided));
        assertTrue(all.stream().anyMatch(r -> !r.voided()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"harbour", "HARBOUR set", "kustner", "küstner pump", "100%", "%", "_", "hydro_w",
        "o'hara", "turbine 10", "2026-49", "sn12 bakery", "cancelled ice", "2026-03-20", "nowhere at all", "  ", "\\",
        "ha", "k", "ic ha", "\"", "\"harbour\"", "ice AND harbour", "NOT", "har*", "search:ice", "zz"})
    void allWordsMustMatchInAnyColumn(String text) {
        List<String> expected = all.stream().filter(r -> matches(r, text)).map(RegisterRow::number).toList();
        RegisterSlice found = store.register(new RegisterQuery(text, 0, ROWS, null));
        assertEquals(expected, found.rows().stream().map(RegisterRow::number).toList());
        assertEquals(expected.size(), found.total());
    }

    /** The filter said in another way: the JDK's own collation-free comparison, word by word and column by column. */
    private static boolean matches(RegisterRow r, String text) {
        String row = Stream.of(r.number(), r.customer(), r.machine(), r.serial(), r.stage(),
                r.promised() == null ? "" : r.promised().toString()).map(RegisterTest::plain)
                .reduce("", (a, b) -> a + "\n" + b);
        return Stream.of(text.trim().split(" +")).allMatch(w -> row.contains(plain(w)));
    }

    private static String plain(String s) {
        return s.toLowerCase(java.util.Locale.ENGLISH).replace('ü', 'u');
    }

    @ParameterizedTest
    @EnumSource(RegisterColumn.class)
    void pagesInEveryOrderHoldEveryRowOnceWithEmptyOnesLast(RegisterColumn column) {
        for (boolean ascending : new boolean[] {true, false}) {
            List<RegisterRow> paged = new ArrayList<>();
            for (int offset = 0; offset < ROWS; offset += 700) {
                RegisterSlice page = store.register(
                        new RegisterQuery("", offset, 700, new RegisterSort(column, ascending)));
                assertEquals(ROWS, page.total());
                paged.addAll(page.rows());
            }
            assertEquals(ROWS, paged.size());
            assertEquals(ROWS, new HashSet<>(paged).size());
            List<String> values = paged.stream().map(value(column)).toList();
            long empty = values.stream().filter(String::isEmpty).count();
            assertTrue(values.subList((int) (ROWS - empty), ROWS).stream().allMatch(String::isEmpty));
            Comparator<String> order = Comparator.comparing(RegisterTest::orderly);
            for (int i = 1; i < ROWS - empty; i++) {
                int c = order.compare(values.get(i - 1), values.get(i));
                assertTrue(ascending ? c <= 0 : c >= 0, values.get(i - 1) + " then " + values.get(i));
            }
        }
    }

    /** Good for the values of this test: the only numbers of different width are those of the turbines. */
    private static String orderly(String value) {
        return plain(value).replace("turbine 9", "turbine 09").replaceAll("^sn(\\d)$", "sn00$1")
                .replaceAll("^sn(\\d\\d)$", "sn0$1");
    }

    private static Function<RegisterRow, String> value(RegisterColumn column) {
        return switch (column) {
            case NUMBER -> RegisterRow::number;
            case CUSTOMER -> RegisterRow::customer;
            case MACHINE -> RegisterRow::machine;
            case SERIAL -> RegisterRow::serial;
            case STAGE -> RegisterRow::stage;
            case PROMISED -> r -> r.promised() == null ? "" : r.promised().toString();
            case CHANGED -> r -> r.changedAt().toString();
        };
    }

    @Test
    void aPageBeyondTheEndIsEmptyAndAPageOfNothingStillCounts() {
        assertEquals(List.of(), store.register(new RegisterQuery("", ROWS + 5, 10, null)).rows());
        assertEquals(ROWS, store.register(RegisterQuery.first(0)).total());
    }

    @Test
    void aWholePagePastedIntoTheFilterIsTaken() {
        assertEquals(0, store.register(new RegisterQuery("lorem ipsum ".repeat(20_000), 0, 10, null)).total());
        assertEquals(0, store.register(new RegisterQuery("x".repeat(2_000_000), 0, 10, null)).total());
    }

    @Test
    void aSaveShowsInTheRegisterAtOnceAndARebuildGivesTheSame() {
        try (JobStore own = engine.place(folder.resolve("own")).open(
                StoreOptions.standard().withStageOf(j -> j.nameplate().isPresent() ? new Standpoint(1, "plate read") : new Standpoint(0, "booked in")))) {
            JobHandle job = own.create(Sample.booking("Harbour Ice", "set"), "ada");
            assertEquals("booked in", row(own).stage());
            own.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("A-17"), 0, "ada", "");
            assertEquals("plate read", row(own).stage());
            assertEquals("A-17", row(own).serial());
            assertEquals(1, own.register(new RegisterQuery("a-17 plate", 0, 1, null)).total());
            own.save(job.id(), Sample.STANDING, Sample.cancelled("gave up"), 0, "ada", "");
            RegisterRow before = row(own);
            assertTrue(before.voided());
            assertEquals(own.current(job.id(), Sample.STANDING).orElseThrow().revision().savedAt(),
                    before.changedAt());
            own.rebuildRegister();
            assertEquals(before, row(own));
            assertFalse(before.number().isEmpty());
        }
    }

    @Test
    void stagesSortByTheirPlaceInAJobsLifeAndOneThatCannotBeToldStopsNoSave() {
        Logger quiet = Logger.getLogger("org.copperbook.store.jdbc.RegisterEntry");
        quiet.setLevel(Level.OFF);
        StoreOptions options = StoreOptions.standard().withStageOf(j -> switch (j.booking().orElseThrow().machine()) {
            case "first" -> new Standpoint(1, "z, first");
            case "second" -> new Standpoint(2, "a, second");
            default -> throw new IllegalStateException("no stage for this");
        });
        try (JobStore own = engine.place(folder.resolve("stages")).open(options)) {
            for (String machine : List.of("second", "other", "first")) {
                own.create(Sample.booking("Harbour Ice", machine), "ada");
            }
            assertEquals(List.of("other", "first", "second"), own.register(new RegisterQuery("", 0, 9,
                    new RegisterSort(RegisterColumn.STAGE, true))).rows().stream().map(RegisterRow::machine).toList());
        }
    }

    private static RegisterRow row(JobStore store) {
        return store.register(RegisterQuery.first(10)).rows().get(0);
    }
}
