package org.copperbook.winding.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.winding.WindingPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a winding said in one line means; the meanings are those that the on-line help states. */
class OneLineReaderTest {

    private final OneLineReader reader = new OneLineReader(Words.of(WindingPage.class));

    private OneLine said(String line) {
        OneLineReader.Read read = reader.read(line);
        return assertInstanceOf(OneLineReader.Read.Said.class, read, read.toString()).line();
    }

    @ParameterizedTest
    @ValueSource(strings = {"48 slots 4 poles 1-11 x5 12 of 1.18 mm 2 circuits star",
        "48s4p1-11x5 12of1.18 2c y", "2c star 12 of 1,18mm x5 1\u201311 4 poles 48 slots",
        "48 SLOTS, 4 POLES, 1 - 11, 5 turns, 12 of 1.18, 2 circuits, Star"})
    void wordsMayBeShortenedAndStandInAnyOrder(String line) {
        assertEquals(new OneLine(Map.of("slots", 48, "poles", 4, "circuits", 2), null, WindingData.Connection.STAR,
                "1-11", null, List.of(5), List.of(new OneLine.Wire(12, "1.18 mm"))), said(line));
    }

    @Test
    void concentricSpansTurnsPerPlaceMixedWiresAndUnevenGroups() {
        OneLine line = said("36s 4p 1 layer 1-12,2-11, 3-10 x10/12/14 2 of 18 SWG 1 of awg 16 3-2-2-2 6 leads series delta");
        assertEquals("1-12, 2-11, 3-10", line.span());
        assertEquals(List.of(10, 12, 14), line.turns());
        assertEquals(List.of(new OneLine.Wire(2, "18 SWG"), new OneLine.Wire(1, "AWG 16")), line.wires());
        assertEquals("3-2-2-2", line.sequence());
        assertEquals(Map.of("slots", 36, "poles", 4, "layers", 1, "leads", 6), line.numbers());
        assertEquals(WindingData.Connection.SERIES_DELTA, line.join());
        ObjectNode record = line.into(JsonNodeFactory.instance.objectNode().put("turnsPerCoil", 9).put("note", "kept"));
        assertEquals("CONCENTRIC", record.path("coilType").asText());
        assertTrue(record.path("turnsPerCoil").isMissingNode(), "the turns differ from coil to coil");
        assertEquals("kept", record.path("note").asText());
    }

    @ParameterizedTest
    @CsvSource({"4p x170 1.60, 1.60 mm, 1", "4 poles 170t 2.00x4.00 mm, 2.00 \u00d7 4.00 mm, 1",
        "4p x170 2 of 1.6mm, 1.6 mm, 2", "4p 1 of 2 mm x170, 2 mm, 1"})
    void fieldWindings(String line, String size, int strands) {
        OneLine said = said(line);
        assertEquals(List.of(170), said.turns());
        assertEquals(List.of(new OneLine.Wire(strands, size)), said.wires());
    }

    @ParameterizedTest
    @ValueSource(strings = {"48 slots 4 poles about 5", "48", "1-11 x", "12 of", "48s 1.18 kg", "5 of 99 awg", ""})
    void whatIsNotUnderstoodIsSaidAndNotGuessed(String line) {
        assertInstanceOf(OneLineReader.Read.Wrong.class, reader.read(line));
    }
}
