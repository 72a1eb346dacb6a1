package org.copperbook.store.journal;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.Objects;

/**
 * What somebody has typed into a part and not saved yet.
 *
 * @param store           the store's file, as text
 * @param jobId           the job, or a key of the editor's own for a job not booked in yet
 * @param part            text of the part's key
 * @param basedOnRevision the revision that was opened, 0 for none
 * @param who             person key of who typed
 * @param typedAt         when
 * @param state           the typed state in whatever text form the editor restores from; need not be a valid part
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record JournalEntry(String store, String jobId, String part, int basedOnRevision, String who, Instant typedAt,
        String state) {

    public JournalEntry {
        Objects.requireNonNull(store, "store");
        Objects.requireNonNull(jobId, "jobId");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(typedAt, "typedAt");
        Objects.requireNonNull(state, "state");
    }
}
