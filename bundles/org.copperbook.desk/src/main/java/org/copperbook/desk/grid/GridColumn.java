package org.copperbook.desk.grid;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.function.Function;
import org.copperbook.desk.entry.Entry;

/**
 * A column of a grid.
 *
 * @param pointer  JSON pointer inside a row; for a computed column its id
 * @param title    heading
 * @param entry    how its cells are shown and read; null for a computed column
 * @param chars    width in average characters
 * @param computed text of a computed column from its row; null for a column that is typed into
 */
public record GridColumn(String pointer, String title, Entry entry, int chars, Function<JsonNode, String> computed) {

    /** Whether its cells can be typed into. */
    public boolean isEditable() {
        return computed == null;
    }
}
