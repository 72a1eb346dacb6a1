package org.copperbook.store.engines;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.limits.LimitProfile;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.shop.Workshop;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.store.Intake;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.NumberTaken;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.Sample;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** The shop's own parts, its people and photos, and taking in all at once. */
@ParameterizedClass
@EnumSource(Engine.class)
class ShopTest extends OnEachEngine {

    private static final PartKey WORKSHOP = PartKey.parse("workshop");

    private static Workshop workshop(String name) {
        return Sample.part("workshop", "{\"schema\":1,\"name\":\"" + name + "\"}", Workshop.class);
    }

    private static Job job(String id, String number) {
        return new Job(id, number, Map.of(Sample.BOOKING, Sample.booking("Harbour Ice", "set")));
    }

    @Test
    void aFirstStartHasNoJobsAndDefaultSettings() {
        Shop shop = store.shop();
        assertTrue(store.current(JobStore.SHOP, WORKSHOP).isEmpty());
        assertEquals("{year}-{n:4}", shop.workshop().numberSeries());
        assertTrue(shop.people().isEmpty());
        assertTrue(shop.limits().limits().size() > 0);
        assertEquals(0, store.register(RegisterQuery.first(1)).total());
        assertTrue(store.audit().passed());
    }

    @Test
    void theShopsPartsHaveRevisionsToo() {
        store.saveShopPart(WORKSHOP, workshop("Ottermere"), 0, "ada", "");
        store.saveShopPart(WORKSHOP, workshop("Ottermere Rewinds"), 1, "ada", "new name");
        assertEquals("Ottermere Rewinds", store.shop().workshop().name());
        assertEquals(2, store.history(JobStore.SHOP, WORKSHOP).size());
    }

    @Test
    void theShopsOwnLimitsLieOnTheShippedOnes() {
        LimitProfile shipped = store.shop().limits();
        LimitProfile own = Sample.part("limits", "{\"schema\":1,\"name\":\"ours\",\"limits\":[{\"id\":\"of.our.own\","
                + "\"title\":\"ours\",\"upper\":1.0,\"source\":\"workshop\"}]}", LimitProfile.class);
        store.saveShopPart(PartKey.parse("limits"), own, 0, "ada", "");
        LimitProfile now = store.shop().limits();
        assertEquals(shipped.limits().size() + 1, now.limits().size());
        assertEquals(1.0, now.find("of.our.own").orElseThrow().upper());
        assertEquals(own, store.current(JobStore.SHOP, PartKey.parse("limits")).orElseThrow().part());
    }

    @Test
    void aPersonIsReplacedAndStandsOutsideTheChain() throws SQLException {
        store.savePerson(new Person("p1", "Ada Brook", Set.of(Role.WINDER), null, null, true), "o");
        store.savePerson(new Person("p1", "Ada Mill", Set.of(Role.WINDER, Role.TESTER), "12", null, false), "o");
        Person p = store.shop().people().get("p1");
        assertEquals("Ada Mill", p.name());
        assertEquals(Set.of(Role.WINDER, Role.TESTER), p.roles());
        store.create(Sample.booking("Harbour Ice", "set"), "p1");
        place.run("DELETE FROM person");
        assertTrue(store.persons().isEmpty());
        assertTrue(store.audit().passed());
    }

    @Test
    void whatANewerVersionKnowsOfAPersonSurvives() throws Exception {
        String original = "{\"key\":\"p1\",\"name\":\"Ada Brook\",\"active\":true,\"badge\":{\"colour\":\"red\"}}";
        ObjectMapper plain = new ObjectMapper();
        place.run("INSERT INTO person VALUES ('p1', '" + original + "')");
        store.savePerson(store.persons().get("p1"), "o");
        assertEquals(plain.readTree(original),
                plain.readTree(new PartJson().mapper().writeValueAsString(store.persons().get("p1"))));
    }

    @Test
    void photosComeBackByteForByteAndAreKeptOnce() {
        byte[] bytes = new byte[300_000];
        new Random(3).nextBytes(bytes);
        String hash = store.keepPhoto(bytes);
        assertEquals(hash, store.keepPhoto(bytes.clone()));
        assertArrayEquals(bytes, store.photo(hash).orElseThrow());
        assertTrue(store.photo("0".repeat(64)).isEmpty());
    }

    @Test
    void takingInIsAllOrNothing() {
        store.create(Sample.booking("Harbour Ice", "set"), "ada");
        String taken = store.register(RegisterQuery.first(1)).rows().get(0).number();
        Intake intake = new Intake(Map.of(WORKSHOP, workshop("Ottermere")),
                List.of(new Person("p1", "Ada Brook", Set.of(), null, null, true)), List.of(new byte[] {1}),
                List.of(job("k1", "2020-0001"), job("k2", taken)));
        StoreException e = assertThrows(StoreException.class,
                () -> store.takeIn(intake, "ada", "from files", NumberTaken.REFUSE));
        assertEquals(Kind.ALREADY_THERE, e.kind());
        assertTrue(store.persons().isEmpty());
        assertTrue(store.current(JobStore.SHOP, WORKSHOP).isEmpty());
        assertTrue(store.idOf("2020-0001").isEmpty());
        assertEquals(1, store.register(RegisterQuery.first(1)).total());
        List<JobHandle> jobs = store.takeIn(intake, "ada", "from files", NumberTaken.GIVE_NEW_NUMBER);
        assertEquals("2020-0001", jobs.get(0).number());
        assertEquals("from files", store.current("k1", Sample.BOOKING).orElseThrow().revision().why());
        assertEquals("Ottermere", store.shop().workshop().name());
        assertTrue(store.audit().passed());
    }

    @Test
    void aPartOfAKindThisVersionDoesNotKnowIsNamedAndKept() throws SQLException {
        JobHandle job = store.create(Sample.booking("Harbour Ice", "set"), "ada");
        place.run("INSERT INTO revision VALUES (2, '" + job.id()
                + "', 'balancing', 1, '2030-01-01T00:00:00Z', 'ada', '', '{\"schema\":1}', 'a', 'b')");
        assertEquals(List.of("balancing"), store.unknownParts(job.id()));
        assertEquals(Set.of(Sample.BOOKING), store.load(job.id()).parts().keySet());
    }

    @Test
    void aRecordThatCannotBeReadIsNamedAndDoesNotStopOthers() throws SQLException {
        JobHandle job = store.create(Sample.booking("Harbour Ice", "set"), "ada");
        place.run("INSERT INTO revision VALUES (2, '" + job.id()
                + "', 'nameplate', 1, '2030-01-01T00:00:00Z', 'ada', '', '{\"schema\":\"x\"}', 'a', 'b')",
                "UPDATE chain_head SET sequence = 2, hash = 'b'");
        StoreException e = assertThrows(StoreException.class, () -> store.load(job.id()));
        assertEquals(Kind.UNREADABLE_RECORD, e.kind());
        assertTrue(e.getMessage().contains("nameplate"), e.getMessage());
        assertEquals(2, store.save(job.id(), Sample.BOOKING, Sample.booking("Harbour Ice", "other"), 1, "ada", "")
                .number());
        assertEquals("other", store.register(RegisterQuery.first(1)).rows().get(0).machine());
    }
}
