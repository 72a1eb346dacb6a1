package org.copperbook.calc.excitation;

import static org.copperbook.calc.excitation.DiodeReading.aboveRange;
import static org.copperbook.calc.excitation.DiodeReading.notTaken;
import static org.copperbook.calc.excitation.DiodeReading.value;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.copperbook.calc.excitation.DiodeFinding.Reason;
import org.copperbook.calc.excitation.DiodeFinding.State;
import org.copperbook.calc.excitation.DiodeReading.Mode;
import org.copperbook.calc.excitation.DiodeReading.Placement;
import org.copperbook.calc.excitation.DiodeReading.Side;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.junit.jupiter.api.Test;

/**
 * Diode readings. Forward about 10 ohm, reverse 30 to 300 kilohm for a good diode: US Army TM 55-1930-209-14P-9-4. The rest
 * is common practice.
 */
class DiodeCheckTest {

    private static DiodeFinding ohms(Placement p, Side forward, Side reverse) {
        return DiodeCheck.classify(new DiodeReading(p, Mode.OHMS, forward, reverse));
    }

    private static DiodeFinding volts(Side forward, Side reverse) {
        return DiodeCheck.classify(new DiodeReading(Placement.ISOLATED, Mode.VOLTS, forward, reverse));
    }

    @Test
    void goodDiodeOfTheManual() {
        assertEquals(State.GOOD, ohms(Placement.ISOLATED, value(10), value(30_000)).state());
        assertEquals(State.GOOD, ohms(Placement.ISOLATED, value(10), value(300_000)).state());
        assertEquals(State.GOOD, ohms(Placement.ISOLATED, value(10), aboveRange()).state());
    }

    @Test
    void lowBothWaysIsShorted() {
        DiodeFinding f = ohms(Placement.ISOLATED, value(0.4), value(0.4));
        assertEquals(State.SHORTED, f.state());
        assertEquals(Outcome.FAILS, f.outcome());
    }

    @Test
    void blockingBothWaysIsOpen() {
        assertEquals(State.OPEN, ohms(Placement.ISOLATED, aboveRange(), aboveRange()).state());
    }

    @Test
    void inCircuitNothingIsSaidForSure() {
        for (DiodeFinding f : List.of(ohms(Placement.IN_CIRCUIT, value(8), value(2.5)),
                ohms(Placement.IN_CIRCUIT, value(8), aboveRange()),
                ohms(Placement.IN_CIRCUIT, aboveRange(), aboveRange()))) {
            assertEquals(State.DOUBTFUL, f.state());
            assertEquals(Reason.LIFT_THE_LEAD, f.reason());
        }
        assertEquals(State.SHORTED, ohms(Placement.IN_CIRCUIT, value(8), value(2.5)).suspected());
    }

    @Test
    void diodeRangeOfAMultimeter() {
        assertEquals(State.GOOD, volts(value(0.52), aboveRange()).state());
        assertEquals(State.SHORTED, volts(value(0.002), value(0.002)).state());
        assertEquals(State.OPEN, volts(aboveRange(), aboveRange()).state());
        assertEquals(State.OPEN, volts(value(2.8), value(2.8)).state());
        assertEquals(State.DOUBTFUL, volts(value(0.2), aboveRange()).state());
        assertEquals(State.SHORTED, volts(new Side.BelowResolution(), new Side.BelowResolution()).state());
    }

    @Test
    void conductingBackwardsPointsToProbesOrBasePolarity() {
        DiodeFinding f = ohms(Placement.ISOLATED, aboveRange(), value(10));
        assertEquals(State.DOUBTFUL, f.state());
        assertEquals(Reason.CONDUCTS_BACKWARDS, f.reason());
    }

    @Test
    void leakingDiodeIsDoubtful() {
        assertEquals(Reason.BETWEEN_THE_LIMITS, ohms(Placement.ISOLATED, value(10), value(5000)).reason());
    }

    @Test
    void missingDirectionIsNotMeasured() {
        assertEquals(State.NOT_MEASURED, ohms(Placement.ISOLATED, value(10), notTaken()).state());
        assertEquals(State.NOT_MEASURED, ohms(Placement.IN_CIRCUIT, notTaken(), notTaken()).state());
    }

    @Test
    void oneBadDiodeChangesTheCompleteSet() {
        DiodeFinding good = ohms(Placement.ISOLATED, value(10), aboveRange());
        DiodeFinding bad = ohms(Placement.ISOLATED, value(0.4), value(0.4));
        DiodeSet set = DiodeSet.judge(List.of(good, good, bad, good, good, good));
        assertTrue(set.changeCompleteSet());
        assertEquals(1, set.failed());
        assertEquals(Outcome.FAILS, set.outcome());
        assertFalse(DiodeSet.judge(List.of(good, good, good, good, good, good)).changeCompleteSet());
        assertEquals(Outcome.MEETS, DiodeSet.judge(List.of(good, good)).outcome());
        assertEquals(Outcome.NOT_MEASURED, DiodeSet.judge(List.of()).outcome());
        DiodeFinding doubt = ohms(Placement.IN_CIRCUIT, value(10), value(3));
        assertEquals(Outcome.DOUBTFUL, DiodeSet.judge(List.of(good, doubt)).outcome());
    }

    @Test
    void torqueWithoutDataSheetHasNoLimit() {
        Uncertain torque = new Uncertain(3.3, 0.05);
        assertEquals(Outcome.NO_LIMIT_SET, StudTorque.judge(torque, Optional.empty()).outcome());
        assertEquals(Outcome.MEETS, StudTorque.judge(torque, Optional.of(Bounds.between(3.0, 3.6))).outcome());
    }
}
