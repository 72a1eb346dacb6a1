package org.copperbook.store.engines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.store.Change;
import org.copperbook.store.ConflictException;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.Sample;
import org.copperbook.store.StoreOptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** Two programs on one store. */
@ParameterizedClass
@EnumSource(Engine.class)
class TwoAtOnceTest {

    private static final StoreOptions QUICK = StoreOptions.standard()
            .withLookForChangesEvery(Duration.ofMillis(30));

    @Parameter
    Engine engine;

    @TempDir
    Path folder;

    @Test
    void aSecondInstanceSeesTheFirstAndConflictsAreReportedAcross() {
        Place place = engine.place(folder);
        try (JobStore first = place.open(); JobStore second = place.open()) {
            JobHandle job = first.create(Sample.booking("Harbour Ice", "set"), "ada");
            assertEquals("Harbour Ice", second.load(job.id()).booking().orElseThrow().customer());
            second.save(job.id(), Sample.BOOKING, Sample.booking("Harbour Ice", "second"), 1, "ben", "");
            ConflictException e = assertThrows(ConflictException.class, () -> first.save(job.id(), Sample.BOOKING,
                    Sample.booking("Harbour Ice", "first"), 1, "ada", ""));
            assertEquals("ben", e.theirs().revision().who());
        }
    }

    @Test
    void changesOfAnotherInstanceAreToldOnceAndOwnOnesOnlyAsOwn() throws Exception {
        Place place = engine.place(folder);
        BlockingQueue<Change> heard = new LinkedBlockingQueue<>();
        try (JobStore mine = place.open(QUICK); JobStore theirs = place.open()) {
            mine.onChange(heard::add);
            JobHandle own = mine.create(Sample.booking("Harbour Ice", "set"), "ada");
            assertEquals(new Change(own.id(), "booking", false), heard.poll(5, TimeUnit.SECONDS));
            JobHandle other = theirs.create(Sample.booking("Mill Lane Bakery", "oven fan"), "ben");
            assertEquals(new Change(other.id(), "booking", true), heard.poll(5, TimeUnit.SECONDS));
            mine.savePerson(person("p1", "Ada Brook"), "o");
            assertEquals(new Change(JobStore.SHOP, Change.PEOPLE, false), heard.poll(5, TimeUnit.SECONDS));
            theirs.savePerson(person("p2", "Ben Mill"), "o");
            assertEquals(new Change(JobStore.SHOP, Change.PEOPLE, true), heard.poll(5, TimeUnit.SECONDS));
            mine.save(own.id(), Sample.NAMEPLATE, Sample.nameplate("A"), 0, "ada", "");
            assertEquals(new Change(own.id(), "nameplate", false), heard.poll(5, TimeUnit.SECONDS));
            assertNull(heard.poll(300, TimeUnit.MILLISECONDS));
        }
    }

    private static Person person(String key, String name) {
        return new Person(key, name, Set.of(Role.WINDER), null, null, true);
    }
}
