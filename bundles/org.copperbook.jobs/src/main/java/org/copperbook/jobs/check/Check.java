package org.copperbook.jobs.check;

import java.util.List;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.shop.Shop;

/** One group of checks: a pure function of the job's parts and the shop's limits and instruments. */
@FunctionalInterface
public interface Check {

    /** The verdicts of this group, in the order in which they are shown; empty when it has nothing to judge. */
    List<Verdict> judge(Job job, Shop shop);
}
