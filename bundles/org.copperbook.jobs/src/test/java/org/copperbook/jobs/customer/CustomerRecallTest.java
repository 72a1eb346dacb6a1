package org.copperbook.jobs.customer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Customers found by what is typed. Expected: the tests' own inputs. */
class CustomerRecallTest {

    private static final Map<String, Customer> SHOP = Map.of(
            "k1", Customer.named("Harbour Ice Works Ltd"),
            "k2", Customer.named("Ice Rink Otterbrook"),
            "k3", Customer.named("Müller & Söhne GmbH"),
            "k4", Customer.named("Frozen Goods").into("k1"),
            "k5", out("Iceland Fishery"),
            "k6", Customer.named("東京電機工業"));

    private final CustomerRecall recall = new CustomerRecall(SHOP);

    private static Customer out(String name) {
        return new Customer(1, name, null, null, null, List.of(), null, null, null, null, null, true, null, Map.of());
    }

    private List<String> keys(String typed) {
        return recall.find(typed).stream().map(CustomerRecall.Found::key).toList();
    }

    @ParameterizedTest
    @CsvSource({"har,k1", "HARBOUR I,k1", "ice r,k2", "muller,k3", "Müller,k3", "söhn,k3", "rink otter,k2", "works harb,k1",
            "k3,k3", "東京,k6", "電機,k6", "bour,k1"})
    void aBeginningOfTheNameOrOfItsWordsIsEnough(String typed, String key) {
        assertEquals(List.of(key), keys(typed));
    }

    @Test
    void whoseNameBeginsSoComesBeforeWhoOnlyHasSuchAWord() {
        assertEquals(List.of("k2", "k1"), keys("ice"), "and who is out of use is not offered");
    }

    @Test
    void aNameFromBeforeMergingLeadsToTheOneThatStays() {
        CustomerRecall.Found found = recall.find("frozen").get(0);
        assertEquals(new CustomerRecall.Found("k1", SHOP.get("k1"), "Frozen Goods"), found);
        assertEquals("k1", recall.find("k4").get(0).key());
        assertEquals("k1", recall.behind("k4").orElseThrow().key());
        assertTrue(recall.behind("unknown").isEmpty());
        assertTrue(recall.behind(null).isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"''", "i", "' i '", "zz", "&&", "k"})
    void tooLittleOrNobodyFindsNothing(String typed) {
        assertEquals(List.of(), keys(typed));
    }

    @Test
    void aNameThatIsThereIsKnownByItsLegalFormToo() {
        assertTrue(recall.has("harbour ice works"));
        assertTrue(recall.has("Frozen Goods Inc."));
        assertFalse(recall.has("Harbour"));
        assertFalse(recall.has(""));
    }

    @Test
    void aCircleOfMergedOnesOffersNobodyAndEnds() {
        CustomerRecall circle = new CustomerRecall(Map.of("a", Customer.named("Round").into("b"),
                "b", Customer.named("Round Mill").into("a")));
        assertEquals(List.of(), circle.find("round"));
    }
}
