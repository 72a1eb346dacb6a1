package org.copperbook.jobs;

/**
 * One part of a job's record (booking, nameplate, a winding, a quote ...). Parts are immutable records; saving one
 * appends a revision of it, and nothing ever changes an earlier revision.
 */
public interface Part {

    /** Version of the part's JSON layout; a reader keeps what a newer version added (see KeepUnknown). */
    int schema();
}
