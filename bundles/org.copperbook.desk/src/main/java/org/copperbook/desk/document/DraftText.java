package org.copperbook.desk.document;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;

/** Drafts as text for the crash journal, and back. */
public final class DraftText {

    private static final String PART = "part";
    private static final String TYPED = "asTyped";

    private final PartJson json;

    public DraftText(PartJson json) {
        this.json = json;
    }

    /** A draft as one line of JSON. */
    public String write(Draft draft) {
        ObjectNode root = json.mapper().createObjectNode();
        if (draft.part() != null) {
            root.set(PART, json.tree(draft.part()));
        }
        ObjectNode typed = root.putObject(TYPED);
        draft.asTyped().forEach(typed::put);
        try {
            return json.mapper().writeValueAsString(root);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a draft could not be written as JSON", e);
        }
    }

    /** Reads a draft back; empty when the text cannot be read as one by this version. */
    public Optional<Draft> read(PartKey key, String text) {
        try {
            JsonNode root = json.mapper().readTree(text);
            Part part = root.has(PART) ? json.read(key, root.get(PART)) : null;
            Map<String, String> typed = new TreeMap<>();
            for (Map.Entry<String, JsonNode> e : root.path(TYPED).properties()) {
                typed.put(e.getKey(), e.getValue().asText());
            }
            return Optional.of(new Draft(part, typed));
        } catch (JsonProcessingException | BadRecordException e) {
            return Optional.empty();
        }
    }
}
