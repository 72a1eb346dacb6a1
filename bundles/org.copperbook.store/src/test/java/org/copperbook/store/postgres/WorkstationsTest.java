package org.copperbook.store.postgres;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.RegisterRow;
import org.copperbook.store.Sample;
import org.copperbook.store.Saved;
import org.copperbook.store.engines.Forked;
import org.copperbook.store.engines.Forked.Acknowledged;
import org.copperbook.store.engines.TestServer;
import org.junit.jupiter.api.Test;

/**
 * A busy shop: many workstations save into the same jobs, two of them are killed, and the server is restarted in the
 * middle. -Dcopperbook.workstations=N and -Dcopperbook.saves=N for another size.
 */
class WorkstationsTest {

    private static final int WORKSTATIONS = Integer.getInteger("copperbook.workstations", 6);
    private static final int SAVES = Integer.getInteger("copperbook.saves", 600);
    private static final int KILLED = 2;
    private static final int JOBS = 5;
    private static final long SEED = 20261126;

    private final List<Acknowledged> all = Collections.synchronizedList(new ArrayList<>());

    @Test
    void noAcknowledgedSaveIsLostNoNumberIsGivenTwiceAndEveryConflictIsTold() throws Exception {
        try (TestServer server = TestServer.own()) {
            ServerConnection at = server.newDatabase();
            List<JobHandle> jobs = new ArrayList<>();
            try (JobStore store = PostgresJobStore.open(at, TestServer.PASSWORD, Workstation.OPTIONS)) {
                for (int i = 0; i < JOBS; i++) {
                    jobs.add(store.create(Sample.booking("Harbour Ice", "set " + i), "foreman"));
                }
            }
            List<JobStore> stores = new ArrayList<>();
            List<Workstation> screens = new ArrayList<>();
            List<Forked> programs = new ArrayList<>();
            ExecutorService pool = Executors.newCachedThreadPool();
            try {
                for (int i = 0; i < KILLED; i++) {
                    programs.add(program(at, i, jobs));
                }
                for (Forked p : programs) {
                    p.awaitFirst();
                }
                List<Future<?>> running = new ArrayList<>();
                for (int i = KILLED; i < WORKSTATIONS; i++) {
                    JobStore store = PostgresJobStore.open(at, TestServer.PASSWORD, Workstation.OPTIONS);
                    stores.add(store);
                    Workstation w = new Workstation(store, "w" + i, SEED + i, jobs, all::add);
                    screens.add(w);
                    running.add(pool.submit(() -> {
                        while (all.size() < SAVES) {
                            w.saveOnce();
                        }
                        return null;
                    }));
                }
                List<Acknowledged> ofKilled = new ArrayList<>();
                await(SAVES / 4, running);
                ofKilled.addAll(programs.get(0).kill());
                await(SAVES / 2, running);
                server.stop();
                server.start();
                await(SAVES * 3 / 4, running);
                ofKilled.addAll(programs.get(1).kill());
                for (Future<?> f : running) {
                    f.get(30, TimeUnit.MINUTES);
                }
                int own = all.size();
                all.addAll(ofKilled);
                check(at, jobs, screens, own, ofKilled.size());
            } finally {
                pool.shutdownNow();
                programs.forEach(Forked::close);
                stores.forEach(JobStore::close);
            }
        }
    }

    private static Forked program(ServerConnection at, int i, List<JobHandle> jobs) throws Exception {
        List<String> arguments = new ArrayList<>(List.of("k" + i, Long.toString(SEED - 1 - i), at.toString(),
                TestServer.PASSWORD));
        jobs.forEach(j -> arguments.addAll(List.of(j.id(), j.number())));
        return new Forked(Workstation.class, arguments);
    }

    /** Waits until so many saves were acknowledged; a workstation that failed ends the waiting. */
    private void await(int saves, List<Future<?>> running) throws Exception {
        while (all.size() < saves) {
            for (Future<?> f : running) {
                if (f.isDone()) {
                    f.get();
                }
            }
            Thread.sleep(10);
        }
    }

    private void check(ServerConnection at, List<JobHandle> jobs, List<Workstation> screens, int own, int killed) {
        int conflicts = screens.stream().mapToInt(w -> w.conflicts.get()).sum();
        int troubles = screens.stream().mapToInt(w -> w.troubles.get()).sum();
        int tried = screens.stream().mapToInt(w -> w.tried.get()).sum();
        try (JobStore store = PostgresJobStore.open(at, TestServer.PASSWORD, Workstation.OPTIONS)) {
            List<Acknowledged> saves = all.stream().filter(a -> !a.part().equals("booking")).toList();
            int lost = Forked.lost(store, saves).size();
            List<RegisterRow> rows = store.register(RegisterQuery.first(1_000_000)).rows();
            System.out.println("workstations: " + WORKSTATIONS + " workstations, " + KILLED + " killed, 1 restart, "
                    + all.size() + " saves acknowledged (" + killed + " of the killed), " + lost + " lost, " + conflicts
                    + " conflicts told, " + troubles + " saves refused while the server was down, " + rows.size()
                    + " jobs");
            assertEquals(0, lost);
            assertEquals(tried, own + conflicts + troubles, "every save ended in one of three ways");
            assertTrue(conflicts > 0, "the jobs overlap, so there must be conflicts");
            assertEquals(saves.size(), new HashSet<>(saves.stream().map(a -> a.jobId() + a.revision()).toList()).size(),
                    "no revision was acknowledged twice");
            for (JobHandle job : jobs) {
                for (Saved s : store.history(job.id(), Sample.NAMEPLATE)) {
                    // Nobody wrote over what they had not seen.
                    assertTrue(((Nameplate) s.part()).serial().endsWith(" on " + (s.number() - 1)), s.toString());
                }
            }
            Set<String> numbers = rows.stream().map(RegisterRow::number).collect(Collectors.toCollection(TreeSet::new));
            String year = rows.get(0).number().substring(0, 5);
            assertEquals(IntStream.rangeClosed(1, rows.size()).mapToObj(n -> year + "%04d".formatted(n))
                    .collect(Collectors.toCollection(TreeSet::new)), numbers, "numbers without gap and without double");
            for (Acknowledged a : all) {
                assertEquals(a.jobId(), store.idOf(a.number()).orElseThrow());
            }
            assertTrue(store.audit().passed(), () -> store.audit().toString());
        }
    }
}
