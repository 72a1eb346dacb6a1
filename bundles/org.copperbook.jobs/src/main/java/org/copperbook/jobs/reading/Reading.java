package org.copperbook.jobs.reading;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;

/**
 * One reading with everything needed to judge it later. Never overwritten: a correction is a new reading that names
 * the one it supersedes and the reason.
 *
 * @param id              key of the reading inside its part
 * @param quantity        what was measured
 * @param place           where
 * @param observed        what the instrument showed; null while not yet taken
 * @param isolated        true when the leads were lifted, false when read in circuit, null when not stated
 * @param windingCelsius  temperature of the winding, degrees Celsius; null when it was not taken
 * @param temperatureU    standard uncertainty of that temperature, kelvin; null for the workshop's default
 * @param temperatureHow  how it was taken ("contact probe on the overhang", "ambient after a night's soak")
 * @param ambientCelsius  air temperature, degrees Celsius
 * @param humidityPercent relative humidity, percent
 * @param instrument      id of the instrument in the shop's register
 * @param method          two-wire or four-wire
 * @param testVolts       dc volts applied, for insulation readings
 * @param afterSeconds    seconds after the voltage was applied, for insulation readings
 * @param by              person key of who read it
 * @param at              when
 * @param state           as found, in process or as left
 * @param supersedes      id of the reading this one corrects, or null
 * @param reason          why it corrects it
 * @param note            anything else
 * @param more            fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Reading(String id, ReadingQuantity quantity, Place place, Observed observed, Boolean isolated,
        Double windingCelsius, Double temperatureU, String temperatureHow, Double ambientCelsius,
        Double humidityPercent, String instrument, Method method, Double testVolts, Double afterSeconds, String by,
        Instant at, State state, String supersedes, String reason, String note,
        @KeepUnknown Map<String, JsonNode> more) {

    /** How the leads were connected. */
    public enum Method { TWO_WIRE, FOUR_WIRE }

    /** When in the job's life the reading belongs. */
    public enum State { AS_FOUND, IN_PROCESS, AS_LEFT }

    public Reading {
        more = more == null ? Map.of() : more;
    }
}
