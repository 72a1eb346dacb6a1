package org.copperbook.store.engines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.customer.Contact;
import org.copperbook.jobs.customer.Customer;
import org.copperbook.store.ConflictException;
import org.copperbook.store.Intake;
import org.copperbook.store.JobStore;
import org.copperbook.store.NumberTaken;
import org.copperbook.store.PartSave;
import org.copperbook.store.PrivateName;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.RegisterRow;
import org.copperbook.store.RegisterSort;
import org.copperbook.store.Sample;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** Customers are parts of the shop, saved several at once, with what is personal outside the chain. */
@ParameterizedClass
@EnumSource(Engine.class)
class CustomersTest extends OnEachEngine {

    private static final Contact ADA = new Contact("Ada Brook", "+49 40 5550", "ada@ice.example");

    private static Customer customer(String name) {
        return new Customer(1, name, "Quay 7", "+49 40 1", "post@ice.example", List.of(ADA), "DE123", "de", "EUR",
                "30 days", "rings before noon", null, null, Map.of());
    }

    @Test
    void severalAreSavedTogetherOrNotAtAll() {
        store.saveShopParts(List.of(new PartSave(Customer.key("a"), customer("Harbour Ice"), 0),
                new PartSave(Customer.key("b"), customer("Mill"), 0)), "o", "list");
        assertEquals(List.of("customer/a", "customer/b"),
                store.shopParts(PartKind.CUSTOMER).stream().map(s -> s.key().toString()).toList());
        long links = store.chainEnd().sequence();
        assertThrows(ConflictException.class, () -> store.saveShopParts(List.of(
                new PartSave(Customer.key("a"), customer("Harbour Ice Ltd"), 1),
                new PartSave(Customer.key("b"), customer("Mill Ltd"), 0)), "o", ""));
        assertEquals(links, store.chainEnd().sequence());
        assertEquals(customer("Harbour Ice"), store.shopParts(PartKind.CUSTOMER).get(0).part());
    }

    @Test
    void whatIsStoppedWhileItIsSavedLeavesNothing() {
        long links = store.chainEnd().sequence();
        List<PartSave> many = IntStream.range(0, 12)
                .mapToObj(i -> new PartSave(Customer.key("k" + i), customer("Mill " + i), 0)).toList();
        for (int stopAt : List.of(0, 5, 12)) {
            assertThrows(CancellationException.class, () -> store.saveShopParts(many, "o", "", n -> n < stopAt));
            assertEquals(links, store.chainEnd().sequence(), "stopped after " + stopAt);
            assertEquals(List.of(), store.shopParts(PartKind.CUSTOMER));
            assertEquals(List.of(), store.privateNames());
        }
        assertEquals(12, store.saveShopParts(many, "o", "").size());
        assertTrue(store.audit().passed());
    }

    private List<String> found(String text) {
        return store.register(new RegisterQuery(text, 0, 50, RegisterSort.NEWEST_FIRST)).rows().stream()
                .map(RegisterRow::customer).sorted().toList();
    }

    @Test
    void aJobIsFoundByAnyNameOfItsCustomerAsLongAsTheyAreOne() {
        store.create(Sample.booking("Harbour Ice", "pump set"), "o");
        store.create(Sample.booking("Quayside Cold Store", "fan set"), "o");
        store.create(Sample.booking("Mill", "pump set"), "o");
        store.saveShopParts(List.of(new PartSave(Customer.key("a"), customer("Harbour Ice"), 0),
                new PartSave(Customer.key("b"), customer("Quayside Cold Store"), 0),
                new PartSave(Customer.key("c"), customer("Caf\u00e9 Kaltwasser"), 0),
                new PartSave(Customer.key("m"), customer("Mill"), 0)), "o", "");
        assertEquals(List.of("Quayside Cold Store"), found("quayside"));
        assertEquals(List.of(), found("kaltwasser"));
        store.saveShopPart(Customer.key("b"), customer("Quayside Cold Store").into("a"), 1, "o", "one firm");
        store.saveShopPart(Customer.key("c"), customer("Caf\u00e9 Kaltwasser").into("b"), 1, "o", "renamed long ago");
        assertEquals(List.of("Harbour Ice", "Quayside Cold Store"), found("quayside"));
        assertEquals(List.of("Harbour Ice", "Quayside Cold Store"), found("harbour ice"));
        assertEquals(List.of("Harbour Ice", "Quayside Cold Store"), found("cafe kalt"), "a name under which no job is booked");
        assertEquals(List.of("Harbour Ice"), found("quayside pump"), "other words hold as before");
        assertEquals(List.of("Harbour Ice", "Mill"), found("pump"));
        assertEquals(1, store.register(new RegisterQuery("cafe", 1, 1, RegisterSort.NEWEST_FIRST)).rows().size());
        assertEquals(2, store.register(new RegisterQuery("cafe", 1, 1, RegisterSort.NEWEST_FIRST)).total());
        store.saveShopPart(Customer.key("b"), customer("Quayside Cold Store"), 2, "o", "not one after all");
        assertEquals(List.of("Quayside Cold Store"), found("quayside"));
        assertEquals(List.of("Quayside Cold Store"), found("kaltwasser"), "that one is still another name of it");
    }

    @Test
    void twoAreNotMergedIntoEachOtherHoweverLongTheWayRound() {
        for (String k : List.of("a", "b", "c")) {
            store.saveShopPart(Customer.key(k), customer(k), 0, "o", "");
        }
        store.saveShopPart(Customer.key("a"), customer("a").into("b"), 1, "o", "");
        StoreException two = assertThrows(StoreException.class,
                () -> store.saveShopPart(Customer.key("b"), customer("b").into("a"), 1, "p", ""));
        assertEquals(StoreException.Kind.NOT_ALLOWED, two.kind());
        store.saveShopPart(Customer.key("b"), customer("b").into("c"), 1, "p", "");
        long links = store.chainEnd().sequence();
        assertThrows(StoreException.class, () -> store.saveShopPart(Customer.key("c"), customer("c").into("a"), 1, "o", ""));
        assertThrows(StoreException.class, () -> store.saveShopPart(Customer.key("c"), customer("c").into("c"), 1, "o", ""));
        assertThrows(StoreException.class, () -> store.saveShopParts(List.of(
                new PartSave(Customer.key("x"), customer("x").into("y"), 0),
                new PartSave(Customer.key("y"), customer("y").into("x"), 0)), "o", ""), "also of one save together");
        assertEquals(links, store.chainEnd().sequence());
        store.saveShopPart(Customer.key("b"), customer("b"), 2, "o", "not one after all");
        store.saveShopPart(Customer.key("c"), customer("c").into("a"), 1, "o", "");
        assertTrue(store.audit().passed());
    }

    private void takeIn(Map<PartKey, Part> parts) {
        store.takeIn(new Intake(parts, List.of(), List.of(), List.of()), "o", "list", NumberTaken.REFUSE);
    }

    @Test
    void whoIsTakenInFromAFileIsMergedInACircleNeitherWithThoseHereNorAmongThemselves() {
        store.saveShopPart(Customer.key("b"), customer("b").into("a"), 0, "o", "");
        long links = store.chainEnd().sequence();
        for (Map<PartKey, Part> circle : List.<Map<PartKey, Part>>of(
                Map.of(Customer.key("a"), customer("a").into("b")),
                Map.of(Customer.key("a"), customer("a").into("c"), Customer.key("c"), customer("c").into("b")),
                Map.of(Customer.key("x"), customer("x").into("y"), Customer.key("y"), customer("y").into("x")),
                Map.of(Customer.key("x"), customer("x").into("x")))) {
            StoreException refused = assertThrows(StoreException.class, () -> takeIn(circle), circle.keySet().toString());
            assertEquals(StoreException.Kind.NOT_ALLOWED, refused.kind());
            assertTrue(refused.getMessage().startsWith("Nothing was taken in"), refused.getMessage());
        }
        assertEquals(links, store.chainEnd().sequence(), "nothing of it is kept");
        takeIn(Map.of(Customer.key("a"), customer("a").into("b"), Customer.key("b"), customer("b")));
        assertEquals("b", ((Customer) store.current(JobStore.SHOP, Customer.key("a")).orElseThrow().part()).mergedInto(),
                "turned round as a whole is no circle");
        assertTrue(store.audit().passed());
    }

    @Test
    void anErasedNameFindsNothingMore() {
        store.create(Sample.booking("Harbour Ice", "set"), "o");
        store.saveShopParts(List.of(new PartSave(Customer.key("a"), customer("Harbour Ice"), 0),
                new PartSave(Customer.key("b"), Customer.named("Otto Eismann").into("a"), 0)), "o", "");
        assertEquals(List.of("Harbour Ice"), found("eismann"));
        store.erase(store.privateNames().stream().filter(n -> n.name().contains("Eismann")).findFirst().orElseThrow().key());
        assertEquals(List.of(), found("eismann"));
    }

    @Test
    void theChainSeesNothingThatIsPersonal() {
        Saved saved = store.saveShopPart(Customer.key("a"), customer("Harbour Ice"), 0, "o", "");
        for (String personal : List.of("Harbour", "Quay", "+49", "ice.example", "DE123", "noon", "Ada")) {
            assertFalse(saved.revision().json().contains(personal), personal + " in " + saved.revision().json());
        }
        assertTrue(saved.revision().json().contains("30 days"), "what is not personal stays readable");
        assertEquals(customer("Harbour Ice"), store.current(JobStore.SHOP, Customer.key("a")).orElseThrow().part());
    }

    @Test
    void aContactIsErasedWholeAndTheChainHolds() {
        store.saveShopPart(Customer.key("a"), customer("Harbour Ice"), 0, "o", "");
        PrivateName contact = store.privateNames().stream().filter(n -> n.name().startsWith("Ada")).findFirst().orElseThrow();
        store.erase(contact.key());
        Customer now = (Customer) store.current(JobStore.SHOP, Customer.key("a")).orElseThrow().part();
        assertFalse(now.contacts().get(0).text().contains("Ada"));
        assertFalse(now.contacts().get(0).text().contains("5550"));
        assertEquals("Harbour Ice", now.name());
        assertTrue(store.audit().passed());
        assertEquals(0, store.register(RegisterQuery.first(5)).total(), "the shop itself is no job of the register");
        store.rebuildRegister();
        assertEquals(0, store.register(RegisterQuery.first(5)).total());
        store.saveShopPart(Customer.key("a"), now, 1, "o", "");
        assertEquals(now, store.current(JobStore.SHOP, Customer.key("a")).orElseThrow().part());
    }

    @Test
    void aNameErasedIsErasedFromCustomerAndBookings() {
        store.create(Sample.booking("Harbour Ice", "set"), "o");
        store.saveShopPart(Customer.key("a"), customer("Harbour Ice"), 0, "o", "");
        PrivateName name = store.privateNames().stream().filter(n -> n.name().equals("Harbour Ice")).findFirst()
                .orElseThrow();
        store.erase(name.key());
        assertFalse(store.register(RegisterQuery.first(5)).rows().get(0).customer().contains("Harbour"));
        assertFalse(((Customer) store.current(JobStore.SHOP, Customer.key("a")).orElseThrow().part()).name()
                .contains("Harbour"));
    }
}
