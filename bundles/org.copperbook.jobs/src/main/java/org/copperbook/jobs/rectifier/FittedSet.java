package org.copperbook.jobs.rectifier;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;

/**
 * The set of diodes that was fitted.
 *
 * @param makersPart      maker's part numbers (both base polarities)
 * @param lot             lot or date code
 * @param complete        true when every position got a new diode of this set
 * @param repetitivePeakV repetitive peak reverse voltage, V (data sheet)
 * @param averageA        average forward current, A (data sheet)
 * @param stud            stud thread ("1/4-28 UNF", "M8")
 * @param torqueMinNm     lower torque of the data sheet, N m; null when no data sheet is at hand
 * @param torqueMaxNm     upper torque of the data sheet, N m
 * @param wrench          id of the torque wrench in the instrument register
 * @param compound        thermal compound
 * @param by              person key
 * @param at              when
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record FittedSet(String makersPart, String lot, Boolean complete, Double repetitivePeakV, Double averageA,
        String stud, Double torqueMinNm, Double torqueMaxNm, String wrench, String compound, String by, Instant at,
        @KeepUnknown Map<String, JsonNode> more) {

    public FittedSet {
        more = more == null ? Map.of() : more;
    }
}
