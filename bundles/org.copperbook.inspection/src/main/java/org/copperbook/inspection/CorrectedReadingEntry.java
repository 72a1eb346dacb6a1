package org.copperbook.inspection;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.function.Supplier;
import org.copperbook.desk.entry.Entry;
import org.copperbook.desk.entry.Typed;
import org.copperbook.desk.text.Words;

/** Which reading is corrected by another, typed and shown by its number in the list, kept by its key. */
final class CorrectedReadingEntry implements Entry {

    private final Words words = Words.of(CorrectedReadingEntry.class);
    private final Supplier<JsonNode> readings;

    CorrectedReadingEntry(Supplier<JsonNode> readings) {
        this.readings = readings;
    }

    @Override
    public String show(JsonNode value) {
        JsonNode all = readings.get();
        for (int i = 0; i < all.size(); i++) {
            if (value.isTextual() && value.asText().equals(all.get(i).path("id").asText())) {
                return Integer.toString(i + 1);
            }
        }
        return value.asText("");
    }

    @Override
    public Typed read(String text) {
        String t = text.strip();
        if (t.isEmpty()) {
            return new Typed.Blank();
        }
        JsonNode all = readings.get();
        if (t.matches("\\d{1,4}")) {
            JsonNode id = all.path(Integer.parseInt(t) - 1).path("id");
            if (id.isTextual()) {
                return new Typed.Understood(TextNode.valueOf(id.asText()), t);
            }
        }
        return new Typed.Wrong(words.text("reading.noSuchNumber", t));
    }

    @Override
    public boolean isNumeric() {
        return true;
    }
}
