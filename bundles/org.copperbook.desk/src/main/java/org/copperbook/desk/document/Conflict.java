package org.copperbook.desk.document;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;

/**
 * Two people changed one part. Nothing is lost: the store holds theirs, the screen holds mine, and the person chooses
 * field by field. Rows added by both to a list are no difference: both stay.
 *
 * @param key            the part
 * @param base           what both began from
 * @param theirs         the record the store holds now
 * @param theirRevision  its revision
 * @param who            person key of who saved it
 * @param savedAt        when
 * @param differences    the fields that differ
 */
public record Conflict(PartKey key, ObjectNode base, Part theirs, int theirRevision, String who, Instant savedAt,
        List<FieldDifference> differences) {
    public Conflict {
        differences = List.copyOf(differences);
    }
}
