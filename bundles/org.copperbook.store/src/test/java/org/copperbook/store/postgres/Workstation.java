package org.copperbook.store.postgres;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.copperbook.store.ConflictException;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.Sample;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreOptions;
import org.copperbook.store.engines.Forked.Acknowledged;

/**
 * Somebody at a screen of a busy shop: reads a nameplate, thinks, saves, looks at a conflict and saves on top of what
 * the others saved, books a machine in now and then. Each nameplate says on which revision its writer stood.
 */
final class Workstation {

    static final StoreOptions OPTIONS = StoreOptions.standard().withPatience(Duration.ofMinutes(2));

    private static final int BOOKED_IN_OF_SAVES = 25;
    private static final int THINKING_MILLIS = 4;

    private final JobStore store;
    private final String who;
    private final Random random;
    private final Consumer<Acknowledged> acknowledged;
    private final List<JobHandle> jobs;

    /** Saves tried. */
    final AtomicInteger tried = new AtomicInteger();
    /** Conflicts told, each with what the others saved. */
    final AtomicInteger conflicts = new AtomicInteger();
    /** Saves that the store said it could not do. */
    final AtomicInteger troubles = new AtomicInteger();

    Workstation(JobStore store, String who, long seed, List<JobHandle> jobs, Consumer<Acknowledged> acknowledged) {
        this.store = store;
        this.who = who;
        this.random = new Random(seed);
        this.jobs = new ArrayList<>(jobs);
        this.acknowledged = acknowledged;
    }

    /** One save, acknowledged or not. */
    void saveOnce() throws InterruptedException {
        tried.incrementAndGet();
        try {
            if (random.nextInt(BOOKED_IN_OF_SAVES) == 0) {
                bookIn();
            } else {
                readAndSave(jobs.get(random.nextInt(jobs.size())));
            }
        } catch (StoreException e) {
            if (!e.silent()) {
                throw e;
            }
            troubles.incrementAndGet();
            Thread.sleep(100);
        }
    }

    private void bookIn() {
        JobHandle job = store.create(Sample.booking("Harbour Ice", who), who);
        acknowledged.accept(new Acknowledged(job.id(), job.number(), "booking", 1, "-"));
    }

    private void readAndSave(JobHandle job) throws InterruptedException {
        Optional<Saved> seen = store.current(job.id(), Sample.NAMEPLATE);
        Thread.sleep(random.nextInt(THINKING_MILLIS));
        int base = seen.map(Saved::number).orElse(0);
        try {
            save(job, base);
        } catch (ConflictException e) {
            if (e.theirs() == null || e.theirs().number() <= base || e.basedOnRevision() != base) {
                throw new IllegalStateException("a conflict that does not say what the others saved", e);
            }
            conflicts.incrementAndGet();
        }
    }

    private void save(JobHandle job, int base) {
        Saved saved = store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate(who + " on " + base), base, who, "");
        acknowledged.accept(new Acknowledged(job.id(), job.number(), "nameplate", saved.number(),
                saved.revision().hash()));
    }

    /** A workstation as a program of its own, to be killed. Arguments: who, seed, connection, password, jobs. */
    public static void main(String[] arguments) throws InterruptedException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        List<JobHandle> jobs = new ArrayList<>();
        for (int i = 4; i < arguments.length; i += 2) {
            jobs.add(new JobHandle(arguments[i], arguments[i + 1]));
        }
        try (JobStore store = PostgresJobStore.open(ServerConnection.parse(arguments[2]), arguments[3], OPTIONS)) {
            Workstation w = new Workstation(store, arguments[0], Long.parseLong(arguments[1]), jobs,
                    a -> out.print(String.join(" ", a.jobId(), a.number(), a.part(), Integer.toString(a.revision()),
                            a.hash()) + "\n"));
            while (true) {
                w.saveOnce();
                out.flush();
            }
        }
    }
}
