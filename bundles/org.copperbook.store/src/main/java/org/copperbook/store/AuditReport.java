package org.copperbook.store;

import java.util.List;
import java.util.Optional;

/**
 * Result of verifying the whole store.
 *
 * @param revisions revisions read
 * @param jobs      jobs in the store
 * @param bad       the first link of the chain that does not hold, if any
 * @param problems  what else is wrong (damaged pages, missing guards, photos that are not what they were), one line each
 * @param notes     what is odd but harms nothing (a clock that was set back, roles changed past the program), one line each
 */
public record AuditReport(long revisions, long jobs, Optional<BadLink> bad, List<String> problems,
        List<String> notes) {

    public AuditReport {
        problems = List.copyOf(problems);
        notes = List.copyOf(notes);
    }

    /** Whether everything holds. */
    public boolean passed() {
        return bad.isEmpty() && problems.isEmpty();
    }
}
