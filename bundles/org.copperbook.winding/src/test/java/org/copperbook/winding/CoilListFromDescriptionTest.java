package org.copperbook.winding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.junit.jupiter.api.Test;

class CoilListFromDescriptionTest {

    private final PartJson json = new PartJson();
    private final ObjectNode wave = json.mapper().createObjectNode().put("schema", 1).put("role", "motor-rotor")
            .put("asWound", false).put("slots", 36).put("poles", 4).put("phases", 3).put("layers", 2).put("span", "1-10")
            .put("turnsPerCoil", 2).put("coilType", "WAVE");

    private ObjectNode laidOut() throws Exception {
        return new CoilListFromDescription().laidOut(wave, data());
    }

    private WindingData data() throws BadRecordException {
        return (WindingData) json.read(PartKey.windingAsFound(WindingRole.MOTOR_ROTOR), wave);
    }

    @Test
    void aWaveIsLaidOutInTheOrderOfItsPath() throws Exception {
        ObjectNode laid = laidOut();
        assertEquals(6, laid.path("groups").size());
        assertEquals("1-10 \u00d72, 19-28 \u00d72, 2-11 \u00d72, 20-29 \u00d72, 3-12 \u00d72, 21-30 \u00d72",
                new CoilsEntry().show(laid.path("groups").path(0).path("coils")));
    }

    @Test
    void aWaveWhosePathTheDescriptionDoesNotGiveIsRefusedInWords() {
        wave.put("slots", 30).put("span", "1-8");
        CoilListFromDescription.NotEnough refused =
                assertThrows(CoilListFromDescription.NotEnough.class, this::laidOut);
        assertTrue(refused.getMessage().contains("order of the path"), refused.getMessage());
    }
}
