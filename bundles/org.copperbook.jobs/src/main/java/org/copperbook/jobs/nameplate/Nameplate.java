package org.copperbook.jobs.nameplate;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.limits.Limit;

/**
 * The rating plate (items of IEC 60034-1, clause 10.2; the list of them is from memory), as read; null means not on the
 * plate or not legible.
 *
 * @param schema          layout version
 * @param maker           maker
 * @param type            type designation
 * @param serial          serial number
 * @param year            year of manufacture
 * @param duty            duty type (S1 ...)
 * @param apparentPowerVA rated apparent power, VA
 * @param powerW          rated power, W (electrical output of a generator, shaft output of a motor)
 * @param voltageV        rated line voltage, V
 * @param connection      connection at that voltage ("star", "parallel star" ...)
 * @param currentA        rated line current, A
 * @param frequencyHz     rated frequency, Hz
 * @param speedRpm        rated speed, r/min
 * @param phases          phases
 * @param poles           poles (not always on the plate)
 * @param powerFactor     rated power factor, 0..1
 * @param excitationV     rated exciter-field volts, V dc
 * @param excitationA     rated exciter-field amps, A dc
 * @param mainFieldV      rated main-field volts, V dc
 * @param mainFieldA      rated main-field amps, A dc
 * @param thermalClass    thermal class letters (IEC 60085: B, F, H ...)
 * @param ip              degree of protection (IEC 60034-5)
 * @param ic              cooling (IEC 60034-6)
 * @param im              mounting (IEC 60034-7)
 * @param ambientCelsius  rated ambient, degrees Celsius
 * @param altitudeM       rated altitude, m
 * @param massKg          mass, kg
 * @param shaftHeightMm   shaft height, mm (decides the vibration class, IEC 60034-14)
 * @param bearingDE       drive-end bearing
 * @param bearingNDE      non-drive-end bearing
 * @param regulator       regulator type
 * @param leads           leads brought out (3, 6, 9, 12)
 * @param marks           which marking system the terminals carry
 * @param standard        standard that the plate names
 * @param rotation        direction of rotation, as the plate says it
 * @param overspeedRpm    overspeed, r/min
 * @param coolantCelsius  highest coolant temperature at the entry, degrees Celsius
 * @param rotorV          open-circuit slip-ring volts of a wound-rotor motor, V
 * @param rotorA          rated rotor amps of a wound-rotor motor, A
 * @param inertiaKgM2     moment of inertia, kg m²
 * @param minAmbientCelsius lower limit of the ambient, degrees Celsius, where the plate states one
 * @param riseLimit       limit of temperature rise where it is lower than that of the thermal class, as the plate says it
 *                        (a class letter or kelvin)
 * @param otherRatings    further ratings of a dual plate
 * @param makerLimits     the maker's own limits for this machine; they go before the workshop's profile
 * @param more            fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Nameplate(int schema, String maker, String type, String serial, Integer year, String duty,
        Double apparentPowerVA, Double powerW, Double voltageV, String connection, Double currentA,
        Double frequencyHz, Double speedRpm, Integer phases, Integer poles, Double powerFactor, Double excitationV,
        Double excitationA, Double mainFieldV, Double mainFieldA, String thermalClass, String ip, String ic,
        String im, Double ambientCelsius, Double altitudeM, Double massKg, Double shaftHeightMm, String bearingDE,
        String bearingNDE, String regulator, Integer leads, TerminalMarks marks, String standard, String rotation, Double overspeedRpm,
        Double coolantCelsius, Double rotorV, Double rotorA, Double inertiaKgM2, Double minAmbientCelsius, String riseLimit,
        List<Rating> otherRatings, List<Limit> makerLimits, @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    /** Terminal marking systems. */
    public enum TerminalMarks { IEC_60034_8, NEMA_T }

    public Nameplate {
        otherRatings = otherRatings == null ? List.of() : List.copyOf(otherRatings);
        makerLimits = makerLimits == null ? List.of() : List.copyOf(makerLimits);
        more = more == null ? Map.of() : more;
    }

    /** One more rating of a plate that carries several (50 and 60 Hz, reconnectable windings). */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Rating(Double apparentPowerVA, Double powerW, Double voltageV, String connection, Double currentA,
            Double frequencyHz, Double speedRpm, Double powerFactor, @KeepUnknown Map<String, JsonNode> more) {
        public Rating {
            more = more == null ? Map.of() : more;
        }
    }
}
