package org.copperbook.desk.document;

import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;

/**
 * A part that waits to be saved.
 *
 * @param key             the part
 * @param part            its record
 * @param basedOnRevision the revision it started from; 0 when the store held none
 */
public record PendingSave(PartKey key, Part part, int basedOnRevision) {
}
