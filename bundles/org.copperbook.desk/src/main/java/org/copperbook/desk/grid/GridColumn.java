package org.copperbook.desk.grid;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.function.Function;
import org.copperbook.desk.entry.Entry;

/**
 * A column of a grid.
 *
 * @param pointer  JSON pointer inside a row; for a computed column its id
 * @param title    heading; may have line breaks
 * @param entry    how its cells are shown and read; null for a computed column
 * @param chars    width in average characters
 * @param keeps    pointer of a column behind it that is to stay in sight: as far as that one needs the room, this one
 *                 grows no further by itself; null for a column that grows to what stands in it, within reason
 * @param computed text of a computed column from its row; null for a column that is typed into
 */
public record GridColumn(String pointer, String title, Entry entry, int chars, String keeps, Function<JsonNode, String> computed) {

    /** A column that grows to what stands in it, within reason. */
    public GridColumn(String pointer, String title, Entry entry, int chars, Function<JsonNode, String> computed) {
        this(pointer, title, entry, chars, null, computed);
    }

    /** The heading for sentences and tables elsewhere. */
    public String oneLine() {
        return title.replace('\n', ' ');
    }

    /** Average characters that the heading takes beside its borders. */
    int titleChars() {
        return Arrays.stream(title.split("\n")).mapToInt(String::length).max().orElse(0) + 3;
    }

    /** Whether its cells can be typed into. */
    public boolean isEditable() {
        return computed == null;
    }
}
