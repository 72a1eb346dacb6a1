package org.copperbook.store.sqlite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.copperbook.store.AuditReport;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.copperbook.store.engines.Forked;
import org.copperbook.store.engines.Forked.Acknowledged;
import org.copperbook.store.engines.WritingProgram;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Lets the power fail at random moments of a real run: a program that saves is watched by strace, and a disk that keeps
 * for sure only what was forced is built from every write, every forcing and every acknowledgement in their order.
 * Needs Linux and strace. The number of failures comes from the system property copperbook.failures.
 */
@Tag("strace")
class PowerLossTest {

    private static final int FAILURES = Integer.getInteger("copperbook.failures", 300);

    @TempDir
    Path folder;

    private Path file;
    private Path said;
    private Path trace;

    private static final class Tally {
        private int failures;
        private int atRisk;
        private int lost;
        private final List<Acknowledged> acknowledged = new ArrayList<>();
    }

    @BeforeEach
    void watchAProgramThatSaves() throws Exception {
        file = Files.createDirectory(folder.resolve("watched")).resolve("workshop.sqlite");
        said = folder.resolve("said.txt");
        trace = folder.resolve("trace.txt");
        Process p = new ProcessBuilder("strace", "-f", "-y", "--seccomp-bpf", "-xx", "-s", "200000", "-e",
                "trace=pwrite64,write,fsync,fdatasync,ftruncate", "-e", "signal=none", "-o", trace.toString(), "-P",
                file.toString(), "-P", file + "-wal", "-P", said.toString(),
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx96m",
                "-XX:TieredStopAtLevel=1", "-Dcopperbook.home=" + System.getProperty("copperbook.home"), "-cp",
                System.getProperty("java.class.path"), WritingProgram.class.getName(), "7", "2", "12", "8",
                file.toString()).redirectOutput(said.toFile()).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        assertTrue(p.waitFor(5, TimeUnit.MINUTES), "the watched program did not end");
        assertEquals(0, p.exitValue());
    }

    @Test
    void noAcknowledgedSaveIsLostWhenThePowerFails() throws IOException {
        Tally tally = failAgainAndAgain(new ForgetfulDisk(false), FAILURES);
        System.out.println("power loss: " + tally.failures + " failures, " + tally.atRisk
                + " of them with writes not yet forced, " + tally.acknowledged.size() + " saves acknowledged, "
                + tally.lost + " lost");
        assertEquals(2 * 12 * 9, tally.acknowledged.size());
        assertTrue(tally.atRisk > FAILURES / 3, tally.atRisk + " failures met writes that were not forced");
        assertEquals(0, tally.lost);
    }

    /** The proof can fail: on a disk that only says it has forced a file, saves are lost. */
    @Test
    void onADiskThatLiesSavesAreLostAndThisProofSeesIt() throws IOException {
        assertTrue(failAgainAndAgain(new ForgetfulDisk(true), 20).lost > 0);
    }

    private Tally failAgainAndAgain(ForgetfulDisk disk, int failures) throws IOException {
        Path image = Files.createDirectories(folder.resolve("image"));
        Random random = new Random(20261125);
        Tally tally = new Tally();
        long[] events = {0};
        DiskEvent.read(trace, said, e -> events[0]++);
        StringBuilder text = new StringBuilder();
        DiskEvent.read(trace, said, e -> {
            disk.accept(e);
            if (e instanceof DiskEvent.Said s) {
                text.append(s.text());
                for (int end = text.indexOf("\n"); end >= 0; end = text.indexOf("\n")) {
                    tally.acknowledged.add(Acknowledged.parse(text.substring(0, end)));
                    text.delete(0, end + 1);
                }
            }
            if (!tally.acknowledged.isEmpty() && random.nextDouble() < (double) failures / events[0]) {
                tally.failures++;
                tally.atRisk += disk.hasUnforced() ? 1 : 0;
                tally.lost += lostAfterFailure(disk, image, random, tally.acknowledged);
            }
        });
        return tally;
    }

    private int lostAfterFailure(ForgetfulDisk disk, Path image, Random random, List<Acknowledged> acknowledged) {
        try {
            ForgetfulDisk.clear(image);
            disk.fail(image, random);
            try (JobStore store = SqliteJobStore.open(image.resolve(file.getFileName()))) {
                AuditReport audit = store.audit();
                return Forked.lost(store, acknowledged).size() + (audit.passed() ? 0 : 1);
            } catch (StoreException e) {
                return acknowledged.size();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
