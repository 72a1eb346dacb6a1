package org.copperbook.jobs.check;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.jobs.signoff.SignOffs;

/**
 * Holds sign-offs about to be saved to the rules of signing, whoever made them: nothing is taken out, nobody signs for
 * somebody else, and each new signature, concession and judgement is one that the record as kept allows.
 */
public final class SignOffsGuard {

    private final Shop shop;
    private final String who;
    private final List<String> refused = new ArrayList<>();
    private Job job;

    /** A step of the new sign-offs, to be tried on the job as it then stands. */
    private record Step(Instant at, Function<Job, Signing.Result> act) {
    }

    private SignOffsGuard(Job job, Shop shop, String who) {
        this.job = job;
        this.shop = shop;
        this.who = who;
    }

    /**
     * Why sign-offs may not be saved; empty when they may.
     *
     * @param job  the job as it is kept, with the sign-offs it has
     * @param next the sign-offs to be kept instead
     * @param who  key of the person who is signed in
     */
    public static List<String> refusals(Job job, Shop shop, SignOffs next, String who) {
        SignOffsGuard guard = new SignOffsGuard(job, shop, who);
        guard.follow(HoldPoints.signOffs(job), next);
        return List.copyOf(guard.refused);
    }

    private void follow(SignOffs before, SignOffs next) {
        List<Step> steps = new ArrayList<>();
        for (SignOffs.Concession c : added(before.concessions(), next.concessions())) {
            own(c.by());
            steps.add(new Step(c.at(), j -> Signing.concede(j, shop, c.verdict(), c.reason(),
                    new Signing.Signer(c.by(), c.role(), c.at()))));
        }
        for (SignOffs.Judgement x : added(before.judgements(), next.judgements())) {
            own(x.by());
            steps.add(new Step(x.at(), j -> Signing.judge(j, shop, x.verdict(), x.acceptable(), x.reason(),
                    new Signing.Signer(x.by(), x.role(), x.at()))));
        }
        for (SignOffs.Reopening r : added(before.reopenings(), next.reopenings())) {
            own(r.by());
            steps.add(new Step(r.at(), j -> Signing.reopen(j, shop, r.point(), r.because(),
                    new Signing.Signer(r.by(), mayReopen(r.by()), r.at()))));
        }
        added(before.cautions(), next.cautions()).forEach(c -> own(c.by()));
        for (SignOffs.Signature s : added(before.signatures(), next.signatures())) {
            own(s.by());
            if (s.point() == HoldPoint.RELEASE && s.seal() == null) {
                refused.add(Phrases.say("refused.no-seal"));
            }
            steps.add(new Step(s.at(), j -> Signing.sign(j, shop, s.point(),
                    new Signing.Signer(s.by(), s.role(), s.at()), s.note())));
        }
        // Stable: of one second concessions and judgements come before the signatures they allow.
        steps.sort(Comparator.comparing(Step::at, Comparator.nullsLast(Comparator.naturalOrder())));
        for (Step step : steps) {
            Signing.Result result = step.act().apply(job);
            if (result instanceof Signing.Result.Done done) {
                job = job.with(PartKey.of(PartKind.SIGN_OFFS), done.signOffs());
            } else {
                refused.addAll(((Signing.Result.Refused) result).reasons());
            }
        }
    }

    /** A reopening does not say in which role it was done: any role of the person's that may will do. */
    private Role mayReopen(String by) {
        Set<Role> held = shop.person(by).map(Person::roles).orElse(Set.of());
        return held.stream().filter(Settled.MAY_CONCEDE::contains).findFirst()
                .orElseGet(() -> held.stream().findFirst().orElse(Role.WINDER));
    }

    private void own(String by) {
        if (!who.equals(by)) {
            refused.add(Phrases.say("refused.not-own", shop.nameOf(who), shop.nameOf(by)));
        }
    }

    private <T> List<T> added(List<T> before, List<T> next) {
        List<T> left = new ArrayList<>(next);
        for (T kept : before) {
            if (!left.remove(kept)) {
                refused.add(Phrases.say("refused.taken-out"));
            }
        }
        return left;
    }
}
