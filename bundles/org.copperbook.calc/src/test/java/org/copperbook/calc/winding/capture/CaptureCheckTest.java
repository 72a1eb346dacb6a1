package org.copperbook.calc.winding.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.apache.commons.math3.distribution.MultivariateNormalDistribution;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.winding.BundleText;
import org.copperbook.calc.winding.CircuitPlan;
import org.copperbook.calc.winding.CoilLayout;
import org.copperbook.calc.winding.ConductorBundle;
import org.copperbook.calc.winding.EqualCoils;
import org.copperbook.calc.winding.Grouping;
import org.copperbook.calc.winding.PredictedResistance;
import org.copperbook.calc.winding.Winding;
import org.copperbook.calc.winding.WindingGenerator;
import org.copperbook.calc.winding.WindingPlan;
import org.copperbook.calc.wire.ConductorMaterial;
import org.copperbook.calc.wire.InsulationGrade;
import org.copperbook.calc.wire.WireSize;
import org.junit.jupiter.api.Test;

class CaptureCheckTest {
    private static final Winding WINDING = WindingGenerator.generate(WindingPlan.doubleLayerLap(36, 4, 3, 8, 6));
    private static final ConductorBundle BUNDLE = ConductorBundle.copper(3, WireSize.metric(1.0));
    private static final CapturedWinding CAPTURED = new CapturedWinding(WINDING, CircuitPlan.equal(WINDING, 2), BUNDLE,
            0.7, 22);
    private static final double TURN = 0.7 * BUNDLE.ohmsPerMetre() * 257 / 255;

    private static List<CaptureReading> groups(double factor, int oddGroup, double oddTurns) {
        List<CaptureReading> readings = new ArrayList<>();
        for (int group = 1; group <= 12; group++) {
            readings.add(new CaptureReading.OfGroup(group, factor * TURN * (group == oddGroup ? oddTurns : 18), 0.002));
        }
        return readings;
    }

    private static CaptureReport check(List<CaptureReading> readings) {
        return CaptureCheck.check(CAPTURED, readings, CaptureUncertainty.usual());
    }

    /** Share of the slip simulation run in every build; set copperbook.captures to 10000 for the published table. */
    @Test
    void plantedSlipsAreFoundAndCleanCapturesLeftAlone() {
        int captures = Integer.getInteger("copperbook.captures", 400);
        CaptureSimulation simulation = run(captures, "every group, every phase and the mass read", reading -> true);
        CaptureSimulation.Tally all = simulation.total();
        assertTrue(all.large > captures / 4, "too few large slips to judge");
        assertTrue(all.largeFirstThree >= 0.95 * all.large, "first three of large slips");
        assertTrue(simulation.falseAlarms <= 0.01 * simulation.cleanCaptures, "false alarms");
        for (CaptureSimulation.Planted planted : CaptureSimulation.Planted.values()) {
            CaptureSimulation.Tally tally = simulation.tallies.get(planted);
            assertTrue(tally.largeFirstThree >= 0.9 * tally.large, planted.name());
        }
    }

    /**
     * Fewer readings tell less: a slip still ranks among the first three, often together with others, and clean
     * captures pass.
     */
    @Test
    void fewerReadingsTellLessButRaiseNoFalseAlarms() {
        int captures = Integer.getInteger("copperbook.captures", 300);
        CaptureSimulation unweighed = run(captures, "every group and phase read, copper not weighed",
                reading -> !(reading instanceof CaptureReading.OfMass));
        CaptureSimulation phases = run(captures, "phases and the mass read, no group by itself",
                reading -> !(reading instanceof CaptureReading.OfGroup));
        for (CaptureSimulation simulation : List.of(unweighed, phases)) {
            assertTrue(simulation.falseAlarms <= 0.01 * simulation.cleanCaptures, "false alarms");
            assertTrue(simulation.total().largeFirstThree >= 0.9 * simulation.total().large,
                    "first three of large slips");
        }
    }

    private static CaptureSimulation run(int captures, String readings, Predicate<CaptureReading> taken) {
        CaptureSimulation simulation = new CaptureSimulation(20_240_611L, taken);
        for (int i = 0; i < captures; i++) {
            simulation.runPlanted();
            simulation.runClean();
        }
        System.out.println(readings + System.lineSeparator() + simulation.table());
        return simulation;
    }

    @Test
    void aTurnMissingAndAShortedTurnAreOneAnswerWithItsTest() {
        CaptureReport report = check(groups(1, 5, 17));
        assertTrue(report.questioned());
        Explanation first = report.explanations().get(0);
        assertTrue(first.includes(new Slip.Turn(5, -1)));
        assertTrue(first.includes(new Slip.ShortedTurn(5)));
        assertTrue(first.partingTests().get(0).contains("surge"));
        assertTrue(report.sentence().contains("group 5"), report.sentence());
    }

    @Test
    void readingsThatFitLeaveTheCaptureAlone() {
        CaptureReport report = check(groups(1.01, 0, 0));
        assertFalse(report.questioned());
        assertTrue(report.sentence().contains("agree"), report.sentence());
    }

    @Test
    void aHotReadingAndAThinnerWireArePartedByTheScale() {
        double hot = (235.0 + 22 + 28) / (235 + 22);
        CaptureReport unweighed = check(groups(hot, 0, 0));
        assertTrue(unweighed.explanations().get(0).slips().size() > 1);
        assertTrue(unweighed.explanations().get(0).partingTests().contains("weigh the copper taken out"));
        List<CaptureReading> weighed = new ArrayList<>(groups(hot, 0, 0));
        weighed.add(new CaptureReading.OfMass(new EqualCoils(12, 6, 0.7, BUNDLE, 2).mass(3), 0.012));
        Explanation first = check(weighed).explanations().get(0);
        assertEquals(1, first.slips().size());
        assertEquals(28, ((Slip.HotReading) first.slips().get(0)).kelvin(), 6);
    }

    @Test
    void wrongCircuitsShowInThePhasesAlone() {
        List<CaptureReading> readings = new ArrayList<>(groups(1, 0, 0));
        for (int phase = 1; phase <= 3; phase++) {
            readings.add(new CaptureReading.OfPhase(phase, new EqualCoils(12, 6, 0.7, BUNDLE, 4).phaseResistance(22),
                    0.002));
        }
        CaptureReport report = check(readings);
        assertEquals(List.of(new Slip.Circuits(4)), report.explanations().get(0).slips());
        assertEquals(-0.75, report.comparisons().get(12).deviation(), 1e-6);
    }

    @Test
    void aCountTakenForAllCoilsShowsInOhmsAndKilogramsAlike() {
        List<CaptureReading> readings = new ArrayList<>(groups(7.0 / 6, 0, 0));
        readings.add(new CaptureReading.OfMass(new EqualCoils(12, 7, 0.7, BUNDLE, 2).mass(3), 0.012));
        CaptureReport report = check(readings);
        assertEquals(List.of(new Slip.TurnInEveryCoil(1)), report.explanations().get(0).slips());
        assertTrue(report.sentence().contains("every coil had one turn more"), report.sentence());
    }

    /** Mass and fill see a thinner wire from the other side than the ohms do. */
    @Test
    void fillAndMassHelpToNameTheGauge() {
        WireSize thinner = WireSize.metric(0.95);
        ConductorBundle actual = ConductorBundle.copper(3, thinner);
        List<CaptureReading> readings = new ArrayList<>(groups(WireSize.metric(1.0).area() / thinner.area(), 0, 0));
        readings.add(new CaptureReading.OfMass(new EqualCoils(12, 6, 0.7, actual, 2).mass(3), 0.012));
        readings.add(new CaptureReading.OfFill(12 * actual.squareSum(InsulationGrade.GRADE_2) / 60e-6, 0.07, 60e-6,
                InsulationGrade.GRADE_2));
        Explanation first = check(readings).explanations().get(0);
        assertEquals(List.of(new Slip.Gauge(WireSize.metric(1.0), thinner)), first.slips());
    }

    /**
     * Concentric coils: uneven groups differ by more than their turns, so lengths measured coil by coil must be used.
     */
    @Test
    void concentricCoilsAreTakenWithTheirOwnLengths() {
        Winding uneven = WindingGenerator.generate(new WindingPlan(30, 4, 3, 2, CoilLayout.CONCENTRIC,
                Grouping.GROUP_PER_POLE, List.of(9, 7, 5), List.of(2, 3), List.of(20.0), 1));
        Map<Integer, Double> lengths = Map.of(9, 0.80, 8, 0.75, 7, 0.70, 6, 0.65, 5, 0.60);
        CapturedWinding captured = new CapturedWinding(uneven, CircuitPlan.equal(uneven, 2), BUNDLE, 0.70, 22, lengths);
        PredictedResistance real = new PredictedResistance(uneven, captured.plan(), BUNDLE,
                coil -> lengths.get(coil.span(30)), 22);
        List<CaptureReading> readings = new ArrayList<>();
        uneven.groups().forEach(g -> readings.add(new CaptureReading.OfGroup(g, real.group(g), 0.002)));
        readings.add(new CaptureReading.OfPhase(1, real.phase(1), 0.002));
        CaptureReport report = CaptureCheck.check(captured, readings, CaptureUncertainty.usual());
        assertFalse(report.questioned());
        report.comparisons().forEach(c -> assertEquals(0, c.deviation(), 1e-9));
    }

    /** The order in which readings are given says nothing. */
    @Test
    void orderOfReadingsDoesNotMatter() {
        List<CaptureReading> readings = new ArrayList<>(groups(1.03, 4, 17));
        double one = check(readings).explanations().get(0).probability();
        java.util.Collections.reverse(readings);
        assertEquals(one, check(readings).explanations().get(0).probability(), 1e-9);
    }

    @Test
    void strandsOfMixedSizesAreSlipsOfTheirOwn() {
        ConductorBundle mixed = BundleText.read("2x1.0mm + 1x0.8mm", ConductorMaterial.COPPER);
        CapturedWinding captured = new CapturedWinding(WINDING, CircuitPlan.equal(WINDING, 2), mixed, 0.7, 22);
        ConductorBundle actual = BundleText.read("2x1.0mm + 2x0.8mm", ConductorMaterial.COPPER);
        List<CaptureReading> readings = new ArrayList<>();
        for (int group = 1; group <= 12; group++) {
            readings.add(new CaptureReading.OfGroup(group, new EqualCoils(3, 6, 0.7, actual, 1).phaseResistance(22),
                    0.002));
        }
        readings.add(new CaptureReading.OfMass(new EqualCoils(12, 6, 0.7, actual, 2).mass(3), 0.012));
        Explanation first = CaptureCheck.check(captured, readings, CaptureUncertainty.usual()).explanations().get(0);
        assertTrue(first.includes(new Slip.Strands("0.80 mm", 2)), first.toString());
    }

    /** Oracle: the density ratio of two multivariate normal distributions of Commons Math gives the same odds. */
    @Test
    void oddsAgreeWithAnotherNormalDistribution() {
        CaptureUncertainty u = CaptureUncertainty.usual();
        List<CaptureReading> readings = List.of(new CaptureReading.OfGroup(1, TURN * 17.2, 0.002),
                new CaptureReading.OfGroup(2, TURN * 18.1, 0.002));
        CaptureReport report = CaptureCheck.check(CAPTURED, readings, u);
        double common = u.meanTurn() * u.meanTurn() + u.area() * u.area() + u.gain() * u.gain()
                + Math.pow(u.kelvin() / 257, 2);
        double own = 0.002 * 0.002 + u.coilSpread() * u.coilSpread() / 3;
        double[][] covariance = {{common + own, common}, {common, common + own}};
        double[] y = {Math.log(17.2 / 18), Math.log(18.1 / 18)};
        double clean = new MultivariateNormalDistribution(new double[2], covariance).density(y);
        double[] shift = {Math.log(17.0 / 18), 0};
        double fewer = new MultivariateNormalDistribution(shift, covariance).density(y);
        double odds = fewer * 0.1 * (0.12 + 0.10) / 12 / (clean * 0.9);
        Explanation found = report.explanations().stream().filter(e -> e.includes(new Slip.Turn(1, -1))).findFirst()
                .orElseThrow();
        assertEquals(2, found.slips().size());
        assertEquals(odds, found.probability() / report.cleanProbability(), odds * 1e-6);
    }

    @Test
    void refusesReadingsOfWhatIsNotThere() {
        assertThrows(OutOfRange.class, () -> check(List.of()));
        assertThrows(OutOfRange.class, () -> check(List.of(new CaptureReading.OfGroup(13, 1, 0.01))));
        assertThrows(OutOfRange.class, () -> check(List.of(new CaptureReading.OfPhase(4, 1, 0.01))));
        assertThrows(OutOfRange.class, () -> new CaptureReading.OfGroup(1, -1, 0.01));
    }
}
