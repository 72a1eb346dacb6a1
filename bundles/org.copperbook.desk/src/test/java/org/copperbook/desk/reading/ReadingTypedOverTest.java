package org.copperbook.desk.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.copperbook.desk.entry.Typed;
import org.junit.jupiter.api.Test;

class ReadingTypedOverTest {

    private final ObjectMapper mapper = new ObjectMapper();
    private final ReadingEntry entry = ReadingEntry.resistance(quantity -> mapper.createObjectNode()
            .put("id", "new").put("quantity", quantity.name()).put("windingCelsius", 20.0));

    @Test
    void aFigureTypedOverAnotherKeepsTheConditionsBesideIt() {
        ObjectNode before = (ObjectNode) read("0.42");
        before.put("id", "old").put("windingCelsius", 31.5).put("instrument", "bridge");
        JsonNode after = entry.over(before, read("0.43"));
        assertEquals(0.43, after.at("/observed/value").doubleValue());
        assertEquals(31.5, after.path("windingCelsius").doubleValue());
        assertEquals("bridge", after.path("instrument").asText());
        assertEquals("old", after.path("id").asText());
    }

    @Test
    void aTemperatureTypedFirstStaysWhenTheFigureComes() {
        ObjectNode begun = mapper.createObjectNode().put("windingCelsius", 18.0);
        JsonNode after = entry.over(begun, read("0.42"));
        assertEquals(18.0, after.path("windingCelsius").doubleValue());
        assertEquals("RESISTANCE", after.path("quantity").asText());
        assertEquals("new", after.path("id").asText());
    }

    @Test
    void theFirstFigureTakesTheConditionsOfNow() {
        JsonNode after = entry.over(MissingNode.getInstance(), read("OL"));
        assertEquals(20.0, after.path("windingCelsius").doubleValue());
        assertTrue(after.at("/observed/value").isMissingNode());
    }

    private JsonNode read(String text) {
        return assertInstanceOf(Typed.Understood.class, entry.read(text)).node();
    }
}
