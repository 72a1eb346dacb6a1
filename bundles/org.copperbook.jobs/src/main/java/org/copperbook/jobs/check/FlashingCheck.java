package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.runup.Flashing;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.shop.Shop;

/** Whether a field was flashed as practice asks: through a blocking diode, leads off the regulator, at standstill, briefly. */
final class FlashingCheck implements Check {

    private static final double LONGEST = 5;

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        List<Flashing> all = job.runUp().map(RunUp::flashings).orElse(List.of());
        for (int i = 0; i < all.size(); i++) {
            Flashing f = all.get(i);
            List<String> said = new ArrayList<>();
            say(f.blockingDiode(), "flashing.no-diode", said);
            say(f.leadsOff(), "flashing.leads-on", said);
            say(f.standstill(), "flashing.turning", said);
            if (f.seconds() == null || f.seconds() > LONGEST) {
                said.add(Phrases.say("flashing.seconds"));
            }
            VerdictDraft d = VerdictDraft.of("flashing." + (i + 1), PartKey.of(PartKind.RUN_UP), Phrases.say("title.flashing"))
                    .path("/flashings/" + i).source(Phrases.say("limit.practice")).takenAt(f.at());
            out.add(said.isEmpty() ? d.outcome(Outcome.MEETS).reason(Phrases.say("flashing.as-practice")).done()
                    : d.outcome(Outcome.DOUBTFUL).reason(String.join(" ", said)).settle(Phrases.say("settle.flashing")).done());
        }
        return out;
    }

    private static void say(Boolean right, String key, List<String> said) {
        if (!Boolean.TRUE.equals(right)) {
            said.add(Phrases.say(key));
        }
    }
}
