package org.copperbook.jobs.winding;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;

/**
 * One size among the wires laid in hand.
 *
 * @param size    the size as the trade writes it: "1.25 mm", "18 SWG", "AWG 16", or "4.00 x 6.30 mm"
 * @param strands strands of that size in hand, at least 1
 * @param grade   insulation grade (1 or 2, IEC 60317), or null
 * @param bareMm  diameter measured bare, mm
 * @param coveredMm diameter measured over the covering, mm
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record WireInHand(String size, int strands, Integer grade, Double bareMm, Double coveredMm,
        @KeepUnknown Map<String, JsonNode> more) {

    public WireInHand {
        if (strands < 1) {
            throw new IllegalArgumentException("strands in hand must be at least 1, but got " + strands);
        }
        more = more == null ? Map.of() : more;
    }

    public static WireInHand of(String size, int strands) {
        return new WireInHand(size, strands, null, null, null, Map.of());
    }
}
