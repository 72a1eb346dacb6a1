package org.copperbook.jobs.booking;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;

/**
 * A loose part looked for at booking in.
 *
 * @param name     regulator, terminal box, coupling, fan, keys, guards, feet ...
 * @param received true when it came, false when it is missing, null when not looked at
 * @param note     condition or remark
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record ReceivedPart(String name, Boolean received, String note, @KeepUnknown Map<String, JsonNode> more) {

    public ReceivedPart {
        more = more == null ? Map.of() : more;
    }
}
