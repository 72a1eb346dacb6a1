package org.copperbook.jobs.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.HoldPointState.State;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.winding.BlindCounts;
import org.copperbook.jobs.winding.CountComparison;
import org.copperbook.jobs.winding.CountComparison.Difference;
import org.copperbook.jobs.winding.CountComparison.Standing;
import org.copperbook.jobs.winding.TurnCount;
import org.copperbook.jobs.winding.TurnCount.GroupTurns;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Two counts of the old turns, blind to each other; the rule is the one of the shop's hold point (common practice). */
class TwoCountsTest {

    private static final PartKey KEY = PartKey.windingAsFound(WindingRole.EXCITER_STATOR);

    private final Shop shop = Bench.shop();
    private final Job job = Bench.realInput();

    private static TurnCount count(int ordinal, String by, Integer strands, int[]... groups) {
        List<GroupTurns> turns = new java.util.ArrayList<>();
        for (int[] g : groups) {
            turns.add(new GroupTurns(g[0], java.util.stream.IntStream.of(g).skip(1).boxed().toList()));
        }
        return new TurnCount(ordinal, by, null, turns, strands, null, Map.of());
    }

    private static int[] group(int... numberAndTurns) {
        return numberAndTurns;
    }

    @Test
    void oneCountIsNoneAndAnOpenOneIsNotCompared() {
        TurnCount one = count(1, "a", 2, group(1, 5, 5));
        assertEquals(Standing.WAITING, CountComparison.of(List.of(one)).standing());
        TurnCount open = new TurnCount(2, "b", null, one.groups(), 2, true, Map.of());
        assertEquals(Standing.WAITING, CountComparison.of(List.of(one, open)).standing());
    }

    @Test
    void twoPeopleWhoFindTheSameAgreeAndOnePersonTwiceDoesNot() {
        CountComparison two = CountComparison.of(List.of(count(1, "a", 2, group(1, 5, 6)),
                count(2, "b", 2, group(1, 5, 6))));
        assertEquals(Standing.AGREE, two.standing());
        assertEquals(Map.of(1, List.of(5, 6)), two.agreed());
        assertEquals(2, two.strands());
        assertEquals(Standing.ONE_PERSON, CountComparison.of(List.of(count(1, "a", 2, group(1, 5, 6)),
                count(2, "a", 2, group(1, 5, 6)))).standing());
        assertEquals(Standing.ONE_PERSON, CountComparison.of(List.of(count(1, null, 2, group(1, 5, 6)),
                count(2, "b", 2, group(1, 5, 6)))).standing(), "who counted is not said");
    }

    @Test
    void differencesAreNamedGroupByGroupCoilByCoilAndInTheStrands() {
        CountComparison c = CountComparison.of(List.of(
                count(1, "a", 12, group(1, 5, 5, 5), group(2, 5, 5, 5), group(3, 5, 5)),
                count(2, "b", 11, group(1, 5, 6, 5), group(2, 5, 5), group(4, 5))));
        assertEquals(Standing.DIFFER, c.standing());
        assertEquals(List.of(new Difference(1, 2, List.of(5, 6), null), new Difference(2, 3, List.of(5, 0), null),
                new Difference(3, 1, java.util.Arrays.asList(5, null), null),
                new Difference(3, 2, java.util.Arrays.asList(5, null), null),
                new Difference(4, 1, java.util.Arrays.asList(null, 5), null),
                new Difference(0, CountComparison.STRANDS, List.of(12, 11), null)), c.differences());
        assertEquals(Map.of(), c.agreed());
        assertNull(c.strands());
    }

    @Test
    void aThirdCountOfWhatDiffersSettlesItEvenWhenItSidesWithEachOnce() {
        TurnCount first = count(1, "a", 12, group(1, 5, 6), group(2, 7, 7), group(3, 9));
        TurnCount second = count(2, "b", 12, group(1, 5, 5), group(2, 7, 8), group(3, 9));
        CountComparison c = CountComparison.of(List.of(first, second,
                count(3, "c", null, group(1, 5, 5), group(2, 7, 7))));
        assertEquals(Standing.SETTLED, c.standing());
        assertTrue(c.stands());
        assertEquals(Map.of(1, List.of(5, 5), 2, List.of(7, 7), 3, List.of(9)), c.agreed());
        assertEquals(2, c.differences().size(), "what differed is still listed");
    }

    @Test
    void aThirdCountThatAgreesWithNobodyOrOnlyWithItsOwnCounterSettlesNothing() {
        TurnCount first = count(1, "a", 12, group(1, 5, 6));
        TurnCount second = count(2, "b", 12, group(1, 5, 5));
        assertEquals(Standing.DIFFER, CountComparison.of(List.of(first, second,
                count(3, "c", null, group(1, 5, 7)))).standing());
        assertEquals(Standing.ONE_PERSON, CountComparison.of(List.of(first, second,
                count(3, "a", null, group(1, 5, 6)))).standing());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 17, 96, 400})
    void noVerdictAndNoHoldPointTellsTheFirstCountBeforeTheSecondIsIn(int turns) throws Exception {
        Job one = withCounts(turns, 1, false);
        Job other = withCounts(turns + 3, 1, false);
        assertTrue(BlindCounts.covers(winding(one)));
        assertEquals(said(other), said(one));
        assertTrue(HoldPoints.states(other, shop).equals(HoldPoints.states(one, shop)));
        assertTrue(BlindCounts.covered(other).equals(BlindCounts.covered(one)));
        assertEquals(Outcome.NOT_MEASURED, Bench.outcome(one, shop, "exciter-stator.capture.counts"));
        assertFalse(BlindCounts.shows(winding(one), winding(one).counts().get(0), "winder-1"), "not even its counter");
        assertTrue(job.equals(BlindCounts.covered(job)), "nothing is covered once two counts are in");
    }

    @Test
    void anOpenCountIsShownToItsCounterOnly() throws Exception {
        WindingData w = winding(withCounts(96, 2, true));
        TurnCount open = w.counts().get(1);
        assertTrue(BlindCounts.covers(w));
        assertTrue(BlindCounts.shows(w, open, open.by()));
        assertFalse(BlindCounts.shows(w, open, "winder-1"));
        assertFalse(BlindCounts.shows(w, open, null));
        assertFalse(BlindCounts.shows(w, w.counts().get(0), open.by()));
    }

    @Test
    void theCaptureOpensOnlyWhenTheCountsAgreeOrAThirdSettlesThem() throws Exception {
        Job differing = change(t -> ((ArrayNode) t.at("/counts/1/groups/0/turns")).set(0, 1));
        assertEquals(Outcome.FAILS, Bench.outcome(differing, shop, "exciter-stator.capture.counts"));
        assertFalse(blockers(differing).isEmpty());
        assertTrue(blockers(differing).stream().anyMatch(b -> b.contains("group 1 coil 1")), blockers(differing).toString());
        Job settled = change(t -> {
            ArrayNode counts = (ArrayNode) t.at("/counts");
            ((ArrayNode) counts.get(1).at("/groups/0/turns")).set(0, 1);
            ObjectNode third = counts.addObject().put("ordinal", 3).put("by", "owner-1").put("at", "2026-03-06T15:00:00Z");
            third.putArray("groups").add(counts.get(0).at("/groups/0").deepCopy());
        });
        assertEquals(Outcome.MEETS, Bench.outcome(settled, shop, "exciter-stator.capture.counts"));
        assertEquals(List.of(), blockers(settled));
    }

    @Test
    void aCoilListThatIsNotWhatWasCountedKeepsTheCaptureShut() throws Exception {
        assertEquals(Outcome.MEETS, Bench.outcome(job, shop, "exciter-stator.capture.coil-list"));
        Job slip = change(t -> ((ObjectNode) t.at("/groups/0/coils/0")).put("turns", 1));
        assertEquals(Outcome.FAILS, Bench.outcome(slip, shop, "exciter-stator.capture.coil-list"));
        assertTrue(blockers(slip).stream().anyMatch(b -> b.contains("group 1")), blockers(slip).toString());
    }

    /** Everything a verdict shows, without the last digits of doubles that depend on the order of a sum. */
    private List<String> said(Job of) {
        return JobChecks.verdicts(of, shop).stream().map(v -> String.join("|", v.id(), v.title(), v.outcome().name(),
                String.valueOf(v.value() == null ? null : v.value().floatValue()), v.limitText(), v.reason(), v.settle()))
                .toList();
    }

    @Test
    void thePersonWhoCountedFirstDoesNotCountSecondUnlessAloneInTheShopAndOnAnotherDay() throws Exception {
        WindingData one = winding(withCounts(96, 1, false));
        String first = one.counts().get(0).by();
        java.time.Instant sameDay = one.counts().get(0).at().plusSeconds(60);
        java.time.Instant nextDay = sameDay.plus(java.time.Duration.ofDays(1));
        java.time.ZoneId zone = java.time.ZoneOffset.UTC;
        assertEquals(2, CountRule.next(one));
        assertTrue(CountRule.wanted(one));
        assertTrue(CountRule.refuses(one, null, shop, sameDay, zone).isPresent());
        assertTrue(CountRule.refuses(one, first, shop, nextDay, zone).isPresent());
        assertTrue(CountRule.refuses(one, "winder-2", shop, sameDay, zone).isEmpty());
        Shop alone = new Shop(shop.workshop(), shop.instruments(), shop.stock(), shop.limits(),
                Map.of(first, shop.people().get(first)));
        assertTrue(CountRule.refuses(one, first, alone, sameDay, zone).isPresent());
        assertTrue(CountRule.refuses(one, first, alone, nextDay, zone).isEmpty());
        assertFalse(CountRule.wanted(winding(job)), "two counts that agree are enough");
    }

    /** Anna begins, Ben begins, Anna gives up: whoever counts next is the first, and no number is there twice. */
    @Test
    void aNumberThatWasGivenUpIsFreeAgainAndNoneIsGivenTwice() throws Exception {
        WindingData all = winding(withCounts(96, 2, false));
        WindingData secondAlone = winding(change(t -> ((ArrayNode) t.path("counts")).remove(0)));
        assertEquals(List.of(2), secondAlone.counts().stream().map(TurnCount::ordinal).toList());
        assertEquals(1, CountRule.next(secondAlone));
        assertEquals(3, CountRule.next(all));
        assertTrue(CountRule.wanted(secondAlone));
        assertTrue(BlindCounts.covers(secondAlone), "one count is still blind to the next");
    }

    private List<String> blockers(Job of) {
        return HoldPoints.of(HoldPoints.states(of, shop), HoldPoint.CAPTURE_COMPLETE).blockers();
    }

    private WindingData winding(Job of) {
        return of.windingAsFound(WindingRole.EXCITER_STATOR).orElseThrow();
    }

    /** The job with so many counts, all turns alike in coils and counts; the last one open if asked for. */
    private Job withCounts(int turns, int counts, boolean lastOpen) throws BadRecordException {
        return change(t -> {
            t.put("turnsPerCoil", turns);
            t.path("groups").forEach(g -> g.path("coils").forEach(c -> ((ObjectNode) c).put("turns", turns)));
            t.path("wire").forEach(w -> ((ObjectNode) w).put("strands", turns));
            ArrayNode list = (ArrayNode) t.path("counts");
            while (list.size() > counts) {
                list.remove(list.size() - 1);
            }
            list.forEach(c -> {
                ((ObjectNode) c).put("strands", turns);
                c.path("groups").forEach(g -> {
                    ArrayNode each = (ArrayNode) g.path("turns");
                    for (int i = 0; i < each.size(); i++) {
                        each.set(i, turns);
                    }
                });
            });
            if (lastOpen) {
                ((ObjectNode) list.get(list.size() - 1)).put("open", true);
            }
        });
    }

    private Job change(java.util.function.Consumer<ObjectNode> change) throws BadRecordException {
        ObjectNode tree = Bench.JSON.tree(job.part(KEY).orElseThrow());
        change.accept(tree);
        return job.with(KEY, Bench.JSON.read(KEY, tree));
    }
}
