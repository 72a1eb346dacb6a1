package org.copperbook.jobs.inspection;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;
import org.copperbook.jobs.runup.RunUp;

/**
 * A runout as measured: the change of the indicator over one turn.
 *
 * @param end        which end of the machine
 * @param place      where on the shaft
 * @param diameterMm diameter there, mm
 * @param runoutMm   change of the indicator, mm
 * @param limitMm    greatest runout by the maker or the workshop, mm; goes before the table
 * @param instrument id of the instrument
 * @param by         person key
 * @param at         when
 * @param note       remark; the source of a limit of the maker's or the workshop's own
 * @param more       fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Runout(RunUp.End end, Place place, Double diameterMm, Double runoutMm, Double limitMm, String instrument,
        String by, Instant at, String note, @KeepUnknown Map<String, JsonNode> more) {

    /** Where on the shaft. */
    public enum Place { SHAFT_EXTENSION, BEARING_SEAT, ROTOR_BODY }

    public Runout {
        more = more == null ? Map.of() : more;
    }
}
