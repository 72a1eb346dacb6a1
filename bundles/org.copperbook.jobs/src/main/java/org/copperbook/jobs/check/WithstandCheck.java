package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.runup.WithstandTest;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.winding.WindingRole;

/** Withstand tests: held or not, at the level for this winding, long enough. Every attempt is judged and stays. */
final class WithstandCheck implements Check {

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        job.runUp().ifPresent(run -> {
            Machine machine = new Machine(job, shop);
            LimitBook limits = new LimitBook(job, shop);
            Map<WindingRole, Integer> last = new EnumMap<>(WindingRole.class);
            for (int i = 0; i < run.withstands().size(); i++) {
                if (run.withstands().get(i).winding() != null) {
                    last.put(run.withstands().get(i).winding(), i);
                }
            }
            Map<WindingRole, Integer> count = new EnumMap<>(WindingRole.class);
            for (int i = 0; i < run.withstands().size(); i++) {
                WindingRole role = run.withstands().get(i).winding();
                if (role == null) {
                    out.add(noWinding(i));
                    continue;
                }
                int attempt = count.merge(role, 1, Integer::sum);
                out.add(new OneTest(run, i, attempt, last.get(role) == i, machine, limits, shop).judge());
            }
        });
        return out;
    }

    private static Verdict noWinding(int index) {
        return VerdictDraft.of("withstand." + (index + 1), PartKey.of(PartKind.RUN_UP),
                Phrases.say("title.withstand", "?", index + 1)).outcome(Outcome.NOT_MEASURED)
                .path("/withstands/" + index).reason(Phrases.say("withstand.no-winding")).point(HoldPoint.RELEASE).done();
    }

    private record OneTest(RunUp run, int index, int attempt, boolean last, Machine machine, LimitBook limits,
            Shop shop) {

        Verdict judge() {
            WithstandTest t = run.withstands().get(index);
            boolean rewound = machine.rewound().contains(t.winding());
            VerdictDraft d = VerdictDraft.of("withstand." + t.winding().word() + "." + attempt,
                    PartKey.of(PartKind.RUN_UP),
                    Phrases.say("title.withstand", Phrases.word("role", t.winding()), attempt))
                    .path("/withstands/" + index).takenAt(t.at()).current(last)
                    .point(rewound ? HoldPoint.WINDING_PROVED : HoldPoint.RELEASE);
            WithstandLevel levels = new WithstandLevel(machine, limits);
            boolean renewed = t.newWinding() == null ? rewound : t.newWinding();
            LimitBook.Applied level = renewed || rewound ? levels.ofNew(t.winding()) : levels.ofOverhauled(t.winding());
            Optional<Double> wanted = level.lower().map(v -> v * share(t, renewed, rewound) * direct(t));
            Bounds bounds = wanted.map(Bounds::atLeast).orElse(null);
            d.value(t.volts(), null, "V").limit(level, bounds);
            wanted.ifPresent(v -> d.limitText(Phrases.say(isDirect(t) ? "withstand.limit-dc" : "withstand.limit-ac",
                    Figures.show(v, "V"), Figures.show(limits.find("withstand.seconds").lower().orElse(0.0), "s"))));
            if (t.held() == null) {
                return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("withstand.not-done")).done();
            }
            if (!t.held()) {
                return d.notConcedable().outcome(Outcome.FAILS).reason(Phrases.say("withstand.failed",
                        volts(t), seconds(t))).settle(Phrases.say("settle.withstand-failed")).done();
            }
            return held(d, t, level, wanted, levels, renewed);
        }

        private static boolean isDirect(WithstandTest t) {
            return Boolean.TRUE.equals(t.direct());
        }

        private Verdict held(VerdictDraft d, WithstandTest t, LimitBook.Applied level, Optional<Double> wanted,
                WithstandLevel levels, boolean renewed) {
            Optional<String> unset = isDirect(t) ? limits.firstUnset("withstand.seconds", "withstand.direct")
                    : limits.firstUnset("withstand.seconds");
            if (wanted.isPresent() && unset.isPresent()) {
                return d.outcome(Outcome.NO_LIMIT_SET).reason(Phrases.say("limit.missing", unset.get()))
                        .settle(Phrases.say("settle.judgement")).done();
            }
            if (wanted.isEmpty()) {
                return d.outcome(Outcome.NO_LIMIT_SET).reason(Phrases.say("withstand.no-level", volts(t), seconds(t),
                        level.trouble())).settle(Phrases.say("settle.withstand-volts")).done();
            }
            double floor = wanted.get() * (1 - limits.find("withstand.tolerance").upper().orElse(0.0));
            Optional<Double> least = limits.find("withstand.seconds").lower();
            boolean enough = t.volts() != null && t.volts() >= floor;
            boolean longEnough = least.isEmpty() || (t.seconds() != null && t.seconds() >= least.get());
            String level2 = Figures.show(wanted.get(), "V");
            if (!enough || !longEnough) {
                String key = t.volts() == null || t.seconds() == null ? "withstand.not-recorded"
                        : enough ? "withstand.too-short" : "withstand.too-low";
                return d.outcome(Outcome.DOUBTFUL).reason(Phrases.say(key, volts(t), seconds(t), level2))
                        .settle(Phrases.say("settle.withstand-level", level2)).done();
            }
            d.outcome(Outcome.MEETS).reason(Phrases.say("withstand.held", volts(t), seconds(t), level2));
            String objection = MeterUse.ofTester(t.instrument(), t.at(), shop).registerObjection();
            if (!objection.isEmpty()) {
                return d.outcome(Outcome.DOUBTFUL).addReason(objection)
                        .settle(Phrases.say("meter.remedy.calibration")).done();
            }
            if (renewed && attempt == 1) {
                LimitBook.Applied other = levels.comparison(t.winding());
                other.lower().ifPresent(v -> d.addReason(Phrases.say("withstand.comparison",
                        Figures.show(v * direct(t), "V"), other.source())));
            }
            boolean full = attempt > 1 && t.volts() != null && t.volts() > wanted.get() * 1.05;
            return d.addReason(full ? Phrases.say("withstand.repeat-high", level2) : "").done();
        }

        /** Partly rewound windings and repeated tests are tested lower. */
        private double share(WithstandTest t, boolean renewed, boolean rewound) {
            double share = 1;
            if (rewound && !renewed) {
                share *= limits.find("withstand.partial").lower().orElse(1.0);
            }
            int stated = t.attempt() == null ? attempt : Math.max(attempt, t.attempt());
            if (stated > 1) {
                share *= limits.find("withstand.repeat").lower().orElse(1.0);
            }
            return share;
        }

        private double direct(WithstandTest t) {
            return isDirect(t) ? limits.find("withstand.direct").lower().orElse(1.0) : 1;
        }

        private static String volts(WithstandTest t) {
            return t.volts() == null ? Phrases.say("observed.none")
                    : Figures.show(t.volts(), "V") + (Boolean.TRUE.equals(t.direct()) ? " dc" : " ac");
        }

        private static String seconds(WithstandTest t) {
            return t.seconds() == null ? Phrases.say("observed.none") : Figures.show(t.seconds(), "s");
        }
    }
}
