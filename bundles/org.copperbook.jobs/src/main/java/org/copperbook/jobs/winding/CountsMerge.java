package org.copperbook.jobs.winding;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Puts together two copies of a winding in which different people counted at the same time. A count belongs to the
 * person who makes it, so both are kept whole, and neither person is shown the other's to choose between them.
 */
public final class CountsMerge {

    private static final String COUNTS = "counts";
    private static final int MOST_COUNTS = 3;

    private CountsMerge() {
    }

    /**
     * Both copies as one.
     *
     * @param base   the winding that both began from
     * @param mine   the copy that is not saved yet; a count begun in it gets the next free number
     * @param theirs the copy that was saved meanwhile
     * @return empty when more than counts was changed in both, when one person's count was changed in both, or when there
     *         would be more than three
     */
    public static Optional<ObjectNode> of(ObjectNode base, ObjectNode mine, ObjectNode theirs) {
        ObjectNode rest = without(base);
        boolean mineCounted = without(mine).equals(rest);
        if (!mineCounted && !without(theirs).equals(rest)
                || mine.path(COUNTS).equals(base.path(COUNTS)) || theirs.path(COUNTS).equals(base.path(COUNTS))) {
            return Optional.empty();
        }
        if (twiceTheSame(base) || twiceTheSame(mine) || twiceTheSame(theirs)) {
            return Optional.empty();
        }
        Optional<List<ObjectNode>> counts = counts(byPerson(base), byPerson(mine), byPerson(theirs));
        return counts.map(c -> {
            ObjectNode merged = mineCounted ? theirs.deepCopy() : mine.deepCopy();
            merged.remove(COUNTS);
            if (!c.isEmpty()) {
                ArrayNode list = merged.putArray(COUNTS);
                c.forEach(list::add);
            }
            return merged;
        });
    }

    /** Where one person may count twice, the person does not tell which count is meant. */
    private static boolean twiceTheSame(ObjectNode winding) {
        return byPerson(winding).size() < winding.path(COUNTS).size();
    }

    private static Optional<List<ObjectNode>> counts(Map<String, JsonNode> base, Map<String, JsonNode> mine,
            Map<String, JsonNode> theirs) {
        List<ObjectNode> merged = new ArrayList<>();
        Set<String> people = new LinkedHashSet<>(theirs.keySet());
        people.addAll(mine.keySet());
        for (String who : people) {
            JsonNode was = base.get(who);
            JsonNode here = mine.get(who);
            JsonNode there = theirs.get(who);
            boolean sameThere = there == null ? was == null : there.equals(was);
            boolean sameHere = here == null ? was == null : here.equals(was);
            if (!sameThere && !sameHere) {
                return Optional.empty();
            }
            JsonNode kept = sameThere ? here : there;
            if (kept != null) {
                merged.add(kept.deepCopy());
            }
        }
        // Sorting keeps the order of equal numbers: what was saved first keeps its number.
        merged.sort(Comparator.comparingInt(c -> c.path("ordinal").asInt()));
        for (int i = 0; i < merged.size(); i++) {
            merged.get(i).put("ordinal", i + 1);
        }
        return merged.size() > MOST_COUNTS ? Optional.empty() : Optional.of(merged);
    }

    private static Map<String, JsonNode> byPerson(ObjectNode winding) {
        Map<String, JsonNode> counts = new LinkedHashMap<>();
        winding.path(COUNTS).forEach(c -> counts.put(c.path("by").asText(), c));
        return counts;
    }

    private static ObjectNode without(ObjectNode winding) {
        ObjectNode rest = winding.deepCopy();
        rest.remove(COUNTS);
        return rest;
    }
}
