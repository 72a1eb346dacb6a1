package org.copperbook.desk.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.calc.verdict.Bounds;
import org.junit.jupiter.api.Test;

class IntervalScaleTest {

    @Test
    void theWhiskerTouchesTheTickExactlyWhenTheUncertaintyReachesTheLimit() {
        IntervalScale s = IntervalScale.of(0.9, 0.1, Bounds.atMost(1.0));
        assertEquals(s.upper(), s.high(), 1e-12);
        assertTrue(s.low() < s.value() && s.value() < s.high());
    }

    @Test
    void equalStepsAreEqualDistancesOnALinearScale() {
        IntervalScale s = IntervalScale.of(2.0, 0.5, Bounds.between(1.0, 3.0));
        assertEquals(s.value() - s.lower(), s.upper() - s.value(), 1e-12);
        assertEquals(s.value() - s.low(), s.high() - s.value(), 1e-12);
        assertFalse(s.logarithmic());
    }

    @Test
    void valueAndLimitFarApartStandOnALogarithmicScaleInOrder() {
        IntervalScale s = IntervalScale.of(2e9, 1e8, Bounds.atLeast(1e6));
        assertTrue(s.logarithmic());
        assertTrue(s.lower() < s.value());
        assertTrue(s.lower() > 0 && s.value() < 1);
    }

    @Test
    void withoutALimitThereIsNoScale() {
        assertTrue(IntervalScale.of(1.0, 0.1, Bounds.NONE).isEmpty());
        assertTrue(IntervalScale.of(1.0, 0.1, null).isEmpty());
    }

    @Test
    void aLimitWithoutAValueShowsItsTick() {
        IntervalScale s = IntervalScale.of(null, null, Bounds.atLeast(5.0));
        assertFalse(s.isEmpty());
        assertTrue(Double.isNaN(s.value()));
        assertTrue(s.lower() > 0 && s.lower() < 1);
    }

    @Test
    void nothingLeavesTheBar() {
        for (double v : new double[] {-5, 0, 0.5, 1, 3, 1e12}) {
            IntervalScale s = IntervalScale.of(v, Math.abs(v), Bounds.between(0.1, 1.0));
            for (double at : new double[] {s.lower(), s.upper(), s.value(), s.low(), s.high()}) {
                assertTrue(at >= 0 && at <= 1, v + " stands at " + at);
            }
        }
    }
}
