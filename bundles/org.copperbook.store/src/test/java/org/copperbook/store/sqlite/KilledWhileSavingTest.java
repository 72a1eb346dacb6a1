package org.copperbook.store.sqlite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.copperbook.store.AuditReport;
import org.copperbook.store.JobStore;
import org.copperbook.store.files.OwnFolder;
import org.copperbook.store.engines.Engine;
import org.copperbook.store.engines.Forked;
import org.copperbook.store.engines.Forked.Acknowledged;
import org.copperbook.store.engines.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills programs that write under load, again and again on the same store, and looks for every save they acknowledged.
 * The count comes from the system property copperbook.kills; every hundred kills begin a new store, since the audit
 * after each kill reads the whole of it.
 */
class KilledWhileSavingTest {

    private static final int KILLS = Integer.getInteger("copperbook.kills", 5);
    private static final long SEED = 20260302;
    private static final int LONGEST_RUN_MILLIS = 1_000;
    private static final int KILLS_OF_ONE_STORE = 100;

    @TempDir
    Path folder;

    private record Outcome(int kills, int acknowledged, int lost, long revisions) {

        Outcome and(Outcome o) {
            return new Outcome(kills + o.kills, acknowledged + o.acknowledged, lost + o.lost, revisions + o.revisions);
        }
    }

    @Test
    void noAcknowledgedSaveIsLost() throws Exception {
        Path temp = Files.createDirectory(folder.resolve("temp"));
        Random random = new Random(SEED);
        Outcome all = new Outcome(0, 0, 0, 0);
        while (all.kills() < KILLS) {
            Path own = Files.createDirectory(folder.resolve("store-" + all.kills()));
            all = all.and(kill(Engine.SQLITE.place(own), temp, random,
                    Math.min(KILLS_OF_ONE_STORE, KILLS - all.kills())));
            OwnFolder.remove(own);
        }
        System.out.println("kill test: " + all.kills() + " kills, " + all.acknowledged() + " saves acknowledged, "
                + all.lost() + " lost, " + all.revisions() + " revisions in the stores");
        assertEquals(0, all.lost());
        try (Stream<Path> left = Files.list(temp)) {
            assertEquals(List.of(), left.filter(p -> p.toString().contains("sqlite")).toList(),
                    "unpacked libraries left in the temp folder");
        }
    }

    private static Outcome kill(Place place, Path temp, Random random, int atMost) throws Exception {
        List<Acknowledged> all = new ArrayList<>();
        int kills = 0;
        while (kills < atMost) {
            // Every other round two programs write at once and both are killed.
            int programs = Math.min(atMost - kills, 1 + kills % 2);
            List<Acknowledged> round = round(place, temp, random, programs);
            kills += programs;
            all.addAll(round);
            try (JobStore store = place.open()) {
                assertEquals(List.of(), Forked.lost(store, round), "lost after kill " + kills);
                AuditReport audit = store.audit();
                assertTrue(audit.passed(), () -> audit.bad() + " " + audit.problems());
            }
        }
        try (JobStore store = place.open()) {
            return new Outcome(kills, all.size(), Forked.lost(store, all).size(), store.audit().revisions());
        }
    }

    private static List<Acknowledged> round(Place place, Path temp, Random random, int programs) throws Exception {
        List<Forked> running = new ArrayList<>();
        List<Acknowledged> acknowledged = new ArrayList<>();
        try {
            for (int i = 0; i < programs; i++) {
                running.add(new Forked(place, temp, random.nextLong(), 3, 0, 8));
            }
            for (Forked f : running) {
                f.awaitFirst();
            }
            Thread.sleep(random.nextInt(LONGEST_RUN_MILLIS));
            for (Forked f : running) {
                acknowledged.addAll(f.kill());
            }
        } finally {
            running.forEach(Forked::close);
        }
        return acknowledged;
    }
}
