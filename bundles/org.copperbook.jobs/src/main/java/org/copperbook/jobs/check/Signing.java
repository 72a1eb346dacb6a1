package org.copperbook.jobs.check;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.check.HoldPointState.State;
import org.copperbook.jobs.seal.Seal;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.jobs.signoff.SignOffs;
import org.copperbook.jobs.winding.TurnCount;
import org.copperbook.jobs.winding.WindingRole;

/**
 * Signing, conceding and judging as pure functions: each returns the new sign-offs, or the reasons of a refusal in words.
 * Nothing is ever taken out of the sign-offs.
 */
public final class Signing {

    private Signing() {
    }

    /** Outcome of a request to sign. */
    public sealed interface Result {

        /** Done: the sign-offs to save. */
        record Done(SignOffs signOffs) implements Result {
        }

        /** Refused, and why. */
        record Refused(List<String> reasons) implements Result {
            public Refused {
                reasons = List.copyOf(reasons);
            }
        }
    }

    /**
     * Who signs.
     *
     * @param by   person key
     * @param role role in which the person signs
     * @param at   when
     */
    public record Signer(String by, Role role, Instant at) {
    }

    /** Signs a hold point. */
    public static Result sign(Job job, Shop shop, HoldPoint point, Signer who, String note) {
        List<String> refused = new ArrayList<>(person(job, shop, who));
        SignOffs signOffs = HoldPoints.signOffs(job);
        List<Verdict> verdicts = JobChecks.verdicts(job, shop);
        HoldPointState state = HoldPoints.of(HoldPoints.states(job, verdicts, shop), point);
        if (!state.applies()) {
            refused.addAll(state.blockers());
            return new Result.Refused(refused);
        }
        if (state.state() == State.SIGNED) {
            refused.add(Phrases.say("refused.signed-already", Phrases.word("point", point)));
        }
        refused.addAll(state.blockers());
        refused.addAll(role(job, point, who, state, signOffs));
        Instant after = HoldPoints.signedOnlyAfter(point, verdicts, signOffs);
        if (after != null && who.at() != null && !who.at().isAfter(after)) {
            refused.add(Phrases.say("refused.too-early", after.toString()));
        }
        if (!refused.isEmpty()) {
            return new Result.Refused(refused);
        }
        List<SignOffs.Signature> next = new ArrayList<>(signOffs.signatures());
        Seal seal = point == HoldPoint.RELEASE ? Seal.of(job) : null;
        next.add(new SignOffs.Signature(point, who.by(), who.role(), who.at(), note, seal, Map.of()));
        return new Result.Done(new SignOffs(signOffs.schema(), next, signOffs.concessions(), signOffs.judgements(),
                signOffs.reopenings(), signOffs.cautions(), signOffs.more()));
    }

    private static List<String> role(Job job, HoldPoint point, Signer who, HoldPointState state, SignOffs signOffs) {
        List<String> refused = new ArrayList<>();
        boolean named = SignRule.roles(point).contains(who.role());
        boolean second = point == HoldPoint.CAPTURE_COMPLETE && SignRule.SECOND.contains(who.role())
                && signOffs.signatures().stream().anyMatch(s -> s.point() == point && !who.by().equals(s.by()));
        if (!named && !second) {
            refused.add(Phrases.say("refused.role", Phrases.word("point", point), String.join(", ", state.toSign())));
        }
        if (point == HoldPoint.RELEASE && !SignRule.releasesAlone(signOffs) && SignRule.winders(job).contains(who.by())) {
            refused.add(Phrases.say("refused.winder-releases"));
        }
        boolean again = signOffs.signatures().stream().anyMatch(s -> s.point() == point && who.by().equals(s.by())
                && s.role() == who.role() && state.toSign().stream().noneMatch(
                        t -> t.equals(Phrases.word("signs", who.role()))));
        if (again) {
            refused.add(Phrases.say("refused.same-person"));
        }
        return refused;
    }

    /** Concedes a verdict that does not meet its limit; refused for those that may not be conceded. */
    public static Result concede(Job job, Shop shop, String verdict, String reason, Signer who) {
        List<String> refused = new ArrayList<>(person(job, shop, who));
        refused.addAll(reason(reason));
        if (!Settled.MAY_CONCEDE.contains(who.role())) {
            refused.add(Phrases.say("refused.concede-role", Phrases.word("role-person", who.role())));
        }
        Optional<Verdict> v = JobChecks.verdicts(job, shop).stream().filter(x -> x.id().equals(verdict)).findFirst();
        if (verdict.equals(SignRule.COUNTERSIGN_ALONE)) {
            refused.addAll(countedOnAnotherDay(job));
        } else if (verdict.equals(SignRule.RELEASE_ALONE)) {
            boolean alone = shop.people().values().stream().filter(p -> p.active() && !p.roles().isEmpty()).count() == 1;
            refused.addAll(alone ? List.of() : List.of(Phrases.say("refused.not-alone")));
        } else if (v.isEmpty()) {
            refused.add(Phrases.say("refused.no-verdict", verdict));
        } else if (v.get().outcome() == Outcome.NO_LIMIT_SET) {
            refused.add(Phrases.say("refused.needs-judgement", v.get().title()));
        } else if (!v.get().concedable()) {
            refused.add(Phrases.say("refused.not-concedable", v.get().title()));
        } else if (v.get().outcome() == Outcome.MEETS) {
            refused.add(Phrases.say("refused.meets", v.get().title()));
        }
        if (!refused.isEmpty()) {
            return new Result.Refused(refused);
        }
        SignOffs s = HoldPoints.signOffs(job);
        List<SignOffs.Concession> next = new ArrayList<>(s.concessions());
        next.add(new SignOffs.Concession(verdict, reason, who.by(), who.role(), who.at(), Map.of()));
        return new Result.Done(new SignOffs(s.schema(), s.signatures(), next, s.judgements(), s.reopenings(),
                s.cautions(), s.more()));
    }

    /**
     * Concedes that one person countersigns the capture alone. Needs a second blind count of every captured winding by
     * that person on another day.
     */
    public static Result countersignAlone(Job job, Shop shop, String reason, Signer who) {
        return concede(job, shop, SignRule.COUNTERSIGN_ALONE, reason, who);
    }

    /** Concedes that the only person of the shop releases what the same person wound; refused where two people work. */
    public static Result releaseAlone(Job job, Shop shop, String reason, Signer who) {
        return concede(job, shop, SignRule.RELEASE_ALONE, reason, who);
    }

    private static List<String> countedOnAnotherDay(Job job) {
        List<String> refused = new ArrayList<>();
        for (WindingRole role : WindingRole.values()) {
            job.windingAsFound(role).filter(w -> !w.counts().isEmpty()).ifPresent(w -> {
                long days = w.counts().stream().map(TurnCount::at).filter(java.util.Objects::nonNull)
                        .map(at -> LocalDate.ofInstant(at, ZoneId.systemDefault())).distinct().count();
                if (w.counts().size() < 2 || days < 2) {
                    refused.add(Phrases.say("refused.another-day", Phrases.word("role", role)));
                }
            });
        }
        return refused;
    }

    /** Judges by name a verdict for which no limit is set. */
    public static Result judge(Job job, Shop shop, String verdict, boolean acceptable, String reason, Signer who) {
        List<String> refused = new ArrayList<>(person(job, shop, who));
        refused.addAll(reason(reason));
        if (!Settled.MAY_JUDGE.contains(who.role())) {
            refused.add(Phrases.say("refused.judge-role", Phrases.word("role-person", who.role())));
        }
        Optional<Verdict> v = JobChecks.verdicts(job, shop).stream().filter(x -> x.id().equals(verdict)).findFirst();
        if (v.isEmpty()) {
            refused.add(Phrases.say("refused.no-verdict", verdict));
        } else if (v.get().outcome() != Outcome.NO_LIMIT_SET) {
            refused.add(Phrases.say("refused.has-limit", v.get().title()));
        }
        if (!refused.isEmpty()) {
            return new Result.Refused(refused);
        }
        SignOffs s = HoldPoints.signOffs(job);
        List<SignOffs.Judgement> next = new ArrayList<>(s.judgements());
        next.add(new SignOffs.Judgement(verdict, acceptable, reason, who.by(), who.role(), who.at(), Map.of()));
        return new Result.Done(new SignOffs(s.schema(), s.signatures(), s.concessions(), next, s.reopenings(),
                s.cautions(), s.more()));
    }

    /**
     * Opens a signed hold point again, for a reason, so that the record behind it may be changed. The signatures stay
     * on record and count no longer; a release falls with every other point.
     */
    public static Result reopen(Job job, Shop shop, HoldPoint point, String reason, Signer who) {
        List<String> refused = new ArrayList<>(person(job, shop, who));
        refused.addAll(reason(reason));
        if (!Settled.MAY_CONCEDE.contains(who.role())) {
            refused.add(Phrases.say("refused.reopen-role", Phrases.word("role-person", who.role())));
        }
        if (HoldPoints.of(HoldPoints.states(job, shop), point).state() != State.SIGNED) {
            refused.add(Phrases.say("refused.not-signed", Phrases.word("point", point)));
        }
        if (!refused.isEmpty()) {
            return new Result.Refused(refused);
        }
        SignOffs s = HoldPoints.signOffs(job);
        List<SignOffs.Reopening> next = new ArrayList<>(s.reopenings());
        next.add(new SignOffs.Reopening(point, reason.strip(), who.at(), who.by(), Map.of()));
        return new Result.Done(new SignOffs(s.schema(), s.signatures(), s.concessions(), s.judgements(), next,
                s.cautions(), s.more()));
    }

    /** Acknowledges the cautions of a hazardous step by name. */
    public static Result acknowledge(Job job, Shop shop, Hazardous step, String by, Instant at) {
        List<String> refused = known(shop, by);
        if (!refused.isEmpty()) {
            return new Result.Refused(refused);
        }
        SignOffs s = HoldPoints.signOffs(job);
        List<SignOffs.CautionAcknowledged> next = new ArrayList<>(s.cautions());
        next.add(new SignOffs.CautionAcknowledged(step.word(), by, at, Map.of()));
        return new Result.Done(new SignOffs(s.schema(), s.signatures(), s.concessions(), s.judgements(),
                s.reopenings(), next, s.more()));
    }

    /**
     * The sign-offs with a reopening for every hold point that a failure has opened and no reopening records yet; empty
     * when there is nothing to record. Called after a save, so that the record itself says when and why.
     */
    public static Optional<SignOffs> reopenings(Job job, Shop shop, String by, Instant at) {
        List<Verdict> verdicts = JobChecks.verdicts(job, shop);
        SignOffs s = HoldPoints.signOffs(job);
        List<SignOffs.Reopening> next = new ArrayList<>(s.reopenings());
        for (HoldPointState state : HoldPoints.states(job, verdicts, shop)) {
            if (state.state() != State.REOPENED) {
                continue;
            }
            verdicts.stream().filter(v -> v.point() == state.point() && v.outcome() == Outcome.FAILS
                    && !Settled.passes(v, s)).findFirst().ifPresent(v -> {
                        boolean recorded = s.reopenings().stream().anyMatch(r -> r.point() == state.point()
                                && v.id().equals(r.because()) && Settled.notBefore(r.at(), v.takenAt()));
                        if (!recorded) {
                            next.add(new SignOffs.Reopening(state.point(), v.id(), at, by, Map.of()));
                        }
                    });
        }
        return next.size() == s.reopenings().size() ? Optional.empty()
                : Optional.of(new SignOffs(s.schema(), s.signatures(), s.concessions(), s.judgements(), next,
                        s.cautions(), s.more()));
    }

    private static List<String> person(Job job, Shop shop, Signer who) {
        List<String> refused = new ArrayList<>(known(shop, who.by()));
        Person p = shop.person(who.by()).orElse(null);
        if (p != null && !p.roles().contains(who.role())) {
            refused.add(Phrases.say("refused.not-in-role", p.name(), Phrases.word("role-person", who.role())));
        }
        if (who.at() == null) {
            refused.add(Phrases.say("refused.no-time"));
        }
        if (job.standing().map(Standing::isVoid).orElse(false)) {
            refused.add(Phrases.say("refused.void", job.number()));
        }
        return refused;
    }

    private static List<String> known(Shop shop, String by) {
        Optional<Person> p = shop.person(by);
        if (p.isEmpty()) {
            return List.of(Phrases.say("refused.unknown-person", String.valueOf(by)));
        }
        return p.get().active() ? List.of() : List.of(Phrases.say("refused.has-left", p.get().name()));
    }

    private static List<String> reason(String reason) {
        return reason == null || reason.isBlank() ? List.of(Phrases.say("refused.no-reason")) : List.of();
    }
}
