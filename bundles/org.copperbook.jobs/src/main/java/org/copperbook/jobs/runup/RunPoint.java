package org.copperbook.jobs.runup;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import org.copperbook.jobs.reading.ThreeVolts;

/**
 * One point of the run-up.
 *
 * @param kind         what the point belongs to
 * @param source       excitation source
 * @param speedRpm     speed, r/min
 * @param frequencyHz  frequency, Hz
 * @param exciterV     exciter-field volts, V dc
 * @param exciterA     exciter-field amps, A dc
 * @param mainFieldA   main-field amps, A dc, where they can be read; curves stand on them instead of the exciter's then
 * @param lineVolts    line voltages U-V, V-W, W-U
 * @param neutralVolts line-to-neutral voltages
 * @param loadW        load, W
 * @param loadVar      reactive load, var
 * @param loadA        mean line amps, A
 * @param instrument   id of the voltmeter
 * @param cautionsBy   person key of who acknowledged the cautions before this live step
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record RunPoint(Kind kind, Source source, Double speedRpm, Double frequencyHz, Double exciterV,
        Double exciterA, Double mainFieldA, ThreeVolts lineVolts, ThreeVolts neutralVolts, Double loadW, Double loadVar, Double loadA,
        String instrument, String by, String cautionsBy, Instant at, String note,
        @KeepUnknown Map<String, JsonNode> more) {

    /** What a point belongs to. */
    public enum Kind { NO_LOAD, OPEN_CIRCUIT_UP, OPEN_CIRCUIT_DOWN, SHORT_CIRCUIT, ON_LOAD, REGULATOR_ON }

    /** Excitation sources. */
    public enum Source { BATTERY, SEPARATE_DC, OWN_REGULATOR, MAINS }

    public RunPoint {
        more = more == null ? Map.of() : more;
    }
}
