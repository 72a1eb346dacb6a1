package org.copperbook.sheets.cards;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/**
 * A card while its cells are read one by one.
 *
 * @param card    the card itself
 * @param plate   its machine
 * @param winding its winding
 */
record CardFields(ObjectNode card, ObjectNode plate, ObjectNode winding) {

    private static final String STRANDS = "strands";
    private static final String WIRE = "wire";

    /** One size of wire in hand. */
    record Wire(String size, Integer strands) {
    }

    void wires(List<Wire> wires) {
        ArrayNode list = winding.putArray(WIRE);
        for (Wire w : wires) {
            ObjectNode one = list.addObject().put("size", w.size());
            if (w.strands() != null) {
                one.put(STRANDS, w.strands());
            }
        }
    }

    void strands(int strands) {
        winding.put(STRANDS, strands);
    }

    /** Strands from their own column go to the one wire; a card of a field winding has poles of wire. */
    void finish() {
        int strands = winding.path(STRANDS).asInt(1);
        winding.remove(STRANDS);
        winding.path(WIRE).forEach(w -> {
            if (!w.has(STRANDS)) {
                ((ObjectNode) w).put(STRANDS, strands);
            }
        });
    }
}
