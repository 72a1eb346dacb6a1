package org.copperbook.sheets.bar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.calc.verdict.Bounds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BarScaleTest {

    @Test
    void everythingStandsInItsOrder() {
        BarScale s = BarScale.of(2.0, 0.5, Bounds.between(1, 4));
        assertTrue(s.lower() < s.low() && s.low() < s.value() && s.value() < s.high() && s.high() < s.upper(), s.toString());
        // linear, so the value lies a third of the way from 1 to 4
        assertEquals(1.0 / 3, (s.value() - s.lower()) / (s.upper() - s.lower()), 1e-12);
    }

    @Test
    void valuesFarFromTheirLimitStandOnALogarithmicScale() {
        // 1 Mohm to 10 Gohm are four decades; the limit and the value are the ends of the scale
        BarScale s = BarScale.of(1e10, 1e9, Bounds.atLeast(1e6));
        assertTrue(s.lower() > 0.1 && s.value() < 0.9, s.toString());
        assertTrue(s.high() - s.low() < 0.1, "10 % of the value is a small step on four decades");
    }

    @ParameterizedTest
    @CsvSource({",,,", "NaN,,,", "5,,5,5", "0,,0,", "-1,100,,1e9", "1e300,1e300,-1e300,1e300", "Infinity,1,0,1", "0,1,1e-9,", "-5,,1e6,"})
    void nothingLeavesTheBar(Double value, Double u, Double lower, Double upper) {
        BarScale s = BarScale.of(value, u, new Bounds(lower, upper));
        for (double at : new double[] {s.lower(), s.upper(), s.value(), s.low(), s.high()}) {
            assertTrue(Double.isNaN(at) || at >= 0 && at <= 1, s.toString());
        }
    }

    @Test
    void withoutValueAndLimitThereIsNothingToDraw() {
        assertTrue(BarScale.of(null, null, null).isEmpty());
        assertTrue(BarScale.of(null, 1.0, Bounds.NONE).isEmpty());
    }
}
