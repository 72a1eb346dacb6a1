package org.copperbook.store;

import java.time.Instant;

/**
 * One link of the store's chain: a revision of a part exactly as it was kept.
 *
 * @param sequence     place in the chain, from 1 without gaps
 * @param jobId        the job, or {@link JobStore#SHOP}
 * @param part         text of the part's key, e.g. "winding/main-stator"
 * @param revision     revision of that part in that job, from 1
 * @param savedAt      when, by the clock of the machine that saved
 * @param who          person key of who saved (never a name: names stand outside the chain)
 * @param why          reason, empty when none was asked
 * @param json         the part as text, exactly the characters that were hashed
 * @param previousHash hash of the link before, 64 zeros for the first
 * @param hash         SHA-256 of this link, lower-case hex
 */
public record Revision(long sequence, String jobId, String part, int revision, Instant savedAt, String who,
        String why, String json, String previousHash, String hash) {
}
