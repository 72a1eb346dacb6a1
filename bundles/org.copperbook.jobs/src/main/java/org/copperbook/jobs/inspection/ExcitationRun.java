package org.copperbook.jobs.inspection;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import org.copperbook.jobs.reading.ThreeVolts;

/**
 * A separate-excitation run: regulator off and isolated, a low-voltage battery on the exciter field.
 *
 * @param at                when
 * @param by                person key
 * @param cautionsBy        person key of who acknowledged the cautions before the run
 * @param regulatorIsolated true when the regulator was off and isolated
 * @param batteryV          volts of the source, V dc
 * @param exciterA          exciter-field amps, A dc
 * @param speedRpm          speed during the run, r/min
 * @param speedPercentU     standard uncertainty of the speed, percent; null for the workshop's default
 * @param lineVolts         line voltages U-V, V-W, W-U
 * @param neutralVolts      line-to-neutral voltages U-N, V-N, W-N
 * @param expectedV         expected line voltage at these exciter amps, V
 * @param expectedFrom      where the expected voltage comes from
 * @param instrument        id of the voltmeter
 * @param note              remark
 * @param more              fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record ExcitationRun(Instant at, String by, String cautionsBy, Boolean regulatorIsolated, Double batteryV,
        Double exciterA, Double speedRpm, Double speedPercentU, ThreeVolts lineVolts, ThreeVolts neutralVolts,
        Double expectedV, ExpectedFrom expectedFrom, String instrument, String note,
        @KeepUnknown Map<String, JsonNode> more) {

    /** Where an expected output comes from. */
    public enum ExpectedFrom { MAKERS_POINT, STORED_CURVE, NOMINAL_BY_PRACTICE }

    public ExcitationRun {
        more = more == null ? Map.of() : more;
    }
}
