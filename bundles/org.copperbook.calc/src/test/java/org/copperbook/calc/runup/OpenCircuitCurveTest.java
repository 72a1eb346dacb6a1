package org.copperbook.calc.runup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.copperbook.calc.OutOfRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The open-circuit curve against a saturating curve of known form, U = a I/(b + I) (Froehlich), and straight interpolation
 * against Apache Commons Math.
 */
class OpenCircuitCurveTest {

    private static double froehlich(double i) {
        return 600 * i / (8 + i);
    }

    private static OpenCircuitCurve sampled(double scatter, long seed) {
        Random random = new Random(seed);
        double[][] p = new double[13][];
        for (int i = 0; i < p.length; i++) {
            double x = 0.5 + i;
            p[i] = new double[] {x, froehlich(x) * (1 + scatter * random.nextGaussian())};
        }
        return OpenCircuitCurve.of(p);
    }

    @Test
    void smoothCurveFollowsTheTrueOneBetweenPoints() {
        OpenCircuitCurve c = sampled(0, 1);
        for (double x = 1.5; x < 12.5; x += 0.07) {
            assertEquals(froehlich(x), c.smooth(x), 0.005 * froehlich(x));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {71, 72, 73, 74})
    void smoothCurveIsMonotoneAndPassesThroughItsPoints(long seed) {
        Random random = new Random(seed);
        double[][] p = new double[10][];
        double x = 0;
        double y = 0;
        for (int i = 0; i < p.length; i++) {
            x += 0.1 + random.nextDouble();
            y += 0.01 + Math.pow(random.nextDouble(), 4) * 100;
            p[i] = new double[] {x, y};
        }
        OpenCircuitCurve c = OpenCircuitCurve.of(p);
        double last = -1;
        for (int i = 0; i <= 2000; i++) {
            double at = p[0][0] + (x - p[0][0]) * i / 2000;
            double v = c.smooth(Math.min(at, x));
            assertTrue(v >= last - 1e-9, "falls at " + at);
            last = v;
        }
        for (double[] q : p) {
            assertEquals(q[1], c.smooth(q[0]), 1e-9);
            assertEquals(q[0], c.fieldFor(q[1]), 1e-9);
        }
    }

    @Test
    void straightReadingAgreesWithCommonsMath() {
        double[] x = {0, 1, 2.5, 4, 7};
        double[] y = {8, 100, 230, 300, 350};
        PolynomialSplineFunction f = new LinearInterpolator().interpolate(x, y);
        double[][] p = new double[x.length][];
        for (int i = 0; i < x.length; i++) {
            p[i] = new double[] {x[i], y[i]};
        }
        OpenCircuitCurve c = OpenCircuitCurve.of(p);
        for (double at = 0; at <= 7; at += 0.13) {
            assertEquals(f.value(at), c.linear(at), 1e-10);
            assertEquals(at, c.fieldFor(f.value(at)), 1e-10);
        }
    }

    @Test
    void airGapLineOfAStraightLowerPartIsFoundDespiteResidualVoltage() {
        OpenCircuitCurve c = OpenCircuitCurve.of(new double[][] {{0, 5}, {1, 55}, {2, 105}, {3, 155}, {5, 230},
            {8, 300}, {12, 340}});
        assertEquals(50, c.airGapSlope(0.5), 1e-9);
        assertEquals(5 * 50 / 230.0, c.saturationFactor(230, 50), 1e-12);
    }

    @Test
    void voltsFollowSpeedAtConstantFieldCurrent() {
        assertEquals(1.2 * 230, OpenCircuitCurve.of(new double[][] {{1, 100}, {5, 230}}).atSpeed(1500, 1800).linear(5),
                1e-9);
    }

    @Test
    void deviationFromAStoredCurveIsSigned() {
        OpenCircuitCurve stored = sampled(0, 1);
        double[][] low = new double[8][];
        for (int i = 0; i < low.length; i++) {
            low[i] = new double[] {1 + i, 0.93 * froehlich(1 + i)};
        }
        assertEquals(-0.07, OpenCircuitCurve.of(low).greatestDeviationFrom(stored), 0.004);
    }

    @Test
    void whatWasNotMeasuredIsNotGuessed() {
        OpenCircuitCurve c = OpenCircuitCurve.of(new double[][] {{1, 100}, {5, 230}});
        assertThrows(OutOfRange.class, () -> c.linear(6));
        assertThrows(OutOfRange.class, () -> c.fieldFor(50));
        assertThrows(OutOfRange.class, () -> OpenCircuitCurve.of(new double[][] {{1, 100}, {2, 90}}));
    }
}
