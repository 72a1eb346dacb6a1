package org.copperbook.jobs.winding;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.copperbook.jobs.reading.Reading;

/**
 * A coil group (for a field winding: a pole).
 *
 * @param number     number of the group round the bore, from 1
 * @param phase      "U", "V", "W"; null for a field winding
 * @param circuit    which parallel circuit of the phase, from 1; null when all groups of the phase are in series
 * @param reversed   true when the group is connected against the sense of the first (alternate poles)
 * @param coils      its coils
 * @param wire       wires in hand when they differ from the winding's; empty otherwise
 * @param resistance resistance of the group with its own temperature and instrument
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record CoilGroup(int number, String phase, Integer circuit, Boolean reversed, List<CapturedCoil> coils,
        List<WireInHand> wire, Reading resistance, @KeepUnknown Map<String, JsonNode> more) {

    public CoilGroup {
        coils = coils == null ? List.of() : List.copyOf(coils);
        wire = wire == null ? List.of() : List.copyOf(wire);
        more = more == null ? Map.of() : more;
    }
}
