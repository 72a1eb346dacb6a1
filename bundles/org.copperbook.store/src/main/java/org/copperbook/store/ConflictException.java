package org.copperbook.store;

import org.copperbook.jobs.Part;

/** Somebody saved the same part after the revision this save was based on. Nothing was written; both are here. */
public class ConflictException extends StoreException {

    private static final long serialVersionUID = 1L;

    private final transient Saved theirs;
    private final transient Part mine;
    private final int basedOnRevision;

    /**
     * @param theirs          what the store holds now; null when the part is not in the store at all
     * @param mine            what was to be saved
     * @param basedOnRevision the revision mine was made from
     */
    public ConflictException(String message, Saved theirs, Part mine, int basedOnRevision) {
        super(Kind.CONFLICT, message);
        this.theirs = theirs;
        this.mine = mine;
        this.basedOnRevision = basedOnRevision;
    }

    /** What the store holds now; null when the part is not in the store at all. */
    public Saved theirs() {
        return theirs;
    }

    /** What was to be saved. */
    public Part mine() {
        return mine;
    }

    /** The revision mine was made from. */
    public int basedOnRevision() {
        return basedOnRevision;
    }
}
