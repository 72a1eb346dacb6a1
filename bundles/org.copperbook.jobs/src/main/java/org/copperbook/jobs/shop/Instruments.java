package org.copperbook.jobs.shop;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import org.copperbook.jobs.Part;

/** The shop's instruments. */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Instruments(int schema, List<Instrument> instruments, @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    public Instruments {
        instruments = instruments == null ? List.of() : List.copyOf(instruments);
        more = more == null ? Map.of() : more;
    }

    /** The instrument with an id. */
    public Optional<Instrument> find(String id) {
        return instruments.stream().filter(i -> i.id().equals(id)).findFirst();
    }
}
