package org.copperbook.desk.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.PartJson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Undo and redo go back to the beginning of the session and forward to its end, however many steps that are. */
class ManyStepsTest {

    private static final PartKey BOOKING = PartKey.of(PartKind.BOOKING);
    private static final int STEPS = 5_000;
    private static final List<String> FIELDS = List.of("/customer", "/machine", "/tag", "/reportedFault", "/arrivedBy");

    private final PartJson json = new PartJson();
    private final JobDocument document = new JobDocument(new Job("job", "2026-0099", Map.of()), Map.of(), json);

    @ParameterizedTest
    @ValueSource(longs = {1, 20261125, 77})
    void everyStepOfALongSessionIsTakenBackAndDoneAgain(long seed) {
        Random random = new Random(seed);
        List<ObjectNode> states = new ArrayList<>();
        states.add(document.tree(BOOKING).deepCopy());
        for (int i = 0; i < STEPS; i++) {
            step(random, i);
            states.add(document.tree(BOOKING).deepCopy());
        }
        for (int i = STEPS; i > 0; i--) {
            assertEquals(states.get(i), document.tree(BOOKING), "after step " + i);
            assertTrue(document.undo(BOOKING).isPresent(), "step " + i + " can be taken back");
        }
        assertEquals(states.get(0), document.tree(BOOKING));
        assertFalse(document.canUndo(BOOKING));
        for (int i = 1; i <= STEPS; i++) {
            assertTrue(document.redo(BOOKING).isPresent(), "step " + i + " can be done again");
            assertEquals(states.get(i), document.tree(BOOKING), "again after step " + i);
        }
        assertFalse(document.canRedo(BOOKING));
    }

    @Test
    void savingInBetweenTakesNothingAway() {
        for (int i = 0; i < 1_200; i++) {
            document.set(BOOKING, "/tag", TextNode.valueOf("T-" + i));
            document.closeStep(BOOKING);
            if (i % 100 == 0) {
                document.saved(BOOKING, document.draft(BOOKING).part(), i / 100 + 1);
            }
        }
        int back = 0;
        while (document.undo(BOOKING).isPresent()) {
            back++;
        }
        assertEquals(1_200, back);
    }

    /** A field, a row put in, or a row taken out; every step changes something. */
    private void step(Random random, int i) {
        int rows = document.rows(BOOKING, "/parts").size();
        int kind = random.nextInt(4);
        if (kind == 0 || kind == 1 && rows == 0) {
            document.insertRow(BOOKING, "/parts", random.nextInt(rows + 1),
                    json.mapper().createObjectNode().put("name", "part " + i));
        } else if (kind == 1) {
            document.removeRow(BOOKING, "/parts", random.nextInt(rows));
        } else {
            document.set(BOOKING, FIELDS.get(random.nextInt(FIELDS.size())), TextNode.valueOf("text " + i));
            document.closeStep(BOOKING);
        }
    }
}
