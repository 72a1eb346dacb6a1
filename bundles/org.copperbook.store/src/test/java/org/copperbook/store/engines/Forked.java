package org.copperbook.store.engines;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.copperbook.jobs.PartKey;
import org.copperbook.store.JobStore;
import org.copperbook.store.Revision;

/** A running {@link WritingProgram} and what it has acknowledged so far. */
public final class Forked implements AutoCloseable {

    private final Process process;
    private final List<String> acknowledged = Collections.synchronizedList(new ArrayList<>());
    private final CountDownLatch first = new CountDownLatch(1);
    private final Thread reader;

    /** One acknowledged save. */
    public record Acknowledged(String jobId, String number, String part, int revision, String hash) {

        public static Acknowledged parse(String line) {
            String[] f = line.split(" ");
            return new Acknowledged(f[0], f[1], f[2], Integer.parseInt(f[3]), f[4]);
        }
    }

    /** Starts {@link WritingProgram} on a store. */
    public Forked(Place store, Path temp, long seed, int threads, int jobs, int saves) throws IOException {
        this(WritingProgram.class, arguments(store, seed, threads, jobs, saves), "-Djava.io.tmpdir=" + temp);
    }

    /** Starts a program that acknowledges as {@link WritingProgram} does. */
    public Forked(Class<?> program, List<String> arguments, String... options) throws IOException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx96m", "-XX:TieredStopAtLevel=1", "-Dcopperbook.home=" + System.getProperty("copperbook.home")));
        command.addAll(List.of(options));
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), program.getName()));
        command.addAll(arguments);
        process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        reader = new Thread(this::read);
        reader.setDaemon(true);
        reader.start();
    }

    private static List<String> arguments(Place store, long seed, int threads, int jobs, int saves) {
        List<String> all = new ArrayList<>(List.of(Long.toString(seed), Integer.toString(threads),
                Integer.toString(jobs), Integer.toString(saves)));
        all.addAll(store.arguments());
        return all;
    }

    /** Waits until the program has acknowledged its first save. */
    public void awaitFirst() throws InterruptedException {
        if (!first.await(60, TimeUnit.SECONDS) || acknowledged.isEmpty()) {
            throw new AssertionError("the writing program acknowledged nothing");
        }
    }

    /** Kills it as kill -9 does and returns what it had acknowledged. */
    public List<Acknowledged> kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
        reader.join();
        return all();
    }

    /** Waits for its end; it must end by itself and well. */
    public List<Acknowledged> finish() throws InterruptedException {
        if (!process.waitFor(120, TimeUnit.SECONDS) || process.exitValue() != 0) {
            throw new AssertionError("the writing program did not end well");
        }
        reader.join();
        return all();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }

    private List<Acknowledged> all() {
        return acknowledged.stream().map(Acknowledged::parse).toList();
    }

    /** Whole lines only: what was cut off in the middle was not acknowledged. */
    private void read() {
        StringBuilder line = new StringBuilder();
        try (BufferedReader in = new BufferedReader(
                new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            for (int c = in.read(); c >= 0; c = in.read()) {
                if (c == '\n') {
                    acknowledged.add(line.toString());
                    line.setLength(0);
                    first.countDown();
                } else {
                    line.append((char) c);
                }
            }
        } catch (IOException e) {
            line.setLength(0);
        } finally {
            first.countDown();
        }
    }

    /** Those of the acknowledged saves that a store does not have exactly as they were acknowledged. */
    public static List<Acknowledged> lost(JobStore store, List<Acknowledged> acknowledged) {
        Set<String> jobs = new HashSet<>();
        Set<Acknowledged> kept = new HashSet<>();
        for (Acknowledged a : acknowledged) {
            if (jobs.add(a.jobId() + a.part()) && store.idOf(a.number()).filter(a.jobId()::equals).isPresent()) {
                store.history(a.jobId(), PartKey.parse(a.part())).forEach(s -> {
                    Revision r = s.revision();
                    kept.add(new Acknowledged(r.jobId(), a.number(), r.part(), r.revision(), r.hash()));
                });
            }
        }
        return acknowledged.stream().filter(a -> !kept.contains(a)).toList();
    }
}
