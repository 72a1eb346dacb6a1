package org.copperbook.jobs.inspection;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;
import org.copperbook.jobs.runup.RunUp;

/**
 * A bearing seat as measured.
 *
 * @param end        which end of the machine
 * @param seat       shaft or housing
 * @param nominalMm  nominal size, mm
 * @param zone       tolerance zone of ISO 286 as written ("k5", "H7")
 * @param lowerMm    smallest size by the maker's drawing or the workshop, mm; goes before the zone
 * @param upperMm    largest size by the maker's drawing or the workshop, mm; goes before the zone
 * @param measuredMm size as measured, mm
 * @param acrossMm   size measured at right angles to it, mm; null when not taken
 * @param instrument id of the instrument
 * @param by         person key
 * @param at         when
 * @param note       remark; the source of limits of the maker's or the workshop's own
 * @param more       fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record BearingFit(RunUp.End end, Seat seat, Double nominalMm, String zone, Double lowerMm, Double upperMm,
        Double measuredMm, Double acrossMm, String instrument, String by, Instant at, String note,
        @KeepUnknown Map<String, JsonNode> more) {

    /** What the bearing sits on or in. */
    public enum Seat { SHAFT, HOUSING }

    public BearingFit {
        more = more == null ? Map.of() : more;
    }
}
