package org.copperbook.jobs.check;

import java.time.Instant;
import java.util.Set;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.jobs.signoff.SignOffs;

/** Whether a verdict that does not meet its limit has been passed by a concession or a judgement. */
final class Settled {

    /** Roles that may concede or judge: those that answer for the machine, not those that wound it. */
    static final Set<Role> MAY_CONCEDE = Set.of(Role.FOREMAN, Role.QUALITY_CHECKER, Role.OWNER);
    static final Set<Role> MAY_JUDGE = Set.of(Role.TESTER, Role.FOREMAN, Role.QUALITY_CHECKER, Role.OWNER);

    private Settled() {
    }

    /**
     * A concession passes a verdict that may be conceded, a judgement one for which no limit is set. Either must be
     * newer than the evidence: a later reading needs a later word.
     */
    static boolean passes(Verdict v, SignOffs signOffs) {
        if (v.outcome() == Outcome.MEETS) {
            return true;
        }
        if (v.outcome() == Outcome.NO_LIMIT_SET) {
            SignOffs.Judgement last = null;
            for (SignOffs.Judgement j : signOffs.judgements()) {
                boolean holds = v.id().equals(j.verdict()) && said(j.reason()) && notBefore(j.at(), v.takenAt())
                        && MAY_JUDGE.contains(j.role());
                last = holds ? j : last;
            }
            return last != null && last.acceptable();
        }
        return v.concedable() && signOffs.concessions().stream().anyMatch(c -> v.id().equals(c.verdict())
                && said(c.reason()) && notBefore(c.at(), v.takenAt()) && MAY_CONCEDE.contains(c.role()));
    }

    private static boolean said(String reason) {
        return reason != null && !reason.isBlank();
    }

    static boolean notBefore(Instant word, Instant evidence) {
        return evidence == null || (word != null && !word.isBefore(evidence));
    }
}
