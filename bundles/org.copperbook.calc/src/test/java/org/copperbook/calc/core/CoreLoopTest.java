package org.copperbook.calc.core;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Outcome;
import org.junit.jupiter.api.Test;

/** Laws and verdicts of the loop test. */
class CoreLoopTest {

    private static final LoopCore CORE = new LoopCore(0.52, 0.05, 0.3, 0.97);

    @Test
    void searchTurnReturnsTheTargetDensity() {
        for (EmfConstant c : EmfConstant.values()) {
            LoopPlan p = LoopPlan.of(CORE, new LoopPlan.Target(1.32, 50, 230, 400, 4e6), c);
            assertEquals(1.32, LoopPlan.density(p.voltsPerTurn(), 50, CORE.area(), c), 1e-12);
            assertEquals(p.fluxDensity(), LoopPlan.density(230.0 / p.turns(), 50, CORE.area(), c), 1e-12);
            assertEquals(p.amperes() * 230, p.voltAmperes(), 1e-9);
        }
    }

    /** pi times the square root of two exceeds 4.44 by 0.065 %. */
    @Test
    void bookConstantIsLower() {
        assertEquals(0.00065, EmfConstant.EXACT.value() / EmfConstant.BOOK.value() - 1, 1e-5);
    }

    /** Mass of a plain ring by its two radii. */
    @Test
    void massIsThatOfTheRing() {
        double ring = Math.PI * (0.26 * 0.26 - 0.21 * 0.21) * 0.291 * 7650;
        assertEquals(ring, CORE.mass(7650), 1e-9);
    }

    @Test
    void boreAndSlotDepthGiveTheBackIron() {
        assertEquals(0.05, LoopCore.fromBore(0.52, 0.36, 0.03, 0.3, 0, 0, 0.97).backIron(), 1e-12);
        assertThrows(OutOfRange.class, () -> LoopCore.fromBore(0.52, 0.50, 0.03, 0.3, 0, 0, 0.97));
    }

    /** The limit of 20 % (EASA/AEMT rewind study) with one wattmeter before and after: its gain cancels. */
    @Test
    void lossRiseIsJudgedWithSharedGain() {
        Uncertain before = new Uncertain(3.0, 0.09);
        Uncertain after = new Uncertain(3.45, 0.1035);
        assertEquals(Outcome.DOUBTFUL, CoreVerdict.lossChange(before, after, 0, 0.20).outcome());
        assertEquals(Outcome.MEETS, CoreVerdict.lossChange(before, after, 0.0295, 0.20).outcome());
        assertEquals(Outcome.FAILS,
                CoreVerdict.lossChange(before, new Uncertain(4, 0.12), 0.0295, 0.20).outcome());
    }

    @Test
    void hotSpotNearItsLimitIsDoubtful() {
        assertEquals(Outcome.MEETS, CoreVerdict.hotSpot(new Uncertain(46, 1), new Uncertain(40, 1), 10).outcome());
        assertEquals(Outcome.DOUBTFUL, CoreVerdict.hotSpot(new Uncertain(49, 1), new Uncertain(40, 1), 10).outcome());
        assertEquals(Outcome.FAILS, CoreVerdict.hotSpot(new Uncertain(56, 1), new Uncertain(40, 1), 10).outcome());
    }

    @Test
    void lossIsBroughtToTheTargetOnlyFromNearby() {
        assertEquals(2.42, CoreVerdict.atDensity(2, 1.2, 1.32), 1e-12);
        assertThrows(OutOfRange.class, () -> CoreVerdict.atDensity(2, 1.0, 1.32));
    }

    @Test
    void saturatedTargetIsRefused() {
        assertThrows(OutOfRange.class,
                () -> LoopPlan.of(CORE, new LoopPlan.Target(2.2, 50, 230, 400, 4e6), EmfConstant.EXACT));
    }
}
