package org.copperbook.store.engines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.report.BoardStep;
import org.copperbook.jobs.report.Workload;
import org.copperbook.store.BoardQuery;
import org.copperbook.store.BoardQuery.Order;
import org.copperbook.store.BoardQuery.Which;
import org.copperbook.store.BoardRow;
import org.copperbook.store.Intake;
import org.copperbook.store.NumberTaken;
import org.copperbook.store.Sample;
import org.copperbook.store.StoreOptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** No job can be invisible: whatever its parts say, it stands on the board, once. */
@ParameterizedClass
@EnumSource(Engine.class)
class BoardTest extends OnEachEngine {

    private static final LocalDate TODAY = LocalDate.of(2026, 5, 6);

    private static final List<String> BOOKINGS = List.of("{\"schema\":1}",
            "{\"schema\":1,\"customer\":\"Mill Lane\",\"promised\":\"2026-04-30\",\"bookedAt\":\"2026-03-02T08:15:00Z\"}",
            "{\"schema\":1,\"customer\":\"\",\"promised\":\"2026-05-06\"}",
            "{\"schema\":1,\"machine\":\"bilge\",\"promised\":\"9999-12-31\"}",
            "{\"schema\":1,\"promised\":\"+20266-01-01\"}", "{\"schema\":1,\"promised\":\"-0001-01-01\"}");

    private static final List<String> STANDINGS = List.of("{\"schema\":1}", "{\"schema\":1,\"waiting\":{}}",
            "{\"schema\":1,\"waiting\":{\"waitingFor\":\"PARTS\",\"since\":\"2026-04-01T06:00:00Z\",\"reason\":\"bearing\"}}",
            "{\"schema\":1,\"closure\":{}}", "{\"schema\":1,\"closure\":{\"how\":\"COLLECTED\"}}",
            "{\"schema\":1,\"closure\":{\"how\":\"SCRAPPED\"}}", "{\"schema\":1,\"closure\":{\"how\":\"DECLINED\"}}",
            "{\"schema\":1,\"closure\":{\"how\":\"CANCELLED\",\"reason\":\"twice\"}}",
            "{\"schema\":1,\"closure\":{\"how\":\"MERGED\",\"reason\":\"twice\",\"into\":\"2026-0001\"},\"waiting\":{}}");

    private static final List<String> QUOTES = List.of("{\"schema\":1,\"revision\":1}",
            "{\"schema\":1,\"revision\":1,\"approval\":{}}", "{\"schema\":1,\"revision\":1,\"approval\":{\"agreed\":false}}",
            "{\"schema\":1,\"revision\":1,\"approval\":{\"agreed\":true}}",
            "{\"schema\":1,\"revision\":1,\"alternatives\":[{\"name\":\"a\",\"lines\":[{\"kind\":\"LABOUR\",\"unit\":\"h\","
                    + "\"quantity\":12.5,\"trade\":\"winder\"},{\"kind\":\"LABOUR\",\"unit\":\"h\",\"quantity\":1e20},"
                    + "{\"kind\":\"MATERIAL\",\"unit\":\"h\",\"quantity\":7}]}],\"approval\":{\"agreed\":true}}");

    private List<Job> oddJobs(Random random, int many) {
        List<Job> jobs = new ArrayList<>();
        for (int i = 0; i < many; i++) {
            Map<PartKey, Part> parts = new HashMap<>();
            add(parts, random, "booking", BOOKINGS);
            add(parts, random, "standing", STANDINGS);
            add(parts, random, "quote/1", QUOTES);
            add(parts, random, "inspection", List.of("{\"schema\":1}", "{\"schema\":1,\"findings\":[{\"text\":\"burnt\"}]}"));
            add(parts, random, "run-up", List.of("{\"schema\":1}", "{\"schema\":1,\"points\":[{}]}"));
            add(parts, random, "sign-offs", List.of("{\"schema\":1}",
                    "{\"schema\":1,\"signatures\":[{\"point\":\"RELEASE\"}]}"));
            jobs.add(new Job("odd" + i, i % 50 == 0 ? "" : "N " + i, parts));
        }
        return jobs;
    }

    private static void add(Map<PartKey, Part> parts, Random random, String key, List<String> choices) {
        int choice = random.nextInt(choices.size() + 1);
        if (choice < choices.size()) {
            PartKey k = PartKey.parse(key);
            parts.put(k, Sample.part(key, choices.get(choice), k.kind().type()));
        }
    }

    private List<String> everywhere(int page) {
        List<String> ids = new ArrayList<>();
        for (BoardStep step : BoardStep.values()) {
            int had = -1;
            for (int at = 0; had != 0; at += page) {
                List<BoardRow> rows = store.board(new BoardQuery(Optional.of(step), Which.ALL, Order.DUE, TODAY, at, page))
                        .rows();
                rows.forEach(r -> {
                    assertEquals(step, r.step());
                    ids.add(r.job().jobId());
                });
                had = rows.size();
            }
        }
        return ids.stream().sorted().toList();
    }

    private List<String> inTheStore() throws Exception {
        List<String> ids = new ArrayList<>();
        try (Connection c = place.connect(); Statement s = c.createStatement();
                ResultSet r = s.executeQuery("SELECT id FROM job WHERE id NOT IN ('shop', 'cards')")) {
            while (r.next()) {
                ids.add(r.getString(1));
            }
        }
        return ids.stream().sorted().toList();
    }

    private void take(List<Job> jobs) {
        store.takeIn(new Intake(Map.of(), List.of(), List.of(), jobs), "ada", "", NumberTaken.REFUSE);
    }

    @Test
    void everyJobStandsInExactlyOneColumnWhateverItsPartsSay() throws Exception {
        for (long seed = 1; seed <= 5; seed++) {
            Random random = new Random(seed);
            List<Job> jobs = new ArrayList<>();
            for (Job j : oddJobs(random, 120)) {
                jobs.add(new Job(seed + j.id(), j.number().isEmpty() ? "" : seed + j.number(), j.parts()));
            }
            take(jobs);
            List<String> all = inTheStore();
            assertEquals(seed * 120, all.size());
            assertEquals(all, everywhere(1 + random.nextInt(60)), "seed " + seed);
            assertEquals(all.size(), store.boardCounts().values().stream().mapToInt(n -> n).sum());
        }
        store.rebuildRegister();
        assertEquals(inTheStore(), everywhere(100), "also when made anew");
    }

    @Test
    void aJobWhoseStageCannotBeToldStandsAmongTheUnknown() throws Exception {
        store.close();
        store = place.open(StoreOptions.standard().withStageOf(job -> {
            throw new IllegalStateException("no telling");
        }));
        take(oddJobs(new Random(3), 20));
        assertEquals(Map.of(BoardStep.UNKNOWN, 20), store.boardCounts());
        assertEquals(inTheStore(), everywhere(7));
        place.run("UPDATE register SET step = 'OF_A_NEWER_VERSION' WHERE job_id = 'odd3'");
        assertEquals(Map.of(BoardStep.UNKNOWN, 20), store.boardCounts());
        assertEquals(inTheStore(), everywhere(7));
    }

    @Test
    void lateIsWhatWasPromisedForAnEarlierDayAndIsStillOwed() throws Exception {
        take(oddJobs(new Random(8), 300));
        List<BoardRow> all = store.board(new BoardQuery(Optional.empty(), Which.ALL, Order.DUE, TODAY, 0, 400)).rows();
        List<String> late = all.stream().filter(r -> r.job().promised() != null && r.job().promised().isBefore(TODAY)
                && r.step() != BoardStep.RELEASED && r.step() != BoardStep.ENDED).map(r -> r.job().jobId()).sorted().toList();
        assertTrue(late.size() > 10);
        assertEquals(late, store.board(new BoardQuery(Optional.empty(), Which.LATE, Order.UNTOUCHED, TODAY, 0, 400)).rows()
                .stream().map(r -> r.job().jobId()).sorted().toList());
        List<LocalDate> days = all.stream().map(r -> r.job().promised()).filter(d -> d != null && d.getYear() < 9999).toList();
        assertEquals(days.stream().sorted().toList(), days);
        assertEquals(all.stream().filter(r -> r.waiting().isPresent()).count(),
                store.board(new BoardQuery(Optional.empty(), Which.WAITING, Order.DUE, TODAY, 0, 0)).total());
    }

    @Test
    void whatAJobWaitsForIsKeptWithSinceWhenAndWhy() throws Exception {
        take(List.of(new Job("w", "N 1", Map.of(PartKey.parse("booking"),
                Sample.part("booking", BOOKINGS.get(1), org.copperbook.jobs.booking.Booking.class), Sample.STANDING,
                Sample.part("standing", STANDINGS.get(2), org.copperbook.jobs.booking.Standing.class)))));
        BoardRow row = store.board(new BoardQuery(Optional.empty(), Which.WAITING, Order.DUE, TODAY, 0, 9)).rows().get(0);
        assertEquals(org.copperbook.jobs.booking.Standing.WaitingFor.PARTS, row.waiting().orElseThrow().what().orElseThrow());
        assertEquals("2026-04-01T06:00:00Z", row.waiting().get().since().toString());
        assertEquals("bearing", row.waiting().get().reason());
        assertEquals("2026-03-02T08:15:00Z", row.bookedAt().toString());
    }

    @Test
    void hoursAheadAreThoseOfJobsAgreedToAndNotReleased() throws Exception {
        take(oddJobs(new Random(5), 400));
        Map<String, Long> expected = new TreeMap<>();
        List<BoardRow> all = store.board(new BoardQuery(Optional.empty(), Which.ALL, Order.DUE, TODAY, 0, 400)).rows();
        for (BoardRow r : all) {
            Job job = store.load(r.job().jobId());
            boolean open = r.step() == BoardStep.AGREED || r.step() == BoardStep.RUN_UP;
            if (open && job.parts().get(PartKey.parse("quote/1")) != null && ((org.copperbook.jobs.quote.Quote) job.parts()
                    .get(PartKey.parse("quote/1"))).alternatives().size() == 1) {
                expected.merge("winder", 12_500L, Long::sum);
            }
        }
        Map<String, Long> got = new TreeMap<>();
        for (Workload.Due d : store.workAhead()) {
            got.merge(d.trade(), d.hours(), Long::sum);
        }
        assertEquals(expected, got);
    }

    @Test
    void hoursWorkedAreNotAheadAnyMore() {
        PartKey quote = PartKey.parse("quote/1");
        take(List.of(new Job("h1", "", Map.of(Sample.BOOKING, Sample.booking("Harbour Ice", "set"), quote, Sample.part("quote/1",
                "{\"schema\":1,\"revision\":1,\"currency\":\"EUR\",\"alternatives\":[{\"name\":\"a\",\"lines\":[{\"kind\":"
                        + "\"LABOUR\",\"trade\":\"winder\",\"quantity\":9,\"unit\":\"h\"}]}],\"approval\":{\"agreed\":true}}",
                org.copperbook.jobs.quote.Quote.class)))));
        assertEquals(List.of(9_000L), store.workAhead().stream().map(Workload.Due::hours).toList());
        store.save("h1", PartKey.parse("hours"), Sample.part("hours", "{\"schema\":1,\"entries\":[{\"who\":\"w\",\"trade\":"
                + "\"winder\",\"date\":\"2026-03-02\",\"hours\":2.5}]}", org.copperbook.jobs.work.Hours.class), 0, "w", "");
        assertEquals(List.of(6_500L), store.workAhead().stream().map(Workload.Due::hours).toList());
    }

    /** Looks at how the engine goes about it, which does not depend on how busy the machine is. */
    @Test
    void aColumnIsReadByAnIndexAndNotByLookingAtEveryJob() throws Exception {
        if (engine != Engine.SQLITE) {
            return;
        }
        try (Connection c = place.connect(); Statement s = c.createStatement(); ResultSet r = s.executeQuery(
                "EXPLAIN QUERY PLAN SELECT job_id FROM register WHERE step = 'AGREED' ORDER BY due, number_key, job_id LIMIT 50")) {
            TreeSet<String> plan = new TreeSet<>(Comparator.naturalOrder());
            while (r.next()) {
                plan.add(r.getString("detail"));
            }
            assertEquals(1, plan.size(), plan.toString());
            assertTrue(plan.first().contains("INDEX register_by_step (step=?)"), plan.toString());
        }
    }
}
