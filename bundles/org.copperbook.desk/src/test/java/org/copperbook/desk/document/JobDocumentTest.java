package org.copperbook.desk.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.nameplate.Nameplate;
import org.junit.jupiter.api.Test;

class JobDocumentTest {

    private static final PartKey PLATE = PartKey.of(PartKind.NAMEPLATE);
    private final PartJson json = new PartJson();
    private final JobDocument document = opened("{\"schema\":1,\"maker\":\"Anvil\",\"voltageV\":400.0}");

    @Test
    void lettersTypedIntoOneFieldAreOneUndoStep() {
        document.set(PLATE, "/maker", TextNode.valueOf("B"));
        document.set(PLATE, "/maker", TextNode.valueOf("Br"));
        document.set(PLATE, "/maker", TextNode.valueOf("Bra"));
        assertEquals("Bra", plate().maker());
        assertEquals(Optional.of("/maker"), document.undo(PLATE));
        assertEquals("Anvil", plate().maker());
        assertFalse(document.canUndo(PLATE));
        assertEquals(Optional.of("/maker"), document.redo(PLATE));
        assertEquals("Bra", plate().maker());
    }

    @Test
    void leavingTheFieldEndsTheStep() {
        document.set(PLATE, "/maker", TextNode.valueOf("B"));
        document.closeStep(PLATE);
        document.set(PLATE, "/maker", TextNode.valueOf("C"));
        document.undo(PLATE);
        assertEquals("B", plate().maker());
    }

    @Test
    void undoGoesBackAsFarAsTheJobWasOpenedAndIsCleanThere() {
        for (int i = 0; i < 500; i++) {
            document.set(PLATE, i % 2 == 0 ? "/maker" : "/type", TextNode.valueOf("text " + i));
        }
        int steps = 0;
        while (document.undo(PLATE).isPresent()) {
            steps++;
        }
        assertEquals(500, steps);
        assertEquals("Anvil", plate().maker());
        assertFalse(document.dirty());
    }

    @Test
    void whatAPageChangedInAnotherPartIsTakenBackThereInItsTurn() {
        PartKey standing = PartKey.of(PartKind.STANDING);
        document.set(PLATE, "/maker", TextNode.valueOf("B"));
        document.change(standing, "/waiting", t -> {
            t.put("schema", 1).putObject("waiting").put("reason", "typed on its own page");
            return t;
        });
        document.changeFrom(PLATE, standing, "/closure", t -> {
            t.putObject("closure").put("how", "COLLECTED");
            return t;
        });
        document.set(PLATE, "/maker", TextNode.valueOf("C"));
        assertEquals(Optional.of("/maker"), document.undo(PLATE));
        assertEquals(Optional.of("/closure"), document.undo(PLATE), "the newest first");
        assertFalse(document.value(standing, "/closure").isObject());
        assertEquals(Optional.of("/maker"), document.undo(PLATE));
        assertFalse(document.canUndo(PLATE), "what was typed on the other page stays");
        assertTrue(document.canUndo(standing));
        document.redo(PLATE);
        assertEquals(Optional.of("/closure"), document.redo(PLATE));
        assertEquals(Optional.of("/maker"), document.redo(PLATE));
        assertEquals("C", plate().maker());
        assertEquals("COLLECTED", document.value(standing, "/closure/how").asText());
        assertEquals(Optional.of("/closure"), document.undo(standing), "its own page takes it back too");
    }

    @Test
    void typingAfterUndoForgetsWhatWasUndone() {
        document.set(PLATE, "/maker", TextNode.valueOf("B"));
        document.undo(PLATE);
        document.set(PLATE, "/type", TextNode.valueOf("T"));
        assertFalse(document.canRedo(PLATE));
    }

    @Test
    void aTextNotUnderstoodIsKeptAndTakesTheValueAway() {
        document.keepTyped(PLATE, "/voltageV", "4oo V");
        assertEquals(Optional.of("4oo V"), document.typed(PLATE, "/voltageV"));
        assertEquals(null, plate().voltageV());
        assertTrue(document.dirty(PLATE));
        document.undo(PLATE);
        assertEquals(400.0, plate().voltageV());
        assertEquals(Optional.empty(), document.typed(PLATE, "/voltageV"));
    }

    @Test
    void aValueTheRecordCannotHoldChangesNothing() {
        Optional<String> problem = document.set(PLATE, "/voltageV", TextNode.valueOf("high"));
        assertTrue(problem.isPresent());
        assertEquals(400.0, plate().voltageV());
        assertFalse(document.dirty());
    }

    @Test
    void aPartIsBegunByItsFirstValueAndNotByLookingAtIt() {
        PartKey key = PartKey.of(PartKind.INSPECTION);
        document.beginWith(key, json.mapper().createObjectNode().put("schema", 1));
        document.set(key, "/recommendedScope", null);
        assertTrue(document.part(key).isEmpty());
        assertFalse(document.dirty());
        document.set(key, "/recommendedScope", TextNode.valueOf("rewind"));
        assertTrue(document.part(key).isPresent());
        document.undo(key);
        assertTrue(document.part(key).isEmpty());
    }

    @Test
    void unknownFieldsOfANewerVersionSurviveTyping() throws Exception {
        JobDocument d = opened("{\"schema\":2,\"maker\":\"A\",\"colour\":\"green\"}");
        d.set(PLATE, "/maker", TextNode.valueOf("B"));
        assertEquals("green", json.tree(d.part(PLATE).orElseThrow()).path("colour").asText());
    }

    @Test
    void aRowMovedAmongTheOthersTakesItsOpenTextAlongAndIsOneStep() {
        PartKey key = PartKey.of(PartKind.INSPECTION);
        for (int i = 0; i < 4; i++) {
            document.insertRow(key, "/checklist", i, json.mapper().createObjectNode().put("point", "p" + i));
        }
        document.keepTyped(key, "/checklist/0/condition", "rotten");
        document.keepTyped(key, "/checklist/3/condition", "soft");
        document.moveRow(key, "/checklist", 0, 2);
        assertEquals(List.of("p1", "p2", "p0", "p3"), points(key));
        assertEquals(Optional.of("rotten"), document.typed(key, "/checklist/2/condition"));
        assertEquals(Optional.of("soft"), document.typed(key, "/checklist/3/condition"));
        document.moveRow(key, "/checklist", 3, 0);
        assertEquals(List.of("p3", "p1", "p2", "p0"), points(key));
        assertEquals(Optional.of("rotten"), document.typed(key, "/checklist/3/condition"));
        assertEquals(Optional.of("soft"), document.typed(key, "/checklist/0/condition"));
        document.undo(key);
        document.undo(key);
        assertEquals(List.of("p0", "p1", "p2", "p3"), points(key));
        assertEquals(Optional.of("rotten"), document.typed(key, "/checklist/0/condition"));
    }

    private List<String> points(PartKey key) {
        List<String> points = new ArrayList<>();
        document.rows(key, "/checklist").forEach(r -> points.add(r.path("point").asText()));
        return points;
    }

    @Test
    void aValueInPlaceOfAnotherTakesItOutInTheSameStep() {
        document.setInPlaceOf(PLATE, "/type", TextNode.valueOf("T"), "/maker");
        assertEquals(null, plate().maker());
        assertEquals("T", plate().type());
        document.setInPlaceOf(PLATE, "/type", null, "/voltageV");
        assertEquals(400.0, plate().voltageV(), "taking a value out leaves the other alone");
        document.undo(PLATE);
        assertEquals("Anvil", plate().maker());
    }

    @Test
    void rowsComeAndGoWithTheirOpenTexts() {
        PartKey key = PartKey.of(PartKind.INSPECTION);
        for (int i = 0; i < 3; i++) {
            document.insertRow(key, "/checklist", i, json.mapper().createObjectNode().put("point", "p" + i));
        }
        document.keepTyped(key, "/checklist/2/condition", "rotten");
        document.removeRow(key, "/checklist", 0);
        assertEquals(Optional.of("rotten"), document.typed(key, "/checklist/1/condition"));
        document.insertRow(key, "/checklist", 0, json.mapper().createObjectNode().put("point", "new"));
        assertEquals(Optional.of("rotten"), document.typed(key, "/checklist/2/condition"));
        document.removeRow(key, "/checklist", 2);
        assertEquals(Map.of(), document.draft(key).asTyped());
    }

    @Test
    void aBlockIsOneUndoStepAndMisfitsKeepTheirText() {
        int misfits = document.putBlock(PLATE, "/maker", t -> t, List.of(
                new CellEdit("/maker", TextNode.valueOf("B"), null, "B"),
                new CellEdit("/phases", null, "three", "three"),
                new CellEdit("/poles", IntNode.valueOf(4), null, "4"),
                new CellEdit("/leads", DoubleNode.valueOf(1.5), null, "1.5")));
        assertEquals(2, misfits);
        assertEquals("B", plate().maker());
        assertEquals(4, plate().poles());
        assertEquals("three", document.typed(PLATE, "/phases").orElseThrow());
        assertEquals("1.5", document.typed(PLATE, "/leads").orElseThrow());
        document.undo(PLATE);
        assertFalse(document.dirty());
    }

    @Test
    void savingLeavesWhatWasTypedMeanwhileUnsaved() {
        document.set(PLATE, "/maker", TextNode.valueOf("B"));
        PendingSave pending = document.pending().get(0);
        assertEquals(3, pending.basedOnRevision());
        document.set(PLATE, "/maker", TextNode.valueOf("C"));
        document.saved(PLATE, pending.part(), 4);
        assertTrue(document.dirty(PLATE));
        assertEquals(4, document.pending().get(0).basedOnRevision());
        document.saved(PLATE, document.part(PLATE).orElseThrow(), 5);
        assertFalse(document.dirty());
        assertTrue(document.canUndo(PLATE), "undo goes on over a save");
    }

    @Test
    void twoCopiesAreSettledFieldByField() throws Exception {
        document.set(PLATE, "/maker", TextNode.valueOf("Mine"));
        Part theirs = json.read(PLATE, "{\"schema\":1,\"maker\":\"Theirs\",\"voltageV\":690.0}");
        Conflict c = document.conflict(PLATE, theirs, 4, "anna", Instant.EPOCH);
        assertEquals(List.of("/maker", "/voltageV"),
                c.differences().stream().map(FieldDifference::pointer).sorted().toList());
        FieldDifference volts = c.differences().stream().filter(d -> d.pointer().equals("/voltageV")).findFirst()
                .orElseThrow();
        assertTrue(volts.onlyTheirs());
        assertTrue(document.pending().isEmpty(), "a part in conflict waits");
        assertEquals(Optional.empty(), document.settle(c, Set.of("/voltageV")));
        assertEquals("Mine", plate().maker());
        assertEquals(690.0, plate().voltageV());
        assertEquals(4, document.pending().get(0).basedOnRevision());
        assertTrue(document.conflicts().isEmpty());
    }

    @Test
    void aCopySavedElsewhereIsTakenOverOnlyWhenNothingIsChangedHere() throws Exception {
        Part theirs = json.read(PLATE, "{\"schema\":1,\"maker\":\"Theirs\"}");
        document.set(PLATE, "/maker", TextNode.valueOf("Mine"));
        document.takeOver(PLATE, theirs, 4);
        assertEquals("Mine", plate().maker());
        document.undo(PLATE);
        document.takeOver(PLATE, theirs, 4);
        assertEquals("Theirs", plate().maker());
        assertEquals(4, document.baseRevision(PLATE));
    }

    @Test
    void whatIsTypedIntoAnOpenCellReachesTheJournalWithoutAnUndoStep() {
        List<Change.What> told = new ArrayList<>();
        document.addListener(c -> told.add(c.what()));
        document.beingTyped(PLATE, "/type", "half a wo");
        assertEquals("half a wo", document.unsaved().get(PLATE).asTyped().get("/type"));
        assertEquals(List.of(Change.What.TYPING), told);
        assertFalse(document.canUndo(PLATE));
        document.typingEnded(PLATE);
        assertTrue(document.unsaved().isEmpty());
    }

    @Test
    void aDraftSurvivesTheJournal() {
        document.set(PLATE, "/maker", TextNode.valueOf("B"));
        document.keepTyped(PLATE, "/voltageV", "4oo");
        DraftText text = new DraftText(json);
        Draft back = text.read(PLATE, text.write(document.draft(PLATE))).orElseThrow();
        assertEquals(document.draft(PLATE), back);
        assertEquals(Optional.empty(), text.read(PLATE, "{\"part\":{\"schema\":"));
        assertEquals(Optional.empty(), text.read(PLATE, "{\"part\":{\"schema\":1,\"phases\":\"x\"}}"));
    }

    private Nameplate plate() {
        return document.part(PLATE, Nameplate.class).orElseThrow();
    }

    private JobDocument opened(String plate) {
        try {
            Job job = new Job("id", "2026-0001", Map.of(PLATE, json.read(PLATE, plate)));
            return new JobDocument(job, Map.of(PLATE, 3), json);
        } catch (org.copperbook.jobs.json.BadRecordException e) {
            throw new IllegalStateException(e);
        }
    }
}
