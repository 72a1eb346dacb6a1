package org.copperbook.calc.insulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.copperbook.calc.OutOfRange;
import org.junit.jupiter.api.Test;

/** Drying curves made by hand: falling while it warms, turning, rising, levelling. The criterion is common practice. */
class DryingCurveTest {

    private static DryingCurve curve(double celsius, double... megohms) {
        List<DryingCurve.Reading> r = new ArrayList<>();
        for (int i = 0; i < megohms.length; i++) {
            r.add(new DryingCurve.Reading(i * 2, megohms[i] * 1e6, celsius));
        }
        return DryingCurve.of(r, InsulationSystem.THERMOSETTING, DryingCurve.Criterion.DEFAULT);
    }

    @Test
    void fallingCurveHasNotTurned() {
        DryingCurve c = curve(75, 9, 5, 3, 2.4, 2.2);
        assertFalse(c.turned());
        assertFalse(c.levelled());
    }

    @Test
    void risingCurveHasTurnedButNotLevelled() {
        DryingCurve c = curve(75, 9, 5, 2, 4, 9, 20, 40);
        assertTrue(c.turned());
        assertFalse(c.levelled());
        assertEquals(2, c.lowest());
    }

    @Test
    void flatEndHasLevelled() {
        DryingCurve c = curve(75, 9, 5, 2, 8, 30, 52, 60, 61, 61, 62);
        assertTrue(c.turned());
        assertTrue(c.levelled());
    }

    @Test
    void oneStrayHighReadingIsNotATurn() {
        assertFalse(curve(75, 9, 5, 3, 2.4, 6).turned());
    }

    @Test
    void coolingOvenDoesNotPassForDrying() {
        // IEEE 43-2013, 6.3: between 80 and 40 degrees the same insulation rises 4.62 times
        List<DryingCurve.Reading> r = List.of(new DryingCurve.Reading(0, 1e6, 80), new DryingCurve.Reading(2, 1.49e6, 70),
                new DryingCurve.Reading(4, 2.05e6, 60), new DryingCurve.Reading(6, 3.04e6, 50),
                new DryingCurve.Reading(8, 4.6e6, 40));
        assertFalse(DryingCurve.of(r, InsulationSystem.THERMOSETTING, DryingCurve.Criterion.DEFAULT).turned());
    }

    @Test
    void timesOutOfOrderAreRefused() {
        List<DryingCurve.Reading> r = List.of(new DryingCurve.Reading(0, 1e6, 60), new DryingCurve.Reading(3, 1e6, 60),
                new DryingCurve.Reading(2, 1e6, 60));
        assertThrows(OutOfRange.class,
                () -> DryingCurve.of(r, InsulationSystem.THERMOSETTING, DryingCurve.Criterion.DEFAULT));
    }
}
