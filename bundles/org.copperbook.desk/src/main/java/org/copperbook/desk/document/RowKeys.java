package org.copperbook.desk.document;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.copperbook.jobs.PartKind;

/**
 * The lists of records to which several people add rows, and what tells a row of them from the others. Lists in which the place of a
 * row says what it is (groups of a winding, positions of diodes, readings by phase) are not among them: what two people put
 * there belongs side by side, not one after the other.
 */
final class RowKeys {

    /** By kind of part, the fields that name a row of each list; the first must be filled. None: rows have no name. */
    private static final Map<PartKind, Map<String, List<String>>> LISTS = Map.of(
            PartKind.HOURS, Map.of("entries", List.of(), "running", List.of("who")),
            PartKind.INSTRUMENTS, Map.of("instruments", List.of("id")),
            PartKind.LABOUR_RATES, Map.of("rates", List.of("trade", "validFrom")),
            PartKind.CAPACITIES, Map.of("trades", List.of("trade"), "weeks", List.of("week", "trade")),
            PartKind.CUSTOMER, Map.of("contacts", List.of()),
            PartKind.HAND_BACK, Map.of("outside", List.of(), "deliveries", List.of()),
            PartKind.INSPECTION, Map.of("findings", List.of(), "photos", List.of()),
            PartKind.BOOKING, Map.of("parts", List.of(), "photos", List.of()));

    private RowKeys() {
    }

    /** The lists of a kind of part to which several people add rows. */
    static Set<String> lists(PartKind kind) {
        return LISTS.getOrDefault(kind, Map.of()).keySet();
    }

    /** What names a row of a list; nothing when rows of the list have no name, or this one has none yet. */
    static Optional<String> name(PartKind kind, String list, JsonNode row) {
        List<String> fields = LISTS.get(kind).get(list);
        if (fields.isEmpty() || row.path(fields.get(0)).asText().isBlank()) {
            return Optional.empty();
        }
        return Optional.of(fields.stream().map(f -> row.path(f).asText().strip()).collect(Collectors.joining("\n")));
    }

    /**
     * The rows of a list by what names them, in their order.
     *
     * @return empty when one row has no name, or two have the same
     */
    static Optional<Map<String, Integer>> named(PartKind kind, String list, JsonNode rows) {
        Map<String, Integer> named = new LinkedHashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            Optional<String> name = name(kind, list, rows.get(i));
            if (name.isEmpty() || named.put(name.get(), i) != null) {
                return Optional.empty();
            }
        }
        return Optional.of(named);
    }
}
