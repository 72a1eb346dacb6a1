package org.copperbook.jobs.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.HoldPointState.State;
import org.copperbook.jobs.check.Signing.Result;
import org.copperbook.jobs.check.Signing.Signer;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.seal.Seal;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.jobs.signoff.SignOffs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class SealedReleaseTest {

    private static final PartKey SIGN_OFFS = PartKey.of(PartKind.SIGN_OFFS);
    private static final Instant SIGNED_AT = Instant.parse("2026-04-01T10:00:00Z");

    private final Shop shop = Bench.shop();
    private final Job sealed = released();

    /** The real-input job with its release signed here, and so sealed. */
    private Job released() {
        Job job = Bench.realInput();
        SignOffs s = job.signOffs().orElseThrow();
        Job open = job.with(SIGN_OFFS, new SignOffs(1, s.signatures().stream()
                .filter(x -> x.point() != HoldPoint.RELEASE).toList(), s.concessions(), s.judgements(),
                s.reopenings(), s.cautions(), null));
        return signed(open, SIGNED_AT);
    }

    private Job signed(Job job, Instant at) {
        return done(job, Signing.sign(job, shop, HoldPoint.RELEASE,
                new Signer("checker-1", Role.QUALITY_CHECKER, at), null));
    }

    private static Job done(Job job, Result result) {
        return job.with(SIGN_OFFS, assertInstanceOf(Result.Done.class, result, result::toString).signOffs());
    }

    private HoldPointState release(Job job) {
        return HoldPoints.of(HoldPoints.states(job, shop), HoldPoint.RELEASE);
    }

    private static Job noted(Job job, String part) {
        PartKey key = PartKey.parse(part);
        ObjectNode tree = Bench.JSON.tree(job.part(key).orElseThrow());
        tree.put("afterwards", "added later");
        try {
            return job.with(key, Bench.JSON.read(key, tree));
        } catch (BadRecordException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void aReleaseIsSignedAndNamesWhatItSealed() {
        assertEquals(State.SIGNED, release(sealed).state());
        Seal seal = sealed.signOffs().orElseThrow().signatures().stream().filter(s -> s.point() == HoldPoint.RELEASE)
                .findFirst().orElseThrow().seal();
        assertEquals(64, seal.fingerprint().length());
        assertTrue(seal.parts().containsKey("run-up") && seal.parts().containsKey("inspection"));
        assertFalse(seal.parts().containsKey("booking"));
        assertEquals(Stage.At.RELEASED, Stage.of(sealed).at());
    }

    @ParameterizedTest
    @ValueSource(strings = {"nameplate", "inspection", "run-up", "rectifier", "winding/exciter-stator"})
    void aLaterChangeVoidsTheReleaseAndSaysWhatWasChanged(String part) {
        Job changed = noted(sealed, part);
        HoldPointState state = release(changed);
        assertEquals(State.REOPENED, state.state());
        assertEquals(1, state.changed().size(), state.changed().toString());
        assertNotEquals(Stage.At.RELEASED, Stage.of(changed).at());
        assertTrue(Stage.of(changed).words().contains("release void"), Stage.of(changed).words());
    }

    /** Every kind of part under the seal, and none else, has its word; a part that comes after the release voids it too. */
    @ParameterizedTest
    @EnumSource(PartKind.class)
    void aPartAddedAfterTheReleaseVoidsItExactlyWhenItIsUnderTheSeal(PartKind kind) {
        PartKey key = kind == PartKind.WINDING ? PartKey.parse("winding/exciter-rotor") : kind.many()
                ? PartKey.parse(kind.word() + "/1") : PartKey.of(kind);
        if (kind.ofShop() || sealed.part(key).isPresent()) {
            return;
        }
        String least = kind == PartKind.WINDING ? "{'schema':1,'role':'exciter-rotor','asWound':false}" : "{'schema':1}";
        HoldPointState state = release(Bench.with(sealed, key.toString(), least));
        assertEquals(Seal.covers(key) ? State.REOPENED : State.SIGNED, state.state());
        assertEquals(Seal.covers(key) ? 1 : 0, state.changed().size(), state.changed().toString());
    }

    @Test
    void whatWasFoundWhileLookingForTheFaultIsUnderTheSeal() {
        Job changed = Bench.with(sealed, "fault-finding", "{'schema':1,'symptoms':['low-output']}");
        assertEquals(List.of("fault finding"), release(changed).changed());
    }

    @Test
    void theChangedRecordIsReleasedByANewSignatureAndTheOldOneStays() {
        Job again = signed(noted(sealed, "run-up"), SIGNED_AT.plusSeconds(60));
        assertEquals(State.SIGNED, release(again).state());
        assertEquals(2, again.signOffs().orElseThrow().signatures().stream()
                .filter(s -> s.point() == HoldPoint.RELEASE).count());
    }

    @ParameterizedTest
    @ValueSource(strings = {"booking", "quote/1"})
    void whatTheOfficeWritesAfterwardsLeavesTheReleaseStanding(String part) {
        Job with = sealed.part(PartKey.parse(part)).isPresent() ? noted(sealed, part)
                : Bench.with(sealed, part, "{'schema':1}");
        assertEquals(State.SIGNED, release(with).state());
        assertTrue(HoldPoints.mayEdit(PartKey.parse(part), sealed, HoldPoints.states(sealed, shop)));
    }

    @Test
    void aReleasedRecordIsClosedUntilSomebodyOpensItAgainWithAReason() {
        PartKey runUp = PartKey.parse("run-up");
        assertFalse(HoldPoints.mayEdit(runUp, sealed, HoldPoints.states(sealed, shop)));
        Signer foreman = new Signer("foreman-1", Role.FOREMAN, SIGNED_AT.plusSeconds(60));
        assertInstanceOf(Result.Refused.class, Signing.reopen(sealed, shop, HoldPoint.RELEASE, " ", foreman));
        assertInstanceOf(Result.Refused.class, Signing.reopen(sealed, shop, HoldPoint.RELEASE, "a reading was mistyped",
                new Signer("winder-1", Role.WINDER, foreman.at())));
        Job open = done(sealed, Signing.reopen(sealed, shop, HoldPoint.RELEASE, "a reading was mistyped", foreman));
        assertEquals(State.REOPENED, release(open).state());
        assertEquals(List.of(), release(open).changed());
        assertTrue(HoldPoints.mayEdit(runUp, open, HoldPoints.states(open, shop)));
        assertInstanceOf(Result.Refused.class, Signing.reopen(open, shop, HoldPoint.RELEASE, "twice", foreman));
    }

    @Test
    void theSealSurvivesTheWayThroughJsonWhateverTheOrderOfFields() throws BadRecordException {
        PartKey key = PartKey.parse("run-up");
        ObjectNode tree = Bench.JSON.tree(sealed.part(key).orElseThrow());
        ObjectNode turned = tree.objectNode();
        List<String> names = new java.util.ArrayList<>();
        tree.fieldNames().forEachRemaining(names::add);
        java.util.Collections.reverse(names);
        names.forEach(n -> turned.set(n, tree.get(n)));
        Job read = sealed.with(key, Bench.JSON.read(key, turned.toString()));
        assertEquals(Seal.of(sealed), Seal.of(read));
        PartKey offs = SIGN_OFFS;
        Job both = read.with(offs, Bench.JSON.read(offs, Bench.JSON.write(read.signOffs().orElseThrow())));
        assertEquals(State.SIGNED, release(both).state());
    }
}
