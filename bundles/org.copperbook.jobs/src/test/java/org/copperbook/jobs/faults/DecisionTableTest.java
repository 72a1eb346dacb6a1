package org.copperbook.jobs.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.copperbook.calc.faults.Diagnosis;
import org.copperbook.calc.faults.FaultFinder;
import org.copperbook.calc.faults.FaultKnowledge;
import org.copperbook.calc.faults.Finding;
import org.copperbook.jobs.json.PartJson;
import org.junit.jupiter.api.Test;

/** The decision table of the separate-excitation run, row by row: common practice, no source. */
class DecisionTableTest {

    private static final FaultKnowledge KNOWN = DefaultFaultTables.load(new PartJson()).knowledge();
    private static final Set<String> FIVE =
            Set.of("main-stator", "main-rotor", "exciter-stator", "exciter-rotor", "rectifier");

    private static Diagnosis after(String... findings) {
        return new FaultFinder(KNOWN).diagnose(List.of(findings).stream().map(FaultTablesReading::finding).toList());
    }

    private static Diagnosis ran(String outcome) {
        return after("separate-excitation=" + outcome);
    }

    private static List<String> ranked(Diagnosis d) {
        return d.suspects().stream().map(r -> r.suspect().id()).toList();
    }

    private static List<String> asked(Diagnosis d) {
        return d.nextTests().stream().filter(Diagnosis.NextTest::byPractice).map(n -> n.test().id()).toList();
    }

    private static double probability(Diagnosis d, String suspect) {
        return d.suspects().stream().filter(r -> r.suspect().id().equals(suspect)).findFirst().orElseThrow()
                .probability();
    }

    @Test
    void rightAndBalancedClearsTheFiveAndLeavesRegulatorSupplyAndResidual() {
        Diagnosis d = ran("normal-balanced");
        assertEquals(Set.of("regulator", "wiring", "residual-field"), new HashSet<>(ranked(d).subList(0, 3)));
        assertEquals("regulator", ranked(d).get(0));
        assertEquals(FIVE, new HashSet<>(d.practice().orElseThrow().sound()));
        FIVE.forEach(s -> assertTrue(probability(d, s) < 0.04, s));
        assertEquals(Set.of("regulator-supply", "residual-voltage", "wiring-check"), new HashSet<>(asked(d)));
    }

    @Test
    void lowAndBalancedClearsTheStatorAndChecksInOrderOfEase() {
        Diagnosis d = ran("low-balanced");
        assertEquals(List.of("rectifier", "main-rotor", "exciter-stator", "exciter-rotor"), ranked(d).subList(0, 4));
        assertEquals(List.of("main-stator"), d.practice().orElseThrow().sound());
        assertTrue(probability(d, "main-stator") < 0.02);
        assertEquals(List.of("diodes-isolated", "main-rotor-resistance", "exciter-stator-resistance",
                "exciter-rotor-resistance"), d.nextTests().stream().limit(4).map(n -> n.test().id()).toList());
    }

    @Test
    void theOrderGoesOnAfterEachCheck() {
        Diagnosis d = after("separate-excitation=low-balanced", "diodes-isolated=all-good");
        assertEquals("main-rotor-resistance", d.nextTests().get(0).test().id());
    }

    @Test
    void rightButUnbalancedSuspectsTheMainStator() {
        Diagnosis d = ran("normal-unbalanced");
        assertEquals("main-stator", ranked(d).get(0));
        assertTrue(probability(d, "main-stator") > 0.5);
        assertTrue(d.nextTests().get(0).test().id().startsWith("main-stator-"));
    }

    @Test
    void lowAndUnbalancedLeavesAllFiveAndMeasuresEach() {
        Diagnosis d = ran("low-unbalanced");
        assertEquals(FIVE, new HashSet<>(ranked(d).subList(0, 5)));
        assertEquals(Set.of("diodes-isolated", "main-rotor-resistance", "exciter-stator-resistance",
                "exciter-rotor-resistance", "main-stator-resistance"), new HashSet<>(asked(d)));
    }

    @Test
    void noneIsNoVerdictOnTheStator() {
        Diagnosis d = ran("none");
        assertEquals(Set.of("exciter-stator", "exciter-rotor", "rectifier", "main-rotor", "wiring"),
                new HashSet<>(ranked(d).subList(0, 5)));
        assertEquals(List.of(), d.practice().orElseThrow().sound());
        assertTrue(probability(d, "main-stator") > 0.01, "not cleared");
        assertTrue(asked(d).contains("exciter-stator-resistance"));
    }

    @Test
    void highAsksForConnectionAndSpeedBeforeAnyVerdict() {
        Diagnosis d = ran("high");
        assertEquals(Set.of("wiring", "speed"), new HashSet<>(ranked(d).subList(0, 2)));
        assertEquals(List.of(), d.practice().orElseThrow().sound());
        assertEquals(Set.of("frequency", "wiring-check"), new HashSet<>(asked(d)));
    }

    /** The table holds within 4 % of nominal speed. */
    @Test
    void theTableIsSilentOutsideItsSpeedBand() {
        assertTrue(after("separate-excitation=low-balanced", "frequency=low").practice().isEmpty());
        assertTrue(after("separate-excitation=low-balanced", "frequency=right").practice().isPresent());
        assertTrue(after(new String[] {"complaint=no-output"}).practice().isEmpty());
        assertEquals(new Finding("a", "b"), FaultTablesReading.finding(" a = b "));
    }
}
