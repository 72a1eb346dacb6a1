package org.copperbook.jobs.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.faults.Diagnosis;
import org.copperbook.calc.faults.FaultFinder;
import org.copperbook.calc.faults.FaultKnowledge;
import org.copperbook.calc.faults.FaultTest;
import org.copperbook.calc.faults.Finding;
import org.copperbook.jobs.json.PartJson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FaultFinderTest {
    private static final FaultKnowledge KNOWN = DefaultFaultTables.load(new PartJson()).knowledge();
    private static final FaultFinder FINDER = new FaultFinder(KNOWN);

    private static Diagnosis after(String... findings) {
        List<Finding> list = new ArrayList<>();
        for (String finding : findings) {
            list.add(new Finding(finding.split("=")[0], finding.split("=")[1]));
        }
        return FINDER.diagnose(list);
    }

    /** Common practice: a sound separate-excitation run clears stator, rotors and rectifier together. */
    @Test
    void soundRunClearsTheRotatingParts() {
        Diagnosis diagnosis = after("frequency=right", "separate-excitation=normal-balanced");
        double cleared = diagnosis.suspects().stream()
                .filter(r -> List.of("main-stator", "main-rotor", "exciter-stator", "exciter-rotor", "rectifier")
                .contains(r.suspect().id()))
                .mapToDouble(Diagnosis.Ranked::probability).sum();
        assertTrue(cleared < 0.12, "" + cleared);
    }

    @Test
    void aShortedDiodeSettlesIt() {
        Diagnosis diagnosis = after("complaint=low-output", "separate-excitation=low-balanced",
                "diodes-isolated=one-shorted");
        assertEquals("rectifier", diagnosis.suspects().get(0).suspect().id());
        assertTrue(diagnosis.suspects().get(0).probability() > 0.9);
        assertTrue(diagnosis.uncertaintyBits() < 0.6);
    }

    /** Bayes' rule on two findings, worked by hand from the table: 0.22 x 0.65 x 0.55 and so on. */
    @Test
    void probabilitiesFollowBayesRule() {
        double[] joint = {0.10 * .05 * .02, 0.09 * .62 * .02, 0.08 * .55 * .02, 0.07 * .50 * .03, 0.22 * .65 * .55,
            0.05 * .62 * .05, 0.21 * .03 * .02, 0.07 * .03 * .01, 0.08 * .12 * .02, 0.03 * .55 * .01};
        double sum = java.util.Arrays.stream(joint).sum();
        Diagnosis diagnosis = after("separate-excitation=low-balanced", "diodes-isolated=one-shorted");
        assertEquals(joint[4] / sum, diagnosis.suspects().get(0).probability(), 1e-12);
        assertEquals(1, diagnosis.suspects().stream().mapToDouble(Diagnosis.Ranked::probability).sum(), 1e-12);
    }

    /**
     * Oracle: mutual information as the mean divergence of outcomes from their mix (Cover and Thomas, Elements of
     * Information Theory, ch. 2).
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void informationAgreesWithItsOtherForm(long seed) {
        Random random = new Random(seed);
        List<Finding> findings = new ArrayList<>();
        for (FaultTest test : KNOWN.tests()) {
            if (random.nextInt(4) == 0) {
                findings.add(new Finding(test.id(), test.outcomes().get(random.nextInt(test.outcomes().size())).id()));
            }
        }
        Diagnosis diagnosis = FINDER.diagnose(findings);
        for (Diagnosis.NextTest next : diagnosis.nextTests()) {
            double bits = 0;
            for (FaultTest.Outcome outcome : next.test().outcomes()) {
                double mix = 0;
                for (Diagnosis.Ranked ranked : diagnosis.suspects()) {
                    mix += ranked.probability() * outcome.likelihoods().get(KNOWN.suspects().indexOf(ranked.suspect()));
                }
                for (Diagnosis.Ranked ranked : diagnosis.suspects()) {
                    double l = outcome.likelihoods().get(KNOWN.suspects().indexOf(ranked.suspect()));
                    bits += ranked.probability() * l * Math.log(l / mix) / Math.log(2);
                }
            }
            assertEquals(bits, next.bits(), 1e-9, next.test().id());
            assertTrue(next.bits() >= 0);
        }
    }

    @Test
    void nextTestTellsMostForLeastWork() {
        Diagnosis diagnosis = after("complaint=no-output");
        for (int i = 1; i < diagnosis.nextTests().size(); i++) {
            assertTrue(diagnosis.nextTests().get(i - 1).bitsPerMinute() >= diagnosis.nextTests().get(i)
                    .bitsPerMinute());
        }
        assertFalse(diagnosis.nextTests().stream().anyMatch(n -> n.test().id().equals("complaint")));
    }

    /** Live or rotating work is never proposed without its caution. */
    @Test
    void everyTestOnTheMachineCarriesItsCaution() {
        FaultTables shipped = DefaultFaultTables.load(new PartJson());
        shipped.tests().stream().filter(t -> !t.id().equals("complaint"))
                .forEach(t -> assertFalse(t.cautions().isEmpty(), t.id()));
    }

    @Test
    void refusesUnknownAndRepeatedFindings() {
        assertThrows(OutOfRange.class, () -> after("diodes-isolated=purple"));
        assertThrows(OutOfRange.class, () -> after("moon=full"));
        assertThrows(OutOfRange.class, () -> after("frequency=low", "frequency=right"));
    }

    /** Several symptoms can be told at once; the same one twice is a slip. */
    @Test
    void severalSymptomsCountTogether() {
        Diagnosis both = after("complaint=low-output", "complaint=unbalanced");
        assertEquals("main-stator", both.first().suspect().id());
        assertThrows(OutOfRange.class, () -> after("complaint=low-output", "complaint=low-output"));
    }

    /** Good, Probability and the Weighing of Evidence: log of the likelihood ratio; by hand from the table. */
    @Test
    void evidenceIsTheLogarithmOfTheLikelihoodRatio() {
        Diagnosis d = after("diodes-isolated=one-open");
        double elsewhere = (0.10 * .01 + 0.09 * .02 + 0.08 * .02 + 0.07 * .02 + 0.05 * .02 + 0.21 * .01 + 0.07 * .01
                + 0.08 * .01 + 0.03 * .01) / 0.78;
        assertEquals(Math.log(.42 / elsewhere) / Math.log(2), d.first().evidence().get(0).bits(), 1e-9);
    }
}
