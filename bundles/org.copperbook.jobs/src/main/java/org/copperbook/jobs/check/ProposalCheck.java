package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.winding.TakenOver;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;

/**
 * Whether data taken over from elsewhere were confirmed by a person. A proposal is not evidence of the old winding, so
 * the capture is not complete while one stands, whatever else is recorded.
 */
final class ProposalCheck implements Check {

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        for (WindingRole role : new Machine(job, shop).captured()) {
            job.windingAsFound(role).ifPresent(old -> judge(role, old, out));
        }
        return out;
    }

    private static void judge(WindingRole role, WindingData old, List<Verdict> out) {
        boolean proposed = old.proposedFrom() != null && !old.proposedFrom().isBlank();
        if (!proposed && old.takenOver().isEmpty()) {
            return;
        }
        VerdictDraft d = VerdictDraft.of(role.word() + ".capture.proposal", PartKey.windingAsFound(role),
                Phrases.say("title.capture.proposal", Phrases.word("role", role)))
                .limitText(Phrases.say("capture.limit.proposal")).source(Phrases.say("capture.source"))
                .point(HoldPoint.CAPTURE_COMPLETE).path("/proposedFrom");
        if (proposed) {
            out.add(d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("capture.proposed", old.proposedFrom().strip()))
                    .settle(Phrases.say("settle.confirm")).notConcedable().done());
            return;
        }
        TakenOver last = old.takenOver().get(old.takenOver().size() - 1);
        out.add(d.outcome(Outcome.MEETS).takenAt(last.confirmedAt()).reason(last.confirmedBy() == null
                ? Phrases.say("capture.confirmed-cleared")
                : Phrases.say("capture.confirmed", last.from(), last.confirmedBy())).done());
    }
}
