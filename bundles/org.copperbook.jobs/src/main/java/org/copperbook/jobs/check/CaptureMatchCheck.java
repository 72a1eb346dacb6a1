package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.calc.winding.capture.CaptureUncertainty;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.winding.CoilGroup;

/**
 * Whether the turns, wire, span and circuits captured agree with the resistances read and the copper weighed; when they do
 * not, which single slip would account for it. It informs: a shorted turn of the old winding reads like a slip too.
 */
final class CaptureMatchCheck implements Check {

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        for (PartKey key : job.keys(PartKind.WINDING)) {
            WindingCase.of(job, shop, key).filter(CaptureMatchCheck::concerned).ifPresent(c -> out.add(match(c)));
        }
        return out;
    }

    /** A distributed winding whose coils are listed and something of which has been read. */
    private static boolean concerned(WindingCase c) {
        return !c.role().isField() && c.data().groups().stream().anyMatch(g -> !g.coils().isEmpty())
                && (c.data().groups().stream().map(CoilGroup::resistance).anyMatch(r -> r != null)
                        || !c.data().readings().isEmpty());
    }

    static Verdict match(WindingCase c) {
        CaptureAgainstReadings match;
        try {
            match = CaptureAgainstReadings.of(c);
        } catch (OutOfRange e) {
            match = CaptureAgainstReadings.refused(e);
        }
        double alarm = CaptureUncertainty.usual().alarmBelow();
        VerdictDraft d = VerdictDraft.of(c.key().name() + ".capture.match", c.key(),
                Phrases.say(c.data().asWound() ? "title.match-as-wound" : "title.match", Phrases.word("role", c.role())))
                .limitText(Phrases.say("match.limit", Figures.show(alarm, "1"))).source(Phrases.say("match.source"));
        if (match.report() == null) {
            return d.outcome(Outcome.NOT_MEASURED)
                    .reason(Phrases.say("figure.missing", String.join(", ", match.missing()))).done();
        }
        boolean questioned = match.report().questioned();
        return d.value(match.report().cleanProbability(), null, "1").bounds(Bounds.atLeast(alarm))
                .outcome(questioned ? Outcome.DOUBTFUL : Outcome.MEETS).reason(match.report().sentence())
                .settle(questioned ? Phrases.say("settle.match") : "").done();
    }
}
