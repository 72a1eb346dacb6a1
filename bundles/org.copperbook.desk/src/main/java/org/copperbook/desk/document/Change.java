package org.copperbook.desk.document;

import org.copperbook.jobs.PartKey;

/**
 * Something about an open job changed.
 *
 * @param what what changed
 * @param key  the part it concerns; null when it concerns the whole job
 */
public record Change(What what, PartKey key) {

    /** What can change. */
    public enum What {
        /** The draft of a part: typing, undo, redo, paste. */
        DRAFT,
        /** A text is being typed into a cell and not put yet; only the crash journal needs to know. */
        TYPING,
        /** The verdicts and hold points were computed anew. */
        VERDICTS,
        /** A part was saved or the store's copy of it was taken over. */
        SAVED,
        /** Somebody else saved a part that is changed here too, or such a conflict was settled. */
        CONFLICT
    }
}
