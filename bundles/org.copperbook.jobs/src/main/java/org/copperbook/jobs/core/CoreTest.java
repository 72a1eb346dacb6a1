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
 * @param setUp             what the test is planned from; null when not stated
 * @param runs              every run, in order
 * @param burnOutHours      burn-out time, h
 * @param burnOutMaxCelsius highest temperature measured on the part, degrees Celsius
 * @param corePlate         interlaminar insulation, decides the burn-out limit
 * @param note              remark
 * @param more              fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record CoreTest(int schema, org.copperbook.jobs.winding.WindingRole winding, LoopSetUp setUp,
        List<LoopRun> runs,
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
     * What the loop test is planned from. Dimensions left out are taken from the winding record of the core.
     *
     * @param outsideM          outside diameter of the core, m
     * @param boreM             bore, m
     * @param slotDepthM        slot depth, m
     * @param yokeDepthM        radial depth of iron behind the slots, m; goes before bore and slot depth
     * @param lengthM           core length over all, m
     * @param ventCount         radial vents
     * @param ventWidthM        width of a vent, m
     * @param stacking          share of iron in the length without vents, 0.8 to 1
     * @param ironKgPerM3       density of the steel, kg/m3
     * @param targetT           peak flux density wanted in the back iron, T
     * @param frequencyHz       supply frequency, Hz
     * @param supplyV           rms volts across the loop, V
     * @param fieldStrengthApm  rms field strength at that density, A/m, from the steel's curve or a trial turn
     * @param cableAPerMm2      current density allowed in the loop cable, A/mm2
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record LoopSetUp(Double outsideM, Double boreM, Double slotDepthM, Double yokeDepthM, Double lengthM,
            Integer ventCount, Double ventWidthM, Double stacking, Double ironKgPerM3, Double targetT,
            Double frequencyHz, Double supplyV, Double fieldStrengthApm, Double cableAPerMm2,
            @KeepUnknown Map<String, JsonNode> more) {
        public LoopSetUp {
            more = more == null ? Map.of() : more;
        }
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
     * @param fluxDensityT   peak flux density of the back iron, T; worked out of volts, turns and area when left out
     * @param yokeMassKg     mass of the back iron, kg; worked out of the dimensions when left out
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
