package org.copperbook.desk.shell;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.copperbook.desk.verdict.VerdictWords;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.check.HoldPoints;
import org.copperbook.jobs.check.JobChecks;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.winding.WindingRole;

/** Asks the checks about a job; pure, for a background thread. */
public final class Judge {

    private Judge() {
    }

    /** What the checks say about a job in a shop. */
    public static Judgement of(Job job, Shop shop) {
        List<Verdict> verdicts = JobChecks.verdicts(job, shop);
        List<HoldPointState> points = HoldPoints.states(job, verdicts, shop);
        Map<PartKey, String> blocked = new TreeMap<>();
        for (PartKey key : keys(job)) {
            List<String> why = HoldPoints.blocks(key, job, points);
            if (!why.isEmpty()) {
                blocked.put(key, String.join(" ", why));
            }
        }
        return new Judgement(VerdictWords.byWeight(verdicts), points, blocked);
    }

    /** Every part the job has or could be given, since a part not begun can be blocked too. */
    private static Set<PartKey> keys(Job job) {
        Set<PartKey> keys = new TreeSet<>(job.parts().keySet());
        for (PartKind kind : PartKind.values()) {
            if (!kind.many() && !kind.ofShop()) {
                keys.add(PartKey.of(kind));
            }
        }
        for (WindingRole role : WindingRole.values()) {
            keys.add(PartKey.windingAsFound(role));
            keys.add(PartKey.windingAsWound(role));
        }
        return keys;
    }
}
