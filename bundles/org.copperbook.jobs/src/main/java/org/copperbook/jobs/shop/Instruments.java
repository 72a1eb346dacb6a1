package org.copperbook.jobs.shop;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.copperbook.jobs.Part;

/** The shop's instruments. */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Instruments(int schema, List<Instrument> instruments, @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    public Instruments {
        instruments = instruments == null ? List.of() : List.copyOf(instruments);
        more = more == null ? Map.of() : more;
    }

    /** Days before a calibration runs out in which that is said: common practice, no source. */
    public static final int SOON_DAYS = 30;

    /** Ids that more than one instrument has, letter case aside, in order. */
    public List<String> idsTwice() {
        Map<String, Long> counts = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        instruments.stream().filter(i -> i.id() != null && !i.id().isBlank())
                .forEach(i -> counts.merge(i.id().strip(), 1L, Long::sum));
        return counts.entrySet().stream().filter(e -> e.getValue() > 1).map(Map.Entry::getKey).toList();
    }

    /** Whether one of them has no id, so that no reading could name it. */
    public boolean anyWithoutId() {
        return instruments.stream().anyMatch(i -> i.id() == null || i.id().isBlank());
    }

    /** The instrument with an id. */
    public Optional<Instrument> find(String id) {
        return instruments.stream().filter(i -> i.id() != null && i.id().equals(id)).findFirst();
    }
}
