package org.copperbook.jobs.check;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.check.HoldPointState.State;
import org.copperbook.jobs.seal.Seal;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.jobs.signoff.SignOffs;
import org.copperbook.jobs.signoff.SignOffs.Signature;
import org.copperbook.jobs.winding.WindingRole;

/**
 * Where the hold points of a job stand and what they hold up. Nothing here is stored: it follows from the parts, the
 * verdicts and the signatures, so that a failure recorded after a signature opens the point again by itself.
 */
public final class HoldPoints {

    private HoldPoints() {
    }

    /** The state of every hold point, in the order of a job's life. */
    public static List<HoldPointState> states(Job job, List<Verdict> verdicts, Shop shop) {
        Machine machine = new Machine(job, shop);
        SignOffs signOffs = signOffs(job);
        Map<HoldPoint, HoldPointState> states = new EnumMap<>(HoldPoint.class);
        for (HoldPoint point : HoldPoint.values()) {
            states.put(point, state(point, job, machine, verdicts, signOffs,
                    signedOnlyAfter(point, verdicts, signOffs), states));
        }
        return List.copyOf(states.values());
    }

    /** The same, with the verdicts computed here. */
    public static List<HoldPointState> states(Job job, Shop shop) {
        return states(job, JobChecks.verdicts(job, shop), shop);
    }

    static SignOffs signOffs(Job job) {
        return job.signOffs().orElse(new SignOffs(SignOffs.SCHEMA, null, null, null, null, null, null));
    }

    private static HoldPointState state(HoldPoint point, Job job, Machine machine, List<Verdict> verdicts,
            SignOffs signOffs, Instant opened, Map<HoldPoint, HoldPointState> before) {
        boolean applies = applies(point, job, machine);
        if (!applies) {
            return new HoldPointState(point, State.NOT_REACHED, List.of(Phrases.word("point-not-applicable", point)),
                    List.of(), false);
        }
        List<String> blockers = blockers(point, job, machine, verdicts, signOffs, before);
        List<Signature> standing = SignRule.standing(job, signOffs, point, opened);
        List<String> toSign = SignRule.missing(point, standing, signOffs);
        boolean failing = verdicts.stream().anyMatch(v -> v.point() == point && v.blocks()
                && v.outcome() == Outcome.FAILS && !Settled.passes(v, signOffs));
        boolean reopenedBefore = point == HoldPoint.RELEASE
                && before.values().stream().anyMatch(s -> s.state() == State.REOPENED);
        if (toSign.isEmpty() && !failing && !reopenedBefore) {
            return new HoldPointState(point, State.SIGNED, List.of(), List.of(), true);
        }
        boolean wasSigned = SignRule.missing(point, SignRule.given(job, signOffs, point, null), signOffs).isEmpty();
        if (wasSigned) {
            return new HoldPointState(point, State.REOPENED, blockers,
                    toSign.isEmpty() ? SignRule.missing(point, List.of(), signOffs) : toSign, true,
                    point == HoldPoint.RELEASE ? changed(job, signOffs) : List.of());
        }
        if (!reached(point, job, machine)) {
            return new HoldPointState(point, State.NOT_REACHED, blockers, toSign, true);
        }
        return new HoldPointState(point, blockers.isEmpty() ? State.READY : State.OPEN, blockers, toSign, true);
    }

    private static List<String> changed(Job job, SignOffs signOffs) {
        return SignRule.changedSinceRelease(job, signOffs).stream().map(Phrases::part).toList();
    }

    private static boolean applies(HoldPoint point, Job job, Machine machine) {
        if (job.standing().map(Standing::isVoid).orElse(false)) {
            return false;
        }
        return switch (point) {
            case CAPTURE_COMPLETE -> !machine.captured().isEmpty();
            case CORE_PROVED -> job.part(PartKey.of(PartKind.CORE)).isPresent()
                    || machine.rewound().contains(machine.mainWinding());
            case WINDING_PROVED -> !machine.rewound().isEmpty();
            case RECTIFIER_COMPLETE -> machine.hasRectifier();
            case RELEASE -> true;
        };
    }

    private static boolean reached(HoldPoint point, Job job, Machine machine) {
        return switch (point) {
            case CAPTURE_COMPLETE -> !machine.captured().isEmpty();
            case CORE_PROVED -> job.part(PartKey.of(PartKind.CORE)).isPresent();
            case WINDING_PROVED -> !machine.rewound().isEmpty();
            case RECTIFIER_COMPLETE -> job.rectifier().isPresent();
            case RELEASE -> job.runUp().isPresent();
        };
    }

    private static List<String> blockers(HoldPoint point, Job job, Machine machine, List<Verdict> verdicts,
            SignOffs signOffs, Map<HoldPoint, HoldPointState> before) {
        List<String> blockers = new ArrayList<>();
        if (!reached(point, job, machine)) {
            blockers.add(Phrases.word("point-no-record", point));
        }
        if (point == HoldPoint.RELEASE) {
            for (HoldPointState s : before.values()) {
                boolean captureOfKept = s.point() == HoldPoint.CAPTURE_COMPLETE && machine.rewound().isEmpty();
                if (!s.passed() && !captureOfKept) {
                    blockers.add(Phrases.say("blocked.by-point", Phrases.word("point", s.point())));
                }
            }
        }
        boolean kept = machine.rewound().isEmpty();
        for (Verdict v : verdicts) {
            boolean mine = v.point() == point || (point == HoldPoint.RELEASE
                    && !(kept && v.point() == HoldPoint.CAPTURE_COMPLETE));
            if (mine && v.blocks() && !Settled.passes(v, signOffs)) {
                blockers.add(Phrases.say("blocked.by-verdict", v.title(), Phrases.word("outcome", v.outcome()),
                        v.reason()));
            }
        }
        blockers.addAll(CautionsMissing.of(point, job, signOffs));
        return blockers;
    }

    /** Signatures count only after this moment; null when any counts. The release falls with every other point. */
    static Instant signedOnlyAfter(HoldPoint point, List<Verdict> verdicts, SignOffs signOffs) {
        if (point != HoldPoint.RELEASE) {
            return openedAgain(point, verdicts, signOffs);
        }
        Instant opened = null;
        for (HoldPoint any : HoldPoint.values()) {
            opened = later(opened, openedAgain(any, verdicts, signOffs));
        }
        return opened;
    }

    /**
     * The latest moment at which a failure or an explicit reopening opened the point: signatures up to then count no
     * longer. Every attempt counts, also one that a later attempt replaced.
     */
    private static Instant openedAgain(HoldPoint point, List<Verdict> verdicts, SignOffs signOffs) {
        Instant opened = null;
        for (SignOffs.Reopening r : signOffs.reopenings()) {
            opened = r.point() == point ? later(opened, r.at()) : opened;
        }
        for (Verdict v : verdicts) {
            boolean failure = v.point() == point && v.outcome() == Outcome.FAILS;
            opened = failure ? later(opened, v.takenAt()) : opened;
        }
        return opened;
    }

    private static Instant later(Instant a, Instant b) {
        if (a == null || b == null) {
            return a == null ? b : a;
        }
        return a.isAfter(b) ? a : b;
    }

    /** The roles that sign a point, each once; the capture needs a second person besides. */
    public static List<Role> roles(HoldPoint point) {
        return SignRule.roles(point);
    }

    /** The state of one point among those of a job. */
    public static HoldPointState of(List<HoldPointState> states, HoldPoint point) {
        return states.stream().filter(s -> s.point() == point).findFirst().orElseThrow();
    }

    /** What holds up a step, in words; empty when it may be begun. */
    public static List<String> blocks(Step step, Job job, List<HoldPointState> states) {
        List<String> blocked = new ArrayList<>();
        voided(job).ifPresent(blocked::add);
        for (HoldPoint point : step.waitsFor()) {
            HoldPointState s = of(states, point);
            // stripping and winding wait for a capture even where nothing has been captured yet
            boolean always = point == HoldPoint.CAPTURE_COMPLETE;
            if (always ? s.state() != State.SIGNED : !s.passed()) {
                blocked.add(Phrases.say("blocked.step", Phrases.word("step", step), Phrases.word("point", point)));
            }
        }
        return blocked;
    }

    /** What keeps a part from being begun or changed, in words; empty when it may be edited. */
    public static List<String> blocks(PartKey key, Job job, List<HoldPointState> states) {
        Optional<String> voided = voided(job);
        if (voided.isPresent()) {
            return List.of(voided.get());
        }
        if (Seal.covers(key) && of(states, HoldPoint.RELEASE).state() == State.SIGNED) {
            return List.of(Phrases.say("blocked.released"));
        }
        if (key.kind() == PartKind.WINDING && key.name().endsWith(PartKey.AS_WOUND)) {
            List<String> blocked = new ArrayList<>(blocks(Step.STRIP, job, states));
            WindingRole role = WindingRole.of(key.name().substring(0, key.name().length()
                    - PartKey.AS_WOUND.length()));
            boolean core = role == WindingRole.MAIN_STATOR || role == WindingRole.MOTOR_STATOR;
            if (core && of(states, HoldPoint.CORE_PROVED).state() != State.SIGNED) {
                blocked.add(Phrases.say("blocked.step", Phrases.word("step", Step.WIND),
                        Phrases.word("point", HoldPoint.CORE_PROVED)));
            }
            return blocked;
        }
        return key.kind() == PartKind.IMPREGNATION ? blocks(Step.IMPREGNATE, job, states) : List.of();
    }

    /** Whether a part may be begun or changed. */
    public static boolean mayEdit(PartKey key, Job job, List<HoldPointState> states) {
        return blocks(key, job, states).isEmpty();
    }

    private static Optional<String> voided(Job job) {
        return job.standing().filter(Standing::isVoid).map(s -> Phrases.say("blocked.void",
                Phrases.word("closed", s.closure().how()), s.closure().reason()));
    }
}
