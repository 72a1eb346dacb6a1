package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.process.PolarityTest;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.winding.WindingRole;

/** Polarity and sequence as seen on the winding before impregnation, every attempt; of each winding the last decides. */
final class PolarityTestCheck implements Check {

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        job.inProcess().ifPresent(p -> {
            Map<WindingRole, Integer> attempts = new EnumMap<>(WindingRole.class);
            for (int i = 0; i < p.polarities().size(); i++) {
                PolarityTest t = p.polarities().get(i);
                if (t.winding() != null) {
                    int attempt = attempts.merge(t.winding(), 1, Integer::sum);
                    boolean later = p.polarities().subList(i + 1, p.polarities().size()).stream()
                            .anyMatch(x -> x.winding() == t.winding());
                    out.add(verdict(t, i, attempt, shop).current(!later).done());
                }
            }
        });
        return out;
    }

    private static VerdictDraft verdict(PolarityTest t, int index, int attempt, Shop shop) {
        String role = Phrases.word("role", t.winding());
        String seen = t.seen() == null ? "" : t.seen();
        VerdictDraft d = VerdictDraft.of("polarity." + t.winding().word() + "." + attempt,
                PartKey.of(PartKind.IN_PROCESS), Phrases.say("title.polarity-test", role, attempt))
                .limitText(Phrases.say("polarity-test.limit")).source(Phrases.say("capture.source"))
                .path("/polarities/" + index).takenAt(t.at()).point(HoldPoint.WINDING_PROVED);
        if (t.right() == null) {
            return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("polarity-test.not-judged", seen));
        }
        if (!t.right()) {
            return d.outcome(Outcome.FAILS).reason(Phrases.say("polarity-test.wrong", seen))
                    .settle(Phrases.say("settle.polarity-test"));
        }
        String objection = MeterUse.ofTester(t.instrument(), t.at(), shop).registerObjection();
        boolean how = t.method() != null;
        return d.outcome(how && objection.isEmpty() ? Outcome.MEETS : Outcome.DOUBTFUL)
                .reason(Phrases.say("polarity-test.right", seen))
                .addReason(how ? "" : Phrases.say("polarity-test.no-method")).addReason(objection)
                .settle(how ? "" : Phrases.say("settle.polarity-method"));
    }
}
