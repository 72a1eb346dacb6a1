package org.copperbook.store;

import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;

/**
 * A part as it was saved.
 *
 * @param key      which part
 * @param part     the record
 * @param revision the link of the chain that holds it
 */
public record Saved(PartKey key, Part part, Revision revision) {

    /** The part's revision, from 1: what the next save is based on. */
    public int number() {
        return revision.revision();
    }
}
