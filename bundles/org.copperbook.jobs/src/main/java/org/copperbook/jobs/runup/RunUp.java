package org.copperbook.jobs.runup;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.reading.Reading;

/**
 * In-process winding tests and the final run-up. Every attempt stays.
 *
 * @param schema             layout version
 * @param readings           resistance and insulation readings, in process and as left
 * @param surges             surge comparison tests
 * @param withstands         withstand tests
 * @param points             run-up points
 * @param phaseSequence      phase sequence seen at the terminals ("U V W")
 * @param sequenceRight      true when it is the one wanted
 * @param regulation         regulator on: set-point and steady-state regulation
 * @param overspeed          overspeed test, or null
 * @param mounting           how the machine stood for the vibration readings; null when not stated
 * @param vibration          vibration readings
 * @param bearingTemperatures bearing temperatures against time
 * @param noise              noise note
 * @param durationMinutes    duration of the run, min
 * @param conditions         conditions (coupled to what, cooling, ambient)
 * @param note               remark
 * @param heatRuns           heat runs with their cooling curves
 * @param flashings          field flashings
 * @param storedCurve        the open-circuit curve to compare with, or null
 * @param logs               logger's files from which points were taken
 * @param more               fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record RunUp(int schema, List<Reading> readings, List<SurgeTest> surges, List<WithstandTest> withstands,
        List<RunPoint> points, String phaseSequence, Boolean sequenceRight, Regulation regulation,
        Overspeed overspeed, Mounting mounting, List<Vibration> vibration, List<BearingTemperature> bearingTemperatures, String noise,
        Double durationMinutes, String conditions, String note, List<HeatRun> heatRuns, List<Flashing> flashings,
        StoredCurve storedCurve, List<LogFile> logs,
        @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    public RunUp {
        readings = readings == null ? List.of() : List.copyOf(readings);
        surges = surges == null ? List.of() : List.copyOf(surges);
        withstands = withstands == null ? List.of() : List.copyOf(withstands);
        points = points == null ? List.of() : List.copyOf(points);
        vibration = vibration == null ? List.of() : List.copyOf(vibration);
        bearingTemperatures = bearingTemperatures == null ? List.of() : List.copyOf(bearingTemperatures);
        heatRuns = heatRuns == null ? List.of() : List.copyOf(heatRuns);
        flashings = flashings == null ? List.of() : List.copyOf(flashings);
        logs = logs == null ? List.of() : List.copyOf(logs);
        more = more == null ? Map.of() : more;
    }

    /**
     * An open-circuit curve from elsewhere: the maker's, or one found before the work.
     *
     * @param source   where it comes from
     * @param speedRpm speed to which it belongs, r/min; null for the rated speed
     * @param points   field amps and line volts
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record StoredCurve(String source, Double speedRpm, List<FieldPoint> points,
            @KeepUnknown Map<String, JsonNode> more) {
        public StoredCurve {
            points = points == null ? List.of() : List.copyOf(points);
            more = more == null ? Map.of() : more;
        }
    }

    /** One point of a stored curve: field amps, A dc, and line volts, V. */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record FieldPoint(Double fieldA, Double lineV, @KeepUnknown Map<String, JsonNode> more) {
        public FieldPoint {
            more = more == null ? Map.of() : more;
        }
    }

    /** Regulator on: set-point and the lowest and highest steady line voltage between no load and load, V. */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Regulation(Double setPointV, Double lowestV, Double highestV, Double responseSeconds,
            @KeepUnknown Map<String, JsonNode> more) {
        public Regulation {
            more = more == null ? Map.of() : more;
        }
    }

    /** Overspeed: speed r/min, seconds held, what was seen; null outcome while not done. */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Overspeed(Double speedRpm, Double seconds, Boolean sound, String cautionsBy, String note,
            @KeepUnknown Map<String, JsonNode> more) {
        public Overspeed {
            more = more == null ? Map.of() : more;
        }
    }

    /** Vibration velocity at one bearing in one direction, mm/s rms. */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Vibration(End end, Direction direction, Double mmPerSecond, String instrument,
            @KeepUnknown Map<String, JsonNode> more) {
        public Vibration {
            more = more == null ? Map.of() : more;
        }
    }

    /** Bearing temperatures at a moment: minutes since start, degrees Celsius. */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record BearingTemperature(Double minutes, Double driveEndCelsius, Double nonDriveEndCelsius,
            Double ambientCelsius, @KeepUnknown Map<String, JsonNode> more) {
        public BearingTemperature {
            more = more == null ? Map.of() : more;
        }
    }

    /** How the machine stands: on soft springs or pads, or bolted down (IEC 60034-14). */
    public enum Mounting { FREE, RIGID }

    /** Ends of the machine. */
    public enum End { DRIVE_END, NON_DRIVE_END }

    /** Directions of vibration. */
    public enum Direction { HORIZONTAL, VERTICAL, AXIAL }
}
