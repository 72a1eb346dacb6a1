package org.copperbook.desk.entry;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.List;

/** Free text, with or without proposals of texts used before. */
public final class TextEntry implements Entry {

    @Override
    public String show(JsonNode value) {
        return value.isMissingNode() || value.isNull() ? "" : value.asText();
    }

    @Override
    public Typed read(String text) {
        String t = text.strip();
        return t.isEmpty() ? new Typed.Blank() : new Typed.Understood(TextNode.valueOf(t), t);
    }

    @Override
    public List<String> choices() {
        return List.of();
    }
}
