package org.copperbook.winding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.copperbook.winding.count.CountedTurnsEntry;
import org.copperbook.desk.entry.Entry;
import org.copperbook.desk.entry.Typed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Coils, counts and wires as a winder types them. */
class WindingEntriesTest {

    private final ObjectMapper mapper = new ObjectMapper();

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "1-11 x5, 2-12 x5 | [{'goSlot':1,'returnSlot':11,'turns':5},{'goSlot':2,'returnSlot':12,'turns':5}]",
        "1-11, 2-12 x5    | [{'goSlot':1,'returnSlot':11,'turns':5},{'goSlot':2,'returnSlot':12,'turns':5}]",
        "47/9 X7 -        | [{'goSlot':47,'returnSlot':9,'reversed':true,'turns':7}]",
        "x170             | [{'turns':170}]"})
    void coilsAreReadAsTyped(String typed, String json) throws Exception {
        assertEquals(mapper.readTree(json.replace('\'', '"')), understood(new CoilsEntry(), typed));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "1: 5 5 5; 2: 5 6 5 | [{'group':1,'turns':[5,5,5]},{'group':2,'turns':[5,6,5]}]",
        "1-3: 4 4           | [{'group':1,'turns':[4,4]},{'group':2,'turns':[4,4]},{'group':3,'turns':[4,4]}]"})
    void countsAreReadAsTyped(String typed, String json) throws Exception {
        assertEquals(mapper.readTree(json.replace('\'', '"')), understood(new CountedTurnsEntry(), typed));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "12 of 1.18 mm, 2 of 1.25 mm | [{'size':'1.18 mm','strands':12},{'size':'1.25 mm','strands':2}]",
        "3 x 0,95 mm                 | [{'size':'0,95 mm','strands':3}]",
        "AWG 18                      | [{'size':'AWG 18','strands':1}]"})
    void wiresAreReadAsTyped(String typed, String json) throws Exception {
        assertEquals(mapper.readTree(json.replace('\'', '"')), understood(new WiresEntry(), typed));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1-11 x5, 2-12 x5", "x170", "1-9 x8 -", "1-12 x4, 2-11 x4, 3-10 x3"})
    void whatIsShownReadsAsTheSameCoils(String typed) {
        JsonNode coils = understood(new CoilsEntry(), typed);
        assertEquals(coils, understood(new CoilsEntry(), new CoilsEntry().show(coils)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1: 5 5 5; 2: 5 6 5", "1-12: 6 6 6", "1: 4; 3: 4"})
    void whatIsShownReadsAsTheSameCounts(String typed) {
        JsonNode counts = understood(new CountedTurnsEntry(), typed);
        assertEquals(counts, understood(new CountedTurnsEntry(), new CountedTurnsEntry().show(counts)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"five", "1-11 by 5", "1-11 x5,, 2-12 x5", "1 x5"})
    void aTextThatIsNoCoilIsRefusedInWords(String typed) {
        assertInstanceOf(Typed.Wrong.class, new CoilsEntry().read(typed));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "1: ", "one: 5", "1: 99999999999", "1: 5 x"})
    void aTextThatIsNoCountIsRefusedInWords(String typed) {
        assertInstanceOf(Typed.Wrong.class, new CountedTurnsEntry().read(typed));
    }

    @Test
    void groupsCountedAlikeAreShownAsOneRun() {
        JsonNode counts = understood(new CountedTurnsEntry(), "1: 6 6; 2: 6 6; 3: 6 6; 4: 6 7");
        assertEquals("1-3: 6 6; 4: 6 7", new CountedTurnsEntry().show(counts));
    }

    private static JsonNode understood(Entry entry, String typed) {
        return assertInstanceOf(Typed.Understood.class, entry.read(typed), typed).node();
    }
}
