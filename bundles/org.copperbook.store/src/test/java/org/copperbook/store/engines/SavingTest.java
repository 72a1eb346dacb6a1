package org.copperbook.store.engines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.seal.QuoteSeal;
import org.copperbook.store.Change;
import org.copperbook.store.ConflictException;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.Sample;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.JobStore.ChainEnd;
import org.copperbook.store.RegisterQuery;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Engine.class)
class SavingTest extends OnEachEngine {

    @Test
    void aBookingRepeatedUnderItsKeyFindsTheJobAndWritesNothing() {
        JobHandle first = store.create("a-key-of-the-caller", Sample.booking("Harbour Ice", "set"), "ada");
        ChainEnd end = store.chainEnd();
        assertEquals(first, store.create("a-key-of-the-caller", Sample.booking("Harbour Ice", "set"), "ada"));
        assertEquals(first, store.create(first.id(), Sample.booking("Typed since", "set"), "ada"));
        assertEquals(end, store.chainEnd());
        assertEquals(1, store.register(RegisterQuery.first(9)).total());
        assertThrows(IllegalArgumentException.class,
                () -> store.create(JobStore.SHOP, Sample.booking("Harbour Ice", "set"), "ada"));
    }

    @Test
    void aJobBookedInIsThereAfterReopening() {
        JobHandle job = store.create(Sample.booking("Harbour Ice", "standby set"), "ada");
        store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("A-17"), 0, "ben", "read off the plate");
        store.close();
        store = place.open();
        Job loaded = store.load(store.idOf(job.number()).orElseThrow());
        assertEquals("Harbour Ice", loaded.booking().orElseThrow().customer());
        assertEquals("A-17", loaded.nameplate().orElseThrow().serial());
        assertEquals("read off the plate",
                store.current(job.id(), Sample.NAMEPLATE).orElseThrow().revision().why());
    }

    @Test
    void earlierRevisionsStayReadable() {
        JobHandle job = store.create(Sample.booking("Harbour Ice", "standby set"), "ada");
        for (int i = 1; i <= 3; i++) {
            assertEquals(i + 1, store.save(job.id(), Sample.BOOKING, Sample.booking("Harbour Ice", "set " + i), i,
                    "ada", "").number());
        }
        assertEquals(List.of("standby set", "set 1", "set 2", "set 3"), store.history(job.id(), Sample.BOOKING)
                .stream().map(s -> ((Booking) s.part()).machine()).toList());
    }

    @Test
    void theSecondToSaveGetsBothVersionsAndNothingIsOverwritten() {
        JobHandle job = store.create(Sample.booking("Harbour Ice", "standby set"), "ada");
        store.save(job.id(), Sample.BOOKING, Sample.booking("Harbour Ice", "theirs"), 1, "ben", "");
        Booking mine = Sample.booking("Harbour Ice", "mine");
        ConflictException e = assertThrows(ConflictException.class,
                () -> store.save(job.id(), Sample.BOOKING, mine, 1, "ada", ""));
        assertEquals(Kind.CONFLICT, e.kind());
        assertEquals("theirs", ((Booking) e.theirs().part()).machine());
        assertEquals(2, e.theirs().number());
        assertEquals(mine, e.mine());
        assertEquals(1, e.basedOnRevision());
        assertTrue(e.getMessage().contains("ben"), e.getMessage());
        assertEquals(2, store.history(job.id(), Sample.BOOKING).size());
        assertEquals(3, store.save(job.id(), Sample.BOOKING, mine, e.theirs().number(), "ada", "chosen").number());
    }

    @Test
    void anOfferThatWentOutIsAnsweredAndRevisedButNotChanged() throws Exception {
        JobHandle job = store.create(Sample.booking("Harbour Ice", "standby set"), "ada");
        PartKey key = PartKey.parse("quote/1");
        String offer = "\"schema\":1,\"terms\":\"30 days\",\"revision\":";
        Quote draft = Sample.part("quote/1", "{" + offer + "1}", Quote.class);
        String sent = ",\"sent\":{\"by\":\"ada\",\"fingerprint\":\"" + QuoteSeal.of(job.number(), draft) + "\"}";
        Quote out = Sample.part("quote/1", "{" + offer + "1" + sent + "}", Quote.class);
        store.save(job.id(), key, draft, 0, "ada", "");
        store.save(job.id(), key, out, 1, "ada", "");
        Quote cheaper = Sample.part("quote/1", "{" + offer.replace("30", "90") + "1" + sent + "}", Quote.class);
        for (Quote changed : List.of(draft, cheaper)) {
            StoreException e = assertThrows(StoreException.class, () -> store.save(job.id(), key, changed, 2, "ben", ""));
            assertEquals(Kind.NOT_ALLOWED, e.kind());
            assertTrue(e.getMessage().contains("revise the quote"), e.getMessage());
            assertThrows(ConflictException.class, () -> store.save(job.id(), key, changed, 1, "ben", ""),
                    "who did not know that it went out is told that first");
        }
        assertEquals(out, store.current(job.id(), key).orElseThrow().part());
        Quote answered = Sample.part("quote/1", "{" + offer + "1" + sent + ",\"approval\":{\"agreed\":true}}", Quote.class);
        store.save(job.id(), key, answered, 2, "ben", "");
        Quote revised = Sample.part("quote/1", "{" + offer.replace("30", "90") + "2}", Quote.class);
        store.save(job.id(), key, revised, 3, "ben", "");
        assertEquals(revised, store.current(job.id(), key).orElseThrow().part());
        assertEquals(List.of(draft, out, answered, revised), store.history(job.id(), key).stream().map(Saved::part).toList());
    }

    @Test
    void aFirstRevisionConflictsWithOneThatIsThereAndALaterOneWithNoneAtAll() {
        JobHandle job = store.create(Sample.booking("Harbour Ice", "standby set"), "ada");
        assertThrows(ConflictException.class,
                () -> store.save(job.id(), Sample.BOOKING, Sample.booking("x", "y"), 0, "ada", ""));
        ConflictException e = assertThrows(ConflictException.class,
                () -> store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("A"), 4, "ada", ""));
        assertEquals(null, e.theirs());
    }

    @Test
    void twoPartsOfOneJobDoNotDisturbEachOther() {
        JobHandle job = store.create(Sample.booking("Harbour Ice", "standby set"), "ada");
        store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("A"), 0, "ada", "");
        store.save(job.id(), Sample.BOOKING, Sample.booking("Harbour Ice", "set"), 1, "ben", "");
        store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("B"), 1, "ada", "");
        assertEquals("B", store.load(job.id()).nameplate().orElseThrow().serial());
    }

    @Test
    void fieldsOfANewerVersionSurviveTheStore() throws Exception {
        String original = "{\"schema\":7,\"machine\":\"set\","
                + "\"parts\":[{\"name\":\"fan\",\"received\":true,\"colour\":\"grey\"}],\"shelf\":{\"row\":4}}";
        JobHandle job = store.create(Sample.part("booking", original, Booking.class), "ada");
        Saved kept = store.current(job.id(), Sample.BOOKING).orElseThrow();
        ObjectMapper plain = new ObjectMapper();
        assertEquals(plain.readTree(original), plain.readTree(kept.revision().json()));
        store.save(job.id(), Sample.BOOKING, kept.part(), 1, "ada", "");
        assertEquals(plain.readTree(original),
                plain.readTree(store.current(job.id(), Sample.BOOKING).orElseThrow().revision().json()));
    }

    @Test
    void aJobThatIsNotThereIsNamed() {
        StoreException e = assertThrows(StoreException.class, () -> store.load("nowhere"));
        assertEquals(Kind.NOT_FOUND, e.kind());
        assertTrue(e.getMessage().contains("nowhere"), e.getMessage());
        assertEquals(Kind.NOT_FOUND, assertThrows(StoreException.class,
                () -> store.save("nowhere", Sample.NAMEPLATE, Sample.nameplate("A"), 0, "ada", "")).kind());
    }

    @Test
    void aPartMustFitItsKeyAndItsPlace() {
        JobHandle job = store.create(Sample.booking("Harbour Ice", "set"), "ada");
        assertThrows(IllegalArgumentException.class,
                () -> store.save(job.id(), Sample.BOOKING, Sample.nameplate("A"), 1, "ada", ""));
        assertThrows(IllegalArgumentException.class,
                () -> store.save(JobStore.SHOP, Sample.NAMEPLATE, Sample.nameplate("A"), 0, "ada", ""));
        assertThrows(IllegalArgumentException.class,
                () -> store.save(job.id(), Sample.BOOKING, Sample.booking("a", "b"), 1, " ", ""));
    }

    @Test
    void listenersHearOfChangesAndAFailingOneDisturbsNothing() {
        List<Change> heard = new ArrayList<>();
        // The failure is expected here; its log would only alarm whoever reads the build.
        Logger quiet = Logger.getLogger("org.copperbook.store.jdbc.Listeners");
        quiet.setLevel(Level.OFF);
        store.onChange(c -> {
            throw new IllegalStateException("broken listener");
        });
        JobStore.Listening listening = store.onChange(heard::add);
        JobHandle job = store.create(Sample.booking("Harbour Ice", "set"), "ada");
        store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("A"), 0, "ada", "");
        assertEquals(List.of(new Change(job.id(), "booking", false), new Change(job.id(), "nameplate", false)), heard);
        listening.close();
        store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate("B"), 1, "ada", "");
        assertEquals(2, heard.size());
    }

    @Test
    void aClosedStoreSaysSo() {
        store.close();
        assertEquals(Kind.CLOSED, assertThrows(StoreException.class, () -> store.load("x")).kind());
        assertFalse(store.file().toString().isEmpty());
    }
}
