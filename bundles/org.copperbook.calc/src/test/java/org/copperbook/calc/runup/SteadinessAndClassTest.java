package org.copperbook.calc.runup;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;

import org.copperbook.calc.runup.GeneratingSetClass.Transient;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Bearings, transient classes and the rising curve through scattered readings. */
class SteadinessAndClassTest {

    /** IEC 60034-1, thermal equilibrium: 2 K per hour. */
    @Test
    void bearingIsSteadyWhenHalfAnHourChangesItByOneKelvin() {
        assertTrue(BearingTemperature.of(new double[][] {{0, 20}, {1, 50}, {1.5, 55}, {2, 56}}, 20).steady());
        assertFalse(BearingTemperature.of(new double[][] {{0, 20}, {1, 50}, {1.5, 55}, {2, 56.2}}, 20).steady());
        assertFalse(BearingTemperature.of(new double[][] {{0, 20}, {0.2, 20}}, 20).steady());
        assertTrue(BearingTemperature.of(new double[][] {{0, 60}, {1, 61}}, 20).caution());
    }

    /** ISO 8528-5:2005, table 4 (memory): dip and rise G1 -25/+35, G2 -20/+25, G3 -15/+20; recovery 10, 6, 4 s. */
    @Test
    void strictestClassOfATransient() {
        assertEquals(Optional.of(GeneratingSetClass.G3), GeneratingSetClass.strictest(new Transient(0.15, 4, 0.20, 4)));
        assertEquals(Optional.of(GeneratingSetClass.G2), GeneratingSetClass.strictest(new Transient(0.15, 5, 0.20, 4)));
        assertEquals(Optional.of(GeneratingSetClass.G1), GeneratingSetClass.strictest(new Transient(0.21, 5, 0.2, 4)));
        assertEquals(Optional.empty(), GeneratingSetClass.strictest(new Transient(0.26, 5, 0.2, 4)));
    }

    @Test
    void upAndDownReadingsAreAveragedAndFallsPooled() {
        double[][] r = MonotoneSmoothing.of(new double[][] {{1, 100}, {1, 110}, {2, 200}, {3, 190}, {4, 260}});
        assertEquals(3, r.length);
        assertArrayEquals(new double[] {1, 105}, r[0], 1e-12);
        assertArrayEquals(new double[] {2.5, 195}, r[1], 1e-12);
        assertArrayEquals(new double[] {4, 260}, r[2], 1e-12);
    }

    /** Against the min-max formula of isotonic regression, written apart: max over left of min over right of means. */
    @ParameterizedTest
    @ValueSource(longs = {111, 112, 113})
    void pooledLevelsAgreeWithTheMinMaxFormula(long seed) {
        Random random = new Random(seed);
        int n = 20;
        double[][] p = new double[n][];
        for (int i = 0; i < n; i++) {
            p[i] = new double[] {i, 400.0 * i / (8 + i) + 20 * random.nextDouble()};
        }
        double[][] r = MonotoneSmoothing.of(p);
        for (int i = 0; i < n; i++) {
            double level = 0;
            for (int a = 0; a <= i; a++) {
                double least = Double.MAX_VALUE;
                for (int b = i; b < n; b++) {
                    double sum = 0;
                    for (int j = a; j <= b; j++) {
                        sum += p[j][1];
                    }
                    least = Math.min(least, sum / (b - a + 1));
                }
                level = Math.max(level, least);
            }
            double expected = level;
            assertTrue(Arrays.stream(r).anyMatch(q -> Math.abs(q[1] - expected) < 1e-9), "level " + level);
        }
    }
}
