package org.copperbook.store;

import java.util.List;
import org.copperbook.jobs.lot.LotUse;

/**
 * Where a lot went into machines.
 *
 * @param uses   the uses by number of the job
 * @param unread numbers of jobs with a part that could not be read, so that nothing is known of them
 */
public record LotSearch(List<LotUse> uses, List<String> unread) {

    public LotSearch {
        uses = List.copyOf(uses);
        unread = List.copyOf(unread);
    }
}
