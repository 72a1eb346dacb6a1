package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.runup.SurgeTest;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;

/** Surge comparison tests, every attempt: the traces agree, at the level of the rule that is recorded with them. */
final class SurgeCheck implements Check {

    private record Recorded(PartKey part, int index, SurgeTest test) {
    }

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        Machine machine = new Machine(job, shop);
        LimitBook limits = new LimitBook(job, shop);
        LimitBook.Applied rule = limits.find("surge.alike");
        List<Recorded> all = recorded(job);
        Map<String, Integer> last = new HashMap<>();
        for (int i = 0; i < all.size(); i++) {
            last.put(key(all.get(i).test()), i);
        }
        List<Verdict> out = new ArrayList<>();
        Map<String, Integer> attempts = new HashMap<>();
        for (int i = 0; i < all.size(); i++) {
            SurgeTest t = all.get(i).test();
            int attempt = attempts.merge(key(t), 1, Integer::sum);
            boolean rewound = t.winding() != null && machine.rewound().contains(t.winding());
            boolean proves = rewound || all.get(i).part().kind() == PartKind.IN_PROCESS;
            VerdictDraft d = draft(all.get(i), attempt, rule).current(last.get(key(t)) == i)
                    .point(proves ? HoldPoint.WINDING_PROVED : HoldPoint.RELEASE);
            out.add(judged(d, t, rule, SurgeRule.level(t, machine, limits), shop).done());
        }
        return out;
    }

    private static List<Recorded> recorded(Job job) {
        List<Recorded> all = new ArrayList<>();
        job.inProcess().ifPresent(p -> add(PartKind.IN_PROCESS, p.surges(), all));
        job.runUp().ifPresent(r -> add(PartKind.RUN_UP, r.surges(), all));
        return all;
    }

    private static void add(PartKind kind, List<SurgeTest> surges, List<Recorded> all) {
        for (int i = 0; i < surges.size(); i++) {
            all.add(new Recorded(PartKey.of(kind), i, surges.get(i)));
        }
    }

    private static String key(SurgeTest t) {
        String winding = t.winding() == null ? "winding" : t.winding().word();
        return winding + (t.pair() == null || t.pair().isBlank() ? "" : "." + t.pair().strip()
                .toLowerCase(Locale.ROOT).replace(' ', '-'));
    }

    private static VerdictDraft draft(Recorded r, int attempt, LimitBook.Applied rule) {
        SurgeTest t = r.test();
        String role = t.winding() == null ? "?" : Phrases.word("role", t.winding());
        String pair = t.pair() == null ? "" : t.pair();
        VerdictDraft d = VerdictDraft.of("surge." + key(t) + "." + attempt, r.part(),
                Phrases.say("title.surge", role, pair, attempt)).limit(rule, null)
                .path("/surges/" + r.index()).takenAt(t.at());
        return t.peakVolts() == null ? d : d.value(t.peakVolts(), null, "V");
    }

    private static VerdictDraft judged(VerdictDraft d, SurgeTest t, LimitBook.Applied rule, Optional<LimitBook.Applied> level,
            Shop shop) {
        level.ifPresent(l -> d.limit(l));
        if (t.alike() == null) {
            return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("surge.not-done"));
        }
        if (!t.alike()) {
            return d.outcome(Outcome.FAILS).reason(Phrases.say("surge.differ", t.pair() == null ? "" : t.pair()))
                    .settle(Phrases.say("settle.surge"));
        }
        boolean stated = t.peakVolts() != null && t.levelRule() != null && !t.levelRule().isBlank();
        if (!stated) {
            return d.outcome(rule.byRule(Outcome.DOUBTFUL)).reason(Phrases.say("surge.no-level"))
                    .settle(Phrases.say("settle.surge-level"));
        }
        String alike = Phrases.say("surge.alike", Figures.show(t.peakVolts(), "V"), t.levelRule());
        String objection = MeterUse.ofTester(t.instrument(), t.at(), shop).registerObjection();
        if (!objection.isEmpty()) {
            return d.outcome(Outcome.DOUBTFUL).reason(alike).addReason(objection)
                    .settle(Phrases.say("meter.remedy.calibration"));
        }
        Optional<Double> wanted = level.flatMap(LimitBook.Applied::lower);
        if (wanted.isPresent() && t.peakVolts() < wanted.get() * (1 - SurgeRule.SETTING)) {
            return d.outcome(Outcome.DOUBTFUL).reason(alike)
                    .addReason(Phrases.say("surge.too-low", Figures.show(wanted.get(), "V")))
                    .settle(Phrases.say("settle.surge-repeat", Figures.show(wanted.get(), "V")));
        }
        return d.outcome(rule.byRule(Outcome.MEETS)).reason(alike);
    }
}
