package org.copperbook.jobs.core;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import org.copperbook.jobs.Part;

/**
 * The core loop test before and after burn-out, and the burn-out itself.
 *
 * @param schema            layout version
 * @param winding           which core
 * @param runs              every run, in order
 * @param burnOutHours      burn-out time, h
 * @param burnOutMaxCelsius highest temperature measured on the part, degrees Celsius
 * @param corePlate         interlaminar insulation, decides the burn-out limit
 * @param note              remark
 * @param more              fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record CoreTest(int schema, org.copperbook.jobs.winding.WindingRole winding, List<LoopRun> runs,
        Double burnOutHours, Double burnOutMaxCelsius, CorePlate corePlate, String note,
        @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    /** Interlaminar insulation. */
    public enum CorePlate { ORGANIC, INORGANIC, UNKNOWN }

    /** When a loop run was made. */
    public enum Stage { BEFORE_BURN_OUT, AFTER_BURN_OUT }

    public CoreTest {
        runs = runs == null ? List.of() : List.copyOf(runs);
        more = more == null ? Map.of() : more;
    }

    /**
     * One loop run.
     *
     * @param stage          before or after burn-out
     * @param turns          turns of the loop
     * @param volts          applied volts, V
     * @param amps           amps, A
     * @param watts          watts, W
     * @param frequencyHz    frequency, Hz
     * @param fluxDensityT   yoke flux density, T
     * @param yokeMassKg     mass of the yoke, kg
     * @param meanCelsius    mean temperature of the core, degrees Celsius
     * @param hottestCelsius hottest spot, degrees Celsius
     * @param cautionsBy     person key of who acknowledged the cautions
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record LoopRun(Stage stage, Integer turns, Double volts, Double amps, Double watts, Double frequencyHz,
            Double fluxDensityT, Double yokeMassKg, Double meanCelsius, Double hottestCelsius, String instrument,
            String by, String cautionsBy, Instant at, String note, @KeepUnknown Map<String, JsonNode> more) {
        public LoopRun {
            more = more == null ? Map.of() : more;
        }
    }
}
