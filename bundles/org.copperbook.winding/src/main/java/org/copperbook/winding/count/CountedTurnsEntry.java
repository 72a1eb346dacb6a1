package org.copperbook.winding.count;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.copperbook.desk.entry.Entry;
import org.copperbook.desk.entry.Typed;
import org.copperbook.desk.text.Words;

/** The turns of one count as text, group by group: "1: 5 5 5 5; 2: 5 5 5 5". "1-12: 5 5 5 5" counts a run alike. */
public final class CountedTurnsEntry implements Entry {

    private static final Pattern GROUPS =
            Pattern.compile("(\\d{1,3})(?: *[-\u2013] *(\\d{1,3}))? *: *(\\d{1,5}(?: +\\d{1,5})*)");

    private final Words words = Words.of(org.copperbook.winding.WindingPage.class);

    @Override
    public String show(JsonNode value) {
        List<String> groups = new ArrayList<>();
        int from = 0;
        while (from < value.size()) {
            int to = from;
            while (to + 1 < value.size() && value.get(to + 1).path("turns").equals(value.get(from).path("turns"))
                    && number(value, to + 1) == number(value, to) + 1) {
                to++;
            }
            List<String> turns = new ArrayList<>();
            value.get(from).path("turns").forEach(t -> turns.add(t.asText()));
            String run = from == to ? Integer.toString(number(value, from))
                    : number(value, from) + "-" + number(value, to);
            groups.add(run + ": " + String.join(" ", turns));
            from = to + 1;
        }
        return String.join("; ", groups);
    }

    private static int number(JsonNode groups, int index) {
        return groups.get(index).path("group").asInt();
    }

    @Override
    public Typed read(String text) {
        if (text.isBlank()) {
            return new Typed.Blank();
        }
        ArrayNode groups = JsonNodeFactory.instance.arrayNode();
        for (String piece : text.strip().split(" *[;,] *")) {
            Matcher m = GROUPS.matcher(piece.strip());
            if (!m.matches()) {
                return new Typed.Wrong(words.text("count.form", piece.strip()));
            }
            int first = Integer.parseInt(m.group(1));
            int last = m.group(2) == null ? first : Integer.parseInt(m.group(2));
            for (int g = first; g <= last; g++) {
                ObjectNode group = groups.addObject().put("group", g);
                ArrayNode turns = group.putArray("turns");
                for (String t : m.group(3).strip().split(" +")) {
                    turns.add(Integer.parseInt(t));
                }
            }
        }
        return new Typed.Understood(groups, show(groups));
    }
}
