package org.copperbook.winding.memory;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Takes data over into a winding and confirms them. What the record says already was read on this machine and is never
 * overwritten; only what an earlier proposal filled, and nobody confirmed, gives way to a new one.
 */
public final class Proposal {

    /** What belongs to one machine or one record alone. */
    private static final Set<String> OWN = Set.of("schema", "role", "asWound", "readings", "counts", "copperRemovedKg",
            "photos", "note", "proposedFrom", "takenOver", "reason");
    /** What was measured on a core; it is taken over from the same machine only. */
    private static final Set<String> CORE = Set.of("coreLengthM", "boreM", "outsideM", "slotDepthM", "slotWidthTopM",
            "slotWidthBottomM", "toothWidthM", "yokeDepthM", "ventCount", "ventWidthM", "skew");
    /** What describes the coils; the coil list follows from it. */
    private static final Set<String> LAYOUT = Set.of("slots", "poles", "span", "turnsPerCoil", "groupSequence",
            "layers");
    /** What a new record begins with before anybody has looked at the machine. */
    private static final Set<String> BEGINNING = Set.of("coilType", "phases", "layers");

    private static final String FROM = "proposedFrom";
    private static final String TAKEN = "takenOver";
    private static final String GROUPS = "groups";
    private static final String FIELDS = "fields";

    private Proposal() {
    }

    /**
     * What came of taking over.
     *
     * @param tree   the record afterwards
     * @param filled names of the fields that were filled
     * @param kept   names of the fields that say something else here and were left
     */
    public record Outcome(ObjectNode tree, List<String> filled, List<String> kept) {
        public Outcome {
            filled = List.copyOf(filled);
            kept = List.copyOf(kept);
        }
    }

    /** Whether a record holds an unconfirmed proposal. */
    public static boolean stands(JsonNode tree) {
        return !tree.path(FROM).asText("").isBlank();
    }

    /**
     * Takes data over.
     *
     * @param tree        the record
     * @param past        the winding proposed
     * @param from        where it comes from, in words
     * @param sameMachine whether it is of this very machine, so that its core is this core
     * @param who         person key
     */
    public static Outcome take(ObjectNode tree, ObjectNode past, String from, boolean sameMachine, String who,
            Instant now) {
        ObjectNode next = tree.deepCopy();
        Set<String> open = open(tree);
        boolean untouched = !tree.has("span") && tree.path(GROUPS).isEmpty();
        List<String> filled = new ArrayList<>();
        List<String> kept = new ArrayList<>();
        ObjectNode proposed = cleaned(past);
        for (Map.Entry<String, JsonNode> e : proposed.properties()) {
            String name = e.getKey();
            if (OWN.contains(name) || CORE.contains(name) && !sameMachine || name.equals(GROUPS)) {
                continue;
            }
            boolean free = empty(tree.path(name)) || open.contains(name) || untouched && BEGINNING.contains(name);
            if (same(tree.path(name), e.getValue())) {
                continue;
            }
            if (free) {
                next.set(name, e.getValue());
                filled.add(name);
            } else {
                kept.add(name);
            }
        }
        groups(tree, next, proposed, open, filled, kept);
        if (!filled.isEmpty()) {
            note(next, from, who, now, filled);
        }
        return new Outcome(next, filled, kept);
    }

    /** The coil list comes along only when it fits what the record says of the coils. */
    private static void groups(ObjectNode tree, ObjectNode next, ObjectNode proposed, Set<String> open,
            List<String> filled, List<String> kept) {
        JsonNode list = proposed.path(GROUPS);
        boolean mine = !empty(tree.path(GROUPS)) && !open.contains(GROUPS);
        if (mine) {
            if (!empty(list) && !same(tree.path(GROUPS), list)) {
                kept.add(GROUPS);
            }
            return;
        }
        boolean fits = LAYOUT.stream().noneMatch(kept::contains);
        if (!empty(list) && fits) {
            next.set(GROUPS, list);
            filled.add(GROUPS);
        } else if (open.contains(GROUPS)) {
            // the list of the earlier proposal does not belong to this one
            next.remove(GROUPS);
        }
    }

    /** Confirms what was taken over; who and when are kept. */
    public static ObjectNode confirmed(ObjectNode tree, String who, Instant now) {
        ObjectNode next = tree.deepCopy();
        ArrayNode list = list(next);
        if (list.isEmpty() || list.get(list.size() - 1).has("confirmedBy")) {
            list.addObject().put("from", tree.path(FROM).asText());
        }
        ((ObjectNode) list.get(list.size() - 1)).put("confirmedBy", who).put("confirmedAt", moment(now));
        next.remove(FROM);
        return next;
    }

    private static void note(ObjectNode next, String from, String who, Instant now, List<String> filled) {
        ArrayNode list = list(next);
        Set<String> fields = new TreeSet<>(filled);
        if (stands(next) && !list.isEmpty() && !list.get(list.size() - 1).has("confirmedBy")) {
            list.get(list.size() - 1).path(FIELDS).forEach(f -> fields.add(f.asText()));
            list.remove(list.size() - 1);
        }
        fields.removeIf(f -> !next.has(f));
        ArrayNode names = list.addObject().put("from", from).put("by", who).put("at", moment(now)).putArray(FIELDS);
        fields.forEach(names::add);
        next.put(FROM, from);
    }

    private static ArrayNode list(ObjectNode tree) {
        return tree.path(TAKEN) instanceof ArrayNode a ? a : tree.putArray(TAKEN);
    }

    private static String moment(Instant now) {
        return now.truncatedTo(ChronoUnit.SECONDS).toString();
    }

    /** Names of the fields that an unconfirmed proposal filled. */
    private static Set<String> open(JsonNode tree) {
        Set<String> open = new TreeSet<>();
        JsonNode list = tree.path(TAKEN);
        if (stands(tree) && list.size() > 0) {
            list.get(list.size() - 1).path(FIELDS).forEach(f -> open.add(f.asText()));
        }
        return open;
    }

    /** Without what was read on the other machine: resistances of groups, gauged diameters of wires. */
    private static ObjectNode cleaned(ObjectNode past) {
        ObjectNode copy = past.deepCopy();
        copy.path(GROUPS).forEach(g -> ((ObjectNode) g).remove("resistance"));
        copy.path("wire").forEach(w -> ((ObjectNode) w).remove(List.of("bareMm", "coveredMm")));
        return copy;
    }

    private static boolean empty(JsonNode node) {
        return node.isMissingNode() || node.isNull() || node.isContainerNode() && node.isEmpty()
                || node.isTextual() && node.asText().isBlank();
    }

    private static boolean same(JsonNode a, JsonNode b) {
        return a.isNumber() && b.isNumber() ? a.doubleValue() == b.doubleValue() : a.equals(b);
    }
}
