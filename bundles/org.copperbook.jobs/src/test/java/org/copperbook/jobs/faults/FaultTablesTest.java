package org.copperbook.jobs.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.Plausibility;
import org.copperbook.jobs.json.PartJson;
import org.junit.jupiter.api.Test;

class FaultTablesTest {

    private static final PartJson JSON = new PartJson();
    private static final PartKey KEY = PartKey.of(PartKind.FAULT_TABLES);

    private static FaultTables edited(Consumer<ObjectNode> edit) throws Exception {
        ObjectNode tree = JSON.tree(DefaultFaultTables.load(JSON));
        edit.accept(tree);
        return (FaultTables) JSON.read(KEY, tree);
    }

    private static ObjectNode outcome(ObjectNode tree, int test, int outcome) {
        return (ObjectNode) tree.at("/tests/" + test + "/outcomes/" + outcome);
    }

    @Test
    void theShippedTablesAreSoundAndSayTheirOrigin() throws Exception {
        FaultTables shipped = DefaultFaultTables.load(JSON);
        assertEquals(List.of(), shipped.problems());
        assertTrue(shipped.origin().contains("common practice"));
        assertEquals(10, shipped.suspects().size());
        assertEquals(shipped, JSON.read(KEY, JSON.write(shipped)), "nothing is lost on the way through a file");
    }

    @Test
    void everySlipIsSaidWithItsPlace() throws Exception {
        FaultTables bad = edited(t -> {
            t.put("origin", " ");
            t.put("settledAt", 0.3);
            ((ObjectNode) t.at("/suspects/0")).put("share", 0.2);
            ((ObjectNode) outcome(t, 1, 0).get("likelihoods")).put("speed", 1.5);
            ((ObjectNode) outcome(t, 2, 0).get("likelihoods")).put("speed", 0.2);
            ((ObjectNode) outcome(t, 3, 0).get("likelihoods")).remove("wiring");
            ((ObjectNode) outcome(t, 3, 1).get("likelihoods")).put("gearbox", 0.1);
            ((ArrayNode) t.at("/practice/0/checks")).add("tea-leaves");
        });
        String said = String.join("\n", bad.problems());
        for (String part : List.of("do not state their origin", "settledAt is 0.3", "add up to 1.1, not 1",
                "Test frequency, outcome right: the likelihood for speed is 1.5",
                "Test separate-excitation: the likelihoods for speed add up to 1.1, not 1",
                "Test regulator-supply, outcome present: the likelihood for wiring is missing",
                "outcome missing: gearbox is not one of the suspects",
                "asks for tea-leaves")) {
            assertTrue(said.contains(part), part + " in\n" + said);
        }
        assertThrows(IllegalStateException.class, bad::knowledge);
        assertEquals(bad.problems().size(), Plausibility.impossible(KEY, bad).size(), "refused when taken in");
    }

    @Test
    void brokenTablesOfTheShopAreSaidAndTheShippedOnesRank() throws Exception {
        FaultTables bad = edited(t -> t.put("settledAt", 0.3));
        FaultReport r = FaultReport.of(FaultFinding.none(), new PickedReadings(Map.of(), List.of()), bad);
        assertTrue(String.join("\n", r.notes()).contains("settledAt is 0.3"), r.notes().toString());
        assertEquals(10, r.suspects().size());
    }

    @Test
    void theShopsOwnTablesRank() throws Exception {
        FaultTables own = edited(t -> {
            ((ObjectNode) t.at("/suspects/0")).put("share", 0.22);
            ((ObjectNode) t.at("/suspects/4")).put("share", 0.10);
        });
        FaultReport r = FaultReport.of(FaultFinding.none(), new PickedReadings(Map.of(), List.of()), own);
        assertEquals("main-stator", r.suspects().get(0).id());
    }

    @Test
    void anAnswerGoesBeforeAReadingAndSymptomsCount() {
        FaultFinding told = new FaultFinding(1, List.of("low-output"), Map.of("diodes-isolated", "one-shorted"), null, null);
        PickedReadings picked = new PickedReadings(Map.of("diodes-isolated", new PickedReadings.Picked("all-good", "x"),
                "main-rotor-resistance", new PickedReadings.Picked("agrees", "resistance as found")), List.of());
        FaultReport r = FaultReport.of(told, picked, DefaultFaultTables.load(JSON));
        assertEquals(3, r.taken().size());
        assertEquals("rectifier", r.suspects().get(0).id());
        assertTrue(r.suspects().get(0).speaksFor().get(0).contains("one or more low both ways"));
        FaultReport.SuspectLine rotor = r.suspects().stream().filter(s -> s.id().equals("main-rotor")).findFirst()
                .orElseThrow();
        assertTrue(rotor.speaksAgainst().toString().contains("Resistance of the main rotor"), rotor.toString());
        assertTrue(r.next().isEmpty() || !r.next().get().cautions().isEmpty());
    }

    @Test
    void theNextStepShowsItsCautions() {
        FaultFinding told = new FaultFinding(1, List.of("low-output"), Map.of("frequency", "right"), null, null);
        for (FaultTables.TestRow t : DefaultFaultTables.load(JSON).tests()) {
            assertTrue(t.id().equals(FaultFinding.SYMPTOMS) || !t.cautions().isEmpty(), t.id());
        }
        FaultReport.NextStep next = FaultReport.of(told, new PickedReadings(Map.of(), List.of()),
                DefaultFaultTables.load(JSON)).next().orElseThrow();
        assertTrue(next.minutes() > 0 && !next.cautions().isEmpty(), next.toString());
    }

    @Test
    void unknownAnswersAreSaidAndLeftOut() {
        FaultFinding told = new FaultFinding(1, List.of("sings"), Map.of("moon", "full"), null, null);
        FaultReport r = FaultReport.of(told, new PickedReadings(Map.of(), List.of()), DefaultFaultTables.load(JSON));
        assertEquals(2, r.notes().size());
        assertEquals("complaint", r.next().orElseThrow().test());
    }
}
