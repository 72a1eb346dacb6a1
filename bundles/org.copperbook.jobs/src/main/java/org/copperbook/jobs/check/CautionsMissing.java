package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.core.CoreTest;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.signoff.SignOffs;

/** Records of hazardous steps for which nobody acknowledged the cautions by name. */
final class CautionsMissing {

    private CautionsMissing() {
    }

    /** In words, for the hold point that the records belong to. */
    static List<String> of(HoldPoint point, Job job, SignOffs signOffs) {
        List<String> missing = new ArrayList<>();
        if (point == HoldPoint.CORE_PROVED) {
            job.part(PartKind.CORE, CoreTest.class).ifPresent(core -> check(Hazardous.CORE_LOOP,
                    core.runs().stream().map(CoreTest.LoopRun::cautionsBy).toList(), signOffs, missing));
        }
        if (point == HoldPoint.WINDING_PROVED) {
            job.inProcess().ifPresent(p -> check(Hazardous.SURGE, p.surges().stream().map(s -> s.cautionsBy()).toList(),
                    signOffs, missing));
        }
        if (point == HoldPoint.RELEASE) {
            job.runUp().ifPresent(run -> {
                check(Hazardous.WITHSTAND, run.withstands().stream().map(w -> w.cautionsBy()).toList(), signOffs,
                        missing);
                check(Hazardous.SURGE, run.surges().stream().map(s -> s.cautionsBy()).toList(), signOffs, missing);
                check(Hazardous.LIVE_RUN_UP, run.points().stream().map(p -> p.cautionsBy()).toList(), signOffs, missing);
                check(Hazardous.LIVE_RUN_UP, run.heatRuns().stream().map(h -> h.cautionsBy()).toList(), signOffs, missing);
                check(Hazardous.FLASHING, run.flashings().stream().map(f -> f.cautionsBy()).toList(), signOffs, missing);
                if (run.overspeed() != null) {
                    List<String> by = new ArrayList<>();
                    by.add(run.overspeed().cautionsBy());
                    check(Hazardous.OVERSPEED, by, signOffs, missing);
                }
            });
        }
        return missing;
    }

    private static void check(Hazardous step, List<String> by, SignOffs signOffs, List<String> missing) {
        boolean general = signOffs.cautions().stream().anyMatch(c -> step.word().equals(c.step()) && c.by() != null);
        boolean none = by.stream().anyMatch(b -> b == null || b.isBlank());
        if (none && !general) {
            missing.add(Phrases.say("blocked.cautions", Cautions.title(step)));
        }
    }
}
