package org.copperbook.calc.excitation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.calc.excitation.SeparateExcitationRun.Doubt;
import org.copperbook.calc.excitation.SeparateExcitationRun.Interpretation;
import org.copperbook.calc.excitation.SeparateExcitationRun.Measured;
import org.copperbook.calc.excitation.SeparateExcitationRun.Row;
import org.copperbook.calc.excitation.SeparateExcitationRun.Suspect;
import org.copperbook.calc.uncertainty.InstrumentAccuracy;
import org.copperbook.calc.uncertainty.SharedTerms;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Outcome;
import org.junit.jupiter.api.Test;

/** The table of the separate-excitation run: common practice, no source. */
class SeparateExcitationRunTest {

    private static final InstrumentAccuracy METER = new InstrumentAccuracy(0.5, 2, 0.1);
    private static final ExpectedOutput NOMINAL = new ExpectedOutput.Nominal(400);

    private static Measured run(double uv, double vw, double wu, double speed) {
        return new Measured(METER.of(uv), METER.of(vw), METER.of(wu), new Uncertain(speed, 1), 1500,
                SharedTerms.meter(METER));
    }

    private static Interpretation of(double uv, double vw, double wu, double speed) {
        return SeparateExcitationRun.interpret(run(uv, vw, wu, speed), NOMINAL);
    }

    @Test
    void rightAndBalancedIsSound() {
        Interpretation i = of(398, 399, 397, 1500);
        assertEquals(Row.ALL_SOUND, i.row());
        assertFalse(i.doubtful());
        assertEquals(Suspect.REGULATOR, i.suspects().get(0));
    }

    @Test
    void lowAndBalancedPointsToTheExcitationChainWithTheRectifierFirst() {
        Interpretation i = of(250, 251, 250, 1498);
        assertEquals(Row.LOW_BALANCED, i.row());
        assertEquals(Outcome.FAILS, i.output().outcome());
        assertEquals(Outcome.MEETS, i.balance().outcome());
        assertEquals(Suspect.RECTIFIER, i.suspects().get(0));
        assertFalse(i.suspects().contains(Suspect.MAIN_STATOR));
    }

    @Test
    void rightButUnbalancedPointsToTheStator() {
        Interpretation i = of(400, 402, 378, 1500);
        assertEquals(Row.UNBALANCED, i.row());
        assertEquals(Suspect.MAIN_STATOR, i.suspects().get(0));
    }

    @Test
    void lowAndUnbalancedLeavesAllFive() {
        Interpretation i = of(260, 240, 200, 1500);
        assertEquals(Row.LOW_UNBALANCED, i.row());
        assertEquals(5, i.suspects().size());
    }

    @Test
    void residualOnlyIsNotAVerdictOnTheStator() {
        Interpretation i = of(12, 12, 11, 1500);
        assertEquals(Row.NONE, i.row());
        assertFalse(i.suspects().contains(Suspect.MAIN_STATOR));
        assertEquals(Row.NONE, of(0, 0, 0, 1500).row());
    }

    @Test
    void highOutputAsksForCurrentConnectionSpeedAndMeterFirst() {
        assertEquals(Row.HIGH, of(470, 471, 470, 1500).row());
    }

    /** 350 V at 1445 r/min: 363 V (9.2 % low) by the first power of speed, 377 V by the second; both within 10 %. */
    @Test
    void bothPowersOfSpeedAreShown() {
        Interpretation i = of(350, 351, 350, 1445);
        assertEquals(350.333333 / 400 * 1500 / 1445, i.outputLinear().value(), 1e-6);
        assertEquals(350.333333 / 400 * Math.pow(1500 / 1445.0, 2), i.outputSquare().value(), 1e-6);
    }

    /** 340 V at 1445 r/min is 88 % by the first power and 92 % by the second: the limit lies between. */
    @Test
    void outputThatDependsOnThePowerIsDoubtful() {
        Interpretation i = of(340, 341, 340, 1445);
        assertEquals(Outcome.DOUBTFUL, i.output().outcome());
        assertTrue(i.doubts().contains(Doubt.SPEED_POWER) || i.doubts().contains(Doubt.OUTPUT_NEAR_LIMIT));
        assertTrue(i.rows().contains(Row.LOW_BALANCED) && i.rows().contains(Row.ALL_SOUND));
    }

    @Test
    void speedOutsideItsBandIsDoubtful() {
        assertTrue(of(370, 371, 370, 1400).doubts().contains(Doubt.SPEED_OUT_OF_BAND));
        assertFalse(of(398, 399, 398, 1490).doubts().contains(Doubt.SPEED_OUT_OF_BAND));
    }

    @Test
    void unknownExpectationIsAtBestDoubtful() {
        Interpretation i = SeparateExcitationRun.interpret(run(398, 399, 397, 1500),
                new ExpectedOutput.Unknown(400.0));
        assertEquals(Outcome.DOUBTFUL, i.output().outcome());
        assertTrue(i.doubts().contains(Doubt.EXPECTED_UNKNOWN));
        assertNull(i.outputLinear());
        assertEquals(Outcome.MEETS, i.balance().outcome());
    }

    @Test
    void storedPointBringsItsOwnUncertainty() {
        Interpretation sure = SeparateExcitationRun.interpret(run(350, 351, 350, 1500),
                new ExpectedOutput.StoredPoint(new Uncertain(400, 1)));
        Interpretation wide = SeparateExcitationRun.interpret(run(350, 351, 350, 1500),
                new ExpectedOutput.StoredPoint(new Uncertain(400, 12)));
        assertEquals(Outcome.FAILS, sure.output().outcome());
        assertEquals(Outcome.DOUBTFUL, wide.output().outcome());
    }

    /** The meter's gain is common to the three readings, so a cheap meter still judges balance. */
    @Test
    void commonGainDoesNotSpoilTheBalance() {
        InstrumentAccuracy cheap = new InstrumentAccuracy(3, 0, 0.1);
        Measured m = new Measured(cheap.of(400), cheap.of(401), cheap.of(400), new Uncertain(1500, 1), 1500,
                SharedTerms.meter(cheap));
        assertEquals(Outcome.MEETS, SeparateExcitationRun.interpret(m, NOMINAL).balance().outcome());
    }
}
