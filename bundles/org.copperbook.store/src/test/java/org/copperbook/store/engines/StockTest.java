package org.copperbook.store.engines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.shop.WireStock;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.jobs.stock.Refusal;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.jobs.stock.StockUnit;
import org.copperbook.store.ConflictException;
import org.copperbook.store.Intake;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.NumberTaken;
import org.copperbook.store.Sample;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.people.SignIn;
import org.copperbook.store.stock.MovedSinceException;
import org.copperbook.store.stock.Stock;
import org.copperbook.store.stock.StockEntry;
import org.copperbook.store.stock.StockMove;
import org.copperbook.store.stock.StockRefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** What is on the shelf and how it moves, on each engine. Amounts are added up from the test's own movements. */
@ParameterizedClass
@EnumSource(Engine.class)
class StockTest extends OnEachEngine {

    private static final Instant AT = Instant.parse("2026-03-02T08:15:00Z");
    private static final StockItem WIRE = new StockItem(1, "W-1.00", StockItem.Kind.WIRE, "Wire", "1.00 mm", 2,
            StockItem.Shape.ROUND, StockUnit.KG, "A3", new BigDecimal("16.5"), new BigDecimal("5"), null, null, null, null, null);

    private static StockMove move(StockMovement.Kind kind, String quantity, String job) {
        return new StockMove("w-1.00", StockMovement.of(kind, new BigDecimal(quantity), job, AT));
    }

    private static StockItem item(Saved saved) {
        return (StockItem) saved.part();
    }

    private static void same(String expected, BigDecimal actual) {
        assertEquals(0, new BigDecimal(expected).compareTo(actual), expected + " against " + actual);
    }

    private StockItem wire() {
        return item(store.stock().item("W-1.00").orElseThrow());
    }

    /** Ten kilograms came; a job is there. */
    private JobHandle tenOnHand() {
        store.stock().describe(WIRE, null, "ada", "");
        store.stock().move(List.of(move(StockMovement.Kind.RECEIVE, "10", null)), "ada");
        return store.create(Sample.booking("Harbour Ice", "set"), "ada");
    }

    @Test
    void everyMovementIsARevisionAndTheLedgerIsThoseOfTheChain() {
        JobHandle job = tenOnHand();
        store.stock().move(List.of(move(StockMovement.Kind.RESERVE, "4", job.id()),
                move(StockMovement.Kind.ISSUE, "3.5", job.id())), "ben");
        store.stock().move(List.of(move(StockMovement.Kind.RETURN, "0.25", job.id())), "ben");
        same("6.75", wire().onHand());
        same("0.5", wire().reservedFor(job.id()));
        List<StockEntry> ledger = store.stock().ledger("W-1.00", 99);
        assertEquals(List.of(StockMovement.Kind.RETURN, StockMovement.Kind.ISSUE, StockMovement.Kind.RESERVE,
                StockMovement.Kind.RECEIVE), ledger.stream().map(e -> e.movement().kind()).toList());
        assertEquals(List.of("ben", "ben", "ben", "ada"), ledger.stream().map(StockEntry::who).toList());
        same("6.5", ledger.get(1).item().onHand());
        assertEquals(2, store.stock().ledger("W-1.00", 2).size());
        assertEquals(5, store.history(JobStore.SHOP, WIRE.key()).size());
        assertEquals(List.of("RESERVE", "ISSUE", "RETURN"), store.stock().movesFor(job.id()).stream()
                .map(e -> e.movement().kind().name()).toList());
        assertTrue(store.audit().passed());
        assertEquals(1, store.stock().items().size());
    }

    @Test
    void whatCannotBeMovedLeavesEverythingOfTheStepUnmoved() {
        JobHandle job = tenOnHand();
        long end = store.chainEnd().sequence();
        StockRefusedException e = assertThrows(StockRefusedException.class, () -> store.stock().move(List.of(
                move(StockMovement.Kind.RESERVE, "4", job.id()), move(StockMovement.Kind.ISSUE, "11", job.id())), "ada"));
        assertEquals(Refusal.Why.MORE_THAN_ON_HAND, e.refusal().why());
        assertEquals(end, store.chainEnd().sequence());
        assertEquals(Kind.NOT_FOUND, assertThrows(StoreException.class,
                () -> store.stock().move(List.of(move(StockMovement.Kind.ISSUE, "1", "nobody")), "ada")).kind());
        assertEquals(Kind.NOT_FOUND, assertThrows(StoreException.class, () -> store.stock().move(List.of(new StockMove(
                "no such", StockMovement.of(StockMovement.Kind.RECEIVE, BigDecimal.ONE, null, AT))), "ada")).kind());
        store.stock().move(List.of(move(StockMovement.Kind.RESERVE, "9", job.id())), "ada");
        JobHandle other = store.create(Sample.booking("Mill Lane Bakery", "fan"), "ada");
        String said = assertThrows(StockRefusedException.class, () -> store.stock().move(List.of(
                move(StockMovement.Kind.ISSUE, "2", other.id())), "ada")).getMessage();
        assertTrue(said.contains(job.number()), said);
        assertThrows(IllegalArgumentException.class, () -> store.saveShopPart(WIRE.key(), WIRE, 2, "ada", ""));
    }

    @Test
    void aMovementRepeatedAfterABrokenConnectionCountsOnce() {
        tenOnHand();
        StockMove in = move(StockMovement.Kind.RECEIVE, "2", null);
        store.stock().move(List.of(in), "ada");
        store.stock().move(List.of(move(StockMovement.Kind.RECEIVE, "1", null)), "ada");
        store.stock().move(List.of(in), "ada");
        same("13", wire().onHand());
    }

    @Test
    void takingBackRestoresWhatWasAndIsDoneOnce() {
        JobHandle job = tenOnHand();
        store.stock().move(List.of(move(StockMovement.Kind.RESERVE, "4", job.id())), "ada");
        StockItem before = wire();
        StockMovement issue = item(store.stock().move(List.of(move(StockMovement.Kind.ISSUE, "5", job.id())), "ada").get(0))
                .movement();
        store.stock().move(List.of(new StockMove("W-1.00", issue.reverse(AT))), "ada");
        same(before.onHand().toString(), wire().onHand());
        same("4", wire().reservedFor(job.id()));
        assertEquals(List.of(false, true, false, false),
                store.stock().ledger("W-1.00", 9).stream().map(StockEntry::undone).toList());
        assertEquals(Refusal.Why.UNDONE_ALREADY, assertThrows(StockRefusedException.class, () -> store.stock().move(
                List.of(new StockMove("W-1.00", issue.reverse(AT))), "ada")).refusal().why());
    }

    @Test
    void twoWhoTakeFromOneShelfAtTheSameTimeLoseNothingAndCountNothingTwice() throws Exception {
        JobHandle job = tenOnHand();
        int each = 30;
        try (JobStore second = place.open()) {
            ExecutorService both = Executors.newFixedThreadPool(2);
            List<Future<Integer>> taken = new ArrayList<>();
            for (JobStore s : List.of(store, second)) {
                Callable<Integer> takes = () -> {
                    int got = 0;
                    for (int i = 0; i < each; i++) {
                        try {
                            s.stock().move(List.of(move(StockMovement.Kind.ISSUE, "0.2", job.id())), "ada");
                            got++;
                        } catch (StockRefusedException e) {
                            assertEquals(Refusal.Why.MORE_THAN_ON_HAND, e.refusal().why());
                        }
                    }
                    return got;
                };
                taken.add(both.submit(takes));
            }
            int got = taken.get(0).get() + taken.get(1).get();
            both.shutdown();
            // Ten kilograms in steps of a fifth are fifty steps; sixty were tried.
            assertEquals(50, got);
            same("0", item(second.stock().item("W-1.00").orElseThrow()).onHand());
            assertEquals(51, second.stock().ledger("W-1.00", 99).size());
        }
        assertTrue(store.audit().passed());
    }

    @Test
    void describingLeavesTheStockAloneAndMovementsDoNotDisturbIt() {
        tenOnHand();
        StockItem seen = wire();
        store.stock().move(List.of(move(StockMovement.Kind.RECEIVE, "1", null)), "ben");
        StockItem renamed = new StockItem(1, "W-1.00", StockItem.Kind.WIRE, "Round wire", "1.00 mm", 2, null, StockUnit.KG, "B1",
                new BigDecimal("17"), null, BigDecimal.ZERO, null, null, null, null);
        store.stock().describe(renamed, seen, "ada", "");
        assertEquals("Round wire", wire().name());
        same("11", wire().onHand());
        assertEquals(2, store.stock().ledger("W-1.00", 9).size());
        assertThrows(ConflictException.class, () -> store.stock().describe(WIRE, seen, "cy", ""));
        assertEquals(Kind.ALREADY_THERE, assertThrows(StoreException.class,
                () -> store.stock().describe(StockItem.of("w-1.00", null, "x", null), null, "cy", "")).kind());
        StockItem inPieces = new StockItem(1, "W-1.00", null, "x", null, null, null, StockUnit.PC, null, null, null, null, null,
                null, null, null);
        assertEquals(Kind.STOCK, assertThrows(StoreException.class,
                () -> store.stock().describe(inPieces, wire(), "cy", "")).kind());
    }

    @Test
    void describingAnItemAsItIsMakesNoRevisionAlsoAfterAMovement() {
        JobHandle job = tenOnHand();
        long end = store.chainEnd().sequence();
        Saved same = store.stock().describe(wire().describedAs(wire()), wire(), "ada", "");
        assertEquals(end, store.chainEnd().sequence());
        assertEquals(2, same.number());
        store.stock().takeIn(List.of(new Stock.Listed(wire().describedAs(wire()), new BigDecimal("9"))), "ada", "list", n -> true);
        assertEquals(end + 1, store.chainEnd().sequence(), "the count alone");
        assertEquals(Optional.of(job.number()), store.numberOf(job.id()));
        assertEquals(Optional.empty(), store.numberOf("nobody"));
    }

    @Test
    void theOlderListOfWireCountsUntilItIsTakenOverAndNothingOfItIsLost() {
        PartKey old = PartKey.parse("wire-stock");
        WireStock list = Sample.part("wire-stock", "{\"schema\":1,\"spools\":[{\"size\":\"0.800 mm\",\"grade\":2,"
                + "\"onHandKg\":28.0,\"pricePerKg\":16.8},{\"size\":\"AWG 16\",\"grade\":1,\"onHandKg\":3.2}]}", WireStock.class);
        store.saveShopPart(old, list, 0, "ada", "");
        assertEquals(list.spools(), store.shop().stock().spools());
        assertEquals(2, store.stock().takeOverWire("Wire", "ada", "").size());
        assertEquals(list.spools(), store.shop().stock().spools());
        StockItem spool = item(store.stock().items().get(0));
        StockItem inMetres = StockItem.of(spool.code(), spool.kind(), spool.name(), StockUnit.M);
        assertEquals(Kind.STOCK, assertThrows(StoreException.class,
                () -> store.stock().describe(inMetres, spool, "cy", "")).kind(), "28 kg are not 28 m");
        assertEquals(List.of("W-0.800-G2", "W-AWG-16-G1"), store.stock().items().stream().map(s -> item(s).code()).toList());
        assertEquals(List.of(), ((WireStock) store.current(JobStore.SHOP, old).orElseThrow().part()).spools());
        assertEquals(list, store.history(JobStore.SHOP, old).get(0).part());
        assertEquals(List.of(), store.stock().takeOverWire("Wire", "ada", ""));
        store.stock().move(List.of(new StockMove("W-0.800-G2", StockMovement.of(StockMovement.Kind.ISSUE,
                new BigDecimal("8"), null, AT))), "ada");
        assertEquals(20.0, store.shop().stock().spools().get(0).onHandKg());
    }

    @Test
    void takingInItemsFromAFileCountsAndDescribesAnewAndNamesEachChangeInTheLedger() {
        JobHandle job = tenOnHand();
        store.stock().move(List.of(move(StockMovement.Kind.RESERVE, "4", job.id())), "ada");
        StockItem counted = new StockItem(1, "W-1.00", StockItem.Kind.WIRE, "Wire", "1.00 mm", 2, null, StockUnit.KG, "C9", null,
                null, new BigDecimal("7.5"), Map.of("x", BigDecimal.ONE), null, null, null);
        StockItem fresh = new StockItem(1, "6205", StockItem.Kind.BEARING, "Bearing", null, null, null, StockUnit.PC, null, null,
                null, new BigDecimal("3"), null, null, null, null);
        store.takeIn(new Intake(Map.of(counted.key(), counted, fresh.key(), fresh), List.of(), List.of(), List.of(),
                List.of(new StockMove("6205", StockMovement.of(StockMovement.Kind.ISSUE, BigDecimal.ONE, job.id(), AT)))),
                "ada", "from a list", NumberTaken.REFUSE);
        same("7.5", wire().onHand());
        assertEquals("C9", wire().place());
        same("4", wire().reservedFor(job.id()));
        assertEquals(StockMovement.Kind.ADJUST, store.stock().ledger("W-1.00", 1).get(0).movement().kind());
        same("-2.5", store.stock().ledger("W-1.00", 1).get(0).movement().quantity());
        same("2", item(store.stock().item("6205").orElseThrow()).onHand());
        assertEquals(2, store.stock().ledger("6205", 9).size());
    }

    @Test
    void aListWithFewerColumnsLeavesWhatItDoesNotSayAndIsTakenInAsAWhole() {
        tenOnHand();
        StockItem named = new StockItem(1, "w-1.00", null, "Round wire", null, null, null, StockUnit.KG, null, null, null, null,
                null, null, null, null);
        StockItem fresh = StockItem.of("R-1", StockItem.Kind.RESIN, "Resin", StockUnit.L);
        assertEquals(2, store.stock().takeIn(List.of(new Stock.Listed(named, null), new Stock.Listed(fresh,
                new BigDecimal("4.5"))), "ada", "from a list", n -> true).size());
        assertEquals("Round wire", wire().name());
        assertEquals(List.of("W-1.00", "1.00 mm", "A3", new BigDecimal("16.5"), StockItem.Kind.WIRE),
                List.of(wire().code(), wire().size(), wire().place(), wire().price(), wire().kind()));
        same("10", wire().onHand());
        same("4.5", item(store.stock().item("R-1").orElseThrow()).onHand());
        long end = store.chainEnd().sequence();
        StockItem other = new StockItem(1, "W-1.00", null, "x", null, null, null, StockUnit.PC, null, null, null, null, null,
                null, null, null);
        assertThrows(StoreException.class, () -> store.stock().takeIn(List.of(new Stock.Listed(fresh, new BigDecimal("9")),
                new Stock.Listed(other, null)), "ada", "", n -> true));
        assertEquals(end, store.chainEnd().sequence());
        store.stock().takeIn(List.of(new Stock.Listed(fresh, new BigDecimal("3"))), "ada", "counted", n -> true);
        same("-1.5", store.stock().ledger("R-1", 1).get(0).movement().quantity());
    }

    private Stock.Listed counted(String onHand, Stock.Seen seen) {
        return new Stock.Listed(wire().describedAs(wire()), new BigDecimal(onHand), seen);
    }

    @Test
    void aCountOfAnItemThatWasMovedSinceItsListWasMadeIsNotTakenInAndBothFiguresAreTold() {
        JobHandle job = tenOnHand();
        Stock.Seen seen = store.stock().stand("w-1.00").orElseThrow().seen();
        same("10", seen.onHand());
        store.stock().move(List.of(move(StockMovement.Kind.RESERVE, "1", job.id())), "ada");
        assertTrue(seen.holds(store.stock().stands().get(0)), "what is set aside is on the shelf all the same");
        store.stock().move(List.of(move(StockMovement.Kind.ISSUE, "2", job.id())), "ada");
        StockItem fresh = StockItem.of("N-1", StockItem.Kind.OTHER, "New", StockUnit.PC);
        MovedSinceException e = assertThrows(MovedSinceException.class, () -> store.stock().takeIn(List.of(
                new Stock.Listed(fresh, BigDecimal.ONE, Stock.Seen.NOTHING), counted("9", seen)), "ada", "list", n -> true));
        same("8", e.moved().get(0).now().item().onHand());
        same("9", e.moved().get(0).row().counted());
        assertEquals(1, e.moved().size());
        assertTrue(store.stock().item("N-1").isEmpty(), "all of it or nothing");
        same("8", wire().onHand());
        store.stock().takeIn(List.of(counted("9", e.moved().get(0).now().seen())), "ada", "list", n -> true);
        same("9", wire().onHand());
    }

    @Test
    void outAndBackIsAMovementTooThoughAsMuchIsOnHandAsBefore() {
        JobHandle job = tenOnHand();
        Stock.Seen seen = store.stock().stand("W-1.00").orElseThrow().seen();
        store.stock().move(List.of(move(StockMovement.Kind.ISSUE, "2", job.id()),
                move(StockMovement.Kind.RETURN, "2", job.id())), "ada");
        assertThrows(MovedSinceException.class, () -> store.stock().takeIn(List.of(counted("10", seen)), "ada", "", n -> true));
    }

    @Test
    void aMovementThatAnItemFromAFileCarriesNamesAJobThatIsThereOrComesWithIt() {
        StockMovement came = StockMovement.of(StockMovement.Kind.RECEIVE, BigDecimal.TEN, "of-the-file", AT);
        StockItem item = new StockItem(1, "B-1", StockItem.Kind.BEARING, "Bearing", null, null, null, StockUnit.PC, null, null, null,
                BigDecimal.TEN, null, came, null, null);
        assertEquals(Kind.NOT_FOUND, assertThrows(StoreException.class, () -> store.takeIn(new Intake(Map.of(item.key(), item),
                List.of(), List.of(), List.of()), "ada", "", NumberTaken.REFUSE)).kind());
        assertTrue(store.stock().items().isEmpty());
        Job job = new Job("of-the-file", "", Map.of(PartKey.parse("booking"), Sample.booking("Harbour Ice", "set")));
        store.takeIn(new Intake(Map.of(item.key(), item), List.of(), List.of(), List.of(job)), "ada", "", NumberTaken.REFUSE);
        assertEquals(came.id(), store.stock().movesFor("of-the-file").get(0).movement().id());
    }

    private List<Saved> takenList(String why) {
        StockItem renamed = new StockItem(1, "W-1.00", null, "Renamed", null, null, null, StockUnit.KG, null, new BigDecimal("18"), null,
                null, null, null, null, null);
        StockItem told = StockItem.of("T-1", StockItem.Kind.TAPE, "Tape", StockUnit.M);
        return store.stock().takeIn(List.of(new Stock.Listed(renamed, new BigDecimal("7")),
                new Stock.Listed(StockItem.of("N-1", StockItem.Kind.OTHER, "New", StockUnit.PC), new BigDecimal("3")),
                new Stock.Listed(told, null)), "ada", why, n -> true);
    }

    @Test
    void aWholeListIsTakenBackInOneStepFromAnyOfItsRevisionsAndOnlyOnce() {
        tenOnHand();
        StockItem before = wire();
        takenList("first list");
        takenList("second list");
        long end = store.chainEnd().sequence();
        StockEntry counted = store.stock().ledger("N-1", 1).get(0);
        assertEquals(0, new BigDecimal("3").compareTo(counted.movement().quantity()));
        List<Saved> back = store.stock().takeBackList(counted.sequence(), "ben", "back", n -> true);
        assertEquals(3, back.size());
        assertEquals(before.describedAs(before), wire().describedAs(wire()), "name, price and amount are those of before");
        same("0", item(store.stock().item("N-1").orElseThrow()).onHand());
        assertEquals(Boolean.TRUE, item(store.stock().item("N-1").orElseThrow()).retired());
        assertEquals(Boolean.TRUE, item(store.stock().item("T-1").orElseThrow()).retired());
        assertTrue(store.stock().ledger("W-1.00", 9).get(1).undone());
        assertTrue(store.chainEnd().sequence() > end);
        assertTrue(store.audit().passed());
        end = store.chainEnd().sequence();
        StoreException twice = assertThrows(StoreException.class,
                () -> store.stock().takeBackList(counted.sequence(), "ben", "back", n -> true));
        assertEquals(Kind.STOCK, twice.kind());
        assertEquals(end, store.chainEnd().sequence());
    }

    @Test
    void aListOfWhichSomethingWasMovedOrDescribedSinceIsNotTakenBackAndThatIsNamed() {
        JobHandle job = tenOnHand();
        long one = takenList("a list").get(2).revision().sequence();
        store.stock().move(List.of(move(StockMovement.Kind.ISSUE, "1", job.id())), "ada");
        store.stock().describe(StockItem.of("T-1", StockItem.Kind.TAPE, "Glass tape", StockUnit.M),
                item(store.stock().item("T-1").orElseThrow()), "ada", "");
        long end = store.chainEnd().sequence();
        String said = assertThrows(StoreException.class, () -> store.stock().takeBackList(one, "ada", "", n -> true)).getMessage();
        assertTrue(said.contains("W-1.00, T-1") && said.contains("2 of its items") && !said.contains("N-1"), said);
        assertEquals(end, store.chainEnd().sequence());
        long single = store.stock().ledger("W-1.00", 1).get(0).sequence();
        assertEquals(Kind.STOCK, assertThrows(StoreException.class,
                () -> store.stock().takeBackList(single, "ada", "", n -> true)).kind(), "no list made this one");
        assertEquals(Kind.STOCK, assertThrows(StoreException.class,
                () -> store.stock().takeBackList(1_000_000, "ada", "", n -> true)).kind());
    }

    @Test
    void takingAListBackCanBeStopped() {
        tenOnHand();
        long one = takenList("a list").get(0).revision().sequence();
        assertThrows(CancellationException.class, () -> store.stock().takeBackList(one, "ada", "", n -> n < 2));
        same("7", wire().onHand());
        assertEquals("Renamed", wire().name());
    }

    @Test
    void aListThatIsStoppedWhileItIsSavedLeavesNothing() {
        tenOnHand();
        long end = store.chainEnd().sequence();
        List<Stock.Listed> rows = IntStream.range(0, 20).mapToObj(i -> new Stock.Listed(StockItem.of("N-" + i,
                StockItem.Kind.RESIN, "Resin", StockUnit.L), BigDecimal.TEN)).toList();
        for (int stopAt : List.of(0, 7, 20)) {
            assertThrows(CancellationException.class, () -> store.stock().takeIn(rows, "ada", "", n -> n < stopAt));
            assertEquals(end, store.chainEnd().sequence(), "stopped after " + stopAt);
            assertEquals(1, store.stock().items().size());
        }
        assertEquals(20, store.stock().takeIn(rows, "ada", "", n -> true).size());
        assertEquals(21, store.stock().items().size());
        assertTrue(store.audit().passed());
    }

    @Test
    void theListsAreMadeAnewFromTheRevisions() throws Exception {
        JobHandle job = tenOnHand();
        store.stock().move(List.of(move(StockMovement.Kind.ISSUE, "3", job.id())), "ada");
        List<StockEntry> ledger = store.stock().ledger("W-1.00", 9);
        List<Saved> items = store.stock().items();
        store.close();
        place.run("DELETE FROM stock_move", "DELETE FROM stock_item",
                "UPDATE setting SET value = '0' WHERE name = 'stock-edition'");
        store = place.open();
        assertEquals(ledger, store.stock().ledger("W-1.00", 9));
        assertEquals(items, store.stock().items());
        Path archive = folder.resolve("shop.zip");
        store.archive(archive);
        try (JobStore again = Engine.SQLITE.place(folder.resolve("again")).open()) {
            again.takeInArchive(archive);
            assertEquals(ledger, again.stock().ledger("W-1.00", 9));
            assertEquals(store.stock().movesFor(job.id()), again.stock().movesFor(job.id()));
        }
    }

    @Test
    void whoMayNotMoveOrDescribeIsRefused() {
        JobHandle job = tenOnHand();
        store.savePerson(new Person("o", "Olive", Set.of(Role.OWNER), null, null, true), "o");
        store.savePerson(new Person("w", "Wren", Set.of(Role.WINDER), null, null, true), "o");
        store.accounts().begin("o", "owners own words".toCharArray());
        store.accounts().reset("w", "winders own words".toCharArray());
        assertInstanceOf(SignIn.Done.class, store.accounts().signIn("w", "winders own words".toCharArray()));
        store.stock().move(List.of(move(StockMovement.Kind.ISSUE, "1", job.id())), "w");
        store.stock().move(List.of(move(StockMovement.Kind.RETURN, "1", job.id())), "w");
        for (StockMovement.Kind kind : List.of(StockMovement.Kind.RECEIVE, StockMovement.Kind.RESERVE,
                StockMovement.Kind.RELEASE, StockMovement.Kind.ADJUST)) {
            notAllowed(() -> store.stock().move(List.of(move(kind, "1", job.id())), "w"));
        }
        notAllowed(() -> store.stock().move(List.of(move(StockMovement.Kind.ISSUE, "1", job.id())), "o"));
        notAllowed(() -> store.stock().describe(WIRE, wire(), "w", ""));
        notAllowed(() -> store.stock().takeOverWire("Wire", "w", ""));
        notAllowed(() -> store.takeIn(new Intake(Map.of(WIRE.key(), WIRE), List.of(), List.of(), List.of()), "w", "",
                NumberTaken.REFUSE));
        same("10", wire().onHand());
    }

    private static void notAllowed(Runnable act) {
        assertEquals(Kind.NOT_ALLOWED, assertThrows(StoreException.class, act::run).kind());
    }

    @Test
    void ledgersAndWhatWentToAJobAreReadByIndexesAndNotByLookingAtEveryMovement() throws Exception {
        if (engine != Engine.SQLITE) {
            return;
        }
        tenOnHand();
        try (Connection c = place.connect(); Statement s = c.createStatement()) {
            for (String sql : List.of("SELECT * FROM stock_move m WHERE m.part = 'a' ORDER BY m.sequence DESC LIMIT 9",
                    "SELECT * FROM stock_move m WHERE m.job_id = 'a' AND m.job_id <> '' ORDER BY m.sequence",
                    "SELECT SUM(quantity) FROM stock_move WHERE part = 'a' AND job_id = 'b' AND kind IN ('ISSUE', 'RETURN')",
                    "SELECT 1 FROM stock_move WHERE part = 'a' AND id = 'b' LIMIT 1",
                    "SELECT 1 FROM stock_move WHERE part = 'a' AND undoes = 'b' AND undoes <> '' LIMIT 1")) {
                try (ResultSet r = s.executeQuery("EXPLAIN QUERY PLAN " + sql)) {
                    while (r.next()) {
                        String step = r.getString("detail");
                        assertTrue(step.startsWith("SEARCH"), sql + ": " + step);
                        assertFalse(step.contains("TEMP B-TREE"), step);
                    }
                }
            }
        }
    }
}
