package org.copperbook.jobs.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.copperbook.jobs.PartKind;

/**
 * Where people are named in parts: the customer of a booking, who may be a private person, and whom to talk to there, who
 * answered a quote, who took a machine back or consented to scrap it, and what tells a customer of the shop from others. Everybody else stands in parts as a key. None of these fields is under the
 * seal of a release.
 */
public final class PersonalFields {

    /** Names of fields from the outside in; a star stands for each entry of a list. */
    private static final Map<PartKind, List<List<String>>> FIELDS = Map.of(
            PartKind.BOOKING, List.of(List.of("customer"), List.of("contact")),
            PartKind.QUOTE, List.of(List.of("approval", "by")),
            PartKind.HAND_BACK, List.of(List.of("takenBy"), List.of("scrapping", "consentBy")),
            PartKind.CUSTOMER, List.of(List.of("name"), List.of("address"), List.of("phone"), List.of("mail"),
                    List.of("taxId"), List.of("note"), List.of("contacts", "*")));

    private PersonalFields() {
    }

    /** Whether parts of a kind have any. */
    public static boolean in(PartKind kind) {
        return FIELDS.containsKey(kind);
    }

    /** The kinds of part that have any. */
    public static List<PartKind> kinds() {
        return FIELDS.keySet().stream().sorted().toList();
    }

    /** Puts what the operator makes of each name in its place; fields that are not text, and blank ones, stay. */
    public static void replace(PartKind kind, JsonNode part, UnaryOperator<String> made) {
        for (List<String> path : FIELDS.getOrDefault(kind, List.of())) {
            replace(part, path, made);
        }
    }

    private static void replace(JsonNode in, List<String> path, UnaryOperator<String> made) {
        List<String> rest = path.subList(1, path.size());
        if (in instanceof ObjectNode object) {
            JsonNode value = object.get(path.get(0));
            if (!rest.isEmpty() && value != null) {
                replace(value, rest, made);
            } else if (isName(value)) {
                object.put(path.get(0), made.apply(value.textValue()));
            }
        } else if (in instanceof ArrayNode list && path.get(0).equals("*")) {
            for (int i = 0; i < list.size(); i++) {
                if (!rest.isEmpty()) {
                    replace(list.get(i), rest, made);
                } else if (isName(list.get(i))) {
                    list.set(i, TextNode.valueOf(made.apply(list.get(i).textValue())));
                }
            }
        }
    }

    private static boolean isName(JsonNode value) {
        return value instanceof TextNode text && !text.textValue().isBlank();
    }
}
