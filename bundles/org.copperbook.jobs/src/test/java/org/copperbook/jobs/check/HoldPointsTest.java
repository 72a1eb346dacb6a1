package org.copperbook.jobs.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.HoldPointState.State;
import org.copperbook.jobs.check.Signing.Result;
import org.copperbook.jobs.check.Signing.Signer;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.jobs.signoff.SignOffs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class HoldPointsTest {

    private static final PartKey SIGN_OFFS = PartKey.of(PartKind.SIGN_OFFS);
    private static final Instant LATER = Instant.parse("2026-04-01T10:00:00Z");

    private final Shop shop = Bench.shop();
    private final Job released = Bench.realInput();

    private static Job unsigned(Job job, String... judgementsOrEmpty) {
        SignOffs s = job.signOffs().orElseThrow();
        return job.with(SIGN_OFFS, new SignOffs(1, null, null, judgementsOrEmpty.length == 0 ? s.judgements() : null,
                null, s.cautions(), null));
    }

    private State state(Job job, HoldPoint point) {
        return HoldPoints.of(HoldPoints.states(job, shop), point).state();
    }

    private List<String> blockers(Job job, HoldPoint point) {
        return HoldPoints.of(HoldPoints.states(job, shop), point).blockers();
    }

    private static Signer as(String key, Role role) {
        return new Signer(key, role, LATER);
    }

    private Job signed(Job job, HoldPoint point, String by, Role role) {
        Result r = Signing.sign(job, shop, point, as(by, role), null);
        return job.with(SIGN_OFFS, assertInstanceOf(Result.Done.class, r, r::toString).signOffs());
    }

    private List<String> refused(Job job, HoldPoint point, String by, Role role) {
        return assertInstanceOf(Result.Refused.class, Signing.sign(job, shop, point, as(by, role), null)).reasons();
    }

    private static Job edit(Job job, String part, String from, String to) {
        PartKey key = PartKey.parse(part);
        String json = Bench.JSON.write(job.part(key).orElseThrow());
        assertTrue(json.contains(from), "nothing to change: " + from);
        return Bench.with(job, part, json.replace(from, to).replace('"', '\''));
    }

    @Test
    void theWholeWayCanBeSignedAgainFromTheStart() {
        Job job = unsigned(released);
        assertEquals(State.READY, state(job, HoldPoint.CAPTURE_COMPLETE));
        assertEquals(State.OPEN, state(job, HoldPoint.RELEASE));
        job = signed(job, HoldPoint.CAPTURE_COMPLETE, "winder-1", Role.WINDER);
        assertEquals(State.READY, state(job, HoldPoint.CAPTURE_COMPLETE));
        job = signed(job, HoldPoint.CAPTURE_COMPLETE, "winder-2", Role.WINDER);
        assertEquals(State.SIGNED, state(job, HoldPoint.CAPTURE_COMPLETE));
        job = signed(job, HoldPoint.WINDING_PROVED, "winder-1", Role.WINDER);
        job = signed(job, HoldPoint.WINDING_PROVED, "tester-1", Role.TESTER);
        job = signed(job, HoldPoint.RECTIFIER_COMPLETE, "tester-1", Role.TESTER);
        assertEquals(State.READY, state(job, HoldPoint.RELEASE));
        job = signed(job, HoldPoint.RELEASE, "checker-1", Role.QUALITY_CHECKER);
        assertEquals(State.SIGNED, state(job, HoldPoint.RELEASE));
        assertTrue(HoldPoints.blocks(Step.HAND_BACK, job, HoldPoints.states(job, shop)).isEmpty());
    }

    @Test
    void anUnconfirmedProposalKeepsTheCaptureFromBeingComplete() {
        Job job = unsigned(released);
        Job proposed = edit(job, "winding/exciter-stator", "\"schema\":1", "\"schema\":1,\"proposedFrom\":\"old card A 1\"");
        assertEquals(State.OPEN, state(proposed, HoldPoint.CAPTURE_COMPLETE));
        assertTrue(blockers(proposed, HoldPoint.CAPTURE_COMPLETE).toString().contains("old card A 1"));
        assertFalse(refused(proposed, HoldPoint.CAPTURE_COMPLETE, "winder-1", Role.WINDER).isEmpty());
        Job confirmed = edit(job, "winding/exciter-stator", "\"schema\":1", "\"schema\":1,\"takenOver\":[{\"from\":"
                + "\"old card A 1\",\"confirmedBy\":\"winder-1\",\"confirmedAt\":\"2026-01-01T08:00:00Z\"}]");
        assertEquals(State.READY, state(confirmed, HoldPoint.CAPTURE_COMPLETE));
    }

    @ParameterizedTest
    @CsvSource({"CAPTURE_COMPLETE, tester-1, TESTER", "WINDING_PROVED, checker-1, QUALITY_CHECKER",
        "RECTIFIER_COMPLETE, winder-1, WINDER", "CAPTURE_COMPLETE, winder-1, TESTER", "RELEASE, tester-1, TESTER",
        "CAPTURE_COMPLETE, nobody, WINDER"})
    void theWrongPersonIsRefusedInWords(HoldPoint point, String by, Role role) {
        assertFalse(refused(unsigned(released), point, by, role).isEmpty());
    }

    @Test
    void onePersonMayNotSignTheCaptureTwice() {
        Job job = signed(unsigned(released), HoldPoint.CAPTURE_COMPLETE, "winder-1", Role.WINDER);
        assertTrue(refused(job, HoldPoint.CAPTURE_COMPLETE, "winder-1", Role.WINDER).get(0).contains("somebody else"));
        assertEquals(State.READY, state(job, HoldPoint.CAPTURE_COMPLETE));
    }

    @Test
    void whoWoundTheMachineMayNotReleaseIt() {
        Job job = unsigned(released);
        job = signed(job, HoldPoint.CAPTURE_COMPLETE, "owner-1", Role.WINDER);
        job = signed(job, HoldPoint.CAPTURE_COMPLETE, "winder-1", Role.WINDER);
        job = signed(job, HoldPoint.WINDING_PROVED, "winder-1", Role.WINDER);
        job = signed(job, HoldPoint.WINDING_PROVED, "tester-1", Role.TESTER);
        job = signed(job, HoldPoint.RECTIFIER_COMPLETE, "tester-1", Role.TESTER);
        List<String> reasons = refused(job, HoldPoint.RELEASE, "owner-1", Role.QUALITY_CHECKER);
        assertTrue(reasons.stream().anyMatch(r -> r.contains("may not release")), reasons.toString());
    }

    @Test
    void onePersonAloneCountersignsOnlyByAConcessionAfterABlindCountOnAnotherDay() {
        Job sameDay = edit(unsigned(released), "winding/exciter-stator", "winder-2", "owner-1");
        sameDay = edit(sameDay, "winding/exciter-stator", "\"by\":\"winder-1\",\"at\":\"2026-03-06T09:00:00Z\"",
                "\"by\":\"owner-1\",\"at\":\"2026-03-06T09:00:00Z\"");
        assertEquals(Outcome.DOUBTFUL, Bench.outcome(sameDay, shop, "exciter-stator.capture.counts"));
        Result no = Signing.countersignAlone(sameDay, shop, "alone in the shop", as("owner-1", Role.OWNER));
        assertInstanceOf(Result.Refused.class, no);
        Job twoDays = edit(sameDay, "winding/exciter-stator", "2026-03-06T14:00:00Z", "2026-03-08T14:00:00Z");
        Job conceded = twoDays.with(SIGN_OFFS, assertInstanceOf(Result.Done.class, Signing.countersignAlone(twoDays,
                shop, "alone in the shop", as("owner-1", Role.OWNER))).signOffs());
        conceded = conceded.with(SIGN_OFFS, assertInstanceOf(Result.Done.class, Signing.concede(conceded, shop,
                "exciter-stator.capture.counts", "second blind count two days later", as("owner-1", Role.OWNER)))
                .signOffs());
        assertEquals(State.SIGNED, state(signed(conceded, HoldPoint.CAPTURE_COMPLETE, "owner-1", Role.WINDER),
                HoldPoint.CAPTURE_COMPLETE));
    }

    @Test
    void theOnlyPersonOfAShopReleasesByAConcessionAndNobodyElseDoes() {
        assertInstanceOf(Result.Refused.class, Signing.releaseAlone(released, shop, "alone", as("owner-1", Role.OWNER)));
        Shop one = new Shop(shop.workshop(), shop.instruments(), shop.stock(), shop.limits(),
                java.util.Map.of("owner-1", shop.people().get("owner-1")));
        Job job = edit(released, "sign-offs", "winder-1", "owner-1");
        SignOffs s = job.signOffs().orElseThrow();
        job = job.with(SIGN_OFFS, new SignOffs(1, s.signatures().subList(0, 5), null, s.judgements(), null, s.cautions(),
                null));
        assertInstanceOf(Result.Refused.class, Signing.sign(job, one, HoldPoint.RELEASE,
                as("owner-1", Role.QUALITY_CHECKER), null));
        Result conceded = Signing.releaseAlone(job, one, "nobody else works here", as("owner-1", Role.OWNER));
        job = job.with(SIGN_OFFS, assertInstanceOf(Result.Done.class, conceded, conceded::toString).signOffs());
        assertInstanceOf(Result.Done.class, Signing.sign(job, one, HoldPoint.RELEASE,
                as("owner-1", Role.QUALITY_CHECKER), null));
    }

    @Test
    void anUnsettledVerdictBlocksItsPointAndTheRelease() {
        Job job = edit(unsigned(released), "run-up", "\"sequenceRight\":true", "\"sequenceRight\":false");
        assertTrue(blockers(job, HoldPoint.RELEASE).stream().anyMatch(b -> b.startsWith("Phase sequence (fails)")),
                blockers(job, HoldPoint.RELEASE).toString());
        assertEquals(State.READY, state(job, HoldPoint.WINDING_PROVED));
    }

    @Test
    void aFailureNewerThanTheSignatureOpensThePointAndTheReleaseAgain() {
        String second = ",{\"winding\":\"exciter-stator\",\"direct\":false,\"volts\":1200,\"seconds\":5,\"held\":false,"
                + "\"attempt\":2,\"cautionsBy\":\"tester-1\",\"at\":\"2026-03-21T09:00:00Z\"}],\"points\"";
        Job failed = edit(released, "run-up", "],\"points\"", second);
        assertEquals(State.REOPENED, state(failed, HoldPoint.WINDING_PROVED));
        assertEquals(State.REOPENED, state(failed, HoldPoint.RELEASE));
        SignOffs recorded = Signing.reopenings(failed, shop, "tester-1", LATER).orElseThrow();
        assertEquals("withstand.exciter-stator.2", recorded.reopenings().get(0).because());
        assertTrue(Signing.reopenings(failed.with(SIGN_OFFS, recorded), shop, "tester-1", LATER).isEmpty());
        // mended and held: the failure stays on record, and everybody signs again
        String third = second.replace("],\"points\"", "") + second.substring(0).replace("\"held\":false", "\"held\":true")
                .replace("\"attempt\":2", "\"attempt\":3").replace("03-21", "03-25").replace("1200", "1500")
                .replace("\"seconds\":5", "\"seconds\":60");
        Job mended = edit(released, "run-up", "],\"points\"", third);
        assertEquals(State.REOPENED, state(mended, HoldPoint.WINDING_PROVED));
        assertEquals(Outcome.FAILS, Bench.outcome(mended, shop, "withstand.exciter-stator.2"));
        mended = mended.with(SIGN_OFFS, assertInstanceOf(Result.Done.class, Signing.judge(mended, shop,
                "withstand.exciter-stator.3", true, "least of the table", as("checker-1", Role.QUALITY_CHECKER)))
                .signOffs());
        mended = signed(mended, HoldPoint.WINDING_PROVED, "winder-1", Role.WINDER);
        mended = signed(mended, HoldPoint.WINDING_PROVED, "tester-1", Role.TESTER);
        assertEquals(State.SIGNED, state(mended, HoldPoint.WINDING_PROVED));
        assertEquals(State.REOPENED, state(mended, HoldPoint.RELEASE));
        mended = signed(mended, HoldPoint.RELEASE, "checker-1", Role.QUALITY_CHECKER);
        assertEquals(State.SIGNED, state(mended, HoldPoint.RELEASE));
    }

    @Test
    void anExplicitReopeningUndoesOlderSignatures() {
        SignOffs s = released.signOffs().orElseThrow();
        Job job = released.with(SIGN_OFFS, new SignOffs(1, s.signatures(), null, s.judgements(), List.of(
                new SignOffs.Reopening(HoldPoint.RECTIFIER_COMPLETE, "a lead was found loose", LATER, "tester-1", null)),
                s.cautions(), null));
        assertEquals(State.REOPENED, state(job, HoldPoint.RECTIFIER_COMPLETE));
        assertEquals(State.REOPENED, state(job, HoldPoint.RELEASE));
    }

    @Test
    void noLimitSetNeedsAJudgementAndNotAConcession() {
        Job job = unsigned(released, "none");
        assertTrue(blockers(job, HoldPoint.WINDING_PROVED).get(0).contains("no limit set"));
        Result conceded = Signing.concede(job, shop, "withstand.exciter-stator.1", "fine", as("checker-1",
                Role.QUALITY_CHECKER));
        assertInstanceOf(Result.Refused.class, conceded);
        Result judged = Signing.judge(job, shop, "withstand.exciter-stator.1", true, "least of the table",
                as("checker-1", Role.QUALITY_CHECKER));
        job = job.with(SIGN_OFFS, assertInstanceOf(Result.Done.class, judged).signOffs());
        assertEquals(State.READY, state(job, HoldPoint.WINDING_PROVED));
        Result notAcceptable = Signing.judge(job, shop, "withstand.exciter-stator.1", false, "on reflection",
                as("checker-1", Role.QUALITY_CHECKER));
        job = job.with(SIGN_OFFS, assertInstanceOf(Result.Done.class, notAcceptable).signOffs());
        assertEquals(State.OPEN, state(job, HoldPoint.WINDING_PROVED));
    }

    @Test
    void aConcessionPassesWhatMayBeConcededUntilANewerReading() {
        Job job = edit(unsigned(released), "run-up", "\"kind\":\"NO_LOAD\",\"source\":\"OWN_REGULATOR\",\"speedRpm\":1800.0",
                "\"kind\":\"NO_LOAD\",\"source\":\"OWN_REGULATOR\",\"speedRpm\":1830.0");
        String id = "run-up.point-1.speed";
        assertEquals(Outcome.FAILS, Bench.outcome(job, shop, id));
        Result r = Signing.concede(job, shop, id, "drive of the bay runs 1.7 % fast", as("foreman-1", Role.FOREMAN));
        Job conceded = job.with(SIGN_OFFS, assertInstanceOf(Result.Done.class, r).signOffs());
        assertTrue(blockers(job, HoldPoint.RELEASE).toString().contains("speed"));
        assertFalse(blockers(conceded, HoldPoint.RELEASE).toString().contains("no load: speed"));
        Job newer = edit(conceded, "run-up", "2026-03-20T10:00:00Z", "2026-05-20T10:00:00Z");
        assertTrue(blockers(newer, HoldPoint.RELEASE).toString().contains("no load: speed"));
    }

    @ParameterizedTest
    @CsvSource({"foreman-1, FOREMAN, ' '", "winder-1, WINDER, a reason", "tester-1, TESTER, a reason",
        "winder-1, FOREMAN, a reason"})
    void aConcessionNeedsAReasonAndSomebodyWhoMay(String by, Role role, String reason) {
        Job job = edit(unsigned(released), "run-up", "\"speedRpm\":1800.0", "\"speedRpm\":1830.0");
        assertInstanceOf(Result.Refused.class, Signing.concede(job, shop, "run-up.point-1.speed", reason, as(by, role)));
    }

    @Test
    void withstandEarthFaultPolarityAndDiodesAreNeverConceded() {
        Job job = edit(unsigned(released), "run-up", "\"held\":true", "\"held\":false");
        job = edit(job, "run-up", "4.2E8", "4.2E5");
        job = edit(job, "rectifier", "\"position\":\"D1\",\"plate\":\"POSITIVE\"",
                "\"position\":\"D1\",\"plate\":\"NEGATIVE\"");
        job = edit(job, "rectifier", "180000.0", "9.0");
        for (String id : List.of("withstand.exciter-stator.1", "main-stator.insulation.as-left", "diode.d1.polarity",
                "diode.d1.as-found")) {
            assertEquals(Outcome.FAILS, Bench.outcome(job, shop, id), id);
            Result r = Signing.concede(job, shop, id, "the customer insists", as("checker-1", Role.QUALITY_CHECKER));
            assertTrue(assertInstanceOf(Result.Refused.class, r).reasons().get(0).contains("may not be conceded"), id);
            // and a concession written by other means passes nothing either
            SignOffs s = HoldPoints.signOffs(job);
            Job forced = job.with(SIGN_OFFS, new SignOffs(1, null, List.of(new SignOffs.Concession(id, "forced",
                    "checker-1", Role.QUALITY_CHECKER, LATER, null)), s.judgements(), null, s.cautions(), null));
            Verdict v = Bench.verdict(forced, shop, id);
            assertFalse(Settled.passes(v, HoldPoints.signOffs(forced)), id);
        }
    }

    @Test
    void cautionsThatNobodyAcknowledgedBlock() {
        SignOffs s = released.signOffs().orElseThrow();
        Job job = released.with(SIGN_OFFS, new SignOffs(1, null, null, s.judgements(), null, null, null));
        job = edit(job, "run-up", "\"cautionsBy\":\"tester-1\",\"at\":\"2026-03-16", "\"at\":\"2026-03-16");
        assertTrue(blockers(job, HoldPoint.RELEASE).contains(
                "Withstand test: nobody acknowledged the cautions by name."));
        Result r = Signing.acknowledge(job, shop, Hazardous.WITHSTAND, "tester-1", LATER);
        job = job.with(SIGN_OFFS, assertInstanceOf(Result.Done.class, r).signOffs());
        assertFalse(blockers(job, HoldPoint.RELEASE).toString().contains("Withstand test: nobody"));
    }

    @Test
    void theNewWindingWaitsForTheCaptureAndStatorsForTheCore() {
        Job job = Bench.job("booking", "{'schema':1,'machineKind':'BRUSHLESS_ALTERNATOR'}");
        List<HoldPointState> states = HoldPoints.states(job, shop);
        assertFalse(HoldPoints.mayEdit(PartKey.parse("winding/exciter-stator.as-wound"), job, states));
        assertTrue(HoldPoints.mayEdit(PartKey.parse("winding/exciter-stator"), job, states));
        assertTrue(HoldPoints.mayEdit(PartKey.parse("inspection"), job, states));
        assertEquals(2, HoldPoints.blocks(PartKey.parse("winding/main-stator.as-wound"), job, states).size());
        Job captured = signed(signed(unsigned(released), HoldPoint.CAPTURE_COMPLETE, "winder-1", Role.WINDER),
                HoldPoint.CAPTURE_COMPLETE, "winder-2", Role.WINDER);
        List<HoldPointState> done = HoldPoints.states(captured, shop);
        assertTrue(HoldPoints.mayEdit(PartKey.parse("winding/exciter-stator.as-wound"), captured, done));
        assertFalse(HoldPoints.mayEdit(PartKey.parse("winding/main-stator.as-wound"), captured, done));
    }

    @Test
    void impregnationWaitsForTheWindingAndTheRunUpForTheRectifier() {
        Job job = unsigned(released);
        List<HoldPointState> states = HoldPoints.states(job, shop);
        assertFalse(HoldPoints.mayEdit(PartKey.parse("impregnation"), job, states));
        assertEquals(2, HoldPoints.blocks(Step.RUN_UP, job, states).size());
        assertTrue(HoldPoints.mayEdit(PartKey.parse("run-up"), job, states));
        assertFalse(HoldPoints.blocks(Step.HAND_BACK, job, states).isEmpty());
    }

    @Test
    void anOverhaulSkipsTheWindingSteps() {
        Job job = Bench.job("booking", "{'schema':1,'machineKind':'INDUCTION_MOTOR_CAGE'}", "run-up", "{'schema':1}");
        List<HoldPointState> states = HoldPoints.states(job, shop);
        for (HoldPoint p : List.of(HoldPoint.CAPTURE_COMPLETE, HoldPoint.CORE_PROVED, HoldPoint.WINDING_PROVED,
                HoldPoint.RECTIFIER_COMPLETE)) {
            assertFalse(HoldPoints.of(states, p).applies(), p.name());
        }
        assertTrue(HoldPoints.mayEdit(PartKey.parse("impregnation"), job, states));
        assertTrue(HoldPoints.blocks(Step.RUN_UP, job, states).isEmpty());
        assertEquals(State.OPEN, HoldPoints.of(states, HoldPoint.RELEASE).state());
    }

    @Test
    void aVoidJobCanNeitherBeEditedNorSigned() {
        Job job = Bench.with(released, "standing",
                "{'schema':1,'closure':{'how':'CANCELLED','reason':'sold before it came'}}");
        List<HoldPointState> states = HoldPoints.states(job, shop);
        assertFalse(HoldPoints.mayEdit(PartKey.parse("run-up"), job, states));
        assertTrue(refused(job, HoldPoint.RELEASE, "checker-1", Role.QUALITY_CHECKER).toString().contains("void"));
    }

    @ParameterizedTest
    @EnumSource(Hazardous.class)
    void everyHazardousStepHasItsCautionsAndDefersToLocalCodes(Hazardous step) {
        List<String> texts = Cautions.requiredFor(step);
        assertTrue(texts.size() >= 4, step + " " + texts.size());
        assertTrue(texts.get(texts.size() - 1).contains("Local codes"));
        assertFalse(Cautions.title(step).isBlank());
    }
}
