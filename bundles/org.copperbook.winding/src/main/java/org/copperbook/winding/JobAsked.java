package org.copperbook.winding;

import org.copperbook.jobs.Job;
import org.copperbook.jobs.shop.Shop;

/**
 * What the figures of a page are computed from. A page is told of every change and again of its verdicts, so a section
 * keeps what it asked with last and computes only when this is another one.
 *
 * @param job  the job as it stands on the screen
 * @param shop the shop its figures are judged in
 */
public record JobAsked(Job job, Shop shop) {

    /** What stands on the screen now. */
    public static JobAsked of(OpenWinding winding) {
        return new JobAsked(winding.document().job(), winding.site().shop());
    }
}
