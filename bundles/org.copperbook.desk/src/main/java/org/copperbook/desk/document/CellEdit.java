package org.copperbook.desk.document;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * One cell of a block that is put at once.
 *
 * @param pointer where (JSON pointer in the part)
 * @param value   the value; null clears the cell
 * @param typed   the text as typed when it was not understood; null when it was
 * @param text    the text in any case, kept when the record cannot hold the value
 */
public record CellEdit(String pointer, JsonNode value, String typed, String text) {
}
