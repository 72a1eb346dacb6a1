package org.copperbook.store;

/**
 * Notice that something in the store changed.
 *
 * @param jobId     the job, {@link JobStore#SHOP} (people count as the shop's) or {@link JobStore#CARDS}
 * @param part      text of the part's key, "people", "reach" or "old-cards"
 * @param elsewhere true when another program on the same file made the change
 */
public record Change(String jobId, String part, boolean elsewhere) {

    /** {@link #part()} of a change to the people, who are not a part. */
    public static final String PEOPLE = "people";

    /** {@link #part()} when the server no longer answers, or answers again. */
    public static final String REACH = "reach";

    /** {@link #part()} of a change to the cards of old windings, however many. */
    public static final String CARDS = "old-cards";
}
