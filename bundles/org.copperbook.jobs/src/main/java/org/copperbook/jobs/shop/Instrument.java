package org.copperbook.jobs.shop;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.util.List;

/**
 * An instrument with its accuracy and calibration.
 *
 * @param id             short id on the instrument's label
 * @param name           what it is ("micro-ohm bridge, four-wire")
 * @param kind           what it measures
 * @param ranges         accuracy by range, lowest range first
 * @param fourWire       true when it measures with four leads
 * @param leadOhm        resistance of leads and contacts not taken off, ohm (two-wire)
 * @param leadOhmU       its standard uncertainty, ohm
 * @param calibrated     date of the last calibration
 * @param calibrationDue date the calibration runs out
 * @param certificate    certificate number
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Instrument(String id, String name, Kind kind, List<Range> ranges, Boolean fourWire, Double leadOhm,
        Double leadOhmU, LocalDate calibrated, LocalDate calibrationDue, String certificate,
        @KeepUnknown Map<String, JsonNode> more) {

    /** What an instrument is for. */
    public enum Kind { MULTIMETER, RESISTANCE_BRIDGE, INSULATION_TESTER, THERMOMETER, TACHOMETER, SURGE_TESTER,
        WITHSTAND_TESTER, TORQUE_WRENCH, VIBRATION_METER, POWER_ANALYSER, MICROMETER, CLAMP_METER, OTHER }

    public Instrument {
        ranges = ranges == null ? List.of() : List.copyOf(ranges);
        more = more == null ? Map.of() : more;
    }

    /**
     * Accuracy in one range: +/-(percent of reading + digits x resolution).
     *
     * @param quantity         "ohm", "V", "A", "degC", "r/min", "N m", "mm/s", "mm"
     * @param upTo             upper end of the range, SI (N m, mm/s, mm as named)
     * @param resolution       smallest step shown, same unit
     * @param percentOfReading percent of reading
     * @param digits           counts of the last digit
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Range(String quantity, Double upTo, Double resolution, Double percentOfReading, Double digits,
            @KeepUnknown Map<String, JsonNode> more) {
        public Range {
            more = more == null ? Map.of() : more;
        }
    }
}
