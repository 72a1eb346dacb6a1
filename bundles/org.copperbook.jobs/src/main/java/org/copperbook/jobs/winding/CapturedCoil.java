package org.copperbook.jobs.winding;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;

/**
 * One coil as captured.
 *
 * @param goSlot     slot of the go side, from 1; null for a field coil (a pole)
 * @param returnSlot slot of the return side, from 1
 * @param turns      turns
 * @param reversed   true when the coil is wound or connected against the sense of its group
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record CapturedCoil(Integer goSlot, Integer returnSlot, Integer turns, Boolean reversed,
        @KeepUnknown Map<String, JsonNode> more) {

    public CapturedCoil {
        more = more == null ? Map.of() : more;
    }

    public static CapturedCoil of(int goSlot, int returnSlot, int turns) {
        return new CapturedCoil(goSlot, returnSlot, turns, null, Map.of());
    }
}
