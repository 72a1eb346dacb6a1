package org.copperbook.jobs.rectifier;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.copperbook.jobs.reading.Reading;

/**
 * The surge suppressor across the rectifier.
 *
 * @param kind    what it is; null when not stated
 * @param asFound reading as found
 * @param asLeft  reading as left
 * @param changed true when it was replaced
 * @param note    remark
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Suppressor(Kind kind, Reading asFound, Reading asLeft, Boolean changed, String note,
        @KeepUnknown Map<String, JsonNode> more) {

    /** Kinds of suppressor. */
    public enum Kind { NONE, VARISTOR, RESISTOR_CAPACITOR }

    public Suppressor {
        more = more == null ? Map.of() : more;
    }
}
