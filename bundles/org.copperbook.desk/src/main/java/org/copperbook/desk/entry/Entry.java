package org.copperbook.desk.entry;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;

/** How one kind of value is shown as text and read from text; shared by form fields and grid cells. */
public interface Entry {

    /** The value as text; empty for a missing node. */
    String show(JsonNode value);

    /** Reads a text. */
    Typed read(String text);

    /** What is put where a value stands already: the value read, unless it takes over something of the one before. */
    default JsonNode over(JsonNode before, JsonNode read) {
        return read;
    }

    /** Texts to choose from, in order; empty when any text may be typed. */
    default List<String> choices() {
        return List.of();
    }

    /** Whether text stands at the right (numbers). */
    default boolean isNumeric() {
        return false;
    }
}
