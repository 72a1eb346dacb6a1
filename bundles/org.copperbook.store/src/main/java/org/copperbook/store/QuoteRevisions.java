package org.copperbook.store;

import java.util.Comparator;
import java.util.List;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.quote.Quote;

/** Every revision of a quote as it was saved. */
public final class QuoteRevisions {

    private QuoteRevisions() {
    }

    /**
     * The revisions, the newest first.
     *
     * @param name which quote of the job; one that there never was has none
     */
    public static List<Quote> of(JobStore store, String jobId, String name) {
        if (!name.matches("[A-Za-z0-9.-]{1,40}")) {
            return List.of();
        }
        return store.history(jobId, new PartKey(PartKind.QUOTE, name)).stream()
                .sorted(Comparator.comparingInt(Saved::number).reversed())
                .filter(s -> s.part() instanceof Quote).map(s -> (Quote) s.part()).toList();
    }
}
