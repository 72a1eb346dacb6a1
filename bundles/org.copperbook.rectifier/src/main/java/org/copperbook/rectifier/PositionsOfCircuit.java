package org.copperbook.rectifier;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Iterator;
import java.util.Set;
import org.copperbook.jobs.rectifier.DiodePosition;
import org.copperbook.jobs.rectifier.RectifierSet.Circuit;

/** The positions that a circuit has: three in half wave, six on two plates in full wave. */
final class PositionsOfCircuit {

    private static final String[] LEADS = {"U", "V", "W"};
    /** What a row has before anybody measured or fitted anything there. */
    private static final Set<String> LAID_OUT = Set.of("position", "plate", "lead", "basePolarity");

    private PositionsOfCircuit() {
    }

    /** Fits the rows to the circuit. A row that holds more than its place stays, whatever the circuit. */
    static ObjectNode fit(ObjectNode set, Circuit circuit) {
        ArrayNode rows = set.withArray("/positions");
        for (int i = rows.size() - 1; i >= 0 && rows.size() > circuit.diodes(); i--) {
            if (isEmpty(rows.get(i))) {
                rows.remove(i);
            }
        }
        for (int i = 0; i < circuit.diodes() && rows.size() < circuit.diodes(); i++) {
            String position = "D" + (i + 1);
            if (!has(rows, position)) {
                ObjectNode row = rows.insertObject(Math.min(i, rows.size())).put("position", position)
                        .put("lead", LEADS[i % LEADS.length]);
                if (circuit == Circuit.FULL_WAVE) {
                    row.put("plate", (i < LEADS.length ? DiodePosition.Plate.POSITIVE
                            : DiodePosition.Plate.NEGATIVE).name());
                }
            }
        }
        return set;
    }

    private static boolean has(ArrayNode rows, String position) {
        for (JsonNode row : rows) {
            if (position.equalsIgnoreCase(row.path("position").asText().strip())) {
                return true;
            }
        }
        return false;
    }

    private static boolean isEmpty(JsonNode row) {
        for (Iterator<String> names = row.fieldNames(); names.hasNext();) {
            if (!LAID_OUT.contains(names.next())) {
                return false;
            }
        }
        return true;
    }
}
