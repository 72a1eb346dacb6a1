package org.copperbook.jobs.check;

import java.time.Instant;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.seal.Seal;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.jobs.signoff.SignOffs;
import org.copperbook.jobs.signoff.SignOffs.Signature;
import org.copperbook.jobs.winding.WindingData;

/** Who signs which hold point. */
final class SignRule {

    /** Concession by which a person alone may countersign the capture after a second blind count on another day. */
    static final String COUNTERSIGN_ALONE = "capture-complete.countersign";

    /** Concession by which the only person of a shop releases a machine that the same person wound. */
    static final String RELEASE_ALONE = "release.alone";

    /** Roles that may countersign the capture as second person. */
    static final Set<Role> SECOND = EnumSet.of(Role.WINDER, Role.TESTER, Role.FOREMAN, Role.QUALITY_CHECKER,
            Role.OWNER);

    private SignRule() {
    }

    /** Roles that must sign, each once. */
    static List<Role> roles(HoldPoint point) {
        return switch (point) {
            case CAPTURE_COMPLETE -> List.of(Role.WINDER);
            case CORE_PROVED, RECTIFIER_COMPLETE -> List.of(Role.TESTER);
            case WINDING_PROVED -> List.of(Role.WINDER, Role.TESTER);
            case RELEASE -> List.of(Role.QUALITY_CHECKER);
        };
    }

    /**
     * Signatures at a point that count: newer than the moment it was opened again and, at the release, of the record as
     * it still is.
     */
    static List<Signature> standing(Job job, SignOffs signOffs, HoldPoint point, Instant openedAgain) {
        return given(job, signOffs, point, openedAgain).stream().filter(s -> sealed(job, s)).toList();
    }

    /** Signatures at a point, also of a record that was changed since. */
    static List<Signature> given(Job job, SignOffs signOffs, HoldPoint point, Instant openedAgain) {
        Set<String> winders = releasesAlone(signOffs) ? Set.of() : winders(job);
        return signOffs.signatures().stream().filter(s -> s.point() == point && s.by() != null)
                .filter(s -> openedAgain == null || (s.at() != null && s.at().isAfter(openedAgain)))
                .filter(s -> point != HoldPoint.RELEASE || !winders.contains(s.by())).toList();
    }

    /** Whether the record still is what this signature was set under; true where it says nothing of it. */
    private static boolean sealed(Job job, Signature s) {
        return s.seal() == null || s.seal().differences(Seal.of(job)).isEmpty();
    }

    /** What was changed since the latest release was signed: keys of parts; empty when nothing or never sealed. */
    static List<String> changedSinceRelease(Job job, SignOffs signOffs) {
        return signOffs.signatures().stream().filter(s -> s.point() == HoldPoint.RELEASE)
                .reduce((earlier, later) -> later).map(Signature::seal).map(seal -> seal.differences(Seal.of(job)))
                .orElse(List.of());
    }

    /** Whether the only person of the shop has recorded that the release is signed alone. */
    static boolean releasesAlone(SignOffs signOffs) {
        return signOffs.concessions().stream().anyMatch(c -> RELEASE_ALONE.equals(c.verdict()) && c.reason() != null
                && !c.reason().isBlank() && Settled.MAY_CONCEDE.contains(c.role()));
    }

    /** What signatures are still missing, in words. */
    static List<String> missing(HoldPoint point, List<Signature> standing, SignOffs signOffs) {
        List<String> missing = new java.util.ArrayList<>();
        for (Role role : roles(point)) {
            if (standing.stream().noneMatch(s -> s.role() == role)) {
                missing.add(Phrases.word("signs", role));
            }
        }
        if (point == HoldPoint.CAPTURE_COMPLETE && !secondPerson(standing, signOffs)) {
            missing.add(Phrases.say("signs.second-person"));
        }
        return missing;
    }

    private static boolean secondPerson(List<Signature> standing, SignOffs signOffs) {
        Set<String> people = new HashSet<>();
        standing.stream().filter(s -> SECOND.contains(s.role())).forEach(s -> people.add(s.by()));
        return people.size() > 1 || (people.size() == 1 && signOffs.concessions().stream()
                .anyMatch(c -> COUNTERSIGN_ALONE.equals(c.verdict())));
    }

    /** People who wound this machine: they signed as winder or made the first count. */
    static Set<String> winders(Job job) {
        Set<String> people = new HashSet<>();
        job.signOffs().ifPresent(s -> s.signatures().forEach(x -> {
            if (x.role() == Role.WINDER && x.by() != null) {
                people.add(x.by());
            }
        }));
        job.keys(PartKind.WINDING).forEach(k -> {
            WindingData w = (WindingData) job.part(k).orElseThrow();
            w.counts().forEach(c -> {
                if (c.by() != null && c.ordinal() == 1) {
                    people.add(c.by());
                }
            });
        });
        return people;
    }
}
