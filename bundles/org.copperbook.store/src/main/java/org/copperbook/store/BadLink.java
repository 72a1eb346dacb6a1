package org.copperbook.store;

/**
 * The first place where the chain of revisions does not hold.
 *
 * @param kind     what happened there
 * @param sequence place in the chain
 * @param job      number of the job concerned, "shop" for the shop, empty when it cannot be told any more
 * @param part     text of the part's key, empty when it cannot be told any more
 * @param revision revision of the part, 0 when it cannot be told any more
 * @param message  all of it in one sentence
 */
public record BadLink(Kind kind, long sequence, String job, String part, int revision, String message) {

    /** Ways a chain can break. */
    public enum Kind {
        /** A revision's text, time, author, reason, number or hash is not what was saved, or it was slipped in. */
        TAMPERED,
        /** A revision that was saved is gone. */
        MISSING,
        /** Every revision is there, but not in the order in which they were saved. */
        REORDERED
    }
}
