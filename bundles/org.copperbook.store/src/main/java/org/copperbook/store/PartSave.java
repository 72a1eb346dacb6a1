package org.copperbook.store;

import java.util.Objects;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;

/**
 * One of several parts that are saved together.
 *
 * @param key             which part
 * @param part            the record
 * @param basedOnRevision the revision it was made from; 0 when there is no such part yet
 */
public record PartSave(PartKey key, Part part, int basedOnRevision) {

    public PartSave {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(part, "part");
    }
}
