package org.copperbook.jobs.winding;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

/**
 * Data of a winding that were not read on this machine but taken over: from a past winding, an old card, or computed for
 * a bare core. They are a proposal until a person confirms them against the machine.
 *
 * @param from        where they came from, in words
 * @param by          person key of whoever took them over
 * @param at          when
 * @param fields      names of the fields that were filled by it; everything else was there before
 * @param confirmedBy person key of whoever confirmed them; null while they are a proposal
 * @param confirmedAt when they were confirmed
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record TakenOver(String from, String by, Instant at, List<String> fields, String confirmedBy,
        Instant confirmedAt, @KeepUnknown Map<String, JsonNode> more) {

    public TakenOver {
        fields = fields == null ? List.of() : List.copyOf(fields);
        more = more == null ? Map.of() : more;
    }
}
