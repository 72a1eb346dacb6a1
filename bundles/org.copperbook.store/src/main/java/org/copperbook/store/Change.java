package org.copperbook.store;

/**
 * Notice that something in the store changed.
 *
 * @param jobId     the job, or {@link JobStore#SHOP}; people count as the shop's
 * @param part      text of the part's key, or "people"
 * @param elsewhere true when another program on the same file made the change
 */
public record Change(String jobId, String part, boolean elsewhere) {

    /** {@link #part()} of a change to the people, who are not a part. */
    public static final String PEOPLE = "people";
}
