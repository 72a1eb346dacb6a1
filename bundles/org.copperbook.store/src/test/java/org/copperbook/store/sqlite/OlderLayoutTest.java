package org.copperbook.store.sqlite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.Statement;
import java.util.List;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Stores of earlier layouts. */
class OlderLayoutTest {

    @TempDir
    Path folder;

    @Test
    void aStoreOfTheFirstLayoutGetsTheListWhenItIsOpened() throws Exception {
        Path file = folder.resolve("workshop.sqlite");
        JobStore store = SqliteJobStore.open(file);
        JobHandle job = store.create(Sample.booking("Harbour Ice", "set"), "foreman");
        store.save(job.id(), PartKey.windingAsFound(WindingRole.MAIN_STATOR), Sample.part("winding/main-stator",
                "{\"schema\":1,\"role\":\"main-stator\",\"asWound\":false,\"slots\":48,\"poles\":4,\"turnsPerCoil\":5}",
                WindingData.class), 0, "winder", "");
        store.close();
        try (Connection c = new RawFile(file).open();
                Statement s = c.createStatement()) {
            s.executeUpdate("DROP TABLE past_winding");
            s.executeUpdate("DROP TRIGGER job_stays");
            s.executeUpdate("DELETE FROM job WHERE id = 'cards'");
            s.executeUpdate("CREATE TRIGGER job_stays BEFORE DELETE ON job\n"
                    + "BEGIN SELECT RAISE(ABORT, 'a job is never removed'); END");
            for (String later : List.of("person_key", "private_name", "person_use", "erased", "month_fact", "account",
                    "register_text", "work_ahead", "stock_move", "stock_item")) {
                s.executeUpdate("DROP TABLE " + later);
            }
            s.executeUpdate("DELETE FROM schema_step WHERE name NOT LIKE '0001%'");
            s.executeUpdate("DELETE FROM setting WHERE name = 'past-windings-edition'");
        }
        store = SqliteJobStore.open(file);
        assertEquals(1, store.memory().size());
        assertTrue(store.audit().bad().isEmpty());
        store.close();
    }
}
