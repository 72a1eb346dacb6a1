package org.copperbook.jobs.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.copperbook.jobs.stock.Refusal.Why;
import org.copperbook.jobs.stock.StockMovement.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of stock over made-up histories, and each refusal. Every expected value is added up from the test's own movements. */
class StockRulesTest {

    private static final Instant AT = Instant.parse("2026-03-02T08:15:00Z");
    private static final List<String> JOBS = List.of("j1", "j2", "j3");
    private static final StockItem EMPTY = StockItem.of("W-1.00", StockItem.Kind.WIRE, "Wire", StockUnit.KG);

    /** An item with every movement that was made of it, and the one refused last. */
    private static final class Shelf {
        private StockItem item = EMPTY;
        private final List<StockMovement> ledger = new ArrayList<>();
        private Refusal refused;

        boolean move(StockMovement m) {
            StockRules.Moved moved = StockRules.move(item, m, StockRules.issued(ledger)
                    .getOrDefault(m.job() == null ? "" : m.job(), BigDecimal.ZERO));
            if (moved instanceof StockRules.Done d) {
                item = d.item();
                ledger.add(item.movement());
                return true;
            }
            refused = ((StockRules.Refused) moved).refusal();
            return false;
        }

        Shelf after(String... moves) {
            for (String m : moves) {
                assertTrue(move(read(m)), m);
            }
            return this;
        }
    }

    /** "RESERVE 2.5 j1". */
    private static StockMovement read(String text) {
        String[] w = text.split(" ");
        return StockMovement.of(Kind.valueOf(w[0]), new BigDecimal(w[1]), w.length > 2 ? w[2] : null, AT);
    }

    private static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    private static Shelf random(Random r, int moves) {
        Shelf shelf = new Shelf();
        for (int i = 0; i < moves; i++) {
            shelf.move(random(r));
        }
        return shelf;
    }

    private static StockMovement random(Random r) {
        Kind kind = Kind.values()[r.nextInt(Kind.values().length)];
        BigDecimal q = BigDecimal.valueOf(1 + r.nextInt(9000), StockItem.DECIMALS);
        return StockMovement.of(kind, kind == Kind.ADJUST && r.nextBoolean() ? q.negate() : q,
                kind == Kind.RECEIVE || kind == Kind.ADJUST || kind == Kind.ISSUE && r.nextInt(4) == 0 ? null
                        : JOBS.get(r.nextInt(JOBS.size())), AT);
    }

    private static BigDecimal sum(List<StockMovement> ledger, Kind kind) {
        return ledger.stream().filter(m -> m.kind() == kind).map(StockMovement::quantity)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static void same(BigDecimal expected, BigDecimal actual) {
        assertEquals(0, expected.compareTo(actual), expected + " against " + actual);
    }

    private static void sameStock(StockItem expected, StockItem actual) {
        same(expected.onHand(), actual.onHand());
        JOBS.forEach(j -> same(expected.reservedFor(j), actual.reservedFor(j)));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void onHandIsWhatCameLessWhatWentPlusWhatCameBackAndWasCounted(int seed) {
        Shelf s = random(new Random(seed), 60);
        same(sum(s.ledger, Kind.RECEIVE).add(sum(s.ledger, Kind.ADJUST)).subtract(sum(s.ledger, Kind.ISSUE))
                .add(sum(s.ledger, Kind.RETURN)), s.item.onHand());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void neverIsLessThanNothingOnHandNorMoreSetAsideThanIsThere(int seed) {
        Random r = new Random(seed);
        Shelf s = new Shelf();
        for (int i = 0; i < 60; i++) {
            s.move(random(r));
            assertTrue(s.item.onHand().signum() >= 0);
            assertTrue(s.item.reservedInAll().compareTo(s.item.onHand()) <= 0, s.item::toString);
            assertTrue(StockRules.issued(s.ledger).values().stream().allMatch(q -> q.signum() >= 0));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aMovementAndItsReverseLeaveTheStockAsItWas(int seed) {
        Random r = new Random(seed);
        Shelf s = random(r, 40);
        for (int i = 0; i < 40; i++) {
            StockItem before = s.item;
            if (s.move(random(r))) {
                assertTrue(s.move(s.item.movement().reverse(AT)), () -> "refused: " + s.refused);
                sameStock(before, s.item);
            }
        }
    }

    @Test
    void aDeliveryTakenBackTakesItsPriceAlongUnlessTheItemGotAnotherSince() {
        StockItem priced = priced("11.50");
        StockItem slip = moved(priced, read("RECEIVE 5").withPrice(new BigDecimal("1150")));
        same(new BigDecimal("1150"), slip.price());
        same(new BigDecimal("11.50"), moved(slip, slip.movement().reverse(AT)).price());
        StockItem none = moved(priced(null), read("RECEIVE 5").withPrice(new BigDecimal("7")));
        assertEquals(null, moved(none, none.movement().reverse(AT)).price());
        StockItem later = moved(slip, read("RECEIVE 5").withPrice(new BigDecimal("12")));
        same(new BigDecimal("12"), moved(later, slip.movement().reverse(AT)).price());
        StockItem again = moved(slip, slip.movement().reverse(AT));
        same(new BigDecimal("11.50"), moved(again, again.movement().reverse(AT)).price());
    }

    private static StockItem priced(String price) {
        return new StockItem(1, "W", StockItem.Kind.WIRE, "W", null, null, null, StockUnit.KG, null,
                price == null ? null : new BigDecimal(price), null, null, null, null, null, null);
    }

    private static StockItem moved(StockItem item, StockMovement m) {
        return ((StockRules.Done) StockRules.move(item, m, BigDecimal.ZERO)).item();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theOrderOfMovementsForDifferentJobsDoesNotMatter(int seed) {
        Random r = new Random(seed);
        Shelf history = random(r, 40);
        StockMovement one = read("RESERVE " + BigDecimal.valueOf(1 + r.nextInt(3000), 3) + " j1");
        StockMovement other = StockMovement.of(r.nextBoolean() ? Kind.ISSUE : Kind.RESERVE,
                BigDecimal.valueOf(1 + r.nextInt(3000), 3), "j2", AT);
        StockItem thisWay = bothOf(history.item, one, other);
        StockItem thatWay = bothOf(history.item, other, one);
        if (thisWay != null && thatWay != null) {
            sameStock(thisWay, thatWay);
        }
        StockItem received = bothOf(history.item, read("RECEIVE 100"), one);
        StockItem receivedLater = bothOf(history.item.describedAs(history.item), one.allTheSame(), read("RECEIVE 100"));
        sameStock(received, receivedLater);
    }

    private static StockItem bothOf(StockItem item, StockMovement one, StockMovement other) {
        return StockRules.move(item, one, BigDecimal.ZERO) instanceof StockRules.Done first
                && StockRules.move(first.item(), other, BigDecimal.ZERO) instanceof StockRules.Done second ? second.item() : null;
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", value = {
        "RECEIVE 5                            | ISSUE 5.001 j1    | MORE_THAN_ON_HAND  | 5",
        "RECEIVE 5, RESERVE 2 j2              | ISSUE 3.5 j1      | SET_ASIDE          | 3",
        "RECEIVE 5, RESERVE 2 j1              | ISSUE 5.1 j1      | MORE_THAN_ON_HAND  | 5",
        "RECEIVE 5, RESERVE 2 j1              | RESERVE 3.5 j2    | MORE_THAN_FREE     | 3",
        "RECEIVE 5, RESERVE 2 j1              | RELEASE 2.5 j1    | MORE_THAN_RESERVED | 2",
        "RECEIVE 5, ISSUE 2 j1                | RETURN 2.5 j1     | MORE_THAN_ISSUED   | 2",
        "RECEIVE 5, ISSUE 2 j1                | RETURN 1 j2       | MORE_THAN_ISSUED   | 0",
        "RECEIVE 5, ISSUE 2 j1, RETURN 1.5 j1 | RETURN 1 j1       | MORE_THAN_ISSUED   | 0.5",
        "RECEIVE 5                            | ADJUST -6         | MORE_THAN_ON_HAND  | 5",
        "RECEIVE 5, RESERVE 4 j1              | ADJUST -2         | BELOW_RESERVED     | 1",
        "RECEIVE 5                            | RECEIVE 0         | NOTHING            | -",
        "RECEIVE 5                            | RECEIVE -1        | NOTHING            | -",
        "RECEIVE 5                            | ISSUE -1 j1       | NOTHING            | -",
        "RECEIVE 5                            | ADJUST 0          | NOTHING            | -",
        "RECEIVE 5                            | RESERVE 1         | NO_JOB             | -",
        "RECEIVE 5                            | RECEIVE 1.0005    | TOO_FINE           | -",
        "RECEIVE 5                            | RECEIVE 1000001   | TOO_MUCH           | 1000000",
        "RECEIVE 999999                       | RECEIVE 2         | TOO_MUCH           | 1000000"})
    void whatCannotBeIsRefusedWithWhatIsPossibleAndNothingMoves(String before, String wanted, Why why, BigDecimal possible) {
        Shelf s = new Shelf().after(before.split(", "));
        StockItem stood = s.item;
        assertFalse(s.move(read(wanted)));
        assertEquals(stood, s.item);
        assertEquals(why, s.refused.why());
        if (possible == null) {
            assertEquals(null, s.refused.possible());
        } else {
            same(possible, s.refused.possible());
        }
        String said = s.refused.message(job -> "2026-" + job);
        assertTrue(said.startsWith("Nothing was moved"), said);
        assertFalse(said.contains("{"), said);
    }

    @Test
    void aRefusalNamesTheJobsInTheWayByTheirNumbers() {
        Shelf s = new Shelf().after("RECEIVE 5", "RESERVE 2 j2");
        s.move(read("ISSUE 4 j1"));
        assertTrue(s.refused.message(j -> "No. 7").contains("set aside for No. 7"));
        assertTrue(s.refused.canBeSaid());
        assertTrue(s.move(read("ISSUE 4 j1").allTheSame()));
        same(new BigDecimal("1"), s.item.onHand());
        same(new BigDecimal("2"), s.item.reservedFor("j2"));
        same(new BigDecimal("-1"), s.item.free());
    }

    @Test
    void issuingToAJobTakesWhatWasSetAsideForItFirst() {
        Shelf s = new Shelf().after("RECEIVE 10", "RESERVE 3 j1", "ISSUE 4 j1");
        same(new BigDecimal("6"), s.item.onHand());
        same(BigDecimal.ZERO, s.item.reservedFor("j1"));
        same(new BigDecimal("3"), s.item.movement().ofReserved());
        assertEquals(Map.of(), s.item.reserved());
        s.move(s.item.movement().reverse(AT));
        same(new BigDecimal("3"), s.item.reservedFor("j1"));
    }

    @Test
    void anotherUnitThanTheItemsIsRefused() {
        Shelf s = new Shelf().after("RECEIVE 5");
        assertFalse(s.move(read("ISSUE 1 j1").withUnit(StockUnit.M)));
        assertEquals(Why.UNIT, s.refused.why());
        assertTrue(s.move(read("ISSUE 1 j1").withUnit(StockUnit.KG)));
    }

    @Test
    void piecesAreWhole() {
        StockItem bearing = StockItem.of("6205", StockItem.Kind.BEARING, "Bearing", StockUnit.PC);
        assertTrue(StockRules.move(bearing, read("RECEIVE 2.0"), BigDecimal.ZERO) instanceof StockRules.Done);
        assertTrue(StockRules.move(bearing, read("RECEIVE 1.5"), BigDecimal.ZERO) instanceof StockRules.Refused r
                && r.refusal().why() == Why.TOO_FINE);
    }

    @Test
    void aDeliverySetsThePriceAndItsLotIsKept() {
        Shelf s = new Shelf();
        assertTrue(s.move(read("RECEIVE 5").withPrice(new BigDecimal("17.40")).withLot("D 881")));
        assertEquals(new BigDecimal("17.40"), s.item.price());
        assertEquals("D 881", s.item.movement().lot());
        same(new BigDecimal("87"), s.item.value().orElseThrow());
        s.after("ISSUE 1 j1");
        assertEquals(new BigDecimal("17.40"), s.item.movement().price());
        assertFalse(s.move(read("RECEIVE 5").withPrice(new BigDecimal("-1"))));
    }

    @Test
    void itIsTimeToOrderWhenWhatIsFreeHasFallenToTheLevel() {
        StockItem item = new StockItem(1, "R-1", StockItem.Kind.RESIN, "Resin", null, null, null, StockUnit.L, null, null,
                new BigDecimal("4"), new BigDecimal("9"), Map.of("j1", new BigDecimal("4")), null, null, null);
        assertFalse(item.isLow());
        assertTrue(((StockRules.Done) StockRules.move(item, read("RESERVE 1 j2"), BigDecimal.ZERO)).item().isLow());
    }
}
