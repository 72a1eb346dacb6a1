package org.copperbook.batch;

import java.util.List;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.check.HoldPoints;
import org.copperbook.jobs.check.JobChecks;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.store.JobStore;

/**
 * A job with what the checks say of it.
 *
 * @param job      the job
 * @param shop     the shop by whose limits it was judged
 * @param verdicts every verdict
 * @param points   the hold points
 */
record Judged(Job job, Shop shop, List<Verdict> verdicts, List<HoldPointState> points) {

    static Judged of(Job job, Shop shop) {
        List<Verdict> verdicts = JobChecks.verdicts(job, shop);
        return new Judged(job, shop, verdicts, HoldPoints.states(job, verdicts, shop));
    }

    static Judged of(JobStore store, String number) {
        return of(store.load(CommonOptions.jobId(store, number)), store.shop());
    }

    /** Whether the release is signed and stands. */
    boolean released() {
        return HoldPoints.of(points, HoldPoint.RELEASE).state() == HoldPointState.State.SIGNED;
    }

    /** How many of the current verdicts came out so. */
    long count(Outcome outcome) {
        return verdicts.stream().filter(v -> v.current() && v.outcome() == outcome).count();
    }
}
