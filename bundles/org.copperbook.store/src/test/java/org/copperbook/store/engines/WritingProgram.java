package org.copperbook.store.engines;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.Sample;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreOptions;
import org.copperbook.store.postgres.PostgresJobStore;
import org.copperbook.store.postgres.ServerConnection;
import org.copperbook.store.sqlite.SqliteJobStore;

/**
 * A program of its own that writes into a store and says what was acknowledged: one line
 * {@code job-id number part revision hash} after each save has returned.
 *
 * <p>Arguments: a seed, threads, jobs per thread (0 for no end), saves per job, and what {@link Place#arguments} gives.
 */
public final class WritingProgram {

    private WritingProgram() {
    }

    public static void main(String[] arguments) throws InterruptedException {
        long seed = Long.parseLong(arguments[0]);
        int threads = Integer.parseInt(arguments[1]);
        int jobs = Integer.parseInt(arguments[2]);
        int saves = Integer.parseInt(arguments[3]);
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        // The engine hands its lock to nobody in turn: of two programs that never pause one can starve on a busy machine.
        StoreOptions patient = StoreOptions.standard().withPatience(Duration.ofMinutes(2));
        try (JobStore store = open(arguments, patient)) {
            List<Thread> running = new ArrayList<>();
            for (int t = 0; t < threads; t++) {
                Random random = new Random(seed + t);
                Thread thread = new Thread(() -> write(store, random, jobs, saves, out));
                thread.setUncaughtExceptionHandler((x, e) -> {
                    e.printStackTrace();
                    Runtime.getRuntime().halt(3);
                });
                thread.start();
                running.add(thread);
            }
            for (Thread thread : running) {
                thread.join();
            }
        }
    }

    private static JobStore open(String[] arguments, StoreOptions options) {
        return arguments.length == 5 ? SqliteJobStore.open(Path.of(arguments[4]), options)
                : PostgresJobStore.open(ServerConnection.parse(arguments[4]), arguments[5], options);
    }

    private static void write(JobStore store, Random random, int jobs, int saves, PrintStream out) {
        for (int j = 0; jobs == 0 || j < jobs; j++) {
            JobHandle job = store.create(Sample.booking("Harbour Ice", "set " + random.nextInt(1000)), "ada");
            acknowledge(out, job, store.current(job.id(), Sample.BOOKING).orElseThrow());
            for (int s = 0; s < saves; s++) {
                Nameplate plate = Sample.nameplate("x".repeat(random.nextInt(20_000)) + s);
                acknowledge(out, job, store.save(job.id(), Sample.NAMEPLATE, plate, s, "ben", ""));
            }
        }
    }

    private static void acknowledge(PrintStream out, JobHandle job, Saved saved) {
        String line = String.join(" ", job.id(), job.number(), saved.key().toString(),
                Integer.toString(saved.number()), saved.revision().hash()) + "\n";
        synchronized (out) {
            out.print(line);
            out.flush();
        }
    }
}
