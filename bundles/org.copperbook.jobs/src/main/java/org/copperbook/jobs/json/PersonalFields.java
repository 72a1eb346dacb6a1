package org.copperbook.jobs.json;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.copperbook.jobs.PartKind;

/**
 * Where names of people are typed into parts: the customer, who may be a private person, and who answered a quote.
 * Everybody else stands in parts as a key. None of these fields is under the seal of a release.
 */
public final class PersonalFields {

    private static final Map<PartKind, List<JsonPointer>> FIELDS = Map.of(
            PartKind.BOOKING, List.of(JsonPointer.compile("/customer")),
            PartKind.QUOTE, List.of(JsonPointer.compile("/approval/by")));

    private PersonalFields() {
    }

    /** Whether parts of a kind have any. */
    public static boolean in(PartKind kind) {
        return FIELDS.containsKey(kind);
    }

    /** Puts what the operator makes of each name in its place; fields that are not text, and blank ones, stay. */
    public static void replace(PartKind kind, JsonNode part, UnaryOperator<String> made) {
        for (JsonPointer field : FIELDS.getOrDefault(kind, List.of())) {
            if (part.at(field.head()) instanceof ObjectNode in) {
                String name = field.last().getMatchingProperty();
                if (in.get(name) instanceof TextNode text && !text.textValue().isBlank()) {
                    in.put(name, made.apply(text.textValue()));
                }
            }
        }
    }
}
