package org.copperbook.jobs.reading;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.Objects;
import org.copperbook.jobs.winding.WindingRole;

/**
 * Where a reading was taken.
 *
 * @param winding which winding; null for parts that belong to none
 * @param kind    what of it
 * @param mark    terminal marks ("U-V", "F1-F2"), a phase ("U"), or a coil group number ("3")
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Place(WindingRole winding, Kind kind, String mark, @KeepUnknown Map<String, JsonNode> more) {

    /** What of the winding was read. */
    public enum Kind { WHOLE, TERMINAL_PAIR, PHASE, COIL_GROUP, TO_EARTH, BETWEEN_PHASES, DIODE, SUPPRESSOR }

    public Place {
        Objects.requireNonNull(kind, "place needs its kind");
        mark = mark == null ? "" : mark;
        more = more == null ? Map.of() : more;
    }

    public static Place of(WindingRole winding, Kind kind, String mark) {
        return new Place(winding, kind, mark, Map.of());
    }
}
