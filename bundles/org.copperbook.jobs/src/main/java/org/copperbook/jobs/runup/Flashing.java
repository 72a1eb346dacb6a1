package org.copperbook.jobs.runup;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

/**
 * The exciter field was flashed to bring its residual field back.
 *
 * @param batteryV       volts of the battery, V dc
 * @param seconds        how long, s
 * @param blockingDiode  true when a blocking diode was in the lead
 * @param leadsOff       true when both field leads were off the regulator
 * @param standstill     true when it was done at standstill, prime mover locked off
 * @param positiveTo     terminal to which the positive lead went
 * @param voltsAfter     residual line voltage at nominal speed afterwards, V; null when not read
 * @param by             person key
 * @param cautionsBy     person key of who acknowledged the cautions
 * @param at             when
 * @param note           remark
 * @param more           fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Flashing(Double batteryV, Double seconds, Boolean blockingDiode, Boolean leadsOff, Boolean standstill,
        String positiveTo, Double voltsAfter, String by, String cautionsBy, Instant at, String note,
        @KeepUnknown Map<String, JsonNode> more) {

    public Flashing {
        more = more == null ? Map.of() : more;
    }
}
