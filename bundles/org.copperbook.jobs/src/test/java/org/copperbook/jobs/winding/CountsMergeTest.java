package org.copperbook.jobs.winding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Two people who count one winding at the same time: both counts are kept, whoever saves first. */
class CountsMergeTest {

    private static final String ANNA = "{'ordinal':1,'by':'anna','groups':[{'group':1,'turns':[9,9]}],'strands':4}";
    private static final String BEN = "{'ordinal':1,'by':'ben','open':true,'groups':[{'group':1,'turns':[8]}]}";

    @Test
    void bothCountsAreKeptAndTheOneSavedFirstKeepsItsNumber() throws Exception {
        assertEquals(Optional.of(winding("36", ANNA, BEN.replace("'ordinal':1", "'ordinal':2"))),
                CountsMerge.of(winding("36"), winding("36", BEN), winding("36", ANNA)));
    }

    @Test
    void whatOnlyOneSideChangedBesidesIsKept() throws Exception {
        assertEquals(Optional.of(winding("48", ANNA, BEN.replace("'ordinal':1", "'ordinal':2"))),
                CountsMerge.of(winding("36"), winding("36", BEN), winding("48", ANNA)));
        assertEquals(Optional.of(winding("48", ANNA, BEN.replace("'ordinal':1", "'ordinal':2"))),
                CountsMerge.of(winding("36"), winding("48", BEN), winding("36", ANNA)));
    }

    @Test
    void countsThatGoOnAreBothCarriedOn() throws Exception {
        String begun = BEN.replace("'ordinal':1", "'ordinal':2");
        String further = begun.replace("[8]", "[8,7]");
        String corrected = ANNA.replace("9,9", "9,10");
        assertEquals(Optional.of(winding("36", corrected, further)),
                CountsMerge.of(winding("36", ANNA, begun), winding("36", ANNA, further), winding("36", corrected, begun)));
    }

    @Test
    void nobodysCountIsChosenByGuess() throws Exception {
        String other = ANNA.replace("9,9", "7,7");
        String third = ANNA.replace("9,9", "5,5");
        assertEquals(Optional.empty(), CountsMerge.of(winding("36", ANNA), winding("36", other), winding("36", third)),
                "one person's count changed in both");
        assertEquals(Optional.empty(), CountsMerge.of(winding("36"), winding("24", ANNA), winding("48", BEN)),
                "more than counts changed in both");
        assertEquals(Optional.empty(), CountsMerge.of(winding("36"), winding("36", ANNA, other), winding("36", BEN)),
                "a person who counted twice");
    }

    private static ObjectNode winding(String slots, String... counts) throws Exception {
        String list = counts.length == 0 ? "" : ",'counts':[" + String.join(",", counts) + "]";
        JsonNode tree = new ObjectMapper().readTree(("{'schema':1,'slots':" + slots + list + "}").replace('\'', '"'));
        return (ObjectNode) tree;
    }
}
