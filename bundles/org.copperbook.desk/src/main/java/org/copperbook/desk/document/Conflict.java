package org.copperbook.desk.document;

import java.time.Instant;
import java.util.List;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;

/**
 * Two people changed one part. Nothing is lost: the store holds theirs, the screen holds mine, and the person chooses
 * field by field.
 *
 * @param key            the part
 * @param theirs         the record the store holds now
 * @param theirRevision  its revision
 * @param who            person key of who saved it
 * @param savedAt        when
 * @param differences    the fields that differ
 */
public record Conflict(PartKey key, Part theirs, int theirRevision, String who, Instant savedAt,
        List<FieldDifference> differences) {
    public Conflict {
        differences = List.copyOf(differences);
    }
}
