package org.copperbook.winding.memory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Taking over fills what is empty, never what was read on the machine, and says so until somebody confirms. */
class ProposalTest {

    private static final Instant NOW = Instant.parse("2026-11-25T10:00:00Z");
    private static final String PAST = "{'schema':1,'role':'main-stator','slots':48,'poles':4,'span':'1-11',"
            + "'turnsPerCoil':5,'boreM':0.3,'meanTurnM':1.06,'note':'its own','copperRemovedKg':60.0,"
            + "'wire':[{'size':'1.18 mm','strands':12,'bareMm':1.181,'coveredMm':1.27}],"
            + "'groups':[{'number':1,'phase':'U','coils':[{'goSlot':1,'returnSlot':11,'turns':5}],"
            + "'resistance':{'x':1}}],'counts':[{'ordinal':1}],'readings':[{}]}";

    private static ObjectNode tree(String json) {
        try {
            return (ObjectNode) new ObjectMapper().readTree(json.replace('\'', '"'));
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    private static Proposal.Outcome take(ObjectNode tree, String past, boolean same) {
        return Proposal.take(tree, tree(past), "old card A 1", same, "anna", NOW);
    }

    @Test
    void whatIsEmptyIsFilledAndMarked() {
        Proposal.Outcome o = take(tree("{'schema':1,'role':'main-stator','asWound':false,'phases':3}"), PAST, false);
        assertEquals(List.of("slots", "poles", "span", "turnsPerCoil", "meanTurnM", "wire", "groups"), o.filled());
        assertEquals("old card A 1", o.tree().path("proposedFrom").asText());
        assertEquals("anna", o.tree().at("/takenOver/0/by").asText());
        assertEquals(7, o.tree().at("/takenOver/0/fields").size());
        assertTrue(Proposal.stands(o.tree()));
    }

    @Test
    void readingsOfTheOtherMachineStayThere() {
        ObjectNode t = take(tree("{'schema':1}"), PAST, true).tree();
        assertTrue(t.at("/groups/0/resistance").isMissingNode());
        assertTrue(t.at("/wire/0/bareMm").isMissingNode());
        for (String own : List.of("note", "counts", "readings", "copperRemovedKg")) {
            assertFalse(t.has(own), own);
        }
        assertEquals(0.3, t.path("boreM").asDouble(), "of the same machine the core is the same");
    }

    @Test
    void whatWasReadOnThisMachineIsNeverOverwritten() {
        Proposal.Outcome o = take(tree("{'schema':1,'span':'1-10','slots':48}"), PAST, false);
        assertEquals("1-10", o.tree().path("span").asText());
        assertEquals(List.of("span"), o.kept());
        assertFalse(o.tree().has("groups"), "a coil list of another span does not come along");
    }

    @Test
    void aSecondProposalReplacesTheFirstAndNothingElse() {
        ObjectNode first = take(tree("{'schema':1,'turnsPerCoil':6}"), PAST, false).tree();
        Proposal.Outcome o = Proposal.take(first, tree("{'slots':36,'poles':4,'span':'1-8','turnsPerCoil':9}"),
                "job 1", false, "ben", NOW);
        assertEquals(36, o.tree().path("slots").asInt());
        assertEquals("1-8", o.tree().path("span").asText());
        assertEquals(6, o.tree().path("turnsPerCoil").asInt(), "counted on the machine");
        assertEquals(1, o.tree().path("takenOver").size());
        assertEquals("job 1", o.tree().path("proposedFrom").asText());
    }

    @Test
    void confirmingKeepsWhoAndWhen() {
        ObjectNode t = Proposal.confirmed(take(tree("{'schema':1}"), PAST, false).tree(), "carl", NOW);
        assertFalse(Proposal.stands(t));
        assertEquals("carl", t.at("/takenOver/0/confirmedBy").asText());
        assertEquals("2026-11-25T10:00:00Z", t.at("/takenOver/0/confirmedAt").asText());
        Proposal.Outcome later = take(t, "{'turnsPerCoil':7,'jumper':'adjacent'}", false);
        assertEquals(List.of("turnsPerCoil"), later.kept(), "what was confirmed is evidence now");
        assertEquals(2, later.tree().path("takenOver").size());
    }

    @Test
    void aMarkWithoutHistoryCanBeConfirmedToo() {
        ObjectNode t = Proposal.confirmed(tree("{'schema':1,'proposedFrom':'the winding as found'}"), "carl", NOW);
        assertFalse(Proposal.stands(t));
        assertEquals("the winding as found", t.at("/takenOver/0/from").asText());
    }
}
