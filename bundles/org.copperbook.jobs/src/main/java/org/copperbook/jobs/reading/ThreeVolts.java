package org.copperbook.jobs.reading;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.stream.Stream;

/**
 * Three voltages of a three-phase set, volts; any may be missing.
 *
 * @param a U-V, or U-N
 * @param b V-W, or V-N
 * @param c W-U, or W-N
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record ThreeVolts(Observed a, Observed b, Observed c, @KeepUnknown Map<String, JsonNode> more) {

    public ThreeVolts {
        more = more == null ? Map.of() : more;
    }

    public static ThreeVolts of(double a, double b, double c) {
        return new ThreeVolts(Observed.of(a), Observed.of(b), Observed.of(c), Map.of());
    }

    /** The plain values among the three, in order. */
    public List<Double> values() {
        return Stream.of(a, b, c).filter(o -> o != null && o.isValue()).map(Observed::value).toList();
    }
}
