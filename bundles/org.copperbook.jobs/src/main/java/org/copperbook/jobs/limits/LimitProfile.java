package org.copperbook.jobs.limits;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import org.copperbook.jobs.Part;

/**
 * Every limit the checks use, each with its source. The shipped profile is the default; a workshop or a customer may
 * override an entry, and the original stays beside it.
 *
 * @param schema layout version
 * @param name   name of the profile
 * @param limits the entries
 * @param more   fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record LimitProfile(int schema, String name, List<Limit> limits, @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    public LimitProfile {
        limits = limits == null ? List.of() : List.copyOf(limits);
        more = more == null ? Map.of() : more;
    }

    /** The entry with an id, as overridden where it is. */
    public Optional<Limit> find(String id) {
        return limits.stream().filter(l -> l.id().equals(id)).findFirst();
    }
}
