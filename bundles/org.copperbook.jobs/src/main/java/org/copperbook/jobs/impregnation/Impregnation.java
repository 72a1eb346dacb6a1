package org.copperbook.jobs.impregnation;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.winding.WindingRole;

/**
 * Impregnation and cure, or drying.
 *
 * @param schema     layout version
 * @param treatments treatments in order
 * @param dryingOf   winding that the drying curve is of; null when not stated
 * @param drying     insulation resistance against time while drying
 * @param note       remark
 * @param more       fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Impregnation(int schema, List<Treatment> treatments, WindingRole dryingOf,
        List<DryingPoint> drying, String note,
        @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    /** How the resin is brought in; DRY_ONLY for a winding that is dried and not treated. */
    public enum Method { DIP, TRICKLE, VACUUM_PRESSURE, BRUSH, DRY_ONLY }

    public Impregnation {
        treatments = treatments == null ? List.of() : List.copyOf(treatments);
        drying = drying == null ? List.of() : List.copyOf(drying);
        more = more == null ? Map.of() : more;
    }

    /**
     * One treatment: resin and lot, method, preheat, soak and cure (degrees Celsius, minutes).
     *
     * @param sheetCureCelsius least temperature of the cure by the resin's data sheet; null when no sheet is at hand
     * @param sheetCureMinutes least time at that temperature by the data sheet; null when no sheet is at hand
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Treatment(String winding, String resin, String lot, Method method, Double preheatCelsius,
            Double preheatMinutes, Double soakMinutes, Double cureCelsius, Double cureMinutes,
            Double sheetCureCelsius, Double sheetCureMinutes, String by, Instant at, @KeepUnknown Map<String, JsonNode> more) {
        public Treatment {
            more = more == null ? Map.of() : more;
        }
    }

    /** One point of the drying curve: minutes since start, winding temperature, insulation resistance in ohm. */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record DryingPoint(Double minutes, Double windingCelsius, Double insulationOhm,
            @KeepUnknown Map<String, JsonNode> more) {
        public DryingPoint {
            more = more == null ? Map.of() : more;
        }
    }
}
