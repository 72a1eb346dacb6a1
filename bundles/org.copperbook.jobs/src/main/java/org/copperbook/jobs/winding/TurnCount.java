package org.copperbook.jobs.winding;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;

/**
 * One independent count of the old winding.
 *
 * @param ordinal first, second or third count: 1, 2, 3
 * @param by      person key
 * @param at      when
 * @param groups  turns of each coil, group by group
 * @param strands strands in hand counted
 * @param open    true while it is being counted; null or false once it is handed in
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record TurnCount(int ordinal, String by, Instant at, List<GroupTurns> groups, Integer strands,
        Boolean open, @KeepUnknown Map<String, JsonNode> more) {

    public TurnCount {
        groups = groups == null ? List.of() : List.copyOf(groups);
        more = more == null ? Map.of() : more;
    }

    /** Whether whoever counted has handed it in: only then is it compared with another. */
    public boolean handedIn() {
        return !Boolean.TRUE.equals(open) && !groups.isEmpty();
    }

    /** Turns of each coil of one group, in order. */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record GroupTurns(int group, List<Integer> turns) {
        public GroupTurns {
            turns = turns == null ? List.of() : List.copyOf(turns);
        }
    }
}
