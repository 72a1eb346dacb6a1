package org.copperbook.store.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.calc.winding.memory.MachineFigures;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.report.BoardStep;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.store.BoardQuery;
import org.copperbook.store.Intake;
import org.copperbook.store.JobStore;
import org.copperbook.store.NumberTaken;
import org.copperbook.store.RegisterColumn;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.RegisterSort;
import org.copperbook.store.Saved;
import org.copperbook.store.memory.Asked;
import org.copperbook.store.sqlite.SqliteJobStore;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A large workshop. Small in the daily build; {@code -Pscale} makes 100,000 jobs and a million windings, prints the times
 * beside those of the bare query on the same file in the same run, and draws them in {@code target/scale.svg}.
 */
class ScaleTest {

    private static final int JOBS = Integer.getInteger("copperbook.jobs", 1_000);
    private static final int WINDINGS = 10 * JOBS;
    private static final int ROUNDS = JOBS > 1_000 ? 60 : 3;
    private static final int BATCH = 500;
    private static final PartKey STATOR = PartKey.parse("winding/main-stator");
    private static final PartKey NAMEPLATE = PartKey.parse("nameplate");
    private static final RegisterSort BY_CUSTOMER = new RegisterSort(RegisterColumn.CUSTOMER, true);

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 26);

    @TempDir
    Path folder;

    private JobStore store;
    private Connection bare;
    private final InventedShop shop = new InventedShop(20261126);
    private final List<Timing> timings = new ArrayList<>();
    private final Map<String, String> customers = new HashMap<>();
    private int jobs;

    @BeforeEach
    void open() throws SQLException {
        store = SqliteJobStore.open(folder.resolve("large.sqlite"));
        bare = DriverManager.getConnection("jdbc:sqlite:" + store.file());
        try (Statement s = bare.createStatement()) {
            s.execute("PRAGMA synchronous = FULL");
            s.execute("PRAGMA cache_size = -16384");
        }
    }

    @AfterEach
    void close() throws SQLException {
        bare.close();
        store.close();
    }

    /** What is asked for at the bench: everything measured. */
    static MachineFigures bench(int round) {
        return new MachineFigures(20_000 + 997 * (round % 60), 4, 12 * (1 + round % 8), 0.2 + 0.003 * (round % 50), 0.2, 400);
    }

    /** What is asked for before anything was measured. */
    static MachineFigures plateOnly(int round) {
        return new MachineFigures(20_000 + 997 * (round % 60), 4, Double.NaN, Double.NaN, Double.NaN, 400);
    }

    @Test
    void everyStepStaysNearTheBareQueryHoweverManyJobsThereAre() throws Exception {
        List<Integer> sizes = JOBS > 1_000 ? List.of(1_000, 10_000, JOBS) : List.of(JOBS);
        for (int size : sizes) {
            grow(size);
            measure();
        }
        Path target = Files.createDirectories(Path.of("target"));
        Files.writeString(target.resolve("scale.svg"), GrowthPlot.svg(timings), StandardCharsets.UTF_8);
        assertEquals(JOBS, store.register(RegisterQuery.first(1)).total());
        assertEquals(WINDINGS, store.memory().size());
        long booked = 0;
        for (YearMonth m = YearMonth.of(2016, 1); m.isBefore(YearMonth.of(2027, 1)); m = m.plusMonths(1)) {
            booked += store.monthReport(m).count(org.copperbook.jobs.report.MonthFact.Kind.BOOKED);
        }
        assertEquals(JOBS, booked, "every job was booked in in some month");
        assertEquals(Optional.empty(), store.audit().bad());
        smallHeap();
    }

    @Test
    void theResistancesOfInventedJobsFollowFromTurnsWireAndTemperature() {
        for (Job job : new InventedShop(7).next(50)) {
            WindingData w = (WindingData) job.parts().get(STATOR);
            w.groups().forEach(g -> {
                int turns = g.coils().stream().mapToInt(c -> c.turns()).sum();
                double expected = InventedShop.ohms(turns, w.meanTurnM(), w.wire().get(0).bareMm(),
                        w.wire().get(0).strands(), g.resistance().windingCelsius());
                assertEquals(1, g.resistance().observed().value() / expected, 0.03, job.number());
            });
        }
        assertEquals(new InventedShop(7).next(20), new InventedShop(7).next(20));
    }

    private void grow(int to) throws Exception {
        while (jobs < to) {
            int many = Math.min(BATCH, to - jobs);
            store.takeIn(new Intake(Map.of(), List.of(), List.of(), shop.next(many)), "p01", "", NumberTaken.REFUSE);
            jobs += many;
        }
        moreWindings(10 * to);
        try (Statement s = bare.createStatement()) {
            s.execute("PRAGMA wal_checkpoint(TRUNCATE)");
        }
    }

    /** Rows straight into the derived list, with sizes of their own: as from cards of ten times as many machines. */
    private void moreWindings(int to) throws SQLException {
        try (Statement s = bare.createStatement()) {
            List<String> names = new ArrayList<>();
            try (ResultSet r = s.executeQuery("SELECT name FROM pragma_table_info('past_winding')"
                    + " WHERE name NOT IN ('id', 'job_id', 'part', 'bore', 'length', 'rating')")) {
                while (r.next()) {
                    names.add(r.getString(1));
                }
            }
            String columns = String.join(", ", names);
            s.execute("BEGIN IMMEDIATE");
            int now = store.memory().size();
            for (int copy = 0; now < to; copy++) {
                now += s.executeUpdate("INSERT INTO past_winding (job_id, part, bore, length, rating, " + columns + ")"
                        + " SELECT 'cards', 'old-card/' || " + to + " || '-' || " + copy + " || '-' || id,"
                        + " bore * (0.9 + 0.2 * abs(random() % 100000) / 100000.0),"
                        + " length * (0.9 + 0.2 * abs(random() % 100000) / 100000.0),"
                        + " rating * (0.9 + 0.2 * abs(random() % 100000) / 100000.0), " + columns
                        + " FROM past_winding WHERE job_id <> 'cards' LIMIT " + (to - now));
            }
            s.execute("COMMIT");
        }
    }

    private void measure() throws Exception {
        time("open the register", r -> assertEquals(100, store.register(RegisterQuery.first(100)).rows().size()),
                r -> page("", "number_key DESC"));
        time("filter as you type", r -> store.register(new RegisterQuery(word(r), 0, 100, null)),
                r -> page(word(r), "number_key DESC"));
        time("sort by customer", r -> store.register(new RegisterQuery("", 0, 100, BY_CUSTOMER)),
                r -> page("", "customer_key = '', customer_key, number_key DESC"));
        customers();
        time("open a job", r -> store.load(id(r)), r -> parts(id(r)));
        savePart();
        time("nearest winding", r -> store.memory().nearest(new Asked(WindingRole.MAIN_STATOR, bench(r), "", "", ""), 20),
                r -> nearest(bench(r)));
        time("nearest by the plate", r -> store.memory().nearest(
                new Asked(WindingRole.MAIN_STATOR, plateOnly(r), "", "", ""), 20), r -> nearest(plateOnly(r)));
        time("open the board", r -> {
            store.boardCounts();
            for (BoardStep step : BoardStep.values()) {
                store.board(new BoardQuery(Optional.of(step), BoardQuery.Which.ALL, BoardQuery.Order.DUE, TODAY, 0, 50));
            }
        }, r -> boardBare());
        time("hours ahead", r -> store.workAhead(), r -> read("SELECT trade, due, SUM(amount) FROM work_ahead"
                + " GROUP BY trade, due"));
        time("month report", r -> store.monthReport(month(r)), r -> monthBare(month(r)));
    }

    private void time(String step, Timing.Work work, Timing.Work query) throws Exception {
        keep(Timing.of(step, jobs, ROUNDS, r -> { }, work, query));
    }

    private void keep(Timing timing) {
        timings.add(timing);
        System.out.println(timing);
    }

    private String id(int round) {
        return "s-" + (round * 7919L % jobs);
    }

    private static String word(int round) {
        return List.of("saw", "sawm", "ELMSTEAD", "sn-1" + round % 10, "larkspur bakery", "00" + round % 10).get(round % 6);
    }

    private static YearMonth month(int round) {
        return YearMonth.of(2016, 1).plusMonths(round % 12);
    }

    private int page(String words, String order) throws SQLException {
        String[] each = words.isEmpty() ? new String[0] : words.toUpperCase(java.util.Locale.ROOT).split(" ");
        String where = each.length == 0 ? "" : " WHERE search LIKE ?" + " AND search LIKE ?".repeat(each.length - 1);
        int total = read("SELECT COUNT(*) FROM register" + where, each);
        read("SELECT job_id, number, customer, machine, serial, stage, promised, changed_at, voided FROM register" + where
                + " ORDER BY " + order + " LIMIT 100 OFFSET 0", each);
        return total;
    }

    /** Under which keys the customers' names stand, known beforehand. */
    private void customers() throws SQLException {
        customers.clear();
        try (Statement s = bare.createStatement(); ResultSet r = s.executeQuery(
                "SELECT u.job_id, u.key FROM person_use u JOIN private_name n ON n.key = u.key")) {
            while (r.next()) {
                customers.put(r.getString(1), r.getString(2));
            }
        }
    }

    /** Everything that is kept of a job: its number, what its parts say, and the names that stand outside them. */
    private int parts(String job) throws SQLException {
        read("SELECT number FROM job WHERE id = '" + job + "'");
        read("SELECT n.text, k.secret FROM private_name n JOIN person_key k ON k.key = n.key WHERE n.key = '"
                + customers.get(job) + "'");
        return read("SELECT sequence, job_id, part, revision, saved_at, who, why, json, previous_hash, hash FROM revision r"
                + " WHERE job_id = '" + job + "' AND revision = (SELECT MAX(revision) FROM revision l WHERE l.job_id ="
                + " r.job_id AND l.part = r.part)");
    }

    /**
     * Another serial on the nameplate, by which the job and its windings are found. The bare one writes the same rows with
     * values that are known already, into a copy of the file, because the chain of the store would not hold otherwise.
     */
    private void savePart() throws Exception {
        Path copy = folder.resolve("bare-" + jobs + ".sqlite");
        Files.copy(store.file(), copy);
        Saved[] was = new Saved[1];
        Nameplate[] next = new Nameplate[1];
        try (BareSave bareSave = new BareSave(copy)) {
            keep(Timing.of("save a part", jobs, ROUNDS, r -> {
                was[0] = store.current(id(r), NAMEPLATE).orElseThrow();
                next[0] = withSerial(was[0].part(), "SN-" + jobs + "-" + r);
                bareSave.next(was[0].revision(), next[0]);
            }, r -> store.save(id(r), NAMEPLATE, next[0], was[0].number(), "p01", ""), r -> bareSave.save()));
        }
        Files.delete(copy);
    }

    private static Nameplate withSerial(Part plate, String serial) throws Exception {
        PartJson json = new PartJson();
        return (Nameplate) json.read(NAMEPLATE, json.tree(plate).put("serial", serial));
    }

    /** The same distance in SQL over every row: what there is without a list in order. */
    private int nearest(MachineFigures f) throws SQLException {
        StringBuilder sum = new StringBuilder("0");
        double[] values = {f.rating(), f.poles(), f.slots(), f.bore(), f.length(), f.volts()};
        org.copperbook.calc.winding.memory.Figure[] figures = org.copperbook.calc.winding.memory.Figure.values();
        String[] columns = {"rating", "poles", "slots", "bore", "length", "volts"};
        for (int i = 0; i < values.length; i++) {
            if (!Double.isNaN(values[i])) {
                String log = "COALESCE(" + figures[i].weight() + " * ln(" + columns[i] + " / " + values[i] + "), "
                        + figures[i].weight() * Math.log(1.5) + ")";
                sum.append(" + ").append(log).append(" * ").append(log);
            }
        }
        return read("SELECT * FROM past_winding WHERE role = 'main-stator' AND job_id <> '' ORDER BY " + sum + " LIMIT 20");
    }

    private void boardBare() throws SQLException {
        read("SELECT step, COUNT(*) FROM register GROUP BY step");
        String known = Stream.of(BoardStep.values()).filter(s -> s != BoardStep.UNKNOWN).map(s -> "'" + s + "'")
                .collect(Collectors.joining(", "));
        for (BoardStep step : BoardStep.values()) {
            String there = step == BoardStep.UNKNOWN ? "step NOT IN (" + known + ")" : "step = '" + step + "'";
            read("SELECT COUNT(*) FROM register WHERE " + there);
            read("SELECT job_id, number, customer, machine, serial, stage, promised, changed_at, voided, step, booked_at,"
                    + " waiting_for, waiting_since, waiting_reason FROM register WHERE " + there
                    + " ORDER BY due, number_key, job_id LIMIT 50");
        }
    }

    private int monthBare(YearMonth month) throws SQLException {
        return read("SELECT kind, what, COUNT(*), SUM(amount) FROM month_fact WHERE month = '" + month
                + "' GROUP BY kind, what");
    }

    private int read(String sql, String... words) throws SQLException {
        int rows = 0;
        try (PreparedStatement q = bare.prepareStatement(sql)) {
            for (int i = 0; i < words.length; i++) {
                q.setString(i + 1, "%" + words[i] + "%");
            }
            try (ResultSet r = q.executeQuery()) {
                int columns = r.getMetaData().getColumnCount();
                while (r.next()) {
                    for (int i = 1; i <= columns; i++) {
                        r.getString(i);
                    }
                    rows++;
                }
            }
        }
        return rows;
    }

    private void smallHeap() throws Exception {
        Process p = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx32m",
                "-XX:TieredStopAtLevel=1", "-Dcopperbook.home=" + folder.resolve("home"), "-cp",
                System.getProperty("java.class.path"), SmallHeapProgram.class.getName(), store.file().toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
        String said = new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        assertTrue(p.waitFor(120, TimeUnit.SECONDS));
        assertEquals(0, p.exitValue());
        assertTrue(Integer.parseInt(said) >= Math.min(jobs, 1_000), said);
    }
}
