package org.copperbook.winding;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.copperbook.desk.entry.Entry;
import org.copperbook.desk.entry.Typed;
import org.copperbook.desk.text.Words;

/** Wires in hand as text: strands and size, "12 of 1.18 mm, 2 of 1.25 mm". A size alone is one strand. */
final class WiresEntry implements Entry {

    private static final Pattern WIRE = Pattern.compile("(?:(\\d{1,3}) *(?:of|[xX\u00d7*]) *)?(\\S.*)");

    private final Words words = Words.of(WiresEntry.class);

    @Override
    public String show(JsonNode value) {
        List<String> wires = new ArrayList<>();
        value.forEach(w -> wires.add(words.text("wires.of", w.path("strands").asText("1"), w.path("size").asText(""))));
        return String.join(", ", wires);
    }

    @Override
    public Typed read(String text) {
        if (text.isBlank()) {
            return new Typed.Blank();
        }
        ArrayNode wires = JsonNodeFactory.instance.arrayNode();
        for (String piece : text.strip().split(" *[,;] +| *; *")) {
            Matcher m = WIRE.matcher(piece.strip());
            if (!m.matches()) {
                return new Typed.Wrong(words.text("wires.form", piece));
            }
            wires.addObject().put("size", m.group(2).strip())
                    .put("strands", m.group(1) == null ? 1 : Integer.parseInt(m.group(1)));
        }
        return new Typed.Understood(wires, show(wires));
    }
}
