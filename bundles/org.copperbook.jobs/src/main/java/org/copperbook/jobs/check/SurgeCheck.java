package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.runup.SurgeTest;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;

/** Surge comparison tests, every attempt. */
final class SurgeCheck implements Check {

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        job.runUp().ifPresent(run -> {
            Machine machine = new Machine(job, shop);
            LimitBook.Applied rule = new LimitBook(job, shop).find("surge.alike");
            Map<String, Integer> last = new HashMap<>();
            for (int i = 0; i < run.surges().size(); i++) {
                last.put(key(run.surges().get(i)), i);
            }
            Map<String, Integer> attempts = new HashMap<>();
            for (int i = 0; i < run.surges().size(); i++) {
                SurgeTest t = run.surges().get(i);
                int attempt = attempts.merge(key(t), 1, Integer::sum);
                boolean rewound = t.winding() != null && machine.rewound().contains(t.winding());
                out.add(verdict(t, i, attempt, last.get(key(t)) == i, rule, shop)
                        .point(rewound ? HoldPoint.WINDING_PROVED : HoldPoint.RELEASE).done());
            }
        });
        return out;
    }

    private static String key(SurgeTest t) {
        String winding = t.winding() == null ? "winding" : t.winding().word();
        return winding + (t.pair() == null || t.pair().isBlank() ? "" : "." + t.pair().strip()
                .toLowerCase(Locale.ROOT).replace(' ', '-'));
    }

    private static VerdictDraft verdict(SurgeTest t, int index, int attempt, boolean last, LimitBook.Applied rule,
            Shop shop) {
        String role = t.winding() == null ? "?" : Phrases.word("role", t.winding());
        String pair = t.pair() == null ? "" : t.pair();
        VerdictDraft d = VerdictDraft.of("surge." + key(t) + "." + attempt, PartKey.of(PartKind.RUN_UP),
                Phrases.say("title.surge", role, pair, attempt)).limit(rule, null)
                .path("/surges/" + index).takenAt(t.at()).current(last);
        if (t.peakVolts() != null) {
            d.value(t.peakVolts(), null, "V");
        }
        if (t.alike() == null) {
            return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("surge.not-done"));
        }
        if (!t.alike()) {
            return d.outcome(Outcome.FAILS).reason(Phrases.say("surge.differ", pair))
                    .settle(Phrases.say("settle.surge"));
        }
        boolean level = t.peakVolts() != null && t.levelRule() != null && !t.levelRule().isBlank();
        String objection = MeterUse.ofTester(t.instrument(), t.at(), shop).registerObjection();
        if (level && !objection.isEmpty()) {
            return d.outcome(Outcome.DOUBTFUL).reason(objection).settle(Phrases.say("meter.remedy.calibration"));
        }
        return d.outcome(rule.byRule(level ? Outcome.MEETS : Outcome.DOUBTFUL))
                .reason(level ? Phrases.say("surge.alike", Figures.show(t.peakVolts(), "V"), t.levelRule())
                        : Phrases.say("surge.no-level"))
                .settle(level ? "" : Phrases.say("settle.surge-level"));
    }
}
