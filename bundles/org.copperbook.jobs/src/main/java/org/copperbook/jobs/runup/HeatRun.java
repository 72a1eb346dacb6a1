package org.copperbook.jobs.runup;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;
import org.copperbook.jobs.winding.WindingRole;

/**
 * A heat run: resistance cold, and after shutdown against time. Every attempt stays.
 *
 * @param winding        winding whose resistance was read
 * @param coldOhm        resistance cold, ohm
 * @param coldCelsius    winding temperature with it, degrees Celsius
 * @param coolantCelsius coolant temperature at the end of the run, degrees Celsius
 * @param loadA          line amps during the run, A
 * @param hours          duration of the run, h
 * @param cooling        readings after shutdown
 * @param instrument     id of the bridge
 * @param by             person key
 * @param cautionsBy     person key of who acknowledged the cautions
 * @param note           remark
 * @param more           fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record HeatRun(WindingRole winding, Double coldOhm, Double coldCelsius, Double coolantCelsius, Double loadA,
        Double hours, List<Cooling> cooling, String instrument, String by, String cautionsBy, String note,
        @KeepUnknown Map<String, JsonNode> more) {

    /** One reading after shutdown: seconds since shutdown, ohm. */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Cooling(Double seconds, Double ohm, @KeepUnknown Map<String, JsonNode> more) {
        public Cooling {
            more = more == null ? Map.of() : more;
        }
    }

    public HeatRun {
        cooling = cooling == null ? List.of() : List.copyOf(cooling);
        more = more == null ? Map.of() : more;
    }
}
