package org.copperbook.sheets.winding;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.calc.winding.Coil;
import org.copperbook.calc.winding.Winding;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;

/** Captured windings for the tests of the drawings. */
final class SampleWinding {

    private static final PartJson JSON = new PartJson();

    private final ObjectNode tree = JSON.mapper().createObjectNode();
    private final WindingRole role;

    SampleWinding(WindingRole role) {
        this.role = role;
        tree.put("schema", 1).put("role", role.word()).put("asWound", false);
    }

    SampleWinding put(String field, int value) {
        tree.put(field, value);
        return this;
    }

    SampleWinding put(String field, String value) {
        tree.put(field, value);
        return this;
    }

    /** The coils of a generated winding; every n-th group of a phase goes into the same circuit. */
    SampleWinding coils(Winding winding, int circuits) {
        tree.put("slots", winding.slots()).put("poles", winding.poles()).put("phases", winding.phases())
                .put("layers", winding.layers()).put("circuits", circuits);
        Map<Integer, Integer> seen = new HashMap<>();
        for (int number : winding.groups()) {
            List<Coil> coils = winding.coilsOfGroup(number);
            Coil first = coils.get(0);
            ArrayNode list = group(number, "UVW".substring(first.phase() - 1, first.phase()),
                    circuits > 1 ? (seen.merge(first.phase(), 1, Integer::sum) - 1) % circuits + 1 : null, first.sense() < 0);
            coils.forEach(c -> list.addObject().put("goSlot", c.goSlot()).put("returnSlot", c.returnSlot())
                    .put("turns", (int) c.turns()));
        }
        return this;
    }

    /** One group; returns its coils to add to. */
    ArrayNode group(int number, String phase, Integer circuit, boolean reversed) {
        ObjectNode group = tree.withArray("groups").addObject().put("number", number).put("phase", phase)
                .put("reversed", reversed);
        if (circuit != null) {
            group.put("circuit", circuit);
        }
        return group.putArray("coils");
    }

    WindingData data() {
        try {
            return (WindingData) JSON.read(PartKey.windingAsFound(role), tree);
        } catch (BadRecordException e) {
            throw new IllegalStateException(e);
        }
    }
}
