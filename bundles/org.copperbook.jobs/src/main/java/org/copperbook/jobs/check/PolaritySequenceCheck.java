package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;

/** The poles of a new field winding must alternate all the way round. */
final class PolaritySequenceCheck implements Check {

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        for (WindingRole role : new Machine(job, shop).rewound()) {
            WindingData w = job.windingAsWound(role).orElseThrow();
            boolean given = w.polaritySequence() != null && !w.polaritySequence().isBlank();
            if (role.isField() || given) {
                out.add(verdict(role, w, given));
            }
        }
        return out;
    }

    private static Verdict verdict(WindingRole role, WindingData w, boolean given) {
        VerdictDraft d = VerdictDraft.of(role.word() + ".polarity", PartKey.windingAsWound(role),
                Phrases.say("title.pole-polarity", Phrases.word("role", role))).path("/polaritySequence")
                .limitText(Phrases.say("poles.limit")).source(Phrases.say("capture.source"))
                .point(HoldPoint.WINDING_PROVED);
        if (!given) {
            return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("poles.not-recorded")).done();
        }
        String poles = w.polaritySequence().toUpperCase(Locale.ROOT).replaceAll("[^NS]", "");
        if (poles.isEmpty() || (w.poles() != null && poles.length() != w.poles())) {
            return d.outcome(Outcome.FAILS).reason(Phrases.say("poles.count", poles.length(),
                    String.valueOf(w.poles()))).done();
        }
        for (int i = 0; i < poles.length(); i++) {
            if (poles.charAt(i) == poles.charAt((i + 1) % poles.length())) {
                return d.outcome(Outcome.FAILS).reason(Phrases.say("poles.alike", i + 1, (i + 1) % poles.length() + 1))
                        .settle(Phrases.say("settle.poles")).done();
            }
        }
        return d.outcome(Outcome.MEETS).reason(Phrases.say("poles.alternate", poles.length())).done();
    }
}
