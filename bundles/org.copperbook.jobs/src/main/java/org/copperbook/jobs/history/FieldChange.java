package org.copperbook.jobs.history;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;

/**
 * One field that differs between two revisions of a part. Rows of a list are told apart by what names them (id, number,
 * trade with its first day, week), so that a row put in before others changes none of them.
 *
 * @param path   names of fields and rows from the outside in
 * @param before what stood there, empty when nothing did
 * @param after  what stands there, empty when nothing does
 */
public record FieldChange(List<String> path, String before, String after) {

    private static final List<String> NAMING = List.of("id", "number", "code", "trade", "validFrom", "week");

    public FieldChange {
        path = List.copyOf(path);
    }

    /** What differs, in the order of the older revision, new things last. */
    public static List<FieldChange> between(JsonNode before, JsonNode after) {
        List<FieldChange> found = new ArrayList<>();
        compare(List.of(), before, after, found);
        return found;
    }

    private static void compare(List<String> path, JsonNode before, JsonNode after, List<FieldChange> found) {
        if (before.equals(after)) {
            return;
        }
        if (before.isObject() && after.isObject()) {
            Set<String> names = new LinkedHashSet<>();
            before.fieldNames().forEachRemaining(names::add);
            after.fieldNames().forEachRemaining(names::add);
            names.forEach(n -> compare(with(path, n), before.path(n), after.path(n), found));
            return;
        }
        Optional<Map<String, JsonNode>> rowsBefore = named(before);
        Optional<Map<String, JsonNode>> rowsAfter = named(after);
        boolean lists = (before.isArray() || before.isMissingNode()) && (after.isArray() || after.isMissingNode());
        if (lists && rowsBefore.isPresent() && rowsAfter.isPresent()) {
            Set<String> names = new LinkedHashSet<>(rowsBefore.get().keySet());
            names.addAll(rowsAfter.get().keySet());
            names.forEach(n -> compare(with(path, n), rowsBefore.get().getOrDefault(n, MissingNode.getInstance()),
                    rowsAfter.get().getOrDefault(n, MissingNode.getInstance()), found));
            return;
        }
        if (before.isArray() && after.isArray() && before.size() == after.size()) {
            for (int i = 0; i < before.size(); i++) {
                compare(with(path, Integer.toString(i + 1)), before.path(i), after.path(i), found);
            }
            return;
        }
        found.add(new FieldChange(path, text(before), text(after)));
    }

    private static List<String> with(List<String> path, String name) {
        List<String> longer = new ArrayList<>(path);
        longer.add(name);
        return longer;
    }

    /** Rows by what names them; nothing when some row has no name or two have the same. */
    private static Optional<Map<String, JsonNode>> named(JsonNode list) {
        Map<String, JsonNode> rows = new LinkedHashMap<>();
        for (JsonNode row : list) {
            Optional<String> name = name(row);
            if (name.isEmpty() || rows.put(name.get(), row) != null) {
                return Optional.empty();
            }
        }
        return Optional.of(rows);
    }

    /** What names a row of a list, if anything does. */
    public static Optional<String> name(JsonNode row) {
        StringJoiner name = new StringJoiner(", ");
        NAMING.stream().map(n -> row.path(n).asText("")).filter(t -> !t.isBlank()).forEach(name::add);
        return row.isObject() && name.length() > 0 ? Optional.of(name.toString()) : Optional.empty();
    }

    /** A value in plain text, that of a list or of a row without names of fields; empty for none. */
    public static String text(JsonNode value) {
        if (value.isMissingNode() || value.isNull()) {
            return "";
        }
        if (value.isArray()) {
            StringJoiner rows = new StringJoiner("; ");
            value.forEach(r -> rows.add(text(r)));
            return rows.toString();
        }
        if (value.isObject()) {
            StringJoiner fields = new StringJoiner(", ");
            value.fields().forEachRemaining(e -> fields.add(text(e.getValue())));
            return fields.toString();
        }
        return value.asText().replace('\t', ' ');
    }
}
