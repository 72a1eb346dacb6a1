package org.copperbook.store.engines;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.inspection.Inspection;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.shop.Staff;
import org.copperbook.jobs.shop.Workshop;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.jobs.signoff.SignOffs;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.store.Intake;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.NumberTaken;
import org.copperbook.store.Sample;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreOptions;
import org.copperbook.store.memory.SameCard;
import org.copperbook.store.people.SecretHash;
import org.copperbook.store.people.SignIn;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** Signing in, and what the store refuses whoever asks. */
@ParameterizedClass
@EnumSource(Engine.class)
class AccountsTest extends OnEachEngine {

    private static final PartKey INSPECTION = PartKey.parse("inspection");
    private static final PartKey SIGN_OFFS = PartKey.parse("sign-offs");
    private static final PartKey STAFF = PartKey.parse("staff");
    private static final String OWNERS = "owners own words";
    private static final String WINDERS = "winders own words";

    private final TestClock clock = new TestClock();

    private static final class TestClock extends Clock {
        private Instant now = Instant.parse("2026-03-03T09:00:00Z");

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    private static Person person(String key, Role... roles) {
        return new Person(key, "Name of " + key, Set.of(roles), null, null, true);
    }

    private static Inspection inspection() {
        return Sample.part("inspection", "{\"schema\":1}", Inspection.class);
    }

    private static SignOffs signature(String by, String role) {
        return Sample.part("sign-offs", "{\"schema\":1,\"signatures\":[{\"point\":\"CAPTURE_COMPLETE\",\"by\":\"" + by
                + "\",\"role\":\"" + role + "\",\"at\":\"2026-03-03T09:00:00Z\"}]}", SignOffs.class);
    }

    private void people() {
        store.close();
        store = place.open(StoreOptions.standard().withClock(clock));
        store.savePerson(person("o", Role.OWNER), "o");
        store.savePerson(person("w", Role.WINDER), "o");
        store.savePerson(person("f", Role.OFFICE), "o");
    }

    private void begun() {
        people();
        store.accounts().begin("o", OWNERS.toCharArray());
        store.accounts().reset("w", WINDERS.toCharArray());
    }

    private void signIn(String key, String secret) {
        assertInstanceOf(SignIn.Done.class, store.accounts().signIn(key, secret.toCharArray()));
    }

    private String refusedSignIn(String key, String secret) {
        return assertInstanceOf(SignIn.Refused.class, store.accounts().signIn(key, secret.toCharArray())).message();
    }

    private static String refused(Executable act) {
        return refused(Kind.NOT_ALLOWED, act);
    }

    private static String refused(Kind kind, Executable act) {
        StoreException e = assertThrows(StoreException.class, act);
        assertEquals(kind, e.kind(), e.getMessage());
        return e.getMessage();
    }

    private String value(String sql) throws SQLException {
        try (Connection c = place.connect(); Statement s = c.createStatement(); ResultSet r = s.executeQuery(sql)) {
            return r.next() ? r.getString(1) : null;
        }
    }

    @Test
    void aShopWithoutSecretsGoesOnByName() {
        people();
        assertFalse(store.accounts().inForce());
        JobHandle job = store.create(Sample.booking("Harbour Ice", "set"), "w");
        store.save(job.id(), INSPECTION, inspection(), 0, "f", "");
        assertEquals(Optional.empty(), store.accounts().signedIn());
        assertTrue(refusedSignIn("w", WINDERS).contains("has no secret yet"));
    }

    @Test
    void theFirstSecretIsAnOwnersAndPutsSecretsInForce() {
        people();
        assertTrue(refused(() -> store.accounts().begin("w", WINDERS.toCharArray())).contains("is no owner"));
        refused(() -> store.accounts().reset("w", WINDERS.toCharArray()));
        assertFalse(store.accounts().inForce());
        store.accounts().begin("o", OWNERS.toCharArray());
        assertTrue(store.accounts().inForce());
        assertEquals(Optional.of("o"), store.accounts().signedIn());
        refused(() -> store.accounts().begin("o", OWNERS.toCharArray()));
        store.accounts().signOut();
        String said = refused(() -> store.create(Sample.booking("Harbour Ice", "set"), "o"));
        assertTrue(said.contains("Nobody is signed in") && said.contains("foreman, office, owner"), said);
        refused(() -> store.keepPhoto(new byte[] {1}));
        assertTrue(store.chainEnd().sequence() == 4, "nothing but the three people and the first secret was written");
    }

    @Test
    void whoIsSignedInChangesWhatTheRoleMayAndInNobodyElsesName() {
        begun();
        JobHandle job = store.create(Sample.booking("Harbour Ice", "set"), "o");
        signIn("w", WINDERS);
        store.save(job.id(), INSPECTION, inspection(), 0, "w", "");
        long end = store.chainEnd().sequence();
        String said = refused(() -> store.create(Sample.booking("Harbour Ice", "set"), "w"));
        assertTrue(said.contains("Name of w may not book a machine in")
                && said.contains("Who may: foreman, office, owner."), said);
        said = refused(() -> store.save(job.id(), INSPECTION, inspection(), 1, "o", ""));
        assertTrue(said.contains("Name of w is signed in; this was typed by Name of o"), said);
        refused(() -> store.saveShopPart(PartKey.parse("workshop"),
                Sample.part("workshop", "{\"schema\":1,\"name\":\"x\"}", Workshop.class), 0, "w", ""));
        refused(() -> store.savePerson(person("w", Role.OWNER), "w"));
        refused(() -> store.savePerson(person("c"), "w"));
        refused(() -> store.savePerson(person("w", Role.OWNER), "o"));
        refused(() -> store.erase("f"));
        refused(() -> store.accounts().reset("o", WINDERS.toCharArray()));
        refused(() -> store.takeIn(Intake.of(new Job("j", "1", Map.of(Sample.BOOKING, Sample.booking("A", "b")))), "w", "",
                NumberTaken.REFUSE));
        refused(() -> store.takeIn(new Intake(Map.of(), List.of(person("w", Role.OWNER)), List.of(), List.of()), "w", "",
                NumberTaken.REFUSE));
        refused(() -> store.memory().takeIn(List.of(), "o", "", SameCard.REFUSE));
        assertEquals(end, store.chainEnd().sequence());
        assertEquals(Set.of(Role.WINDER), store.persons().get("w").roles());
    }

    @Test
    void aRightTakenAwayElsewhereCountsAtOnce() {
        begun();
        JobHandle job = store.create(Sample.booking("Harbour Ice", "set"), "o");
        signIn("w", WINDERS);
        try (JobStore other = place.open()) {
            other.accounts().signIn("o", OWNERS.toCharArray());
            other.savePerson(person("w", Role.OFFICE), "o");
        }
        refused(() -> store.save(job.id(), INSPECTION, inspection(), 0, "w", ""));
    }

    @Test
    void nobodySignsForSomebodyElseOrAgainstTheRulesOfTheHoldPoints() {
        begun();
        JobHandle job = store.create(Sample.booking("Harbour Ice", "set"), "o");
        signIn("w", WINDERS);
        String said = refused(() -> store.save(job.id(), SIGN_OFFS, signature("o", "OWNER"), 0, "w", ""));
        assertTrue(said.contains("cannot sign in the name of Name of o"), said);
        said = refused(() -> store.save(job.id(), SIGN_OFFS, signature("w", "TESTER"), 0, "w", ""));
        assertTrue(said.contains("does not have the role of tester"), said);
        assertTrue(store.current(job.id(), SIGN_OFFS).isEmpty());
    }

    private static WindingData counted(String... by) {
        String counts = Stream.of(by).map(b -> "{\"ordinal\":1,\"by\":\"" + b + "\",\"groups\":[{\"group\":1,"
                + "\"turns\":[9]}]}").collect(Collectors.joining(","));
        return Sample.part("winding/main-stator", "{\"schema\":1,\"role\":\"main-stator\",\"asWound\":false,\"counts\":[" + counts + "]}", WindingData.class);
    }

    @Test
    void nobodyCountsInSomebodyElsesNameOrTakesOutACount() {
        begun();
        PartKey stator = PartKey.parse("winding/main-stator");
        JobHandle job = store.create(Sample.booking("Harbour Ice", "set"), "o");
        store.save(job.id(), stator, counted("o"), 0, "o", "");
        signIn("w", WINDERS);
        assertTrue(refused(() -> store.save(job.id(), stator, counted("o", "o"), 1, "w", "")).contains("Name of o"));
        assertTrue(refused(() -> store.save(job.id(), stator, counted("w"), 1, "w", "")).contains("Name of o"));
        store.save(job.id(), stator, counted("o", "w"), 1, "w", "");
        assertEquals(2, ((WindingData) store.current(job.id(), stator).orElseThrow().part()).counts().size());
    }

    private static Quote quote(String price, String markUp, String answer) {
        return Sample.part("quote/1", "{\"schema\":1,\"revision\":1,\"currency\":\"EUR\",\"alternatives\":[{\"name\":\"full rewind\","
                + "\"markUpPercent\":" + markUp + ",\"lines\":[{\"kind\":\"LABOUR\",\"text\":\"wind\",\"quantity\":10,\"unitPrice\":"
                + price + "}]}]" + (answer.isEmpty() ? "" : ",\"approval\":{\"agreed\":" + answer + "}") + "}", Quote.class);
    }

    @Test
    void theForemanQuotesAndTakesTheAnswerAndTheWinderNothing() {
        begun();
        store.savePerson(person("m", Role.FOREMAN), "o");
        store.accounts().reset("m", "foremans own words".toCharArray());
        PartKey key = PartKey.quote(1);
        JobHandle job = store.create(Sample.booking("Harbour Ice", "set"), "o");
        store.save(job.id(), key, quote("50", "20", ""), 0, "o", "");
        signIn("w", WINDERS);
        assertTrue(refused(() -> store.save(job.id(), key, quote("50", "20", "true"), 1, "w", "")).contains("office"));
        signIn("m", "foremans own words");
        store.save(job.id(), key, quote("55", "25", ""), 1, "m", "");
        store.save(job.id(), key, quote("55", "25", "true"), 2, "m", "");
        store.save(job.id(), INSPECTION, inspection(), 0, "m", "");
        assertEquals(quote("55", "25", "true"), store.current(job.id(), key).orElseThrow().part());
    }

    @Test
    void theWaitGrowsIsKeptAndIsHonestWithAClockSetBack() {
        begun();
        for (int i = 1; i <= 4; i++) {
            assertTrue(refusedSignIn("w", "a wrong one").contains("Try again"));
        }
        assertTrue(refusedSignIn("w", "a wrong one").contains("Wait 60 s"));
        assertTrue(refusedSignIn("w", WINDERS).contains("has to wait 60 s more"), "the right one too");
        store.close();
        store = place.open(StoreOptions.standard().withClock(clock));
        clock.now = clock.now.plusSeconds(50);
        assertTrue(refusedSignIn("w", WINDERS).contains("has to wait 10 s more"), "kept in the store");
        clock.now = clock.now.minus(Duration.ofDays(3));
        assertTrue(refusedSignIn("w", WINDERS).contains("clock was set back"));
        clock.now = clock.now.plusSeconds(60);
        assertTrue(refusedSignIn("w", "a wrong one").contains("Wait 2 min"));
        clock.now = clock.now.plusSeconds(120);
        signIn("w", WINDERS);
        assertTrue(refusedSignIn("w", "a wrong one").contains("Try again"), "the right one ends the row");
    }

    @Test
    void anOwnerSetsANewSecretWhichEndsTheWait() {
        begun();
        for (int i = 0; i < 5; i++) {
            refusedSignIn("w", "a wrong one");
        }
        store.accounts().reset("w", "another of theirs".toCharArray());
        assertTrue(refusedSignIn("w", WINDERS).contains("not the secret"));
        signIn("w", "another of theirs");
    }

    @Test
    void aSecretIsChangedByWhoKnowsTheOldOne() {
        begun();
        signIn("w", WINDERS);
        assertTrue(refused(() -> store.accounts().change("a wrong one".toCharArray(), OWNERS.toCharArray()))
                .contains("not the secret"));
        refused(Kind.BAD_SECRET, () -> store.accounts().change(WINDERS.toCharArray(), "seven77".toCharArray()));
        refused(Kind.BAD_SECRET, () -> store.accounts().change(WINDERS.toCharArray(), new char[257]));
        store.accounts().change(WINDERS.toCharArray(), "eight888".toCharArray());
        store.accounts().signOut();
        assertTrue(refusedSignIn("w", WINDERS).contains("not the secret"));
        signIn("w", "eight888");
        store.accounts().signOut();
        refused(() -> store.accounts().change("eight888".toCharArray(), WINDERS.toCharArray()));
    }

    @Test
    void theOnlyOwnerWithASecretStaysOne() {
        begun();
        store.savePerson(person("o2", Role.OWNER), "o");
        assertTrue(refused(() -> store.savePerson(person("o", Role.WINDER), "o")).contains("only owner with a secret"));
        refused(() -> store.savePerson(new Person("o", "Name of o", Set.of(Role.OWNER), null, null, false), "o"));
        refused(() -> store.erase("o"));
        store.accounts().reset("o2", "of the second".toCharArray());
        store.savePerson(person("o", Role.WINDER), "o");
        assertEquals(Set.of(Role.WINDER), store.persons().get("o").roles());
    }

    @Test
    void erasingAPersonRemovesTheSecret() throws SQLException {
        begun();
        assertEquals("1", value("SELECT count(*) FROM account WHERE key = 'w'"));
        store.erase("w");
        assertEquals("0", value("SELECT count(*) FROM account WHERE key = 'w'"));
        assertEquals(Set.of("o"), store.accounts().withSecret());
        assertTrue(refusedSignIn("w", WINDERS).contains("does not work here"));
    }

    @Test
    void whoGaveWhichRolesAndSecretsStandsInTheChainByKeys() throws SQLException {
        begun();
        store.savePerson(person("w", Role.WINDER, Role.TESTER), "o");
        signIn("w", WINDERS);
        store.accounts().change(WINDERS.toCharArray(), "eight888".toCharArray());
        signIn("o", OWNERS);
        store.savePerson(person("contact"), "o");
        store.erase("f");
        List<Saved> history = store.history(JobStore.SHOP, STAFF);
        assertEquals(List.of("o kept", "w kept", "f kept", "o first", "w given", "w kept", "w changed", "f erased"),
                history.stream().map(AccountsTest::inShort).toList());
        assertEquals(List.of("o", "o", "o", "o", "o", "o", "w", "o"),
                history.stream().map(s -> s.revision().who()).toList());
        assertEquals(Set.of(Role.WINDER), members(history.get(4)).get("w").roles());
        assertEquals(Set.of(Role.WINDER, Role.TESTER), members(history.get(5)).get("w").roles());
        assertEquals(Set.of("o", "w"), members(history.get(7)).keySet());
        assertEquals("0", value("SELECT count(*) FROM revision WHERE json LIKE '%Name of%' OR why LIKE '%Name of%'"));
        assertTrue(store.audit().passed(), store.audit().toString());
        assertThrows(IllegalArgumentException.class, () -> store.saveShopPart(STAFF, history.get(0).part(), 8, "o", ""));
    }

    /** Whom it was about, and the word of the reason that tells the kinds apart. */
    private static String inShort(Saved saved) {
        String why = saved.revision().why();
        String key = Stream.of("o", "w", "f").filter(k -> why.matches(".*\\b" + k + "\\b.*")).findFirst().orElse("?");
        return key + " " + Stream.of("kept", "first", "given", "changed", "rased").filter(why::contains).findFirst()
                .map(w -> w.equals("rased") ? "erased" : w).orElse(why);
    }

    private static Map<String, Staff.Member> members(Saved saved) {
        return ((Staff) saved.part()).members();
    }

    @Test
    void theAuditTellsWhoseRolesWereChangedPastTheProgram() throws SQLException {
        begun();
        assertTrue(store.audit().notes().stream().noneMatch(n -> n.contains("for the keys")));
        try (Connection c = place.connect(); Statement s = c.createStatement()) {
            s.executeUpdate("DELETE FROM person WHERE key = 'f'");
        }
        List<String> notes = store.audit().notes();
        assertTrue(notes.stream().anyMatch(n -> n.contains("for the keys f:")), notes.toString());
    }

    @Test
    void whoHasLeftCannotSignIn() {
        begun();
        store.savePerson(new Person("w", "Name of w", Set.of(Role.WINDER), null, null, false), "o");
        assertTrue(refusedSignIn("w", WINDERS).contains("does not work here"));
    }

    @Test
    void noSecretIsKeptAndWeakerParametersAreRaisedAtTheNextSignIn() throws SQLException {
        begun();
        assertEquals("600000", value("SELECT iterations FROM account WHERE key = 'w'"));
        String row = value("SELECT algorithm || iterations || salt || hash || set_at FROM account WHERE key = 'w'");
        assertFalse(row.contains("winders"));
        assertFalse(value("SELECT salt FROM account WHERE key = 'w'")
                .equals(value("SELECT salt FROM account WHERE key = 'o'")));
        SecretHash weak = SecretHash.of(WINDERS.toCharArray(), 1000, new byte[16]);
        place.run("UPDATE account SET iterations = 1000, salt = '" + weak.salt() + "', hash = '" + weak.hash()
                + "' WHERE key = 'w'");
        signIn("w", WINDERS);
        assertEquals("600000", value("SELECT iterations FROM account WHERE key = 'w'"));
        signIn("w", WINDERS);
    }

    @Test
    void whatIsHandedInIsWiped() {
        people();
        char[] owners = OWNERS.toCharArray();
        store.accounts().begin("o", owners);
        assertArrayEquals(new char[OWNERS.length()], owners);
        char[] wrong = "a wrong one".toCharArray();
        store.accounts().signIn("o", wrong);
        assertArrayEquals(new char[11], wrong);
        char[] old = OWNERS.toCharArray();
        char[] bad = "short".toCharArray();
        refused(Kind.BAD_SECRET, () -> store.accounts().change(old, bad));
        assertArrayEquals(new char[OWNERS.length()], old);
        assertArrayEquals(new char[5], bad);
    }
}
