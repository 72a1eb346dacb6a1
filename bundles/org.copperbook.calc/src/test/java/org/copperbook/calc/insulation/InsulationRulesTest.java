package org.copperbook.calc.insulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.insulation.AbsorptionIndex.NotJudged;
import org.copperbook.calc.uncertainty.Uncertain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rules of IEEE 43 and of the withstand tables that the tables of values do not show. */
class InsulationRulesTest {

    @ParameterizedTest
    @ValueSource(doubles = {15, 25, 39.9, 40.1, 60, 84})
    void uncertaintyOfTheThermosettingCorrectionFollowsItsSlope(double t) {
        double step = 1e-4;
        double slope = (InsulationTemperature.factor(InsulationSystem.THERMOSETTING, t + step)
                - InsulationTemperature.factor(InsulationSystem.THERMOSETTING, t - step)) / (2 * step);
        Uncertain x = InsulationTemperature.to40(InsulationSystem.THERMOSETTING, new Uncertain(1, 0),
                new Uncertain(t, 1));
        assertEquals(slope, x.u(), 1e-6);
    }

    @Test
    void correctionOutsideTheCurvesIsRefused() {
        assertThrows(OutOfRange.class, () -> InsulationTemperature.factor(InsulationSystem.THERMOSETTING, 90));
        assertThrows(OutOfRange.class, () -> InsulationTemperature.factor(InsulationSystem.THERMOSETTING, 5));
        assertThrows(OutOfRange.class, () -> InsulationTemperature.factor(InsulationSystem.THERMOPLASTIC, -5));
    }

    /** IEEE 43-2013, 12.2.1: above 5000 megohm at 40 degrees the index is not a criterion. */
    @Test
    void indexIsNotJudgedWhereItMeansNothing() {
        assertEquals(Optional.empty(), AbsorptionIndex.notJudged(5000e6, false, false));
        assertEquals(Optional.of(NotJudged.ABOVE_5000_MEGOHM), AbsorptionIndex.notJudged(5001e6, false, false));
        assertEquals(Optional.of(NotJudged.SMALL_RANDOM_WINDING), AbsorptionIndex.notJudged(10e6, true, false));
        assertEquals(Optional.of(NotJudged.UNINSULATED_FIELD), AbsorptionIndex.notJudged(10e6, false, true));
    }

    @Test
    void equalReadingsGiveAnIndexOfOneAndTheGainCancels() {
        assertEquals(1, AbsorptionIndex.ratio(700e6, 700e6));
        Uncertain pi = AbsorptionIndex.ratio(new Uncertain(2100, 105), new Uncertain(700, 35), 0.05);
        assertEquals(3, pi.value(), 1e-12);
        assertEquals(0, pi.u(), 1e-9);
    }

    /** IEEE 43, table 1: the edges belong to the lower line. */
    @Test
    void testVoltageEdges() {
        assertEquals(new InsulationTestVoltage(500, 500), InsulationTestVoltage.forRating(999));
        assertEquals(new InsulationTestVoltage(500, 1000), InsulationTestVoltage.forRating(1000));
        assertEquals(new InsulationTestVoltage(500, 1000), InsulationTestVoltage.forRating(2500));
        assertEquals(new InsulationTestVoltage(1000, 2500), InsulationTestVoltage.forRating(2501));
        assertEquals(new InsulationTestVoltage(2500, 5000), InsulationTestVoltage.forRating(12_000));
        assertEquals(new InsulationTestVoltage(5000, 10_000), InsulationTestVoltage.forRating(12_001));
    }

    @Test
    void withstandOutsideItsItemIsRefused() {
        assertThrows(OutOfRange.class, () -> WithstandIec.SMALL_BELOW_100_V.newWinding(400));
        assertThrows(OutOfRange.class, () -> WithstandIec.STATOR.newWinding(-400));
        assertThrows(OutOfRange.class, () -> WithstandIec.STATOR.newWinding(30_000));
        assertThrows(OutOfRange.class, () -> WithstandAr100.UP_TO_35_V.alternating(48));
    }

    /** The printed direct column is not 1.7 times the alternating one everywhere (AR100-2020, tables 4-4 and 4-5). */
    @Test
    void printedDirectColumnIsKeptAsPrinted() {
        double u = 400;
        WithstandAr100 item = WithstandAr100.BRUSHLESS_FIELD_OR_EXCITER_ARMATURE;
        assertEquals(10, WithstandIec.DIRECT * item.alternating(u) - item.direct(u), 1e-9);
        assertEquals(50, WithstandAr100.DEVICE_ON_FRAME.direct(1)
                - WithstandIec.DIRECT * WithstandAr100.DEVICE_ON_FRAME.alternating(1), 1e-9);
    }

    /** The two tables agree on a stator above 250 V. */
    @ParameterizedTest
    @ValueSource(doubles = {400, 480, 690, 3300})
    void bothTablesAgreeOnAStator(double u) {
        assertEquals(WithstandIec.STATOR.newWinding(u), WithstandAr100.MAIN_STATOR.alternating(u));
    }

    @Test
    void identicalSurgeWavesHaveNoErrorArea() {
        double[] w = {0, 5, 3, -2, 1};
        assertEquals(0, SurgeComparison.errorAreaRatio(w, w));
        assertTrue(SurgeComparison.errorAreaRatio(w, new double[] {0, 4, 3, -3, 1}) > 0);
    }

    /** A rise of one halving step halves the life, whatever the step. */
    @ParameterizedTest
    @ValueSource(doubles = {8, 10, 12})
    void oneStepHalvesTheLife(double step) {
        assertEquals(10, InsulationLife.at(130 + step, 130, 20, step), 1e-12);
    }
}
