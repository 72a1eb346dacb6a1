package org.copperbook.jobs.inspection;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.copperbook.jobs.PhotoRef;

/**
 * A finding and the work it asks for.
 *
 * @param where        which part of the machine
 * @param severity     how bad
 * @param text         what was found
 * @param proposedWork work proposed
 * @param photos       photos
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Finding(String where, Severity severity, String text, String proposedWork, List<PhotoRef> photos,
        @KeepUnknown Map<String, JsonNode> more) {

    /** How bad a finding is. */
    public enum Severity { NOTE, SHOULD_BE_DONE, MUST_BE_DONE }

    public Finding {
        photos = photos == null ? List.of() : List.copyOf(photos);
        more = more == null ? Map.of() : more;
    }
}
