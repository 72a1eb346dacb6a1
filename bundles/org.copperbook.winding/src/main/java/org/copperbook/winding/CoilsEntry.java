package org.copperbook.winding;

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

/**
 * The coils of a group as text: span as slot pair and turns, "1-11 x5, 2-12 x5". Turns behind the last pair hold for
 * all pairs before it that have none: "1-11, 2-12, 3-13 x5". A field pole has turns only: "x170". A minus behind the
 * turns marks a coil wound or connected against its group: "1-11 x5 -".
 */
final class CoilsEntry implements Entry {

    private static final Pattern COIL = Pattern.compile(
            "(?:(\\d{1,4}) *[-\u2013/] *(\\d{1,4}))? *(?:[xX\u00d7*] *(\\d{1,5}))? *([-\u2212])?");

    private final Words words = Words.of(CoilsEntry.class);

    @Override
    public String show(JsonNode value) {
        List<String> coils = new ArrayList<>();
        for (JsonNode c : value) {
            StringBuilder text = new StringBuilder();
            if (c.has("goSlot")) {
                text.append(c.path("goSlot").asInt()).append('-').append(c.path("returnSlot").asText("?")).append(' ');
            }
            if (c.has("turns")) {
                text.append('\u00d7').append(c.path("turns").asInt());
            }
            if (c.path("reversed").asBoolean()) {
                text.append(" \u2212");
            }
            coils.add(text.toString().strip());
        }
        return String.join(", ", coils);
    }

    @Override
    public Typed read(String text) {
        if (text.isBlank()) {
            return new Typed.Blank();
        }
        ArrayNode coils = JsonNodeFactory.instance.arrayNode();
        int waiting = 0;
        for (String piece : text.strip().split(" *[,;] *")) {
            Matcher m = COIL.matcher(piece.strip());
            if (piece.isBlank() || !m.matches() || (m.group(1) == null && m.group(3) == null)) {
                return new Typed.Wrong(words.text("coils.form", piece.strip()));
            }
            ObjectNode coil = coils.addObject();
            if (m.group(1) != null) {
                coil.put("goSlot", Integer.parseInt(m.group(1))).put("returnSlot", Integer.parseInt(m.group(2)));
            }
            if (m.group(4) != null) {
                coil.put("reversed", true);
            }
            if (m.group(3) == null) {
                waiting++;
            } else {
                int turns = Integer.parseInt(m.group(3));
                for (int i = coils.size() - 1 - waiting; i < coils.size(); i++) {
                    ((ObjectNode) coils.get(i)).put("turns", turns);
                }
                waiting = 0;
            }
        }
        return new Typed.Understood(coils, show(coils));
    }
}
