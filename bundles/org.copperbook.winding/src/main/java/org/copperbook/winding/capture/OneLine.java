package org.copperbook.winding.capture;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.copperbook.jobs.winding.WindingData;

/**
 * A winding said in one line: "48 slots 4 poles 1-11 x5 12 of 1.18 2 circuits star".
 *
 * @param numbers  whole numbers by the name of their field in the record ("slots", "poles", "circuits" ...)
 * @param coilType how the coils are laid, or null
 * @param join     how the phases are joined, or null
 * @param span     slot pairs, or null
 * @param sequence sizes of uneven groups in turn, or null
 * @param turns    turns of a coil: one number, or one for each place in the group; empty when not said
 * @param wires    strands in hand and size, as said
 */
public record OneLine(Map<String, Integer> numbers, WindingData.CoilType coilType, WindingData.Connection join,
        String span, String sequence, List<Integer> turns, List<Wire> wires) {

    /**
     * Strands of one size.
     *
     * @param strands strands in hand
     * @param size    the size as said
     */
    public record Wire(int strands, String size) {
    }

    public OneLine {
        numbers = Map.copyOf(numbers);
        turns = List.copyOf(turns);
        wires = List.copyOf(wires);
    }

    /** Puts what was said into a record; what was not said stays as it is. */
    public ObjectNode into(ObjectNode record) {
        ObjectNode next = record.deepCopy();
        new TreeMap<>(numbers).forEach(next::put);
        if (span != null) {
            next.put("span", span);
            if (span.contains(",")) {
                next.put("coilType", WindingData.CoilType.CONCENTRIC.name());
            }
        }
        if (coilType != null) {
            next.put("coilType", coilType.name());
        }
        if (join != null) {
            next.put("connection", join.name());
        }
        if (sequence != null) {
            next.put("groupSequence", sequence);
        }
        if (turns.size() == 1) {
            next.put("turnsPerCoil", turns.get(0));
        } else if (!turns.isEmpty()) {
            next.remove("turnsPerCoil");
        }
        if (!wires.isEmpty()) {
            ArrayNode list = next.putArray("wire");
            wires.forEach(w -> list.addObject().put("size", w.size()).put("strands", w.strands()));
        }
        return next;
    }

    /** Collects what is said piece by piece. */
    static final class Builder {

        final Map<String, Integer> numbers = new TreeMap<>();
        final List<Integer> turns = new ArrayList<>();
        final List<Wire> wires = new ArrayList<>();
        WindingData.CoilType coilType;
        WindingData.Connection join;
        String span;
        String sequence;

        OneLine done() {
            return new OneLine(numbers, coilType, join, span, sequence, turns, wires);
        }
    }
}
