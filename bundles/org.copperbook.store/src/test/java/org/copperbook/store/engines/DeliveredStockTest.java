package org.copperbook.store.engines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.handback.HandBack;
import org.copperbook.jobs.handback.HandBack.Delivery;
import org.copperbook.jobs.handback.ReceivedStock;
import org.copperbook.jobs.stock.Refusal;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.jobs.stock.StockUnit;
import org.copperbook.store.Change;
import org.copperbook.store.ConflictException;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.NumberTaken;
import org.copperbook.store.Sample;
import org.copperbook.store.StoreException;
import org.copperbook.store.stock.StockMove;
import org.copperbook.store.stock.StockRefusedException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** Deliveries that are written down for a job and put in stock with it. Ten bearings are there before. */
@ParameterizedClass
@EnumSource(Engine.class)
class DeliveredStockTest extends OnEachEngine {

    private static final Instant AT = Instant.parse("2026-03-02T08:15:00Z");
    private static final PartKey KEY = PartKey.of(PartKind.HAND_BACK);

    private JobHandle job;

    @BeforeEach
    void tenBearingsAndAJob() {
        store.stock().describe(StockItem.of("B-6205", StockItem.Kind.BEARING, "Bearing", StockUnit.PC), null, "ada", "");
        store.stock().move(List.of(new StockMove("B-6205",
                StockMovement.of(StockMovement.Kind.RECEIVE, BigDecimal.TEN, null, AT))), "ada");
        job = store.create(Sample.booking("Harbour Ice", "set"), "ada");
    }

    private static ReceivedStock received(String id, String quantity, boolean aside) {
        return new ReceivedStock(id, "b-6205", new BigDecimal(quantity), StockUnit.PC, "lot 7", new BigDecimal("4.20"),
                aside ? Boolean.TRUE : null, AT, null);
    }

    private static HandBack record(ReceivedStock... received) {
        return new HandBack(HandBack.SCHEMA, null, List.of(new Delivery("bearings", "Hill Supplies", "4711", null,
                new BigDecimal("4"), new BigDecimal("4"), null, null, Arrays.asList(received), null)), null, null, null, null,
                null, null, null);
    }

    private void save(int basedOn, HandBack record) {
        store.save(job.id(), KEY, record, basedOn, "ada", "");
    }

    private StockItem item() {
        return (StockItem) store.stock().item("B-6205").orElseThrow().part();
    }

    private void stands(String onHand, String aside) {
        assertEquals(0, new BigDecimal(onHand).compareTo(item().onHand()), onHand + " on hand, not " + item().onHand());
        assertEquals(0, new BigDecimal(aside).compareTo(item().reservedFor(job.id())), aside + ", not " + item().reserved());
    }

    @Test
    void whatIsWrittenDownIsReceivedAndSetAsideWithTheRecordAndEverybodyHears() {
        List<Change> heard = new ArrayList<>();
        long before = store.chainEnd().sequence();
        try (JobStore.Listening listening = store.onChange(heard::add)) {
            save(0, record(received("r1", "4", true)));
        }
        stands("14", "4");
        assertEquals(before + 3, store.chainEnd().sequence(), "the record, the delivery and what is set aside");
        StockMovement in = store.stock().ledger("B-6205", 2).get(1).movement();
        assertEquals("Hill Supplies, 4711", in.note());
        assertEquals("lot 7", in.lot());
        assertEquals(new BigDecimal("4.20"), item().price());
        assertEquals(2, store.stock().movesFor(job.id()).size());
        assertTrue(heard.contains(new Change(job.id(), "hand-back", false)), heard.toString());
        assertTrue(heard.contains(new Change(JobStore.SHOP, item().key().toString(), false)), heard.toString());
        assertTrue(store.audit().passed());
    }

    @Test
    void itIsReceivedOnceHoweverOftenTheRecordIsSavedOrTheRowCopied() {
        HandBack record = record(received("r1", "4", false), received("r1", "4", false));
        save(0, record);
        save(1, record);
        stands("14", "0");
        assertThrows(ConflictException.class, () -> save(1, record(received("r2", "1", false))));
        stands("14", "0");
        save(2, record(received("r1", "4", false), received("r2", "1", true)));
        stands("15", "1");
    }

    @Test
    void whatIsTakenOutOfTheRecordIsTakenBackAndWhatIsPutThereAgainComesAnew() {
        save(0, record(received("r1", "4", true)));
        save(1, record());
        stands("10", "0");
        save(2, record(received("r1", "4", true)));
        stands("14", "4");
        save(3, record());
        stands("10", "0");
        assertEquals(8, store.stock().movesFor(job.id()).size(), "two in and two back, twice");
        assertTrue(store.audit().passed());
    }

    @Test
    void whatWasTakenBackInStockAlreadyIsNotTakenBackAgain() {
        save(0, record(received("r1", "4", false)));
        StockMovement in = store.stock().ledger("B-6205", 1).get(0).movement();
        store.stock().move(List.of(new StockMove("B-6205", in.reverse(AT))), "ada");
        stands("10", "0");
        save(1, record());
        stands("10", "0");
    }

    @Test
    void whatStockRefusesLeavesTheRecordAndStockAsTheyWere() {
        assertEquals(Refusal.Why.TOO_FINE, assertThrows(StockRefusedException.class,
                () -> save(0, record(received("r1", "4", true), received("r2", "0.5", false)))).refusal().why());
        ReceivedStock nowhere = new ReceivedStock("r3", "no-such", BigDecimal.ONE, null, null, null, null, AT, null);
        assertEquals(StoreException.Kind.NOT_FOUND,
                assertThrows(StoreException.class, () -> save(0, record(nowhere))).kind());
        stands("10", "0");
        assertTrue(store.current(job.id(), KEY).isEmpty());
        save(0, record(received("r1", "4", true)));
        store.stock().move(List.of(new StockMove("B-6205",
                StockMovement.of(StockMovement.Kind.ISSUE, new BigDecimal("3"), job.id(), AT))), "ada");
        assertThrows(StockRefusedException.class, () -> save(1, record()));
        stands("11", "1");
        assertEquals(1, store.current(job.id(), KEY).orElseThrow().number());
    }

    @Test
    void aJobTakenInFromAFileMovesNothingHere() {
        save(0, record(received("r1", "4", true)));
        JobHandle copy = store.takeIn(store.load(job.id()), "ada", "", NumberTaken.GIVE_NEW_NUMBER);
        stands("14", "4");
        store.save(copy.id(), KEY, record(), 1, "ada", "");
        stands("14", "4");
    }
}
