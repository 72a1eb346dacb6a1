package org.copperbook.jobs.customer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import org.copperbook.jobs.customer.Doubles.Why;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who may be who, and merging. What is alike is common practice, no source; expected: the tests' own inputs. */
class DoublesTest {

    private static Customer customer(String name, String phone, String mail, String taxId) {
        return new Customer(1, name, null, phone, mail, List.of(), taxId, null, null, null, null, null, null, Map.of());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"Harbour Ice Ltd|HARBOUR ICE|SAME_NAME", "M\u00fchle Bl\u00e4ser GmbH & Co. KG|Blaser Muhle|SAME_NAME",
        "Stra\u00dfenbau Nord|Strassenbau-Nord e.K.|SAME_NAME", "Harbour Ice|Harbor Ice|NEAR_NAME",
        "Quarry Pell|Qaurry Pell|NEAR_NAME", "Harbour Ice|Harbour Mill|", "Mill|Hill|", "Acme|Zenith|",
        "Pell worth|Pellworth|SAME_NAME"})
    void namesThatAreAlike(String a, String b, Why why) {
        assertEquals(why == null ? Set.of() : Set.of(why),
                Doubles.alike(customer(a, null, null, null), customer(b, null, null, null)));
    }

    @Test
    void aSharedTelephoneMailOrTaxNumberIsAReason() {
        assertEquals(Set.of(Why.SAME_PHONE), Doubles.alike(customer("A one", "+49 (40) 555-0123", null, null),
                customer("B two", "040 5550123", null, null)));
        assertEquals(Set.of(Why.SAME_MAIL), Doubles.alike(customer("A one", null, "Post@ice.example", null),
                customer("B two", null, "post@ICE.example ", null)));
        assertEquals(Set.of(Why.SAME_TAX_ID), Doubles.alike(customer("A one", null, null, "DE 123 456"),
                customer("B two", null, null, "de123456")));
        assertEquals(Set.of(), Doubles.alike(customer("A one", "112", "", "-"), customer("B two", "112", "", "-")));
        assertEquals(Set.of(), Doubles.alike(customer(null, null, null, null), customer("", null, null, null)));
    }

    private static Map<String, Customer> some(Random random, int many) {
        List<String> words = List.of("Harbour", "Ice", "Mill", "Quarry", "Dairy", "Pell", "Nord", "GmbH", "Ltd", "M\u00fchle");
        Map<String, Customer> all = new TreeMap<>();
        for (int i = 0; i < many; i++) {
            StringBuilder name = new StringBuilder();
            for (int w = 1 + random.nextInt(3); w > 0; w--) {
                name.append(words.get(random.nextInt(words.size()))).append(' ');
            }
            if (random.nextInt(4) == 0) {
                name.deleteCharAt(random.nextInt(name.length()));
            }
            all.put("k" + i, customer(name.toString(), random.nextInt(5) == 0 ? "555000" + random.nextInt(20) : null,
                    random.nextInt(9) == 0 ? "m" + random.nextInt(9) + "@x.example" : null, null));
        }
        return all;
    }

    @Test
    void likenessIsTheSameWhicheverComesFirst() {
        List<Customer> all = new ArrayList<>(some(new Random(1), 120).values());
        for (Customer a : all) {
            for (Customer b : all) {
                assertEquals(Doubles.alike(a, b), Doubles.alike(b, a), a + " and " + b);
            }
        }
    }

    /** Held against looking at every pair, on few enough customers that no mark is shared by a crowd. */
    @Test
    void noPairIsMissedByLookingOnlyAtThoseWhoShareAMark() {
        for (int round = 0; round < 60; round++) {
            Map<String, Customer> all = some(new Random(round), 25);
            Set<List<String>> slow = new HashSet<>();
            for (String a : all.keySet()) {
                for (String b : all.keySet()) {
                    if (a.compareTo(b) < 0 && !Doubles.alike(all.get(a), all.get(b)).isEmpty()) {
                        slow.add(List.of(a, b));
                    }
                }
            }
            Set<List<String>> quick = new HashSet<>();
            Doubles.find(all, n -> true).forEach(p -> quick.add(List.of(p.first(), p.second())));
            assertEquals(slow, quick, "round " + round);
        }
    }

    /** Ten times the customers may not be a hundred times the work: what is held against each other is counted. */
    @Test
    void theWorkDoesNotGrowWithThePairs() {
        Map<String, Customer> all = new HashMap<>();
        Random random = new Random(5);
        for (int i = 0; i < 10_000; i++) {
            StringBuilder name = new StringBuilder("Works ");
            random.ints(8, 'a', 'z' + 1).forEach(c -> name.append((char) c));
            all.put("k" + i, customer(name.toString(), "0409999999", null, null));
        }
        all.put("x", customer("Harbour Ice Ltd", null, null, null));
        all.put("y", customer("Ice, Harbour", null, null, null));
        List<Doubles.Pair> pairs = Doubles.find(all, n -> true);
        assertTrue(pairs.stream().anyMatch(p -> p.first().equals("x") && p.second().equals("y")));
        // All share one telephone; each is paired with the first alone, not with ten thousand.
        assertTrue(pairs.size() < 10_100, pairs.size() + " pairs");
    }

    @Test
    void itCanBeStoppedAndLeavesOutWhoIsMerged() {
        Map<String, Customer> two = Map.of("a", customer("Ice", null, null, null), "b", customer("ice", null, null, null));
        assertThrows(CancellationException.class, () -> Doubles.find(two, n -> false));
        assertEquals(1, Doubles.find(two, n -> true).size());
        assertEquals(List.of(), Doubles.find(Map.of("a", two.get("a"), "b", two.get("b").into("a")), n -> true));
    }

    /** However often anybody is merged into anybody, no pointer leads back to where it began, and nothing is lost. */
    @Test
    void mergingMakesNoCirclesAndIsUndone() {
        for (int round = 0; round < 200; round++) {
            Random random = new Random(round);
            Map<String, Customer> before = some(random, 12);
            Map<String, Customer> now = new HashMap<>(before);
            for (int step = 0; step < 40; step++) {
                String goes = "k" + random.nextInt(12);
                String stays = "k" + random.nextInt(12);
                Merging merging = new Merging(now);
                Optional<Customer> merged = merging.merge(goes, stays);
                merged.ifPresent(c -> now.put(goes, c));
                if (merged.isPresent()) {
                    Merging after = new Merging(now);
                    assertEquals(after.stays(goes), after.stays(stays));
                    assertTrue(after.family(goes).contains(stays) && after.family(stays).contains(goes));
                }
            }
            for (String key : now.keySet()) {
                String head = new Merging(now).stays(key);
                assertEquals(null, now.get(head).mergedInto(), "the one that stays points nowhere");
                assertEquals(before.get(key), now.get(key).into(null), "nothing but the pointer changed");
            }
            assertFalse(new Merging(now).merge("k1", "k1").isPresent());
        }
    }

    @Test
    void aCircleMadeElsewhereDoesNotHoldTheProgramUp() {
        Customer c = Customer.named("x");
        Merging odd = new Merging(Map.of("a", c.into("b"), "b", c.into("a")));
        assertTrue(Set.of("a", "b").contains(odd.stays("a")));
    }
}
